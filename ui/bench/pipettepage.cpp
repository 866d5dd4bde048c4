// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettepage.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/benchworksheet.h"
#include "ui/bench/pipettegrid.h"
#include "ui/bench/pipettekeys.h"
#include "ui/bench/pipettemodel.h"
#include "ui/bench/pipettesource.h"
#include "ui/bench/pipettestepsmodel.h"
#include "ui/bench/pipettesubject.h"
#include "ui/bench/pipettewords.h"
#include "ui/bench/rhythmrow.h"
#include "ui/bench/stores.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/whenseen.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QShortcut>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PipettePage::PipettePage(const Theme &theme, BenchSession &session, Stores &stores, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_stores(stores)
    , m_keys(new PipetteKeys(theme, this))
    , m_note(new PipetteNote(theme, this))
    , m_panel(new PipettePanel(theme, this))
    , m_rhythm(new RhythmRow(theme, session, this))
    , m_tubes(new PipetteModel(this))
    , m_grid(new PipetteGrid(theme, m_tubes, this))
    , m_steps(new PipetteStepsModel(theme, this))
    , m_stepsTable(new Table(theme, m_steps, tr("Steps of the method"), u"pipetteSteps"_s, this))
    , m_update(new WhenSeen(this, [this] {
        if (!rack())
            return;
        readAnew();
        refresh();
    }))
{
    build();
    connectAll();
}

void PipettePage::build()
{
    m_stepsTable->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_stepsTable->setFlexibleColumn(PipetteStepsModel::Step);
    m_stepsTable->setWholeColumn(PipetteStepsModel::Tubes);
    // The name of a sample to be diluted, or of an addition, goes on on another line.
    m_stepsTable->setWordWrap(true);
    m_note->hide();
    auto *below = new QHBoxLayout;
    below->setSpacing(m_theme.wideGap());
    below->addWidget(m_grid, 1);
    below->addWidget(m_stepsTable);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(m_theme.wideGap(), 0, m_theme.wideGap(), m_theme.wideGap());
    layout->setSpacing(m_theme.gap());
    // Above all whose height changes from tube to tube: a second click must find the button where the first
    // one did.
    layout->addWidget(m_keys);
    layout->addWidget(m_note);
    layout->addWidget(m_panel);
    layout->addWidget(m_rhythm);
    layout->addLayout(below, 1);
}

