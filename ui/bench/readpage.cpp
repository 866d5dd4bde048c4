// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// Where the entry stands and what is shown beside it. What becomes of a number: readacts.cpp.
#include "ui/bench/readpage.h"

#include "core/evaluation/doubts.h"
#include "core/evaluation/checksnotmade.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/benchsettings.h"
#include "ui/bench/pipettewords.h"
#include "ui/bench/racktimes.h"
#include "ui/bench/readingsmodel.h"
#include "ui/bench/repeatoffer.h"
#include "ui/bench/resultsmodel.h"
#include "ui/bench/seriespicture.h"
#include "ui/bench/stores.h"
#include "ui/bench/timewords.h"
#include "ui/bench/unitsofrun.h"
#include "ui/bench/verdicts.h"
#include "ui/shared/guard.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QKeyEvent>
#include <QLabel>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ReadPage::ReadPage(const Theme &theme, BenchSession &session, Stores &stores, const BenchSettings &settings,
                   QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_stores(stores)
    , m_settings(settings)
    , m_panel(new EntryPanel(theme, this))
    , m_repeat(new RepeatOffer(theme, this))
    , m_times(new RackTimes(theme, session, this))
    , m_series(new AbsorbanceChart(theme, tr("Absorbance against time"), this))
    , m_pictures(new QStackedWidget(this))
    , m_readings(new ReadingsModel(theme, this))
    , m_results(new ResultsModel(theme, this))
{
    build();
    connectAll();
}

void ReadPage::connectAll()
{
    connect(m_panel, &EntryPanel::judged, this, [this] {
        m_waitsForName = nullptr; // what was entered is not what stands there now
        updatePreview();
    });
    connect(m_panel, &EntryPanel::settled, this, &ReadPage::remark);
    connect(m_panel, &EntryPanel::modeChanged, this, &ReadPage::updatePreview);
    connect(m_panel, &EntryPanel::submitted, this,
            [this](double absorbance, const QString &typed, const QString &reason, bool asked) {
                takeOver({absorbance, typed, reason, asked, {}});
            });
    connect(m_panel, &EntryPanel::spoiltWanted, this, &ReadPage::changeSpoilt);
    connect(m_panel, &EntryPanel::doneWanted, this, &ReadPage::doneWanted);
    connect(m_panel, &EntryPanel::left, this, &ReadPage::leave);
    connect(m_panel, &EntryPanel::tubeWanted, this, &ReadPage::stepInTable);
    connect(m_panel, &EntryPanel::goOnWanted, this, [this] {
        if (rack() && rack()->sheet.next())
            Q_EMIT pipetteWanted();
        else
            Q_EMIT reviewWanted();
    });
    connect(m_repeat, &RepeatOffer::repeatWanted, this, &ReadPage::addRepeat);
    connect(m_times, &RackTimes::tubeWanted, this, [this](int tube) {
        if (m_place && tube != m_place->tube)
            goTo({tube, m_place->reading});
    });
    m_table->installEventFilter(this);
    connect(m_table, &Table::activated, this, &ReadPage::chooseCell);
    connect(m_table, &Table::clicked, this, &ReadPage::chooseCell);
    connect(&m_session, &BenchSession::rackChanged, this, &ReadPage::onRackChanged);
    connect(&m_session, &BenchSession::personChanged, this, &ReadPage::onPerson);
    connect(&m_session, &BenchSession::ticked, this, &ReadPage::onTick);
    const auto onSettings = [this] { m_panel->entry()->setThousandths(m_settings.choice().keysThousandths); };
    connect(&m_settings, &BenchSettings::changed, this, onSettings);
    onSettings();
    connect(&m_stores, &Stores::laboratoryChanged, this, [this] {
        takeUnits();
        onRackChanged(m_id);
    });
}

