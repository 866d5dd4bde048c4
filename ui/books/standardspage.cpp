// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/standardspage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/labelprinting.h"
#include "ui/bench/stores.h"
#include "ui/books/booklist.h"
#include "ui/books/methodbook.h"
#include "ui/books/preparationform.h"
#include "ui/books/standardsmodel.h"
#include "ui/books/substanceform.h"
#include "ui/books/wordfilter.h"
#include "ui/shared/clock.h"
#include "ui/shared/guard.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

StandardsPage::StandardsPage(const Surroundings &around, QWidget *parent)
    : BookPage(parent)
    , m_around(around)
    , m_model(new StandardsModel(around.theme, this))
    , m_pages(new PageStack(this))
    , m_list(new BookList(around.theme, new WordFilter(m_model), {u"standards"_s, u"standards"_s},
                          {tr("Standards"), tr("Standards that were made"),
                           tr("Fin&d by name, substance or state"),
                           tr("No standard is in the book yet. Prepare one: its strength then counts down "
                              "here, and a new run takes it with its uncertainty."),
                           tr("No standard contains all of these words. Remove one to find more.")},
                          this))
    , m_view(new PreparationView(around.theme, this))
    , m_form(new PreparationForm(around.theme, around.clock, this))
    , m_substance(new SubstanceForm(around.theme, this))
{
    for (QWidget *page : std::initializer_list<QWidget *>{m_list, m_view, m_form, m_substance})
        m_pages->addWidget(page);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    buildList();
    connectForms();
    for (const auto changed :
         {&Stores::standardsChanged, &Stores::laboratoryChanged, &Stores::equipmentChanged})
        connect(&around.stores, changed, this, &StandardsPage::refresh);
    connect(&around.methods, &MethodBook::changed, this, &StandardsPage::refresh);
    connect(&around.session, &BenchSession::ticked, this, &StandardsPage::tick);
}

void StandardsPage::buildList()
{
    auto *fresh = button(m_around.theme, tr("P&repare a standard…"), u"prepareStandard"_s, m_list);
    m_list->addButton(fresh);
    m_list->table().setFlexibleColumn(StandardsModel::Standing);
    m_list->table().setFlexibleMinimum(30);
    m_list->table().setWrap(Table::Wrap::AsNeeded);
    connect(fresh, &QPushButton::clicked, this, [this] {
        goTo(m_form);
        m_form->takeFocus();
    });
    connect(m_list, &BookList::opened, this, [this](int row) { showPreparation(m_model->row(row).id); });
}

void StandardsPage::connectForms()
{
    connect(m_view, &PreparationView::closed, this, &StandardsPage::showList);
    connect(m_view, &PreparationView::runWanted, this, &StandardsPage::runWanted);
    connect(m_view, &PreparationView::labelWanted, this, &StandardsPage::printLabel);
    connect(m_view, &PreparationView::discardWanted, this, [this](const QString &reason) {
        if (personIsKnown(m_view->notice()) && guarded(m_view->notice(), [&] {
                m_around.stores.discard(notebook::PreparationId{m_view->held().id}, reason);
            }))
            m_view->markDiscarded();
    });
    connect(m_form, &PreparationForm::closed, this, &StandardsPage::showList);
    connect(m_form, &PreparationForm::wanted, this, &StandardsPage::storePreparation);
    connect(m_form, &PreparationForm::substanceWanted, this, [this] { openSubstance(std::nullopt); });
    connect(m_form, &PreparationForm::substanceChangeWanted, this, [this](qint64 id) { openSubstance(id); });
    connect(m_substance, &SubstanceForm::closed, this, [this] { goTo(m_form); });
    connect(m_substance, &SubstanceForm::wanted, this, &StandardsPage::storeSubstance);
}

void StandardsPage::goTo(QWidget *page)
{
    m_pages->setCurrentWidget(page);
}

void StandardsPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    refresh();
}

Notice &StandardsPage::noticeOnShow()
{
    QWidget *page = m_pages->currentWidget();
    return page == m_view        ? m_view->notice()
           : page == m_form      ? m_form->notice()
           : page == m_substance ? m_substance->notice()
                                 : m_list->notice();
}

void StandardsPage::refresh()
{
    if (!isVisible())
        return; // it is read when it is shown next
    const bool read = guarded(noticeOnShow(), [this] {
        m_preparations = m_around.stores.preparations();
        m_substances = m_around.stores.substances();
        std::vector<assay::Method> methods;
        for (const MethodOffer &offer : m_around.methods.offered())
            methods.push_back(offer.method);
        m_form->setStock(m_substances, methods,
                         m_around.stores.checkedLaboratory(m_around.clock.now().date()),
                         m_around.stores.equipment(), m_preparations);
    });
    if (!read)
        return;
    m_model->setPreparations(m_preparations, m_around.clock.now());
    m_list->refresh();
    if (m_pages->currentWidget() == m_view)
        showPreparation(m_view->held().id);
}

void StandardsPage::tick()
{
    if (!isVisible())
        return;
    const QDateTime now = m_around.clock.now();
    if (m_pages->currentWidget() == m_view)
        m_view->tick(now);
    else if (m_pages->currentWidget() == m_list)
        m_model->setPreparations(m_preparations, now);
}

