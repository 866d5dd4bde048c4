// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/samplespage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/bench/waitingwords.h"
#include "ui/books/booklist.h"
#include "ui/books/methodbook.h"
#include "ui/books/registerview.h"
#include "ui/books/shelfmodel.h"
#include "ui/books/wordfilter.h"
#include "ui/shared/guard.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QStackedWidget>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString whoIsAskedSamples()
{
    return SamplesPage::tr(
        "First say who is at the bench: type your name on the left and press Enter, then do it again.");
}

} // namespace

SamplesPage::SamplesPage(const Theme &theme, const Clock &clock, const BenchSession &session, Stores &stores,
                         const MethodBook &methods, QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_session(session)
    , m_stores(stores)
    , m_methods(methods)
    , m_model(new ShelfModel(theme, this))
    , m_pages(new PageStack(this))
    , m_list(new BookList(
          theme, new WordFilter(m_model), {u"shelf"_s, u"waiting"_s},
          {tr("Samples waiting"), tr("Samples waiting"), tr("Fin&d by sample, product, reason or sender"),
           tr("No sample waits. Register what came in; a repeat that a run advises comes here by itself."),
           tr("No sample contains all of these words. Remove one to find more.")},
          this))
    , m_register(new RegisterView(theme, clock, this))
{
    m_pages->addWidget(buildListPage());
    m_pages->addWidget(m_register);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    connect(m_register, &RegisterView::stored, this, &SamplesPage::store);
    connect(m_register, &RegisterView::closed, this, &SamplesPage::showList);
    connect(&stores, &Stores::waitingChanged, this, &SamplesPage::refresh);
    connect(&methods, &MethodBook::changed, this, &SamplesPage::refresh);
    connect(&session, &BenchSession::personChanged, this, &SamplesPage::dropAnsweredQuestion);
}

QWidget *SamplesPage::buildListPage()
{
    auto *page = new QWidget(this);
    auto *fresh = button(m_theme, tr("&Register samples…"), u"registerSamples"_s, m_list);
    m_list->addButton(fresh);
    m_list->table().setFlexibleColumn(ShelfModel::Why);
    m_list->table().setFlexibleMinimum(18);
    m_list->table().setNameColumn(ShelfModel::Sample);
    m_list->table().setWrap(Table::Wrap::AsNeeded);
    m_list->table().setLimit(23);
    auto *layout = new QVBoxLayout(page);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(m_list, 1);
    layout->addWidget(buildStrip());
    connect(fresh, &QPushButton::clicked, this, [this] {
        if (!m_register->hasUnsavedChanges())
            m_register->startNew();
        showRegister();
    });
    connect(m_list, &BookList::opened, this, &SamplesPage::change);
    connect(m_list->table().selectionModel(), &QItemSelectionModel::currentChanged, this,
            &SamplesPage::describeChosen);
    connect(m_list->table().model(), &QAbstractItemModel::rowsRemoved, this, &SamplesPage::describeChosen);
    return page;
}

QWidget *SamplesPage::buildStrip()
{
    m_strip = new QWidget(this);
    m_about = plainLabel({}, m_strip);
    m_about->setObjectName(u"aboutSample"_s);
    m_about->setWordWrap(true);
    m_change = button(m_theme, tr("&Change…"), u"changeSample"_s, m_strip);
    m_reason = new QLineEdit(m_strip);
    m_reason->setObjectName(u"shelfReason"_s);
    m_reason->setMinimumHeight(m_theme.target());
    auto *caption = new QLabel(tr("R&eason not to run it"), m_strip);
    caption->setBuddy(m_reason);
    m_withdraw = button(m_theme, tr("&Withdraw"), u"withdrawSample"_s, m_strip);
    m_waive = button(m_theme, tr("Wa&ive the repeat"), u"waiveRepeat"_s, m_strip);
    auto *row = new QHBoxLayout;
    row->addWidget(m_change);
    row->addSpacing(m_theme.wideGap());
    row->addWidget(caption);
    row->addWidget(m_reason, 1);
    row->addWidget(m_withdraw);
    row->addWidget(m_waive);
    auto *layout = new QVBoxLayout(m_strip);
    setGaps(m_theme, layout);
    layout->addWidget(m_about);
    layout->addLayout(row);
    connect(m_change, &QPushButton::clicked, this, [this] {
        const auto *filter = static_cast<const QSortFilterProxyModel *>(m_list->table().model());
        change(filter->mapToSource(m_list->table().currentIndex()).row());
    });
    connect(m_withdraw, &QPushButton::clicked, this, &SamplesPage::withdraw);
    connect(m_waive, &QPushButton::clicked, this, &SamplesPage::waiveRepeat);
    connect(m_reason, &QLineEdit::returnPressed, this, [this] {
        if (m_withdraw->isEnabled() != m_waive->isEnabled())
            (m_withdraw->isEnabled() ? m_withdraw : m_waive)->click();
        else if (m_withdraw->isEnabled())
            m_list->notice().say(State::Info, tr("Choose what is meant: withdraw what was registered, or "
                                                 "waive the repeat."));
    });
    return m_strip;
}

void SamplesPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    if (m_stale)
        refresh();
}

