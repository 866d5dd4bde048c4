// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/mainwindow.h"

#include "core/exchange/documentformat.h"
#include "core/exchange/readers.h"
#include "ui/abouttext.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/benchsettings.h"
#include "ui/bench/benchsettingsdialog.h"
#include "ui/bench/benchsounds.h"
#include "ui/bench/doseticker.h"
#include "ui/bench/nextstrip.h"
#include "ui/bench/rackpage.h"
#include "ui/bench/readpage.h"
#include "ui/bench/reportsaving.h"
#include "ui/bench/runfilepage.h"
#include "ui/bench/stores.h"
#include "ui/bench/timewords.h"
#include "ui/bookpages.h"
#include "ui/books/backupline.h"
#include "ui/books/equipmentpage.h"
#include "ui/books/keeper.h"
#include "ui/books/laboratorypage.h"
#include "ui/books/limitspage.h"
#include "ui/books/lotspage.h"
#include "ui/books/methodbook.h"
#include "ui/books/methodspage.h"
#include "ui/books/notebookpage.h"
#include "ui/books/personspage.h"
#include "ui/books/recordspage.h"
#include "ui/books/samplespage.h"
#include "ui/books/standardspage.h"
#include "ui/charts/chartspage.h"
#include "ui/colours.h"
#include "ui/help/helpdesk.h"
#include "ui/helproute.h"
#include "ui/instrument/instrumentintake.h"
#include "ui/instrumentroute.h"
#include "ui/keysdialog.h"
#include "ui/lastbackup.h"
#include "ui/plan/planpage.h"
#include "ui/shared/boxsearch.h"
#include "ui/shared/clock.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/focusring.h"
#include "ui/shared/guard.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/sounder.h"
#include "ui/shared/wholewords.h"
#include "ui/shared/widgets.h"
#include "ui/sidebar.h"
#include "ui/today/todaypage.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenuBar>
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
    , m_colours(new Colours(this))
    , m_theme(new Theme(this))
    , m_session(new BenchSession(notebook, *m_clock, this))
    , m_settings(new BenchSettings(this))
    , m_sounds(new BenchSounds(*m_session, *m_settings, *m_sounder, this))
    , m_open(notebook)
    , m_notebookName(QFileInfo(notebook.path()).fileName())
    , m_actions(*this)
    , m_strip(new NextStrip(*m_theme, *m_session, *m_settings, this))
    , m_side(new SideBar(*m_theme, *m_session, this))
    , m_notice(new Notice(*m_theme, this))
    , m_pages(new PageStack(this))
    , m_stores(new Stores(notebook, *m_session, this))
    , m_keeper(new Keeper(notebook, {}, this))
    , m_plan([this] { return makePlan(); })
    , m_runFile([this] { return makeRunFile(); })
    , m_rack([this] { return makeRack(); })
    , m_papers(*m_theme, *m_dialogs, *m_notice, *m_session, *m_stores)
    , m_methodBook(new MethodBook(notebook, *m_session, methods.methods(), this))
    , m_today(new TodayPage(*m_theme, *m_clock, *m_session, *m_stores, *m_methodBook, this))
    , m_books(new BookPages(this))
    , m_instrument(new InstrumentIntake(*m_theme, *m_dialogs, InstrumentIntake::programSettings(), this))
    , m_help(new HelpRoute(*m_theme, *m_pages, *this))
    , m_listening(plainLabel({}, this))
{
    setPalette(m_theme->adjustments());
    m_colours->applyKept();
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
    new WholeWords(this);
    new BoxSearch(this);
    new FocusRing(*m_theme, this);
    addBooks();

    auto *right = new QVBoxLayout;
    right->setSpacing(0);
    right->addWidget(m_notice);
    right->addWidget(new ScrolledPage(m_pages, this), 1);
    right->addWidget(m_listening);
    auto *below = new QHBoxLayout;
    below->setSpacing(0);
    below->addWidget(m_side, 3); // within its own bounds: narrowest in a window of usual width
    below->addLayout(right, 17);
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

PlanPage *MainWindow::makePlan()
{
    auto *plan = new PlanPage(*m_theme, *m_clock, *m_session, *m_stores, this);
    m_pages->addWidget(plan);
    connect(plan, &PlanPage::opened, this, &MainWindow::goToRack);
    connect(plan, &PlanPage::personWanted, m_side, &SideBar::askPerson);
    guarded(*m_notice, [&] { plan->setMethods(m_methodBook->offered()); });
    return plan;
}

RunFilePage *MainWindow::makeRunFile()
{
    auto *file = new RunFilePage(*m_theme, *m_session, this);
    m_pages->addWidget(file);
    connect(file, &RunFilePage::opened, this, &MainWindow::goToRack);
    connect(file, &RunFilePage::personWanted, m_side, &SideBar::askPerson);
    connect(file, &RunFilePage::anotherWanted, this, &MainWindow::chooseFile);
    guarded(*m_notice, [&] { file->setMethods(m_methodBook->lookup()); });
    return file;
}

RackPage *MainWindow::makeRack()
{
    auto *rack = new RackPage(*m_theme, *m_session, *m_stores, *m_settings, this);
    m_pages->addWidget(rack);
    connect(rack, &RackPage::doneWanted, this, &MainWindow::doneNow);
    connect(rack, &RackPage::personWanted, m_side, &SideBar::askPerson);
    connect(rack, &RackPage::decided, this, &MainWindow::goToRecord);
    connect(rack, &RackPage::stageChanged, this, &MainWindow::updateActions);
    return rack;
}

RackPage *MainWindow::rackOnShow() const
{
    RackPage *rack = m_rack.made();
    return rack && m_pages->currentWidget() == rack ? rack : nullptr;
}

void MainWindow::addBooks()
{
    connect(m_books, &BookPages::made, this, [this](Book book, BookPage *page) {
        m_pages->addWidget(page);
        connect(page, &BookPage::personWanted, m_side, &SideBar::askPerson);
        connect(page, &BookPage::runWanted, this, &MainWindow::goToRun);
        connect(page, &BookPage::chartWanted, this, &MainWindow::goToChart);
        m_help->addBook(book, *page);
    });
    m_books->add(Book::Charts, [this] {
        return new ChartsPage(*m_theme, *m_dialogs, m_open, [this] { return m_session->person(); }, this);
    });
    m_books->add(Book::Methods, [this] {
        return new MethodsPage(*m_theme, *m_dialogs, *m_session, *m_methodBook, this);
    });
    m_books->add(Book::Samples, [this] {
        return new SamplesPage(*m_theme, *m_clock, *m_session, *m_stores, *m_methodBook, this);
    });
    m_books->add(Book::Lots, [this] {
        return new LotsPage(*m_theme, *m_clock, *m_dialogs, *m_session, *m_stores, *m_methodBook, this);
    });
    m_books->add(Book::Standards, [this] {
        return new StandardsPage({*m_theme, *m_clock, *m_dialogs, *m_session, *m_stores, *m_methodBook}, this);
    });
    m_books->add(Book::Equipment, [this] { return new EquipmentPage(*m_theme, *m_clock, *m_session, *m_stores, this); });
    m_books->add(Book::Laboratory, [this] {
        return new LaboratoryPage(*m_theme, *m_dialogs, *m_session, *m_stores, *m_methodBook, this);
    });
    m_books->add(Book::Persons, [this] { return new PersonsPage(*m_theme, *m_session, *m_stores, this); });
    m_books->add(Book::Limits, [this] {
        return new LimitsPage(*m_theme, *m_clock, *m_session, *m_stores, *m_methodBook, this);
    });
    m_books->add(Book::Records, [this] { return new RecordsPage(*m_theme, *m_dialogs, *m_session, *m_keeper, this); });
    m_books->add(Book::Today, [this] { return m_today; });
    m_books->add(Book::Notebook, [this] {
        m_notebook = new NotebookPage(*m_theme, *m_session, this);
        connect(m_notebook, &NotebookPage::pageChanged, this, &MainWindow::updateActions);
        return m_notebook;
    });
    m_books->page(Book::Today); // the first one on show
}

void MainWindow::connectPages()
{
    connect(m_strip, &NextStrip::wanted, this, &MainWindow::goToNext);
    connect(m_strip, &NextStrip::doneWanted, this, &MainWindow::doneNow);
    connect(m_session, &BenchSession::clockSet, this, &MainWindow::sayClockSet);
    connect(m_side, &SideBar::rackWanted, this, &MainWindow::goToRack);
    connect(m_side, &SideBar::bookWanted, this, &MainWindow::goToBook);
    connect(m_side, &SideBar::newRunWanted, this, &MainWindow::goToNewRun);
    connect(m_side, &SideBar::openFileWanted, this, &MainWindow::chooseFile);
    connect(m_today, &TodayPage::bookWanted, this, &MainWindow::goToBook);
    connect(m_methodBook, &MethodBook::changed, this, &MainWindow::refreshMethods);
    connect(m_session, &BenchSession::racksChanged, this, &MainWindow::onRacksChanged);
    connect(m_session, &BenchSession::notebookChanged, this, &MainWindow::updateActions);
    connect(m_stores, &Stores::laboratoryChanged, this, &MainWindow::followLaboratory);
}

void MainWindow::followLaboratory()
{
    guarded(*m_notice, [this] {
        const planning::Laboratory laboratory = m_stores->laboratory();
        m_laboratoryName = laboratory.name.simplified();
        m_session->setHandling(laboratory.handling);
    });
    updateTitle();
}

void MainWindow::connectActions()
{
    connect(m_actions.newRun, &QAction::triggered, this, &MainWindow::goToNewRun);
    connect(m_actions.openFile, &QAction::triggered, this, &MainWindow::chooseFile);
    connect(m_actions.anotherNotebook, &QAction::triggered, this, &MainWindow::anotherNotebookWanted);
    const auto onRun = [this](QAction *action, void (RunPapers::*save)(notebook::RunId, QWidget *)) {
        connect(action, &QAction::triggered, this, [this, save] {
            if (const auto id = runOnShow())
                (m_papers.*save)(*id, this);
        });
    };
    onRun(m_actions.saveCopy, &RunPapers::saveCopy);
    onRun(m_actions.saveWorksheet, &RunPapers::saveWorksheet);
    onRun(m_actions.saveLabels, &RunPapers::saveLabels);
    const auto reports = {std::pair{m_actions.saveReport, ReportKind::Results},
                          std::pair{m_actions.saveRecord, ReportKind::Record},
                          std::pair{m_actions.saveTable, ReportKind::Table}};
    for (const auto &[action, kind] : reports)
        connect(action, &QAction::triggered, this, [this, kind = kind] {
            if (const auto id = runOnShow())
                m_papers.saveReport(*id, kind, this);
        });
    connect(m_actions.quit, &QAction::triggered, this, &QWidget::close);
    connect(m_actions.next, &QAction::triggered, this, &MainWindow::goToNext);
    connect(m_actions.done, &QAction::triggered, this, &MainWindow::doneNow);
    // Of a rack, and not to be had without one on show.
    const auto onRack = [this](QAction *action, const std::function<void(RackPage &)> &act) {
        connect(action, &QAction::triggered, this, [this, act] {
            if (RackPage *rack = rackOnShow())
                act(*rack);
        });
    };
    onRack(m_actions.undoMark, &RackPage::undoMark);
    connect(m_actions.benchSettings, &QAction::triggered, this, &MainWindow::chooseBenchSettings);
    onRack(m_actions.pipette, [](RackPage &rack) { rack.showStage(RackPage::Pipette); });
    onRack(m_actions.read, [](RackPage &rack) { rack.showStage(RackPage::Read); });
    onRack(m_actions.review, [](RackPage &rack) { rack.showStage(RackPage::Review); });
    connect(m_actions.nextRack, &QAction::triggered, this, [this] { goToRackBeside(1); });
    connect(m_actions.previousRack, &QAction::triggered, this, [this] { goToRackBeside(-1); });
    for (const auto &[book, action] : m_actions.books)
        connect(action, &QAction::triggered, this, [this, book = book] { goToBook(book); });
    m_colours->addTo(*m_actions.view, [this] { sayNotKept(); });
    m_help->connectActions(m_actions);
    connect(m_actions.keys, &QAction::triggered, this, &MainWindow::showKeys);
    connect(m_actions.about, &QAction::triggered, this,
            [this] { m_dialogs->tell(this, tr("About Plateau"), aboutText()); });
}

void MainWindow::start(const exchange::MethodLibrary &methods)
{
    const auto takeLead = [this] { m_session->setLead(m_settings->choice().lead_s); };
    connect(m_settings, &BenchSettings::changed, this, takeLead);
    takeLead();
    std::map<QString, QString> names;
    for (const assay::Method &method : methods.methods())
        names[method.id] = method.name;
    m_session->setMethodNames(std::move(names));
    const bool loaded = guarded(*m_notice, [this] { m_session->reload(); });
    // A coarse timer comes up to a twentieth early or late, and a count that skips a second looks broken.
    m_heart.setTimerType(Qt::PreciseTimer);
    m_heart.setInterval(tick_ms);
    connect(&m_heart, &QTimer::timeout, this, [this] { guarded(*m_notice, [this] { m_session->tick(); }); });
    m_heart.start();
    refreshMethods();
    followLaboratory();
    if (m_session->next())
        goToNext();
    else {
        m_side->takeFocus(); // the first page may have nothing to choose
        goToBook(Book::Today);
    }
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
        if (PlanPage *plan = m_plan.made())
            plan->setMethods(m_methodBook->offered());
        if (RunFilePage *file = m_runFile.made())
            file->setMethods(m_methodBook->lookup());
    });
}

