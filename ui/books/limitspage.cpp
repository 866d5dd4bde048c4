// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/limitspage.h"

#include "core/assay/localday.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/booklist.h"
#include "ui/books/limitsmodel.h"
#include "ui/books/limitsview.h"
#include "ui/books/methodbook.h"
#include "ui/books/wordfilter.h"
#include "ui/shared/clock.h"
#include "ui/shared/guard.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString whoIsAskedLimits()
{
    return LimitsPage::tr(
        "First say who is at the bench: type your name on the left and press Enter, then do it again.");
}

void addOnce(QStringList &names, const QString &name)
{
    if (!name.isEmpty() && !names.contains(name, Qt::CaseInsensitive))
        names << name;
}

/// What is measured, by the names the methods give it, derived quantities too.
QStringList measurandNames(const MethodBook &methods)
{
    QStringList names;
    for (const notebook::StoredMethod &stored : methods.catalogue()) {
        for (const assay::Measurand &measurand : stored.method.measurands)
            addOnce(names, measurand.name);
        for (const assay::Derived &derived : stored.method.derived)
            addOnce(names, derived.name);
    }
    return names;
}

MeasurandNames namesById(const MethodBook &methods)
{
    std::vector<assay::Method> all;
    for (const notebook::StoredMethod &stored : methods.catalogue())
        all.push_back(stored.method);
    return MeasurandNames(all);
}

} // namespace

LimitsPage::LimitsPage(const Theme &theme, const Clock &clock, const BenchSession &session, Stores &stores,
                       const MethodBook &methods, QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_session(session)
    , m_stores(stores)
    , m_methods(methods)
    , m_model(new LimitsModel(this))
    , m_pages(new PageStack(this))
    , m_list(new BookList(
          theme, new WordFilter(m_model), {u"limits"_s, u"limits"_s},
          {tr("Limits of products"), tr("Limits of products"), tr("Fin&d by product, measurand or source"),
           tr("No limits yet. Add the limits of your products, each with the source it stands in and its "
              "date; Review then says of every result whether it lies inside, outside, or cannot be decided "
              "at its uncertainty."),
           tr("No limit contains all of these words. Remove one to find more.")},
          this))
    , m_origin(plainLabel({}, this))
    , m_view(new LimitsView(theme, this))
{
    m_pages->addWidget(m_list);
    m_pages->addWidget(m_view);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    buildList();
    connect(m_view, &LimitsView::closed, this, &LimitsPage::showList);
    connect(m_view, &LimitsView::saveWanted, this, &LimitsPage::save);
    connect(m_view, &LimitsView::removeWanted, this, &LimitsPage::remove);
    connect(&stores, &Stores::specificationsChanged, this, &LimitsPage::refresh);
    connect(&session, &BenchSession::personChanged, this, &LimitsPage::dropAnsweredQuestion);
}

void LimitsPage::buildList()
{
    auto *fresh = button(m_theme, tr("&Add a limit…"), u"addLimit"_s, m_list);
    m_list->addButton(fresh);
    m_list->table().setFlexibleColumn(LimitsModel::Source);
    m_list->table().setFlexibleMinimum(14);
    m_list->table().setLimit(40);
    m_list->table().setWholeColumn(LimitsModel::Limit);
    m_list->table().setWrap(Table::Wrap::AsNeeded);
    m_origin->setObjectName(u"limitsOrigin"_s);
    m_origin->setWordWrap(true);
    m_origin->setMargin(m_theme.gap());
    m_list->layout()->addWidget(m_origin);
    connect(fresh, &QPushButton::clicked, this, [this] { showLimit(-1); });
    connect(m_list, &BookList::opened, this, &LimitsPage::showLimit);
}

void LimitsPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    refresh();
}