void PipettePage::connectAll()
{
    connect(m_grid, &PipetteGrid::tickWanted, this, &PipettePage::tickAtCursor);
    connect(m_grid, &PipetteGrid::rowWanted, this, &PipettePage::tickRow);
    connect(m_grid, &PipetteGrid::roundWanted, this, &PipettePage::tickRound);
    connect(m_grid, &PipetteGrid::undoWanted, this, &PipettePage::undo);
    connect(m_grid, &PipetteGrid::volumeBegun, this, &PipettePage::beginVolume);
    connect(m_grid, &PipetteGrid::spoiltWanted, this, &PipettePage::beginSpoilt);
    connect(m_grid, &PipetteGrid::cursorMoved, this, &PipettePage::refresh);
    connect(m_keys, &PipetteKeys::tickWanted, this, &PipettePage::tickAtCursor);
    connect(m_keys, &PipetteKeys::rowWanted, this, &PipettePage::tickRow);
    connect(m_keys, &PipetteKeys::roundWanted, this, &PipettePage::tickRound);
    connect(m_keys, &PipetteKeys::undoWanted, this, &PipettePage::undo);
    connect(m_keys, &PipetteKeys::volumeWanted, this, [this] { beginVolume({}); });
    connect(m_keys, &PipetteKeys::spoiltWanted, this, &PipettePage::beginSpoilt);
    connect(m_keys, &PipetteKeys::fromPaperWanted, this, &PipettePage::takeFromPaper);
    connect(m_keys, &PipetteKeys::goOnWanted, this, &PipettePage::goOn);
    connect(m_note, &PipetteNote::kept, this, &PipettePage::keepNote);
    connect(m_note, &PipetteNote::left, this, &PipettePage::closeNote);
    connect(m_note, &PipetteNote::edited, this, [this] {
        m_doubted.reset();
        m_waiting = nullptr; // what Enter was pressed on is not what stands there now
        m_panel->notice().clear();
    });
    connect(m_panel, &PipettePanel::sourceChanged, this, &PipettePage::rememberSource);
    connect(m_panel, &PipettePanel::sourceLeft, this, &PipettePage::takeFocus);
    connect(m_stepsTable, &Table::activated, this, &PipettePage::chooseStep);
    connect(m_stepsTable, &Table::clicked, this, &PipettePage::chooseStep);
    connect(m_stepsTable->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex &current) {
                if (m_stepsTable->hasFocus())
                    showDilutionOf(current.row());
            });
    m_stepsTable->installEventFilter(this);
    m_grid->installEventFilter(this);
    auto *undoKeys = new QShortcut(QKeySequence::Undo, this);
    undoKeys->setContext(Qt::WidgetWithChildrenShortcut);
    connect(undoKeys, &QShortcut::activated, this, &PipettePage::undo);
    connect(&m_session, &BenchSession::rackChanged, this, &PipettePage::onRackChanged);
    connect(&m_session, &BenchSession::ticked, this, [this] {
        if (m_paused && !m_dilution && isVisible() && rack() && !m_sheet.rounds().empty())
            showPause();
    });
    const auto onStores = [this] { m_update->request(); };
    connect(&m_stores, &Stores::laboratoryChanged, this, onStores);
    connect(&m_stores, &Stores::lotsChanged, this, onStores);
    connect(&m_session, &BenchSession::personChanged, this, &PipettePage::onPerson);
}

const Rack *PipettePage::rack() const
{
    return m_session.find(m_id);
}

void PipettePage::readAnew()
{
    guarded(m_panel->notice(), [this] {
        m_laboratory = m_stores.laboratory();
        m_inHand = lotsFor(rack()->stored, m_stores);
    });
    m_sheet = sheetOf(rack()->stored, m_laboratory.glassware, rack()->sheet.isFromPaper());
}

Dosing PipettePage::atCursor() const
{
    return {m_round, std::max(0, m_grid->currentTube())};
}

void PipettePage::resizeEvent(QResizeEvent *event)
{
    m_stepsTable->setFixedWidth(std::max(fontMetrics().averageCharWidth() * 40, width() * 3 / 10));
    QWidget::resizeEvent(event);
    fitStepRows();
}

/// As high as its words need in the width they have, and never lower than others.
void PipettePage::fitStepRows()
{
    for (int row = 0; row < m_steps->rowCount(); ++row) {
        m_stepsTable->resizeRowToContents(row);
        m_stepsTable->setRowHeight(row, std::max(m_theme.target(), m_stepsTable->rowHeight(row)));
    }
}

void PipettePage::showRack(notebook::RunId id)
{
    keepDraft();
    m_id = id;
    m_round = 0;
    m_dilution.reset();
    if (!rack())
        return;
    readAnew();
    m_panel->forgetHeight();
    closeNote();
    takeUp();
    m_stepsTable->fit();
    fitStepRows();
    if (const auto draft = m_drafts.find(id); draft != m_drafts.end()) {
        const auto [dosing, begun] = draft->second;
        goTo(dosing);
        m_noted = dosing;
        openNote(begun);
    }
}

void PipettePage::takeUp()
{
    m_update->catchUp();
    if (!rack() || m_sheet.rounds().empty())
        return;
    m_dilution.reset();
    const auto next = m_sheet.next();
    m_paused = !next;
    if (next) {
        goTo(*next);
        return;
    }
    for (int step = 0; step < std::min<int>(m_sheet.currentStep(), static_cast<int>(m_sheet.steps().size()));
         ++step) {
        if (const int round = m_sheet.steps()[static_cast<std::size_t>(step)].round; round >= 0)
            m_round = round;
    }
    refresh();
    takeFocus();
}

