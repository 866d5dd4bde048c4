// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/mainwindow.h"

#include "core/exchange/writers.h"
#include "ui/abouttext.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/benchsettings.h"
#include "ui/bench/benchsettingsdialog.h"
#include "ui/bench/benchsounds.h"
#include "ui/bench/doseticker.h"
#include "ui/bench/labelprinting.h"
#include "ui/bench/nextstrip.h"
#include "ui/bench/printing.h"
#include "ui/bench/rackpage.h"
#include "ui/bench/readpage.h"
#include "ui/bench/reportsaving.h"
#include "ui/bench/runfilepage.h"
#include "ui/bench/stores.h"
#include "ui/bench/submission.h"
#include "ui/bench/timewords.h"
#include "ui/books/laboratorypage.h"
#include "ui/books/limitspage.h"
#include "ui/books/lotspage.h"
#include "ui/books/methodbook.h"
#include "ui/books/methodspage.h"
#include "ui/books/notebookpage.h"
#include "ui/books/personspage.h"
#include "ui/books/samplespage.h"
#include "ui/instrument/instrumentintake.h"
#include "ui/plan/planpage.h"
#include "ui/print/worksheetpdf.h"
#include "ui/shared/clock.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/guard.h"
#include "ui/shared/sounder.h"
#include "ui/shared/widgets.h"
#include "ui/sidebar.h"

#include <QAction>
#include <QCloseEvent>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QSaveFile>
#include <QScreen>
#include <QStackedWidget>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

MainWindow::MainWindow(notebook::Notebook &notebook, const exchange::MethodLibrary &methods, QWidget *parent)
    : MainWindow(notebook, methods, std::make_unique<Dialogs>(), std::make_unique<Clock>(),
                 std::make_unique<ToneSounder>(), parent)
{
}

MainWindow::MainWindow(notebook::Notebook &notebook, const exchange::MethodLibrary &methods,
                       std::unique_ptr<Dialogs> dialogs, std::unique_ptr<Clock> clock,
                       std::unique_ptr<Sounder> sounder, QWidget *parent)
    : QMainWindow(parent)
    , m_dialogs(std::move(dialogs))
    , m_clock(std::move(clock))
    , m_sounder(std::move(sounder))
    , m_theme(new Theme(this))
    , m_session(new BenchSession(notebook, *m_clock, this))
    , m_settings(new BenchSettings(this))
    , m_sounds(new BenchSounds(*m_session, *m_settings, *m_sounder, this))
    , m_notebookName(QFileInfo(notebook.path()).fileName())
    , m_actions(*this)
    , m_strip(new NextStrip(*m_theme, *m_session, *m_settings, this))
    , m_side(new SideBar(*m_theme, *m_session, this))
    , m_notice(new Notice(*m_theme, this))
    , m_pages(new QStackedWidget(this))
    , m_emptyBench(plainLabel({}, this))
    , m_stores(new Stores(notebook, *m_session, this))
    , m_plan(new PlanPage(*m_theme, *m_clock, *m_session, *m_stores, this))
    , m_runFile(new RunFilePage(*m_theme, *m_session, this))
    , m_rack(new RackPage(*m_theme, *m_session, *m_stores, *m_settings, this))
    , m_notebook(new NotebookPage(*m_theme, *m_session, this))
    , m_methodBook(new MethodBook(notebook, *m_session, methods.methods(), this))
    , m_methods(new MethodsPage(*m_theme, *m_dialogs, *m_session, *m_methodBook, this))
    , m_samples(new SamplesPage(*m_theme, *m_clock, *m_session, *m_stores, *m_methodBook, this))
    , m_lots(new LotsPage(*m_theme, *m_clock, *m_session, *m_stores, *m_methodBook, this))
    , m_laboratory(new LaboratoryPage(*m_theme, *m_session, *m_stores, this))
    , m_persons(new PersonsPage(*m_theme, *m_session, *m_stores, this))
    , m_limits(new LimitsPage(*m_theme, *m_clock, *m_session, *m_stores, *m_methodBook, this))
    , m_instrument(new InstrumentIntake(*m_theme, *m_dialogs, InstrumentIntake::programSettings(), this))
    , m_listening(plainLabel({}, this))
{
    setPalette(m_theme->adjustments());
    build();
    connectPages();
    connectActions();
    connectInstrument();
    start(methods);
}

MainWindow::~MainWindow() = default;

