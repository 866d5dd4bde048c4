// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotspage.h"

#include "core/assay/localday.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/booklist.h"
#include "ui/books/lotplaces.h"
#include "ui/books/lotsmodel.h"
#include "ui/books/lottrace.h"
#include "ui/books/lotview.h"
#include "ui/books/methodbook.h"
#include "ui/books/receiveview.h"
#include "ui/books/wordfilter.h"
#include "ui/print/pdf.h"
#include "ui/shared/clock.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/guard.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString whoIsAskedLots()
{
    return LotsPage::tr(
        "First say who is at the bench: type your name on the left and press Enter, then do it again.");
}

} // namespace

LotsPage::LotsPage(const Theme &theme, const Clock &clock, Dialogs &dialogs, const BenchSession &session,
                   Stores &stores, const MethodBook &methods, QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_dialogs(dialogs)
    , m_session(session)
    , m_stores(stores)
    , m_methods(methods)
    , m_model(new LotsModel(theme, this))
    , m_pages(new PageStack(this))
    , m_list(new BookList(theme, new WordFilter(m_model), {u"lots"_s, u"lots"_s},
                          {tr("Lots"), tr("Containers of reagents"), tr("Fin&d by reagent, lot or state"),
                           tr("No container is in hand. Receive the reagents, water and buffers there are; "
                              "plans then say whether they are enough."),
                           tr("No container contains all of these words. Remove one to find more.")},
                          this))
    , m_usedUp(new QCheckBox(tr("Used &up too"), m_list))
    , m_lot(new LotView(theme, this))
    , m_receive(new ReceiveView(theme, this))
{
    m_pages->addWidget(m_list);
    m_pages->addWidget(m_lot);
    m_pages->addWidget(m_receive);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    buildList();
    connectLot();
    connect(m_receive, &ReceiveView::received, this, &LotsPage::receive);
    connect(m_receive, &ReceiveView::receivedDry, this, &LotsPage::receiveDry);
    connect(m_receive, &ReceiveView::closed, this, &LotsPage::showList);
    connect(&stores, &Stores::lotsChanged, this, &LotsPage::refresh);
    connect(&stores, &Stores::laboratoryChanged, this, &LotsPage::refresh);
    connect(&methods, &MethodBook::changed, this, &LotsPage::refresh);
    connect(&session, &BenchSession::personChanged, this, &LotsPage::dropAnsweredQuestion);
}

void LotsPage::buildList()
{
    m_usedUp->setObjectName(u"usedUpToo"_s);
    m_usedUp->setMinimumHeight(m_theme.target());
    auto *fresh = button(m_theme, tr("&Receive a container…"), u"receiveLot"_s, m_list);
    m_list->addButton(m_usedUp);
    m_list->addButton(fresh);
    m_list->setSortable(LotsModel::SortRole);
    // Names and states go on on another line; until when it is good stands in one.
    m_list->table().setFlexibleColumn(LotsModel::Reagent);
    m_list->table().setFlexibleMinimum(22);
    m_list->table().setLimit(36);
    m_list->table().setWholeColumn(LotsModel::UseBy);
    m_list->table().setWrap(Table::Wrap::AsNeeded);
    m_list->table().setTextElideMode(Qt::ElideMiddle); // the number of an aliquot stands at the end
    connect(m_usedUp, &QCheckBox::toggled, this, &LotsPage::fillList);
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_receive->notice().clear();
        m_pages->setCurrentWidget(m_receive);
        m_receive->takeFocus();
    });
    connect(m_list, &BookList::opened, this, [this](int row) { showLot(m_model->row(row).lot.id); });
}

template <class Act> void LotsPage::note(Act &&act, const QString &sentence)
{
    if (personIsKnown(m_lot->notice()) && guarded(m_lot->notice(), act))
        m_lot->markStored(sentence);
}