void StandardsPage::open()
{
    if (m_substance->hasUnsavedChanges())
        goTo(m_substance);
    else if (m_form->hasUnsavedChanges())
        goTo(m_form);
    else
        showList();
}

QString StandardsPage::unstored() const
{
    const bool any =
        m_substance->hasUnsavedChanges() || m_form->hasUnsavedChanges() || m_view->hasUnsavedChanges();
    return any ? tr("A standard or a substance, not stored yet") : QString();
}

void StandardsPage::showList()
{
    m_list->notice().clear();
    goTo(m_list);
    m_list->takeFocus();
}

const planning::HeldPreparation *StandardsPage::find(qint64 id) const
{
    const auto found = std::ranges::find(m_preparations, id, &planning::HeldPreparation::id);
    return found == m_preparations.end() ? nullptr : &*found;
}

std::vector<PreparationRun> StandardsPage::runsOf(const planning::HeldPreparation &held) const
{
    std::vector<PreparationRun> runs;
    for (const notebook::RunId id : m_around.stores.runsOf({held.id})) {
        const notebook::StoredRun stored = m_around.session.load(id);
        PreparationRun used{
            id, stored.run.title, stored.run.startedAt.value_or(stored.summary.createdAt), {}, {}};
        for (const run::Standard &standard : stored.run.standards) {
            if (!planning::isStandardOf(held, standard))
                continue;
            if (standard.preparedAt && standard.usedAt)
                used.age_h = run::ageAtUse_h(standard);
            for (const evaluation::StandardRecovery &recovery : notebook::evaluationOf(stored).standards) {
                if (recovery.standard == standard.id && !used.recovery_percent)
                    used.recovery_percent = recovery.recovery_percent;
            }
        }
        runs.push_back(used);
    }
    return runs;
}

double StandardsPage::statedLossPerHour(const planning::Preparation &made) const
{
    int newest = 0;
    double stated = made.lossPerHour;
    for (const MethodOffer &offer : m_around.methods.offered()) {
        const assay::Method &method = offer.method;
        if (made.measurand.isEmpty() || method.version <= newest || !method.standard ||
            !method.standard->lossPerHour || !assay::findMeasurand(method, made.measurand))
            continue;
        newest = method.version;
        stated = *method.standard->lossPerHour;
    }
    return stated;
}

void StandardsPage::showPreparation(qint64 id)
{
    const planning::HeldPreparation *held = find(id);
    if (!held) {
        showList();
        return;
    }
    const bool fresh = m_pages->currentWidget() != m_view;
    const bool shown = guarded(noticeOnShow(), [&] {
        m_view->show(*held, runsOf(*held), m_around.clock.now());
        m_view->showLife(charts::agedRecoveries(m_around.stores.recoveriesOfItsKind({held->id})),
                         statedLossPerHour(held->preparation));
    });
    if (!shown || !fresh)
        return;
    goTo(m_view);
    m_view->takeFocus();
}

void StandardsPage::openSubstance(std::optional<qint64> id)
{
    const auto held = std::ranges::find(m_substances, id.value_or(0), &planning::HeldSubstance::id);
    if (held != m_substances.end())
        m_substance->startChange(*held);
    else if (m_substance->changed())
        m_substance->startNew();
    goTo(m_substance);
    m_substance->takeFocus();
}

void StandardsPage::storeSubstance(const planning::Substance &substance, const QString &reason)
{
    if (!personIsKnown(m_substance->notice()))
        return;
    qint64 id = m_substance->changed().value_or(0);
    const bool stored = guarded(m_substance->notice(), [&] {
        if (id != 0)
            m_around.stores.changeSubstance({id}, substance, reason);
        else
            id = m_around.stores.addSubstance(substance).value;
    });
    if (!stored)
        return;
    m_substance->startNew();
    goTo(m_form);
    m_form->chooseSubstance(id);
    m_form->takeFocus();
    m_form->notice().say(State::Good, tr("In the book: %1.").arg(substance.name));
}

void StandardsPage::storePreparation(qint64 of, const planning::Preparation &preparation)
{
    if (!personIsKnown(m_form->notice()))
        return;
    qint64 id = 0;
    if (!guarded(m_form->notice(), [&] { id = m_around.stores.prepare({of}, preparation).value; }))
        return;
    m_form->markStored();
    showPreparation(id);
    m_view->notice().say(State::Good, tr("In the book. Print its label; a new run takes it by its name."));
}

void StandardsPage::printLabel()
{
    saveLabelsAs(this, m_around.theme, m_around.dialogs, m_view->notice(), {labelOf(m_view->held())},
                 m_view->held().person);
}

bool StandardsPage::personIsKnown(Notice &notice)
{
    if (!m_around.session.person().isEmpty())
        return true;
    notice.say(
        State::Info,
        tr("First say who is at the bench: type your name on the left and press Enter, then do it again."));
    Q_EMIT personWanted();
    return false;
}

} // namespace plateau::ui