void MainWindow::build()
{
    setWindowIcon(QIcon(u":/icons/plateau.svg"_s));
    m_emptyBench->setObjectName(u"emptyBench"_s);
    m_emptyBench->setText(
        tr("Nothing is on the bench.\n\n"
           "Start with New run, or open a run file. Runs that were decided are in the Notebook."));
    m_emptyBench->setWordWrap(true);
    m_emptyBench->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_emptyBench->setFont(m_theme->large());
    m_emptyBench->setMargin(m_theme->wideGap());
    for (QWidget *page :
         std::initializer_list<QWidget *>{m_emptyBench, m_plan, m_runFile, m_rack, m_notebook, m_methods,
                                          m_samples, m_lots, m_laboratory, m_persons, m_limits})
        m_pages->addWidget(page);

    auto *right = new QVBoxLayout;
    right->setSpacing(0);
    right->addWidget(m_notice);
    right->addWidget(m_pages, 1);
    right->addWidget(m_listening);
    auto *below = new QHBoxLayout;
    below->setSpacing(0);
    below->addWidget(m_side);
    below->addLayout(right, 1);
    auto *centre = new QWidget(this);
    auto *layout = new QVBoxLayout(centre);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(m_strip);
    layout->addLayout(below, 1);
    setCentralWidget(centre);
    const QSize usual(1280, 800);
    const QSize room = screen()->availableSize() - QSize(40, 60); // the frame takes some
    resize(room.boundedTo(usual));
    if (usual.width() > room.width() || usual.height() > room.height())
        setWindowState(windowState() | Qt::WindowMaximized);
}

void MainWindow::connectPages()
{
    connect(m_strip, &NextStrip::wanted, this, &MainWindow::goToNext);
    connect(m_strip, &NextStrip::doneWanted, this, &MainWindow::doneNow);
    connect(m_rack, &RackPage::doneWanted, this, &MainWindow::doneNow);
    connect(m_session, &BenchSession::clockSet, this, &MainWindow::sayClockSet);
    connect(m_side, &SideBar::rackWanted, this, &MainWindow::goToRack);
    connect(m_side, &SideBar::bookWanted, this, &MainWindow::goToBook);
    connect(m_side, &SideBar::newRunWanted, this, &MainWindow::goToNewRun);
    connect(m_side, &SideBar::openFileWanted, this, &MainWindow::chooseFile);
    connect(m_plan, &PlanPage::opened, this, &MainWindow::goToRack);
    connect(m_plan, &PlanPage::personWanted, m_side, &SideBar::askPerson);
    connect(m_runFile, &RunFilePage::opened, this, &MainWindow::goToRack);
    connect(m_runFile, &RunFilePage::personWanted, m_side, &SideBar::askPerson);
    connect(m_runFile, &RunFilePage::anotherWanted, this, &MainWindow::chooseFile);
    connect(m_rack, &RackPage::personWanted, m_side, &SideBar::askPerson);
    connect(m_rack, &RackPage::decided, this, &MainWindow::goToRecord);
    connect(m_rack, &RackPage::stageChanged, this, &MainWindow::updateActions);
    connect(m_notebook, &NotebookPage::rackWanted, this, &MainWindow::goToRack);
    connect(m_notebook, &NotebookPage::personWanted, m_side, &SideBar::askPerson);
    connect(m_notebook, &NotebookPage::pageChanged, this, &MainWindow::updateActions);
    connect(m_methods, &MethodsPage::personWanted, m_side, &SideBar::askPerson);
    connect(m_samples, &SamplesPage::personWanted, m_side, &SideBar::askPerson);
    connect(m_lots, &LotsPage::personWanted, m_side, &SideBar::askPerson);
    connect(m_lots, &LotsPage::runWanted, this, &MainWindow::goToRecord);
    connect(m_limits, &LimitsPage::personWanted, m_side, &SideBar::askPerson);
    connect(m_laboratory, &LaboratoryPage::personWanted, m_side, &SideBar::askPerson);
    connect(m_methodBook, &MethodBook::changed, this, &MainWindow::refreshMethods);
    connect(m_session, &BenchSession::racksChanged, this, &MainWindow::onRacksChanged);
    connect(m_session, &BenchSession::notebookChanged, this, &MainWindow::updateActions);
}