void ReadPage::build()
{
    m_table = new Table(m_theme, m_readings, tr("Readings"), u"readingsTable"_s, this);
    m_resultsTable = new Table(m_theme, m_results, tr("Results so far"), u"liveResults"_s, this);
    m_resultsTable->setWrap(Table::Wrap::AsNeeded);
    m_resultsTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_failures = new SentenceList(m_theme, tr("Checks so far"), u"liveChecks"_s, this);
    m_resultsTable->setColumnHidden(ResultsModel::Coverage, true);
    m_resultsTable->setColumnHidden(ResultsModel::Tubes, true);
    m_resultsTable->setColumnHidden(ResultsModel::Spread, true);
    m_resultsTable->setColumnHidden(ResultsModel::Dilution, true);
    m_resultsTable->setColumnHidden(ResultsModel::Limits, true);
    m_table->setFlexibleColumn(ReadingsModel::contentsColumn);
    m_table->setWrap(Table::Wrap::AsNeeded); // a long name goes on on a second line
    // Two measurands have to fit into a window of 1280.
    m_table->setFlexibleMinimum(12);
    m_resultsTable->setFlexibleMinimum(10);
    // The end of "sample Orchard blend, tank 7, 1 of 2" tells the tubes apart.
    m_table->setTextElideMode(Qt::ElideMiddle);
    m_basis = plainLabel({}, this);
    m_basis->setObjectName(u"resultsBasis"_s);
    m_basis->setWordWrap(true);

    // No splitter here: it would not grow the panel for a sentence that takes a second line.
    auto *left = new QWidget(this);
    auto *leftLayout = new QVBoxLayout(left);
    leftLayout->setContentsMargins({});
    leftLayout->setSpacing(m_theme.gap());
    leftLayout->addWidget(m_panel);
    leftLayout->addWidget(m_repeat);
    leftLayout->addWidget(m_table, 1);
    auto *results = new QWidget(this);
    auto *resultsLayout = new QVBoxLayout(results);
    resultsLayout->setContentsMargins({});
    resultsLayout->setSpacing(m_theme.gap());
    resultsLayout->addWidget(m_basis);
    resultsLayout->addWidget(m_resultsTable, 1);
    auto *right = new QSplitter(Qt::Vertical, this);
    m_pictures->addWidget(m_times);
    m_pictures->addWidget(m_series);
    right->addWidget(m_pictures);
    right->addWidget(results);
    right->addWidget(m_failures);
    right->setSizes({340, 220, 140});
    right->setStretchFactor(0, 4);
    right->setStretchFactor(1, 3);
    right->setStretchFactor(2, 2);
    auto *both = new QSplitter(Qt::Horizontal, this);
    both->addWidget(left);
    both->addWidget(right);
    both->setStretchFactor(0, 3);
    both->setStretchFactor(1, 2);
    both->setSizes({580, 480});
    for (QSplitter *splitter : {right, both})
        splitter->setChildrenCollapsible(false);

    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(m_theme.wideGap(), 0, m_theme.wideGap(), m_theme.wideGap());
    layout->addWidget(both);
}

const Rack *ReadPage::rack() const
{
    return m_session.find(m_id);
}

/// The laboratory's units and nothing else: limits are for the review.
void ReadPage::takeUnits()
{
    guarded(m_panel->notice(), [this] { m_units.laboratory = m_stores.laboratory(); });
}

void ReadPage::showRack(notebook::RunId id)
{
    keepDraft();
    if (id != m_id)
        m_taken.clear(); // they were for the other rack
    m_id = id;
    m_place.reset();
    if (!rack())
        return;
    m_times->showRack(id);
    takeUnits();
    m_readings->show(rack()->stored, rack()->evaluation, unitsOfRun(rack()->stored, m_units.laboratory));
    m_results->show(rack()->stored, rack()->evaluation, m_units);
    m_resultsTable->setColumnHidden(ResultsModel::Measurand, !m_results->hasSeveralMeasurands());
    takeUp();
    offerRepeat();
    m_table->fit();
    m_resultsTable->fit();
}

void ReadPage::takeUp()
{
    keepDraft();
    if (const auto waiting = waitingPlace(); waiting && rack())
        goTo(*waiting);
    else
        goOn();
}

void ReadPage::goOn()
{
    if (!rack())
        return;
    if (const auto place = nextPlace()) {
        goTo(*place);
        m_chosen = false;
        return;
    }
    m_place.reset();
    m_chosen = false;
    showWayOn();
    updatePreview();
}

std::optional<Place> ReadPage::duePlace() const
{
    std::optional<Place> first;
    double opens_min = 0;
    for (const timing::Due &due : rack()->due) {
        if (due.isTimed() && due.act.kind == run::TubeAct::Kind::Read &&
            (!first || *due.opens_min < opens_min)) {
            first = Place{due.tube, due.act.name};
            opens_min = *due.opens_min;
        }
    }
    const double now_min = m_session.now_min(*rack());
    for (const NextAction &action : seriesActions(*rack(), now_min)) {
        const double again_min = now_min + action.times->opens_s / 60;
        if (action.times->opens_s <= m_settings.choice().lead_s && (!first || again_min < opens_min)) {
            first = action.place;
            opens_min = again_min;
        }
    }
    return first;
}

std::optional<Place> ReadPage::nextPlace() const
{
    if (const auto due = duePlace())
        return due;
    const notebook::StoredRun &stored = rack()->stored;
    std::optional<Place> place = nextUnread(stored.method, stored.run, m_place);
    const std::optional<Place> first = place;
    while (place && !rack()->sheet.isReadable(place->tube, place->reading)) {
        place = nextUnread(stored.method, stored.run, placeAfter(stored.method, stored.run, *place));
        if (place == first)
            return std::nullopt;
    }
    return place;
}