void MainWindow::showPage(QWidget *page)
{
    const bool leavesRack = rackOnShow() && page != rackOnShow();
    m_pages->setCurrentWidget(page);
    const bool isOnlyKeptSpace = m_notice->sentence().isEmpty();
    if (rackOnShow() || leavesRack || isOnlyKeptSpace)
        m_notice->clear();
    if (leavesRack)
        sayUnstored();
    markPage();
    updateActions();
}

void MainWindow::markPage()
{
    const RackPage *rack = rackOnShow();
    if (rack && m_session->find(rack->rackId()))
        m_side->markRack(rack->rackId());
    else if (const auto book = m_books->bookOf(m_pages->currentWidget()))
        m_side->markBook(*book);
    else
        m_side->markNothing();
}

void MainWindow::goToNext()
{
    const auto next = m_session->next();
    if (!next)
        return;
    RackPage &rack = m_rack.page();
    rack.showRack(next->run, RackPage::dueStage(*m_session->find(next->run)));
    showPage(&rack);
    if (next->kind == NextAction::Kind::Read)
        rack.readPage().goTo(next->place);
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
            RackPage *rack = rackOnShow();
            if (rack && rack->stage() == RackPage::Pipette && rack->rackId() == next->run)
                rack->showStage(RackPage::Pipette);
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
    auto *route = new InstrumentRoute(*m_instrument, *m_session, m_rack, *m_notice, this);
    route->connectActions(m_actions, this);
    connect(route, &InstrumentRoute::rackPageWanted, this, [this] { showPage(&m_rack.page()); });
    connect(m_instrument, &InstrumentIntake::stateChanged, this, &MainWindow::showListening);
    showListening();
}