void MainWindow::connectActions()
{
    connect(m_actions.newRun, &QAction::triggered, this, &MainWindow::goToNewRun);
    connect(m_actions.openFile, &QAction::triggered, this, &MainWindow::chooseFile);
    connect(m_actions.saveCopy, &QAction::triggered, this, &MainWindow::saveCopy);
    connect(m_actions.saveWorksheet, &QAction::triggered, this, &MainWindow::saveWorksheet);
    connect(m_actions.saveLabels, &QAction::triggered, this, &MainWindow::saveLabels);
    connect(m_actions.saveReport, &QAction::triggered, this, [this] { saveReport(ReportKind::Results); });
    connect(m_actions.saveRecord, &QAction::triggered, this, [this] { saveReport(ReportKind::Record); });
    connect(m_actions.saveTable, &QAction::triggered, this, [this] { saveReport(ReportKind::Table); });
    connect(m_actions.quit, &QAction::triggered, this, &QWidget::close);
    connect(m_actions.next, &QAction::triggered, this, &MainWindow::goToNext);
    connect(m_actions.done, &QAction::triggered, this, &MainWindow::doneNow);
    connect(m_actions.undoMark, &QAction::triggered, m_rack, &RackPage::undoMark);
    connect(m_actions.benchSettings, &QAction::triggered, this, &MainWindow::chooseBenchSettings);
    connect(m_actions.pipette, &QAction::triggered, this, [this] { m_rack->showStage(RackPage::Pipette); });
    connect(m_actions.read, &QAction::triggered, this, [this] { m_rack->showStage(RackPage::Read); });
    connect(m_actions.review, &QAction::triggered, this, [this] { m_rack->showStage(RackPage::Review); });
    connect(m_actions.nextRack, &QAction::triggered, this,
            [this] { goToRack(m_side->rackBeside(m_rack->rackId(), 1)); });
    connect(m_actions.previousRack, &QAction::triggered, this,
            [this] { goToRack(m_side->rackBeside(m_rack->rackId(), -1)); });
    connect(m_actions.notebook, &QAction::triggered, this, &MainWindow::goToNotebook);
    connect(m_actions.methods, &QAction::triggered, this, &MainWindow::goToMethods);
    connect(m_actions.samples, &QAction::triggered, this, [this] { goToBook(Destination::Kind::Samples); });
    connect(m_actions.lots, &QAction::triggered, this, [this] { goToBook(Destination::Kind::Lots); });
    connect(m_actions.laboratory, &QAction::triggered, this,
            [this] { goToBook(Destination::Kind::Laboratory); });
    connect(m_actions.persons, &QAction::triggered, this, [this] { goToBook(Destination::Kind::Persons); });
    connect(m_actions.limits, &QAction::triggered, this, [this] { goToBook(Destination::Kind::Limits); });
    connect(m_actions.about, &QAction::triggered, this,
            [this] { m_dialogs->tell(this, tr("About Plateau"), aboutText()); });
}

void MainWindow::start(const exchange::MethodLibrary &methods)
{
    const auto takeLead = [this] { m_session->setLead(m_settings->choice().lead_s); };
    connect(m_settings, &BenchSettings::changed, this, takeLead);
    takeLead();
    const bool loaded = guarded(*m_notice, [this] { m_session->reload(); });
    // A coarse timer comes up to a twentieth early or late, and a count that skips a second looks broken.
    m_heart.setTimerType(Qt::PreciseTimer);
    m_heart.setInterval(tick_ms);
    connect(&m_heart, &QTimer::timeout, this, [this] { guarded(*m_notice, [this] { m_session->tick(); }); });
    m_heart.start();
    refreshMethods();
    if (m_session->next())
        goToNext();
    else
        showPage(m_emptyBench);
    QStringList lines;
    for (const auto &[fileName, problem] : methods.problems())
        lines << exchange::problemLine(fileName, problem);
    if (loaded && !lines.isEmpty())
        m_notice->say(State::Attention,
                      tr("These method files cannot be used and are left out:\n%1").arg(lines.join(u'\n')));
}

void MainWindow::refreshMethods()
{
    guarded(*m_notice, [this] {
        m_plan->setMethods(m_methodBook->offered());
        m_runFile->setMethods(m_methodBook->lookup());
    });
}

void MainWindow::showPage(QWidget *page)
{
    const bool leavesRack = m_pages->currentWidget() == m_rack && page != m_rack;
    m_pages->setCurrentWidget(page);
    if (page == m_rack || leavesRack)
        m_notice->clear();
    if (leavesRack)
        sayUnstored();
    markPage();
    updateActions();
}