void ReadPage::onTick()
{
    if (!rack() || !isVisible())
        return;
    // Nobody is at it: the entry goes where something is due.
    const bool atHand = m_place ? m_panel->entry()->hasFocus() : m_panel->isAncestorOf(focusWidget());
    const bool idle = !m_chosen && isIdle() && atHand;
    if (const auto due = duePlace(); idle && due && due != m_place)
        goOn();
    showTimes();
    if (m_remarkedEarly)
        remark(); // the time may have come
}

std::optional<timing::Due> ReadPage::timedDue(const Place &place) const
{
    const auto due = std::ranges::find_if(rack()->due, [&place](const timing::Due &each) {
        return each.tube == place.tube && each.act.kind == run::TubeAct::Kind::Read &&
               each.act.name == place.reading && each.isTimed();
    });
    return due == rack()->due.end() ? std::nullopt : std::optional(*due);
}

void ReadPage::showTimes()
{
    if (!rack() || !m_place)
        return;
    const auto due = timedDue(*m_place);
    const double now_min = m_session.now_min(*rack());
    if (!due) {
        m_panel->setTimes(againTimes(now_min), State::Info);
        return;
    }
    const double opens_s = (*due->opens_min - now_min) * 60;
    const double closes_s = (*due->closes_min - now_min) * 60;
    const QString window = tr("%1 to %2 after what came before")
                               .arg(countText(std::round((*due->opens_min - *due->since_min) * 60)),
                                    countText(std::round((*due->closes_min - *due->since_min) * 60)));
    const QString sentence = closes_s < 0 ? tr("Read it at once: %1 (%2)") : tr("Read it %1 (%2)");
    m_panel->setTimes(sentence.arg(countdownText(opens_s, closes_s), window),
                      closes_s < 0 ? State::Attention : State::Info);
}

QString ReadPage::againTimes(double now_min) const
{
    for (const NextAction &action : seriesActions(*rack(), now_min)) {
        if (action.place == *m_place)
            return tr("Read it again %1 (every %2)")
                .arg(countdownText(action.times->opens_s, action.times->closes_s),
                     countText(action.interval_s));
    }
    return {};
}

void ReadPage::showWayOn()
{
    if (const auto dosing = rack()->sheet.next())
        m_panel->showDone({tr("Next is to pipette"),
                           tr("%1. Enter leads there.").arg(additionWords(rack()->sheet, *dosing)),
                           tr("Pipett&e")});
    else
        m_panel->showDone({tr("All readings are in"),
                           tr("Enter opens the review. To correct a reading, go to it in the table with the "
                              "arrow keys and press Enter there."),
                           tr("&Review this rack")});
}

void ReadPage::goTo(const Place &place)
{
    keepDraft();
    m_place = place;
    const auto draft = m_drafts.find({m_id, place});
    m_waitsForName = nullptr;
    m_chosen = true;
    m_questioned.reset();
    m_panel->ask(subjectOf(place), draft == m_drafts.end() ? EntryPanel::Draft() : draft->second);
    const QModelIndex cell = m_readings->indexOf(place);
    m_table->setCurrentIndex(cell);
    m_table->scrollTo(cell);
    m_times->showTube(place.tube);
    showTimes();
    updatePreview();
}

EntryPanel::Subject ReadPage::subjectOf(const Place &place) const
{
    const notebook::StoredRun &stored = rack()->stored;
    EntryPanel::Subject subject{tr("Tube %1: %2").arg(tubeNumber(place)).arg(place.reading),
                                contentsText(stored.run, place.tube),
                                {}};
    subject.isSpoilt = !stored.run.tubes[static_cast<std::size_t>(place.tube)].spoilt.isEmpty();
    const run::Reading *read = readingAt(stored.run, place);
    subject.isSeries = read && std::holds_alternative<run::ReadingSeries>(*read);
    for (const notebook::StoredReading &reading : stored.readings) {
        if (reading.tube != place.tube || reading.reading != place.reading)
            continue;
        const QString when = momentText(reading.at);
        subject.stored = tr("Stored: %1 (%2, %3)")
                             .arg(shownNumber(readingText(reading.value)), reading.person, when);
    }
    return subject;
}

void ReadPage::keepDraft()
{
    if (!m_place)
        return;
    const std::pair key{m_id, *m_place};
    if (const EntryPanel::Draft draft = m_panel->draft(); draft.isEmpty())
        m_drafts.erase(key);
    else
        m_drafts[key] = draft;
}

void ReadPage::leave()
{
    m_panel->forget();
    keepDraft();
    m_place.reset();
    goOn();
    takeWaiting();
}

std::optional<Place> ReadPage::waitingPlace() const
{
    for (const auto &[key, draft] : m_drafts) {
        if (key.first == m_id)
            return key.second;
    }
    return std::nullopt;
}

QStringList ReadPage::unstored(notebook::RunId id) const
{
    return unstored(id, true);
}