void LotsPage::connectLot()
{
    const auto lot = [this] { return notebook::LotId{m_lot->lotId()}; };
    connect(m_lot, &LotView::closed, this, &LotsPage::showList);
    connect(m_lot, &LotView::runWanted, this, &LotsPage::runWanted);
    connect(m_lot, &LotView::traceWanted, this, &LotsPage::saveTrace);
    connect(m_lot, &LotView::openWanted, this, [this, lot](const QDate &day) {
        note([&] { m_stores.openLot(lot(), day); }, tr("Noted as opened on %1.").arg(dayText(day)));
    });
    connect(m_lot, &LotView::openingWanted, this,
            [this, lot](const std::optional<QDate> &day, const QString &why) {
                note([&] { m_stores.correctOpening(lot(), day, why); },
                     day ? tr("Noted as opened on %1.").arg(dayText(day)) : tr("Noted as not opened."));
            });
    connectKeeping();
    connect(m_lot, &LotView::useWanted, this, [this, lot](double volume_mL, const QString &why) {
        note([&] { m_stores.use(lot(), volume_mL, why); }, tr("%1 taken.").arg(lotVolume(volume_mL)));
    });
    connect(m_lot, &LotView::discardWanted, this, [this, lot](double volume_mL, const QString &why) {
        note([&] { m_stores.discard(lot(), volume_mL, why); },
             tr("%1 discarded.").arg(lotVolume(volume_mL)));
    });
    connect(m_lot, &LotView::correctWanted, this, [this, lot](double found_mL, const QString &why) {
        note([&] { m_stores.correct(lot(), found_mL, why); },
             tr("Corrected: %1 are left in it.").arg(lotVolume(found_mL)));
    });
    connect(m_lot, &LotView::relabelWanted, this,
            [this, lot](const notebook::LotLabel &label, const QString &why) {
                note([&] { m_stores.relabel(lot(), label, why); },
                     tr("The label is corrected; what was decided on the old one keeps it."));
            });
}

void LotsPage::connectKeeping()
{
    const auto lot = [this] { return notebook::LotId{m_lot->lotId()}; };
    connect(m_lot, &LotView::dissolveWanted, this, [this, lot](const notebook::LotDissolving &how) {
        note([&] { m_stores.dissolve(lot(), how); },
             tr("Dissolved: now %1 of it.").arg(lotVolume(how.volume_mL)));
    });
    connect(m_lot, &LotView::divideWanted, this, [this, lot](const notebook::LotDivision &how) {
        note([&] { m_stores.divide(lot(), how); },
             tr("Divided. Its aliquots are containers of their own in the list: %1, of %2 each.")
                 .arg(QString::number(how.aliquots), lotVolume(how.volume_mL)));
    });
    connect(m_lot, &LotView::placeWanted, this,
            [this, lot](const planning::StoragePlace &place, const QString &why) {
                note([&] { m_stores.storeLot(lot(), place, why); },
                     tr("Noted: it is kept in %1.").arg(placeText(place)));
            });
    connect(m_lot, &LotView::noteWanted, this, [this, lot](const QString &text) {
        note([&] { m_stores.noteLot(lot(), text); }, tr("Noted; the ledger keeps it."));
    });
    connect(m_lot, &LotView::discardDryWanted, this, [this, lot](const QString &why) {
        note([&] { m_stores.discardDry(lot(), why); }, tr("Discarded."));
    });
}

void LotsPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    refresh(); // what is good today may not be tomorrow
}

Notice &LotsPage::noticeOnShow()
{
    return m_pages->currentWidget() == m_lot       ? m_lot->notice()
           : m_pages->currentWidget() == m_receive ? m_receive->notice()
                                                   : m_list->notice();
}

void LotsPage::refresh()
{
    if (!isVisible())
        return; // it is read when it is shown next
    const bool read = guarded(noticeOnShow(), [this] {
        m_lots = m_stores.everyLot();
        std::vector<assay::Method> methods;
        for (const notebook::StoredMethod &stored : m_methods.catalogue())
            methods.push_back(stored.method);
        m_reagents = ReagentNames(methods);
    });
    if (!read)
        return;
    // A reagent of a lot is a name to go on with, also where no method has it.
    QStringList names = m_reagents.names();
    for (const planning::Lot &lot : m_lots) {
        if (!names.contains(lot.reagent, Qt::CaseInsensitive))
            names << lot.reagent;
    }
    m_lot->setReagents(names);
    m_receive->setReagents(names);
    m_receive->setPlaces(placesOf(m_lots));
    m_lot->setLots(m_lots);
    fillList();
    if (m_pages->currentWidget() == m_lot)
        fillLot(m_lot->lotId());
}

void LotsPage::fillList()
{
    guarded(m_list->notice(), [this] {
        const planning::Laboratory laboratory = m_stores.laboratory();
        const int places = laboratory.rackRows * laboratory.rackColumns;
        std::vector<planning::Lot> shown = m_lots;
        if (!m_usedUp->isChecked())
            std::erase_if(shown, planning::isUsedUp);
        m_model->setLots(std::move(shown), m_clock.now(), [&](const QString &reagent) {
            return LotUse{m_reagents.largestDose_mL(reagent), places};
        });
    });
    m_list->refresh();
}