void MainWindow::markPage()
{
    const QWidget *page = m_pages->currentWidget();
    if (page == m_rack && m_session->find(m_rack->rackId()))
        m_side->markRack(m_rack->rackId());
    else if (page == m_notebook)
        m_side->markBook(Destination::Kind::Notebook);
    else if (page == m_methods)
        m_side->markBook(Destination::Kind::Methods);
    else if (page == m_samples)
        m_side->markBook(Destination::Kind::Samples);
    else if (page == m_lots)
        m_side->markBook(Destination::Kind::Lots);
    else if (page == m_laboratory)
        m_side->markBook(Destination::Kind::Laboratory);
    else if (page == m_persons)
        m_side->markBook(Destination::Kind::Persons);
    else if (page == m_limits)
        m_side->markBook(Destination::Kind::Limits);
    else
        m_side->markNothing();
}

void MainWindow::goToNext()
{
    const auto next = m_session->next();
    if (!next)
        return;
    m_rack->showRack(next->run, RackPage::dueStage(*m_session->find(next->run)));
    showPage(m_rack);
    if (next->kind == NextAction::Kind::Read)
        m_rack->readPage().goTo(next->place);
}

void MainWindow::doneNow()
{
    const auto next = m_session->next();
    if (!next)
        return;
    if (next->kind != NextAction::Kind::Pipette) {
        goToNext();
        return;
    }
    m_notice->clear();
    guarded(*m_notice, [&] {
        const QString first = tickNext(*m_session, *m_stores, *next);
        if (first.isEmpty()) {
            // The worksheet goes on with it; whoever is reading stays where they are.
            if (m_pages->currentWidget() == m_rack && m_rack->stage() == RackPage::Pipette &&
                m_rack->rackId() == next->run)
                m_rack->showStage(RackPage::Pipette);
            return;
        }
        m_notice->say(State::Attention, first);
        if (m_session->person().isEmpty())
            m_side->askPerson();
    });
}

void MainWindow::connectInstrument()
{
    m_listening->setObjectName(u"listening"_s);
    m_listening->setMargin(m_theme->gap());
    m_listening->setWordWrap(true);
    connect(m_actions.pasteReadings, &QAction::triggered, this,
            [this] { m_instrument->openPasteDialog(this); });
    connect(m_actions.fileReadings, &QAction::triggered, this,
            [this] { m_instrument->openFileDialog(this); });
    connect(m_actions.listen, &QAction::triggered, this, [this] { m_instrument->openListenDialog(this); });
    connect(m_actions.stopListening, &QAction::triggered, m_instrument, &InstrumentIntake::stopListening);
    connect(m_instrument, &InstrumentIntake::readingTaken, this,
            [this](const TakenReading &reading) { takeReadings({reading}); });
    connect(m_instrument, &InstrumentIntake::columnTaken, this, &MainWindow::takeReadings);
    connect(m_instrument, &InstrumentIntake::lineRefused, this,
            [this](const QString &raw, const QString &why) {
                m_notice->say(State::Attention, tr("The photometer sent “%1”: %2").arg(raw, why));
            });
    connect(m_instrument, &InstrumentIntake::stateChanged, this, &MainWindow::showListening);
    showListening();
}

void MainWindow::showListening()
{
    m_listening->setText(m_instrument->stateSentence());
    m_listening->setVisible(m_instrument->isListening());
    m_actions.stopListening->setEnabled(m_instrument->isListening());
}

void MainWindow::takeReadings(const std::vector<TakenReading> &readings)
{
    ReadPage &page = m_rack->readPage();
    const auto next = m_session->next();
    const bool onReadPage = m_pages->currentWidget() == m_rack && m_rack->stage() == RackPage::Read;
    // A column belongs to the rack and the tube somebody is at; what is sent belongs to what is due.
    const bool follows = readings.size() == 1 || !onReadPage;
    if (follows && next && next->kind == NextAction::Kind::Read && page.isIdle()) {
        m_rack->showRack(next->run, RackPage::Read);
        page.goTo(next->place);
        showPage(m_rack);
    }
    std::vector<Submission> submissions;
    for (const TakenReading &reading : readings)
        submissions.push_back(submissionOf(reading));
    page.take(submissions);
    if (page.hasWaiting() && (m_pages->currentWidget() != m_rack || m_rack->stage() != RackPage::Read))
        m_notice->say(State::Attention,
                      tr("A reading came that waits for an answer: go to Read of rack %1.")
                          .arg(m_session->find(m_rack->rackId()) ? m_session->find(m_rack->rackId())->letter
                                                                 : QString()));
}