void MainWindow::showListening()
{
    m_listening->setText(m_instrument->stateSentence());
    m_listening->setVisible(m_instrument->isListening());
    m_actions.stopListening->setEnabled(m_instrument->isListening());
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
        sayNotKept();
}

void MainWindow::sayNotKept()
{
    m_notice->say(State::Attention,
                  tr("The settings hold until the program ends; they could not be kept for the next time."));
}

void MainWindow::showKeys()
{
    KeysDialog page(*m_theme, *m_dialogs, keyEntries(*menuBar()), this);
    m_dialogs->isAccepted(page);
}

void MainWindow::goToRack(notebook::RunId id)
{
    const Rack *rack = m_session->find(id);
    if (!rack)
        return;
    m_rack.page().showRack(id, RackPage::dueStage(*rack));
    showPage(&m_rack.page());
}

void MainWindow::goToRackBeside(int step)
{
    const RackPage *rack = m_rack.made();
    goToRack(m_side->rackBeside(rack ? rack->rackId() : notebook::RunId{}, step));
}

void MainWindow::goToBook(Book book)
{
    BookPage *page = m_books->page(book);
    showPage(page);
    page->open();
}

void MainWindow::goToChart(const charts::Subject &subject)
{
    goToBook(Book::Charts);
    static_cast<ChartsPage *>(m_books->page(Book::Charts))->show(subject);
}