void LimitsPage::refresh()
{
    if (!isVisible())
        return; // it is read when it is shown next
    Notice &notice = m_pages->currentWidget() == m_view ? m_view->notice() : m_list->notice();
    guarded(notice, [this] {
        m_limits = m_stores.specifications();
        sayWhereItComesFrom();
        QStringList products;
        for (const evaluation::Specification &limit : m_limits)
            addOnce(products, limit.product);
        for (const notebook::WaitingSample &waiting : m_stores.waiting())
            addOnce(products, waiting.sample.product);
        QStringList measurands = measurandNames(m_methods);
        products.sort(Qt::CaseInsensitive);
        measurands.sort(Qt::CaseInsensitive);
        m_names = namesById(m_methods);
        m_view->setNames(products, measurands, m_names);
    });
    m_model->setLimits(m_limits, m_names);
    m_list->refresh();
}

void LimitsPage::sayWhereItComesFrom()
{
    const auto saving = m_stores.specificationsSaving();
    m_origin->setVisible(saving.has_value());
    if (saving)
        m_origin->setText((saving->version > 1
                               ? tr("Version %1, saved by %2, %3. The versions before it stay on record.")
                               : tr("Version %1, saved by %2, %3."))
                              .arg(QString::number(saving->version), saving->person, momentText(saving->at)));
}

void LimitsPage::open()
{
    if (unstored().isEmpty())
        showList();
}

QString LimitsPage::unstored() const
{
    return m_pages->currentWidget() == m_view && m_view->hasUnsavedChanges()
               ? tr("A limit of a product that is not saved yet")
               : QString();
}

void LimitsPage::showList()
{
    m_list->notice().clear();
    m_pages->setCurrentWidget(m_list);
    m_list->takeFocus();
}

void LimitsPage::showLimit(int row)
{
    LimitDraft draft;
    m_open.reset();
    if (row >= 0) {
        m_open = m_model->row(row);
        draft = draftOf(*m_open);
    } else {
        draft.date = assay::shownDay(m_clock.now().date());
    }
    m_view->show(draft, others(), row < 0);
    m_pages->setCurrentWidget(m_view);
    m_view->takeFocus();
}

std::vector<evaluation::Specification> LimitsPage::others() const
{
    std::vector<evaluation::Specification> rest = m_limits;
    if (const auto own = m_open ? std::ranges::find(rest, *m_open) : rest.end(); own != rest.end())
        rest.erase(own);
    return rest;
}

void LimitsPage::save(evaluation::Specification limit, const QString &reason)
{
    std::vector<evaluation::Specification> limits = m_limits;
    const auto own = m_open ? std::ranges::find(limits, *m_open) : limits.end();
    if (own != limits.end())
        *own = limit;
    else
        limits.push_back(limit);
    if (!store(limits, reason))
        return;
    m_list->notice().say(
        State::Good,
        tr("Saved: %1, %2, %3.")
            .arg(limit.product, m_names.nameOf(limit.measurand), evaluation::limitText(limit)));
}

void LimitsPage::remove(const QString &reason)
{
    if (!store(others(), reason))
        return;
    m_list->notice().say(State::Good, tr("The limit is removed; the versions that had it stay on record."));
}

bool LimitsPage::store(const std::vector<evaluation::Specification> &limits, const QString &reason)
{
    if (!personIsKnown())
        return false;
    bool stored = false;
    if (!guarded(m_view->notice(), [&] { stored = m_stores.saveSpecifications(limits, reason); }))
        return false;
    if (!stored) {
        m_view->notice().say(State::Info, tr("There is nothing to save: it was saved like this already."));
        return false;
    }
    m_open.reset();
    m_view->show({}, {}, true); // nothing is left unsaved
    showList();
    return true;
}

bool LimitsPage::personIsKnown()
{
    if (!m_session.person().isEmpty())
        return true;
    m_view->notice().say(State::Info, whoIsAskedLimits());
    Q_EMIT personWanted();
    return false;
}

void LimitsPage::dropAnsweredQuestion()
{
    if (!m_session.person().isEmpty() && m_view->notice().sentence() == whoIsAskedLimits())
        m_view->notice().clear();
}

} // namespace plateau::ui