void MainWindow::sayClockSet(qint64 shift_ms)
{
    m_notice->say(State::Attention,
                  tr("The computer's clock was set: %1. The timers go on by a clock that nobody can set, so "
                     "nothing is due earlier or later; the notebook has a record of it.")
                      .arg(shiftText(shift_ms)));
}

void MainWindow::chooseBenchSettings()
{
    BenchSettingsDialog dialog(*m_theme, m_settings->choice(), *m_sounder, this);
    if (m_dialogs->isAccepted(dialog) && !m_settings->setChoice(dialog.choice()))
        m_notice->say(
            State::Attention,
            tr("The settings hold until the program ends; they could not be kept for the next time."));
}

void MainWindow::goToRack(notebook::RunId id)
{
    const Rack *rack = m_session->find(id);
    if (!rack)
        return;
    m_rack->showRack(id, RackPage::dueStage(*rack));
    showPage(m_rack);
}

void MainWindow::goToBook(Destination::Kind book)
{
    if (book == Destination::Kind::Notebook) {
        goToNotebook();
    } else if (book == Destination::Kind::Methods) {
        goToMethods();
    } else if (book == Destination::Kind::Samples) {
        showPage(m_samples);
        m_samples->open();
    } else if (book == Destination::Kind::Lots) {
        showPage(m_lots);
        m_lots->open();
    } else if (book == Destination::Kind::Laboratory) {
        showPage(m_laboratory);
        m_laboratory->open();
    } else if (book == Destination::Kind::Persons) {
        showPage(m_persons);
        m_persons->open();
    } else if (book == Destination::Kind::Limits) {
        showPage(m_limits);
        m_limits->open();
    }
}

void MainWindow::goToNotebook()
{
    showPage(m_notebook);
    m_notebook->showList();
}

void MainWindow::goToMethods()
{
    showPage(m_methods);
    m_methods->open();
}

void MainWindow::goToRecord(notebook::RunId id)
{
    showPage(m_notebook);
    m_notebook->showRecord(id);
}

void MainWindow::goToNewRun()
{
    showPage(m_plan);
    m_plan->takeFocus();
}

void MainWindow::chooseFile()
{
    const QString path =
        m_dialogs->fileToOpen(this, tr("Open run file"), tr("Run files (*.json);;All files (*)"));
    if (!path.isEmpty())
        openRunFile(path);
}

void MainWindow::openRunFile(const QString &path)
{
    showPage(m_runFile);
    m_runFile->read(path);
}

std::optional<notebook::RunId> MainWindow::runOnShow() const
{
    if (m_pages->currentWidget() == m_rack)
        return m_rack->rackId();
    if (m_pages->currentWidget() == m_notebook)
        return m_notebook->openRecord();
    return std::nullopt;
}

void MainWindow::saveCopy()
{
    const auto id = runOnShow();
    if (!id)
        return;
    m_notice->clear();
    guarded(*m_notice, [&] {
        const notebook::StoredRun stored = m_session->load(*id);
        const QString path = m_dialogs->fileToSave(this, tr("Save a copy of the run"), tr("run.json"),
                                                   tr("Run files (*.json)"));
        if (path.isEmpty())
            return;
        QSaveFile file(path);
        const QByteArray bytes = exchange::writeRun(stored.run, &stored.method);
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
            m_notice->say(State::Bad,
                          tr("The copy could not be written to %1: %2. Choose another place; the run itself "
                             "is in the notebook as before.")
                              .arg(path, file.errorString()));
        else
            m_notice->say(State::Good, tr("A copy of the run was written to %1.").arg(path));
    });
}

void MainWindow::saveWorksheet()
{
    const auto id = runOnShow();
    if (!id)
        return;
    m_notice->clear();
    guarded(*m_notice, [&] {
        const notebook::StoredRun stored = m_session->load(*id);
        const WorksheetContent content = worksheetOf(stored, m_stores->laboratory(), m_session->person());
        savePdfAs(this, *m_dialogs, *m_notice, worksheetFileName(stored.run),
                  worksheetPdf(content, usualPaper(QLocale::system())));
    });
}