void MainWindow::goToRun(notebook::RunId id)
{
    if (m_session->find(id))
        goToRack(id);
    else
        goToRecord(id);
}

void MainWindow::goToRecord(notebook::RunId id)
{
    showPage(m_books->page(Book::Notebook));
    m_notebook->showRecord(id);
}

void MainWindow::goToNewRun()
{
    showPage(&m_plan.page());
    m_plan.page().takeFocus();
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
    showPage(&m_runFile.page());
    m_runFile.page().read(path);
}

void MainWindow::openFile(const QString &path)
{
    const exchange::Read<QByteArray> bytes = exchange::readFile(path);
    if (!bytes.value || exchange::formatOf(*bytes.value) != QStringView(exchange::methodFormat)) {
        openRunFile(path); // says what is wrong with any other file, too
        return;
    }
    goToBook(Book::Methods);
    static_cast<MethodsPage *>(m_books->page(Book::Methods))->takeFile(path);
}

void MainWindow::comeForward()
{
    setWindowState(windowState() & ~Qt::WindowMinimized);
    show();
    raise();
    activateWindow();
    QApplication::alert(this); // where the desktop does not let a window come forward by itself
}

void MainWindow::openHelp(const HelpPlace &place)
{
    m_help->desk().open(place);
}

void MainWindow::sayNotebookIsNew()
{
    m_notice->say(State::Info, tr("There was no notebook %1; a new one was made. If yours was expected here, close the window "
                                  "and see that the name is right.")
                                   .arg(QDir::toNativeSeparators(m_open.path())));
}