void PipettePage::goTo(const Dosing &dosing)
{
    m_paused = false;
    m_dilution.reset();
    m_round = dosing.round;
    m_tubes->show(m_sheet, m_round, rackColumns(rack()->stored, m_laboratory));
    m_grid->goTo(dosing.tube);
    refresh();
    takeFocus();
}

void PipettePage::moveOnFrom(const Dosing &dosing)
{
    if (const auto next = m_sheet.nextIn(dosing.round, dosing.tube))
        goTo(*next);
    else
        takeUp();
}

void PipettePage::takeFocus()
{
    if (!m_note->isHidden())
        m_note->resume();
    else if (m_dilution)
        m_stepsTable->setFocus();
    else if (!m_paused || !m_keys->focusGoOn())
        m_grid->setFocus();
}

void PipettePage::goOn()
{
    if (m_sheet.currentStep() == static_cast<int>(m_sheet.steps().size()))
        Q_EMIT reviewWanted();
    else
        Q_EMIT readWanted();
}

void PipettePage::chooseStep(const QModelIndex &index)
{
    if (!rack() || !index.isValid())
        return;
    const SheetStep &step = m_steps->step(index.row());
    if (step.kind == SheetStep::Kind::Read)
        Q_EMIT readWanted();
    else if (step.kind == SheetStep::Kind::Dilute)
        goToDilution(index.row());
    else if (step.kind == SheetStep::Kind::Add)
        goTo(m_sheet.nextIn(step.round).value_or(Dosing{step.round, 0}));
}

void PipettePage::onRackChanged(notebook::RunId id)
{
    if (id == m_id)
        m_update->request();
}

void PipettePage::refresh()
{
    if (!rack() || m_sheet.rounds().empty())
        return;
    m_tubes->show(m_sheet, m_round, rackColumns(rack()->stored, m_laboratory),
                  m_paused ? m_sheet.currentReading() : QString());
    const bool isAdding = !m_paused && !m_dilution;
    m_steps->show(m_sheet, isAdding ? m_round : -1, m_dilution.value_or(-1));
    m_stepsTable->fitWhereCut(); // a count that got another digit
    fitStepRows();
    m_grid->setCalm(!isAdding);
    if (m_dilution)
        showDilution();
    else if (m_paused)
        showPause();
    else
        showAddition();
    m_rhythm->showRound(m_id, isAdding ? m_round : -1);
    m_keys->setUndoable(lastAct(rack()->stored).has_value());
}

void PipettePage::showAddition()
{
    const Dosing at = atCursor();
    const PipettePanel::Source source = sourceOf(at);
    PipettePanel::Subject subject = subjectOf(m_sheet, at);
    subject.hints = hintsAt(at, source);
    m_panel->ask(subject, source);
    m_keys->showAdding(!m_sheet.spoilt(at.tube).isEmpty(), m_sheet.isUntouched());
}

/// What is to be known of the lot stands behind what is to be done.
QString PipettePage::hintsAt(const Dosing &dosing, const PipettePanel::Source &source) const
{
    QStringList hints{subjectOf(m_sheet, dosing).hints,
                      lotHint(source, m_sheet, dosing, m_inHand, m_session.now().wall)};
    hints.removeAll(QString());
    return hints.join(u' ');
}

void PipettePage::showPause()
{
    const bool isWaiting =
        timing::mustWait(rack()->due, m_sheet.currentReading(), m_session.now_min(*rack()));
    const PipettePause pause = pauseOf(m_sheet, isWaiting);
    const int tube = m_grid->isMarked() ? m_grid->currentTube() : -1;
    const bool spoilt = tube >= 0 && !m_sheet.spoilt(tube).isEmpty();
    m_panel->pause(pause.title, pause.text, spoilt ? spoiltHint(tube) : QString());
    m_keys->showPause(pause.goOn, spoilt);
}