void LotsPage::open()
{
    if (m_receive->hasUnsavedChanges())
        m_pages->setCurrentWidget(m_receive);
    else if (m_lot->hasUnsavedChanges())
        m_pages->setCurrentWidget(m_lot);
    else
        showList();
}

QString LotsPage::unstored() const
{
    return m_receive->hasUnsavedChanges() || m_lot->hasUnsavedChanges()
               ? tr("What happened to a lot, not stored yet")
               : QString();
}

void LotsPage::showList()
{
    m_list->notice().clear();
    m_pages->setCurrentWidget(m_list);
    m_list->takeFocus();
}

void LotsPage::showLot(qint64 id)
{
    if (!fillLot(id))
        return;
    m_pages->setCurrentWidget(m_lot);
    m_lot->takeFocus();
}

bool LotsPage::fillLot(qint64 id)
{
    const auto lot = std::ranges::find(m_lots, id, &planning::Lot::id);
    if (lot == m_lots.end())
        return false;
    return guarded(noticeOnShow(), [&] {
        const planning::Laboratory laboratory = m_stores.laboratory();
        const LotUse use{m_reagents.largestDose_mL(lot->reagent),
                         laboratory.rackRows * laboratory.rackColumns};
        m_lot->show(
            {*lot, listedStandingOf(*lot, m_clock.now(), use), m_stores.movements({id}), m_stores.takings({id})},
            m_clock.now().date());
    });
}

void LotsPage::receive(const notebook::LotLabel &label, double volume_mL)
{
    if (personIsKnown(m_receive->notice()) &&
        guarded(m_receive->notice(), [&] { keepIt(m_stores.receive(label, volume_mL)); }))
        sayReceived(label, lotVolume(volume_mL));
}

void LotsPage::receiveDry(const notebook::LotLabel &label, std::optional<double> mass_mg)
{
    if (personIsKnown(m_receive->notice()) &&
        guarded(m_receive->notice(), [&] { keepIt(m_stores.receiveDry(label, mass_mg)); }))
        sayReceived(label, tr("dry"));
}

void LotsPage::keepIt(notebook::LotId lot)
{
    if (const auto place = m_receive->place())
        m_stores.storeLot(lot, *place, {});
}

void LotsPage::sayReceived(const notebook::LotLabel &label, const QString &amount)
{
    const bool over = label.expires && *label.expires < m_clock.now().date();
    const QString stored =
        label.expires && !over
            ? tr("In the book: %1, lot %2, %3, use by %4 by its label. The label stays here for the next "
                 "container of it.")
                  .arg(label.reagent, label.lot, amount, assay::shownDay(*label.expires))
            : tr("In the book: %1, lot %2, %3. The label stays here for the next container of it.")
                  .arg(label.reagent, label.lot, amount);
    m_receive->markReceived(over ? State::Attention : State::Good,
                            over ? tr("%1 Its use-by date, %2, is past already.")
                                       .arg(stored, assay::shownDay(*label.expires))
                                 : stored);
}

void LotsPage::saveTrace()
{
    const auto lot = std::ranges::find(m_lots, m_lot->lotId(), &planning::Lot::id);
    if (lot == m_lots.end())
        return;
    const QString path = m_dialogs.fileToSave(this, tr("Save what the container touched"),
                                              tr("lot %1.csv").arg(QString(lot->lot).replace(u'/', u'-')),
                                              tr("CSV files (*.csv)"));
    if (path.isEmpty())
        return;
    guarded(m_lot->notice(), [&] {
        std::vector<TracedRun> runs;
        for (const notebook::LotTaking &taking : m_stores.takings({lot->id}))
            runs.push_back({taking, m_session.load(taking.run)});
        const QString fault = saveBytes(path, lotTraceCsv(*lot, runs));
        if (fault.isEmpty())
            m_lot->notice().sayDone(
                tr("%1 was written: every run that took from it, a row for each result.").arg(path));
        else
            m_lot->notice().say(State::Bad, fault);
    });
}

bool LotsPage::personIsKnown(Notice &notice)
{
    if (!m_session.person().isEmpty())
        return true;
    notice.say(State::Info, whoIsAskedLots());
    Q_EMIT personWanted();
    return false;
}

void LotsPage::dropAnsweredQuestion()
{
    if (m_session.person().isEmpty())
        return;
    for (Notice *notice : {&m_list->notice(), &m_lot->notice(), &m_receive->notice()}) {
        if (notice->sentence() == whoIsAskedLots())
            notice->clear();
    }
}

} // namespace plateau::ui