void MainWindow::setPerson(const QString &name)
{
    m_side->setPerson(name);
}

std::optional<notebook::RunId> MainWindow::runOnShow() const
{
    if (const RackPage *rack = rackOnShow())
        return rack->rackId();
    if (m_notebook && m_pages->currentWidget() == m_notebook)
        return m_notebook->openRecord();
    return std::nullopt;
}

void MainWindow::onRacksChanged()
{
    markPage(); // the rack on show may have been decided, or put back
    updateActions();
}

void MainWindow::updateActions()
{
    const bool onRack = rackOnShow();
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
    m_isNamedOtherwise = true;
    updateTitle();
}

void MainWindow::updateTitle()
{
    QStringList parts;
    const Rack *rack = rackOnShow() ? m_session->find(rackOnShow()->rackId()) : nullptr;
    if (rack)
        parts << tr("Rack %1, %2").arg(rack->letter, rack->stored.run.title);
    else if (const auto record = runOnShow())
        guarded(*m_notice, [&] { parts << m_session->load(*record).run.title; });
    if (!m_isNamedOtherwise && !m_laboratoryName.isEmpty())
        parts << m_laboratoryName;
    parts << m_notebookName << tr("Plateau");
    setWindowTitle(parts.join(u" – "_s));
}

void MainWindow::sayUnstored()
{
    const Rack *rack = m_session->find(m_rack.page().rackId());
    const QStringList typed = rack ? m_rack.page().unstored(rack->id) : QStringList();
    if (!typed.isEmpty())
        m_notice->say(State::Attention, tr("Rack %1: typed and not stored, but kept where it was typed: %2.")
                                            .arg(rack->letter, typed.join(tr("; "))));
}

QStringList MainWindow::unstored() const
{
    QStringList lines;
    const RackPage *page = m_rack.made();
    for (const Rack &rack : m_session->racks()) {
        for (const QString &typed : page ? page->unstored(rack.id) : QStringList())
            lines << tr("Rack %1, %2").arg(rack.letter, typed);
    }
    if (m_plan.made() && m_plan.made()->isBegun())
        lines << tr("A new run that is not on the bench yet");
    for (const BookPage *book : m_books->pages()) {
        if (const QString typed = book->unstored(); !typed.isEmpty())
            lines << typed;
    }
    return lines;
}

void MainWindow::keepBackups()
{
    connect(m_keeper, &Keeper::failed, this, [this](const QString &sentence) {
        if (!m_keeper->wasAskedFor())
            m_notice->say(State::Attention, sentence);
    });
    m_lastBackup = new LastBackup(*m_keeper, this);
    connect(m_lastBackup, &LastBackup::failed, this,
            [this](const QString &sentence) { m_notice->say(State::Attention, sentence); });
    auto *line = new BackupLine(m_side);
    m_side->addLine(line);
    line->watch(*m_keeper);
    m_keeper->start();
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    const QStringList lines = m_lastBackup && m_lastBackup->isClosing() ? QStringList() : unstored();
    if (!lines.isEmpty() &&
        !m_dialogs->confirm(this, tr("Not stored yet"),
                            tr("This was typed and is not stored; it is lost when the window closes:\n\n%1")
                                .arg(lines.join(u'\n')),
                            tr("&Close without it"), tr("&Stay"))) {
        event->ignore();
        return;
    }
    if (m_lastBackup && !m_lastBackup->letsClose()) {
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