std::tuple<notebook::RunId, int, double> PipettePage::pipetteKey(const Dosing &dosing) const
{
    const auto *dose = m_sheet.doseOf(dosing);
    return {m_id, dosing.round, dose ? dose->volume_mL : 0};
}

void PipettePage::rememberSource()
{
    const Dosing at = atCursor();
    if (const auto lot = m_panel->lot(); lot != sourceOf(at).lot) {
        const bool isIn = m_sheet.pipetted(at) != nullptr;
        m_chosenLots[{m_id, contentWords(m_sheet, at), isIn}] = {lot, at, !isEnough(lot, at)};
        if (!isIn)
            m_session.beyondBook().forget(m_id, contentWords(m_sheet, at));
        m_panel->setHints(hintsAt(at, sourceOf(at)));
    }
    m_chosenPipettes[pipetteKey(at)] = m_panel->pipette();
}

/// Of a dose that is in, and of a lot that the book does not know, nothing can be said against it.
bool PipettePage::isEnough(const std::optional<notebook::LotId> &lot, const Dosing &dosing) const
{
    const auto *dose = m_sheet.doseOf(dosing);
    const planning::Lot *known = lotOf(lot, m_inHand);
    return !lot || !dose || m_sheet.pipetted(dosing) || (known && planning::holds(*known, dose->volume_mL));
}

const PipettePage::LotChoice *PipettePage::choiceFor(const Dosing &dosing) const
{
    const bool isIn = m_sheet.pipetted(dosing) != nullptr;
    const QString contents = contentWords(m_sheet, dosing);
    // Of what is in its correction counts, else what was chosen there before it went in.
    for (const bool wasIn : isIn ? std::vector{true, false} : std::vector{false}) {
        const auto choice = m_chosenLots.find({m_id, contents, wasIn});
        if (choice != m_chosenLots.end() && (!isIn || choice->second.at == dosing))
            return &choice->second;
    }
    return nullptr;
}

PipettePanel::Source PipettePage::sourceOf(const Dosing &dosing) const
{
    PipettePanel::Source source = plannedSource(m_sheet, dosing, m_inHand, m_laboratory.glassware);
    const LotChoice *choice = choiceFor(dosing);
    const bool isBeyondBook = choice && choice->isBeyondBook;
    if (choice && (isBeyondBook || isEnough(choice->lot, dosing)))
        source.lot = choice->lot;
    if (!isBeyondBook)
        goOnWithNextLot(source, m_sheet, dosing, m_inHand, m_session.now().wall);
    if (source.isShort && m_askedShort.contains({m_id, contentWords(m_sheet, dosing), *source.lot}))
        source.isShort = false;
    if (const auto pipette = m_chosenPipettes.find(pipetteKey(dosing)); pipette != m_chosenPipettes.end())
        source.pipette = pipette->second;
    return source;
}

bool PipettePage::store(const std::function<void()> &step)
{
    m_panel->notice().moveOn();
    const bool done = guarded(m_panel->notice(), step);
    m_update->catchUp(); // undo acts on the worksheet from wherever it is asked for
    return done;
}

void PipettePage::withName(const std::function<void()> &step)
{
    if (!m_session.person().isEmpty()) {
        step();
        return;
    }
    m_panel->notice().say(State::Info, tr("First say who is at the bench: type your name on the left and "
                                          "press Enter. What you did here waits for it."));
    m_waiting = step;
    Q_EMIT personWanted();
}

void PipettePage::onPerson()
{
    if (m_session.person().isEmpty() || !m_waiting)
        return;
    const std::function<void()> step = std::exchange(m_waiting, nullptr);
    m_panel->notice().clear();
    if (rack())
        step();
}

void PipettePage::keyPressEvent(QKeyEvent *event)
{
    // While the button for what comes next has the focus.
    if (event->text() == "-"_L1 || event->key() == Qt::Key_Backspace)
        undo();
    else if (event->text() == "/"_L1)
        beginSpoilt();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