bool SamplesPage::read()
{
    return guarded(m_list->notice(), [this] {
        m_waiting = m_stores.waiting();
        std::vector<assay::Method> methods;
        for (const notebook::StoredMethod &stored : m_methods.catalogue())
            methods.push_back(stored.method);
        m_measurands = MeasurandNames(methods);
    });
}

void SamplesPage::refresh()
{
    m_stale = !isVisible();
    if (m_stale || !read())
        return;
    m_model->setWaiting(m_waiting, m_measurands);
    m_list->refresh();
    m_register->setSurroundings(m_waiting, m_measurands);
    describeChosen();
}

void SamplesPage::open()
{
    if (!unstored().isEmpty())
        showRegister();
    else
        showList();
}

QString SamplesPage::unstored() const
{
    return m_register->hasUnsavedChanges() ? tr("Samples that are not registered yet") : QString();
}

void SamplesPage::showList()
{
    m_list->notice().clear();
    m_pages->setCurrentIndex(0);
    m_list->takeFocus();
    describeChosen();
}

void SamplesPage::showRegister()
{
    m_pages->setCurrentWidget(m_register);
    m_register->takeFocus();
}

const notebook::WaitingSample *SamplesPage::chosen() const
{
    const QModelIndex current = m_list->table().currentIndex();
    if (!current.isValid())
        return nullptr;
    const auto *filter = static_cast<const QSortFilterProxyModel *>(m_list->table().model());
    return &m_model->waiting(filter->mapToSource(current).row());
}

void SamplesPage::describeChosen()
{
    const notebook::WaitingSample *sample = chosen();
    m_strip->setVisible(m_model->rowCount() > 0);
    m_change->setEnabled(sample);
    m_change->setText(sample && !sample->shelf ? tr("&Complete what is known…") : tr("&Change…"));
    m_reason->setEnabled(sample);
    m_withdraw->setEnabled(sample && sample->shelf);
    m_waive->setEnabled(sample && sample->repeat);
    m_about->setText(sample ? tr("%1: %2.").arg(sample->sample.id, whyItWaits(*sample))
                            : tr("Choose a sample to change it or to take it off the list."));
}

void SamplesPage::change(int row)
{
    if (m_register->hasUnsavedChanges()) {
        m_list->notice().say(State::Attention, tr("There are samples that are not stored yet: register or "
                                                  "leave them first."));
        return;
    }
    const notebook::WaitingSample &sample = m_model->waiting(row);
    // Of a repeat nobody registered, what is known of it is the beginning of its registration.
    if (sample.shelf)
        m_register->startChange(*sample.shelf, sample.sample);
    else
        m_register->startNew({sample.sample});
    showRegister();
}

bool SamplesPage::mayTakeOff()
{
    if (!personIsKnown(m_list->notice()))
        return false;
    if (!m_reason->text().trimmed().isEmpty())
        return true;
    m_list->notice().say(State::Info, tr("Say in the line below why it will not be run; the notebook's "
                                         "history keeps it."));
    m_reason->setFocus();
    return false;
}

void SamplesPage::withdraw()
{
    const notebook::WaitingSample *sample = chosen();
    if (!sample || !sample->shelf || !mayTakeOff())
        return;
    const QString id = sample->sample.id;
    const notebook::ShelfId shelf = *sample->shelf;
    if (guarded(m_list->notice(), [&] { m_stores.withdraw(shelf, m_reason->text().simplified()); }))
        say(tr("%1 was withdrawn.").arg(id));
}

void SamplesPage::waiveRepeat()
{
    const notebook::WaitingSample *sample = chosen();
    if (!sample || !sample->repeat || !mayTakeOff())
        return;
    const QString id = sample->sample.id;
    const notebook::RunId run = sample->repeat->run;
    if (guarded(m_list->notice(), [&] { m_stores.waiveRepeat(run, id, m_reason->text().simplified()); }))
        say(tr("The repeat of %1 that run %2 advises will not be made.").arg(id, QString::number(run.value)));
}

void SamplesPage::say(const QString &sentence)
{
    m_reason->clear();
    m_list->notice().say(State::Good, sentence);
    m_list->takeFocus();
}

void SamplesPage::store(const std::vector<planning::ShelfSample> &samples)
{
    if (!personIsKnown(m_register->notice()))
        return;
    const auto changing = m_register->changing();
    try {
        if (changing)
            m_stores.changeSample(*changing, samples.front());
        else
            m_stores.registerSamples(samples);
    } catch (const notebook::Failure &failure) {
        m_register->refuse(failure.sentence());
        return;
    }
    m_register->markStored();
    m_register->startNew();
    showList();
    m_list->notice().say(State::Good, changing ? tr("The change of %1 is stored.").arg(samples.front().id)
                                               : tr("Registered: %1.").arg(samples.size()));
}

bool SamplesPage::personIsKnown(Notice &notice)
{
    if (!m_session.person().isEmpty())
        return true;
    notice.say(State::Info, whoIsAskedSamples());
    Q_EMIT personWanted();
    return false;
}

void SamplesPage::dropAnsweredQuestion()
{
    if (m_session.person().isEmpty())
        return;
    for (Notice *notice : {&m_list->notice(), &m_register->notice()}) {
        if (notice->sentence() == whoIsAskedSamples())
            notice->clear();
    }
}

} // namespace plateau::ui