QStringList ReadPage::unstoredElsewhere() const
{
    return unstored(m_id, false);
}

QStringList ReadPage::unstored(notebook::RunId id, bool withEntry) const
{
    auto drafts = m_drafts;
    if (m_place) {
        drafts.erase({m_id, *m_place});
        if (const EntryPanel::Draft draft = m_panel->draft(); withEntry && !draft.isEmpty())
            drafts[{m_id, *m_place}] = draft;
    }
    QStringList lines;
    for (const auto &[key, draft] : drafts) {
        if (key.first == id)
            lines << tr("tube %1, %2: %3").arg(tubeNumber(key.second)).arg(key.second.reading, draft.text);
    }
    return lines;
}

void ReadPage::updatePreview()
{
    if (!rack())
        return;
    // A further reading of a series has its time only when it is stored.
    const bool shown = m_place && m_panel->mode() != EntryPanel::Mode::Again;
    const auto typed = shown ? m_panel->entry()->value() : std::nullopt;
    const evaluation::Evaluation evaluation =
        typed ? preview(rack()->stored, *m_place, *typed) : rack()->evaluation;
    m_readings->setKeyed(m_place, typed, evaluation);
    // What is typed may be wider than what stood there.
    const QModelIndex cell = m_place ? m_readings->indexOf(*m_place) : QModelIndex();
    if (cell.isValid() && m_table->sizeHintForIndex(cell).width() > m_table->columnWidth(cell.column()))
        m_table->fit();
    m_results->show(rack()->stored, evaluation, m_units);
    m_resultsTable->fitWhereCut();
    auto failures =
        inUnitOf(m_results->rows(),
                 failuresSoFar(rack()->stored.run, evaluation,
                               evaluation::checksNotMade(rack()->stored.method, rack()->stored.run)));
    // What the entry says of the number that stands in it is not said twice.
    if (typed) {
        const auto doubts = evaluation::doubtsAbout(rack()->stored.method, rack()->stored.run, m_place->tube,
                                                    m_place->reading, *typed);
        if (!doubts.empty())
            std::erase_if(failures, [said = doubts.front().sentence](const Sentence &failure) {
                return failure.text.contains(said, Qt::CaseInsensitive);
            });
    }
    m_failures->setSentences(failures);
    m_basis->setText(typed ? tr("With %1 for tube %2, %3, which is not stored yet:")
                                 .arg(shownNumber(readingText(*typed)))
                                 .arg(tubeNumber(*m_place))
                                 .arg(m_place->reading)
                           : tr("From what is stored:"));
    m_basis->setFont(typed ? m_theme.bold() : font());
    showPicture();
    Q_EMIT unstoredChanged();
}

void ReadPage::showPicture()
{
    const auto series = m_place ? seriesAt(rack()->stored, rack()->evaluation, *m_place) : std::nullopt;
    if (series)
        m_series->setSeries(*series);
    m_pictures->setCurrentWidget(series ? static_cast<QWidget *>(m_series) : m_times);
    m_pictures->setVisible(series || m_times->isWorthSeeing());
}

bool ReadPage::isIdle() const
{
    return !m_questioned && m_panel->mode() == EntryPanel::Mode::First && m_panel->draft().isEmpty();
}

void ReadPage::onRackChanged(notebook::RunId id)
{
    if (id != m_id || !rack())
        return;
    m_readings->show(rack()->stored, rack()->evaluation, unitsOfRun(rack()->stored, m_units.laboratory));
    offerRepeat();
    showTimes();
    updatePreview();
}

void ReadPage::stepInTable(int rows)
{
    QModelIndex from = m_place ? m_readings->indexOf(*m_place) : m_table->currentIndex();
    if (!from.isValid())
        from = m_readings->index(0, 0);
    const int row = std::clamp(from.row() + rows, 0, m_readings->rowCount() - 1);
    m_table->setFocus();
    m_table->setCurrentIndex(m_readings->index(row, from.column()));
}

bool ReadPage::eventFilter(QObject *watched, QEvent *event)
{
    if (watched != m_table || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    // The table itself would take a digit for the start of a tube's name and go there.
    const QString text = static_cast<QKeyEvent *>(event)->text();
    if (text.size() != 1 || !u"0123456789.,-+"_s.contains(text))
        return QWidget::eventFilter(watched, event);
    typeFor(m_table->currentIndex(), text);
    return true;
}

void ReadPage::typeFor(const QModelIndex &cell, const QString &text)
{
    const auto place = m_readings->placeOf(cell);
    if (!place)
        return;
    goTo(*place);
    m_panel->entry()->setText(text);
}

void ReadPage::chooseCell(const QModelIndex &index)
{
    if (const auto place = m_readings->placeOf(index))
        goTo(*place);
}

} // namespace plateau::ui