void MainWindow::saveLabels()
{
    const auto id = runOnShow();
    if (!id)
        return;
    m_notice->clear();
    guarded(*m_notice, [&] {
        saveLabelsAs(this, *m_theme, *m_dialogs, *m_notice, m_session->load(*id).run, m_session->person());
    });
}

void MainWindow::saveReport(ReportKind kind)
{
    const auto id = runOnShow();
    if (!id)
        return;
    m_notice->clear();
    guarded(*m_notice, [&] {
        saveReportAs(this, *m_theme, *m_dialogs, *m_notice, m_session->report(*id), kind,
                     m_session->person());
    });
}

void MainWindow::onRacksChanged()
{
    markPage(); // the rack on show may have been decided, or put back
    updateActions();
}

void MainWindow::updateActions()
{
    const bool onRack = m_pages->currentWidget() == m_rack;
    m_actions.next->setEnabled(m_session->next().has_value());
    m_actions.done->setEnabled(m_session->next().has_value());
    m_actions.undoMark->setEnabled(onRack);
    m_actions.pipette->setEnabled(onRack);
    m_actions.read->setEnabled(onRack);
    m_actions.review->setEnabled(onRack);
    m_actions.nextRack->setEnabled(!m_session->racks().empty());
    m_actions.previousRack->setEnabled(!m_session->racks().empty());
    for (QAction *action : {m_actions.saveCopy, m_actions.saveWorksheet, m_actions.saveLabels,
                            m_actions.saveReport, m_actions.saveRecord, m_actions.saveTable})
        action->setEnabled(runOnShow().has_value());
    updateTitle();
}

void MainWindow::setNotebookName(const QString &name)
{
    m_notebookName = name;
    updateTitle();
}

void MainWindow::updateTitle()
{
    QStringList parts;
    const Rack *rack = m_pages->currentWidget() == m_rack ? m_session->find(m_rack->rackId()) : nullptr;
    if (rack)
        parts << tr("Rack %1, %2").arg(rack->letter, rack->stored.run.title);
    else if (const auto record = runOnShow())
        guarded(*m_notice, [&] { parts << m_session->load(*record).run.title; });
    parts << m_notebookName << tr("Plateau");
    setWindowTitle(parts.join(u" – "_s));
}

void MainWindow::sayUnstored()
{
    const Rack *rack = m_session->find(m_rack->rackId());
    const QStringList typed = rack ? m_rack->unstored(rack->id) : QStringList();
    if (!typed.isEmpty())
        m_notice->say(State::Attention, tr("Rack %1: typed and not stored, but kept where it was typed: %2.")
                                            .arg(rack->letter, typed.join(tr("; "))));
}

QStringList MainWindow::unstored() const
{
    QStringList lines;
    for (const Rack &rack : m_session->racks()) {
        for (const QString &typed : m_rack->unstored(rack.id))
            lines << tr("Rack %1, %2").arg(rack.letter, typed);
    }
    if (m_plan->isBegun())
        lines << tr("A new run that is not on the bench yet");
    if (m_methods->hasUnsavedChanges())
        lines << tr("A method that is not saved yet");
    if (m_samples->hasUnsavedChanges())
        lines << tr("Samples that are not on the shelf yet");
    if (m_lots->hasUnsavedChanges())
        lines << tr("What happened to a lot, not stored yet");
    if (m_laboratory->hasUnsavedChanges())
        lines << tr("Changes of the laboratory that are not saved yet");
    if (m_persons->hasUnsavedChanges())
        lines << tr("A change of the list of persons, not stored yet");
    if (m_limits->hasUnsavedChanges())
        lines << tr("A limit of a product that is not saved yet");
    return lines;
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    const QStringList lines = unstored();
    if (!lines.isEmpty() &&
        !m_dialogs->confirm(this, tr("Not stored yet"),
                            tr("This was typed and is not stored; it is lost when the window closes:\n\n%1")
                                .arg(lines.join(u'\n')),
                            tr("&Close without it"), tr("&Stay"))) {
        event->ignore();
        return;
    }
    QMainWindow::closeEvent(event);
}

void MainWindow::changeEvent(QEvent *event)
{
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        m_theme->refresh(palette(), font());
        setPalette(m_theme->adjustments());
    }
}

} // namespace plateau::ui
