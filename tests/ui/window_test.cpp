// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/writers.h"
#include "tests/ui/bench.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/printing.h"
#include "ui/bench/stores.h"
#include "ui/books/notebookpage.h"
#include "ui/books/runsmodel.h"
#include "ui/shared/problemlist.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSettings>
#include <QTabWidget>
#include <QTableView>
#include <QTextBrowser>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class Window : public WindowBench
{
protected:
    QAction *action(const QString &name) const { return window->findChild<QAction *>(name); }
    void nameBench()
    {
        find<QLineEdit>(u"person"_s)->setFocus();
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
    }
    static run::Run readRun(double sampleSignal)
    {
        run::Run run = exampleRun();
        for (run::Tube &tube : run.tubes)
            tube.readings = {{u"A1"_s, 0.1},
                             {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.11 + sampleSignal}};
        return run;
    }
    void openFile(const QByteArray &content)
    {
        dialogs.nextFile = writeFile(u"run.json"_s, content);
        action(u"actionOpenFile"_s)->trigger();
    }
};

TEST_F(Window, AnEmptyNotebookSaysWhatToDoNext)
{
    openWindow();
    EXPECT_TRUE(labelText(u"todayBenchNothing"_s).contains(u"New run"_s));
    action(u"actionNotebook"_s)->trigger();
    EXPECT_TRUE(labelText(u"notebookEmpty"_s).contains(u"New run"_s));
    EXPECT_FALSE(action(u"actionNext"_s)->isEnabled());
    EXPECT_FALSE(action(u"actionPipette"_s)->isEnabled());
    EXPECT_FALSE(action(u"actionRead"_s)->isEnabled());
    EXPECT_FALSE(action(u"actionSaveCopy"_s)->isEnabled());
    EXPECT_FALSE(action(u"actionSaveWorksheet"_s)->isEnabled());
}

TEST_F(Window, TheListAtItsSideGetsSomeOfAWideWindow)
{
    openWindow();
    window->setWindowState(Qt::WindowNoState); // on a screen that is too small it begins maximised
    const auto widthIn = [this](int width) {
        window->resize(width, 800);
        QApplication::processEvents();
        return find<QWidget>(u"places"_s)->parentWidget()->width();
    };
    const int character = window->fontMetrics().averageCharWidth();
    EXPECT_EQ(widthIn(1100), 28 * character);
    EXPECT_EQ(widthIn(3000), 36 * character);
}

TEST_F(Window, AFileWithProblemsListsThemAllAndOpensNothing)
{
    openWindow();
    nameBench();
    QByteArray content = exchange::writeRun(exampleRun());
    content.replace("\"title\"", "\"colour\": 3, \"title\"")
        .replace("\"role\": \"blank\"", "\"role\": \"blnk\"");
    openFile(content);
    const auto *list = find<ui::ProblemList>(u"fileProblems"_s);
    EXPECT_GE(list->model()->rowCount(), 3); // the field, and both blanks
    EXPECT_TRUE(list->model()->index(0, 0).data().toString().contains(u"/"_s));
    EXPECT_TRUE(book->runs().empty());
    EXPECT_EQ(window->findChild<QPushButton *>(u"putFileOnBench"_s)->isVisible(), false);
    EXPECT_EQ(focusName(), u"anotherFile"_s);
}

TEST_F(Window, ASoundFileGoesOnTheBenchWithItsReadings)
{
    openWindow();
    nameBench();
    openFile(exchange::writeRun(readRun(0.5)));
    ASSERT_EQ(book->runs().size(), 1U);
    EXPECT_EQ(book->runs()[0].readingsTaken, 8);
    EXPECT_EQ(labelText(u"verdict"_s), u"Not every check could be made"_s);
    EXPECT_EQ(labelText(u"rackLetter"_s), u"Rack A"_s);
}

TEST_F(Window, AFileThatTheNotebookHasAlreadyIsRefusedWithTheRunThere)
{
    openWindow();
    nameBench();
    openFile(exchange::writeRun(readRun(0.5)));
    openFile(exchange::writeRun(readRun(0.5)));
    ASSERT_EQ(book->runs().size(), 1U);
    EXPECT_TRUE(noticeText().contains(u"run 1, \"Perry tanks\", put on the bench on"_s))
        << noticeText().toStdString();
    EXPECT_TRUE(noticeText().endsWith(u"It is rack A."_s)) << noticeText().toStdString();
    EXPECT_EQ(labelText(u"fileSummary"_s), u"Nothing was stored."_s);
    EXPECT_EQ(focusName(), u"anotherFile"_s);
    openFile(exchange::writeRun(readRun(0.51)));
    EXPECT_EQ(book->runs().size(), 2U) << "another reading, another run";
}

TEST_F(Window, TheReviewOfAnotherRackStartsAtTheTop)
{
    addRun(readRun(0.5));
    addRun(readRun(0.6));
    openWindow();
    auto *details = find<QTabWidget>(u"details"_s);
    auto *checks = find<QAbstractItemView>(u"checks"_s);
    details->setCurrentIndex(2);
    checks->setCurrentIndex(checks->model()->index(2, 0));
    action(u"actionRead"_s)->trigger();
    action(u"actionReview"_s)->trigger();
    EXPECT_EQ(details->currentIndex(), 2) << "the same rack stays as it was left";
    action(u"actionNextRack"_s)->trigger();
    ASSERT_EQ(labelText(u"rackLetter"_s), u"Rack B"_s);
    EXPECT_EQ(details->currentIndex(), 0);
    EXPECT_FALSE(checks->currentIndex().isValid());
    EXPECT_TRUE(checks->selectionModel()->selectedIndexes().isEmpty());
    EXPECT_EQ(find<QTableView>(u"results"_s)->currentIndex().row(), 0);
}

TEST_F(Window, TheTitleNamesTheRunAndTheNotebook)
{
    openWindow();
    EXPECT_EQ(window->windowTitle(), u"test.plateau – Plateau"_s);
    nameBench();
    openFile(exchange::writeRun(readRun(0.5)));
    EXPECT_EQ(window->windowTitle(), u"Rack A, Perry tanks – test.plateau – Plateau"_s);
    action(u"actionNotebook"_s)->trigger();
    EXPECT_EQ(window->windowTitle(), u"test.plateau – Plateau"_s);
    planning::Laboratory laboratory = book->laboratory();
    laboratory.name = u"Threnholt Cider"_s;
    ASSERT_TRUE(window->findChild<ui::Stores *>()->saveLaboratory(laboratory));
    EXPECT_EQ(window->windowTitle(), u"Threnholt Cider – test.plateau – Plateau"_s);
    window->setNotebookName(u"sample notebook"_s);
    EXPECT_EQ(window->windowTitle(), u"sample notebook – Plateau"_s);
}

TEST_F(Window, ChecksRecoveriesAndReadingsFitIntoAWindowOf1280)
{
    run::Run run = readRun(0.5);
    run.standards = {{u"Working standard of the cider house"_s, 0.2, {}, {}, {}, 0}};
    run::Tube standard = run.tubes[2];
    standard.role = run::Role::Standard;
    standard.sample.clear();
    standard.standard = run.standards[0].id;
    run.tubes.push_back(standard);
    addRun(run);
    openWindow();
    window->resize(1280, 800);
    auto *details = find<QTabWidget>(u"runDetails"_s);
    for (const auto &[tab, name] : {std::pair{0, u"checks"_s}, {1, u"recoveries"_s}, {2, u"history"_s}}) {
        details->setCurrentIndex(tab);
        QApplication::processEvents();
        const auto *table = find<QTableView>(name);
        ASSERT_GT(table->model()->rowCount(), 0);
        // Which check it is goes before where its limit comes from: only that may have to be scrolled to.
        const int last = table->horizontalHeader()->logicalIndex(table->model()->columnCount() - 1);
        EXPECT_LE(table->horizontalScrollBar()->maximum(), tab == 0 ? table->columnWidth(last) : 0)
            << name.toStdString();
    }
}

TEST_F(Window, EverySentenceStartsWithACapital)
{
    run::Run run = readRun(0.5);
    run.tubes[2].readings[u"A2"_s] = 0.02; // the wrong direction
    run.tubes[1].readings[u"A2"_s] = 0.15; // blanks apart, and their mean too high
    addRun(run);
    openWindow();
    const auto *checks = find<QAbstractItemView>(u"checks"_s)->model();
    ASSERT_GT(checks->rowCount(), 3);
    for (int row = 0; row < checks->rowCount(); ++row) {
        const QString sentence = checks->index(row, 0).data().toString();
        EXPECT_TRUE(sentence.front().isUpper()) << sentence.toStdString();
    }
}

TEST_F(Window, ANewRunFormThatIsTooWideDoesNotSlipSideways)
{
    openWindow();
    action(u"actionNewRun"_s)->trigger();
    window->resize(window->minimumSizeHint());
    QApplication::processEvents();
    auto *form = find<QLineEdit>(u"title"_s);
    QScrollArea *area = nullptr;
    for (QWidget *parent = form; parent && !area; parent = parent->parentWidget())
        area = qobject_cast<QScrollArea *>(parent);
    ASSERT_NE(area, nullptr);
    area->setMaximumWidth(area->widget()->minimumSizeHint().width() / 2);
    QApplication::processEvents();
    ASSERT_GT(area->horizontalScrollBar()->maximum(), 0) << "wider than its room";
    for (int step = 0; step < 40; ++step) {
        press(Qt::Key_Tab);
        ASSERT_EQ(area->horizontalScrollBar()->value(), 0) << focusName().toStdString();
    }
    area->ensureWidgetVisible(find<QGroupBox>(u"standard"_s));
    EXPECT_EQ(area->horizontalScrollBar()->value(), 0);
}

TEST_F(Window, AFileWithRemarksIsShownFirst)
{
    openWindow();
    nameBench();
    run::Run run = exampleRun();
    run::Sample unused;
    unused.id = u"P-199"_s;
    run.samples.push_back(unused);
    openFile(exchange::writeRun(run));
    EXPECT_TRUE(book->runs().empty());
    EXPECT_EQ(find<ui::ProblemList>(u"fileProblems"_s)->model()->rowCount(), 1);
    ASSERT_EQ(focusName(), u"putFileOnBench"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->runs().size(), 1U);
}

TEST_F(Window, OpeningAFileAsksWhoIsThereAndGoesOn)
{
    openWindow();
    openFile(exchange::writeRun(exampleRun()));
    EXPECT_TRUE(book->runs().empty());
    ASSERT_EQ(focusName(), u"person"_s);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"putFileOnBench"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->runs().size(), 1U);
}

TEST_F(Window, ABeginningOfANameIsThatPersonAndEscapeTakesItBack)
{
    book->persons().addFirst(u"H. Ahlgren"_s, u"four plain garden words"_s);
    openWindow();
    const auto *session = window->findChild<ui::BenchSession *>();
    auto *person = find<QLineEdit>(u"person"_s);
    person->setFocus();
    type(u"h. a"_s);
    press(Qt::Key_Tab);
    EXPECT_EQ(person->text(), u"H. Ahlgren"_s) << "nobody meant another one";
    EXPECT_EQ(session->person(), u"H. Ahlgren"_s);
    person->setFocus();
    person->selectAll();
    type(u"wz"_s);
    press(Qt::Key_Escape);
    EXPECT_EQ(person->text(), u"H. Ahlgren"_s);
    EXPECT_NE(focusName(), u"person"_s) << "the keys go back";
    EXPECT_EQ(session->person(), u"H. Ahlgren"_s);
}

TEST_F(Window, AMissingFileIsSaidInThePage)
{
    openWindow();
    nameBench();
    dialogs.nextFile = folder.filePath(u"nowhere.json"_s);
    action(u"actionOpenFile"_s)->trigger();
    EXPECT_EQ(find<ui::ProblemList>(u"fileProblems"_s)->model()->rowCount(), 1);
}

TEST_F(Window, ADecidedRunIsLockedAndShowsItsDecision)
{
    const notebook::RunId id = addRun(readRun(0.5));
    book->decide(id, notebook::DecisionKind::Accepted, u"M. Lindqvist"_s, {});
    openWindow();
    EXPECT_EQ(labelText(u"nextAction"_s), u"Nothing due"_s);
    action(u"actionNotebook"_s)->trigger();
    auto *runs = find<QTableView>(u"runs"_s);
    runs->setFocus();
    runs->selectRow(0);
    press(Qt::Key_Return);
    const auto *decisions = find<ui::SentenceList>(u"decisions"_s);
    ASSERT_EQ(decisions->model()->rowCount(), 1);
    EXPECT_TRUE(decisions->model()->index(0, 0).data().toString().startsWith(u"Accepted by M. Lindqvist"_s));
    EXPECT_TRUE(noticeText().isEmpty())
        << "the stored evaluation is the one shown: " << noticeText().toStdString();
    for (const QString &name : {u"readingEntry"_s, u"acceptRun"_s, u"rejectRun"_s}) {
        for (const QWidget *widget : window->findChildren<QWidget *>(name))
            EXPECT_FALSE(widget->isVisible()) << name.toStdString();
    }
    EXPECT_TRUE(workingText().contains(u"0.610 \u2212 0.100"_s));
}

TEST_F(Window, ARecordLeadsToTheTrendOfItsChosenResult)
{
    run::Run run = readRun(0.4);
    planning::PlanRecord plan;
    planning::PlannedSample planned;
    planned.sample.id = run.samples.front().id;
    planned.sample.product = u"Perry"_s;
    plan.samples = {planned};
    const notebook::RunId known = book->addRun(run, method(), u"R. Okafor"_s, plan);
    const notebook::RunId unknown = addRun(run);
    for (const notebook::RunId id : {known, unknown})
        book->decide(id, notebook::DecisionKind::Accepted, u"M. Keel"_s, u"seen"_s);
    openWindow();
    const auto trendOf = [this](notebook::RunId id) {
        action(u"actionNotebook"_s)->trigger();
        window->findChild<ui::NotebookPage *>()->showRecord(id);
        find<QPushButton>(u"toTrend"_s)->click();
        return QStringList{find<QComboBox>(u"chartQuantity"_s)->currentData().toString(),
                           find<QComboBox>(u"chartName"_s)->currentText()};
    };
    EXPECT_EQ(trendOf(known), (QStringList{u"productResult"_s, u"Perry"_s}));
    EXPECT_EQ(trendOf(unknown), (QStringList{u"sampleResult"_s, run.samples.front().id}));
}

TEST_F(Window, PuttingARunBackNeedsAReason)
{
    const notebook::RunId id = addRun(readRun(0.5));
    book->decide(id, notebook::DecisionKind::Rejected, u"M. Lindqvist"_s, u"rack fell over"_s);
    openWindow();
    nameBench();
    action(u"actionNotebook"_s)->trigger();
    auto *runs = find<QTableView>(u"runs"_s);
    runs->setFocus();
    runs->selectRow(0);
    press(Qt::Key_Return);
    find<QPushButton>(u"reopenRun"_s)->click();
    EXPECT_EQ(book->load(id).summary.state, notebook::RunState::Rejected);
    EXPECT_FALSE(noticeText().isEmpty());
    find<QLineEdit>(u"reopenReason"_s)->setFocus();
    type(u"the wrong rack was rejected"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(book->load(id).summary.state, notebook::RunState::OnBench);
    EXPECT_EQ(labelText(u"rackLetter"_s), u"Rack A"_s);
    const auto *decisions = find<ui::SentenceList>(u"decisions"_s);
    ASSERT_EQ(decisions->model()->rowCount(), 2) << "the decision stays readable";
    EXPECT_TRUE(decisions->model()->index(0, 0).data().toString().startsWith(u"Rejected by M. Lindqvist"_s));
    EXPECT_TRUE(decisions->model()->index(1, 0).data().toString().startsWith(
        u"Put back on the bench by R. Okafor"_s));
}

TEST_F(Window, ACopyOfTheRunReadsBackAsTheSameRun)
{
    const notebook::RunId id = addRun(readRun(0.5));
    openWindow();
    dialogs.nextFile = folder.filePath(u"copy.json"_s);
    ASSERT_TRUE(action(u"actionSaveCopy"_s)->isEnabled());
    action(u"actionSaveCopy"_s)->trigger();
    EXPECT_TRUE(noticeText().contains(dialogs.nextFile)) << noticeText().toStdString();
    QFile file(dialogs.nextFile);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const auto read = exchange::readRun(file.readAll(), library.lookup());
    ASSERT_TRUE(read.value);
    EXPECT_TRUE(read.value->methodEmbedded);
    EXPECT_EQ(read.value->run, book->load(id).run);
}

TEST_F(Window, ACopyThatCannotBeWrittenIsSaid)
{
    addRun(readRun(0.5));
    openWindow();
    dialogs.nextFile = folder.filePath(u"no/such/folder/copy.json"_s);
    action(u"actionSaveCopy"_s)->trigger();
    EXPECT_TRUE(noticeText().contains(u"could not be written"_s)) << noticeText().toStdString();
}

TEST_F(Window, TheWorksheetAndTheLabelsOfTheRunOnShowBecomePdfFiles)
{
    run::Run run = readRun(0.5);
    run.samples[0].dilution = {{5, 50, {}}};
    addRun(run);
    openWindow();
    for (const QString &name : {u"actionSaveWorksheet"_s, u"actionSaveLabels"_s}) {
        dialogs.nextFile = folder.filePath(name + u".pdf"_s);
        ASSERT_TRUE(action(name)->isEnabled());
        action(name)->trigger();
        EXPECT_TRUE(noticeText().contains(dialogs.nextFile)) << noticeText().toStdString();
        QFile file(dialogs.nextFile);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    }
    dialogs.nextFile = folder.filePath(u"no/such/folder/sheet.pdf"_s);
    action(u"actionSaveWorksheet"_s)->trigger();
    EXPECT_TRUE(noticeText().contains(u"was not written"_s)) << noticeText().toStdString();
}

TEST_F(Window, TheWorksheetHasNoTimeOfAStartBeforeThereIsOne)
{
    run::Run planned = exampleRun();
    planned.startedAt = QDateTime(QDate(2026, 3, 2), QTime(9, 10), Qt::OffsetFromUTC, 3600);
    addRun(planned);
    run::Run begun = readRun(0.5);
    begun.title = u"Perry tanks, begun"_s;
    begun.startedAt = planned.startedAt;
    addRun(begun);
    const auto sheetOf = [&](notebook::RunId id) {
        return ui::worksheetOf(book->load(id), planning::usualLaboratory(), {}, {}, *planned.startedAt);
    };
    EXPECT_FALSE(sheetOf({1}).run.startedAt) << "to be written in";
    EXPECT_EQ(sheetOf({1}).runCode, book->load({1}).runCode) << "the code on the sheet still finds the run";
    ASSERT_TRUE(sheetOf({2}).run.startedAt);
    EXPECT_EQ(*sheetOf({2}).run.startedAt, *planned.startedAt);
}

TEST_F(Window, LabelsArePrintedOnTheSheetThatWasTypedWhichIsThereTheNextTime)
{
    run::Run run = readRun(0.5);
    run.samples[0].dilution = {{5, 50, {}}, {2, 20, {}}}; // two flasks
    addRun(run);
    openWindow();
    nameBench();
    const auto field = [](QDialog &form, const QString &name) { return form.findChild<QLineEdit *>(name); };
    dialogs.nextFile = folder.filePath(u"labels.pdf"_s);
    dialogs.fillIn = [&](QDialog &form) {
        EXPECT_EQ(field(form, u"labelBy"_s)->text(), u"R. Okafor"_s);
        field(form, u"labelRows"_s)->setText(u"4"_s);
        field(form, u"labelFirstFree"_s)->setText(u"3"_s);
        return false;
    };
    action(u"actionSaveLabels"_s)->trigger();
    EXPECT_FALSE(QFile::exists(dialogs.nextFile)); // thought better of it
    dialogs.fillIn = [&](QDialog &form) {
        EXPECT_EQ(field(form, u"labelFirstFree"_s)->text(), u"1"_s);
        form.findChild<QComboBox *>(u"labelPaper"_s)->setCurrentIndex(1);
        field(form, u"labelRows"_s)->setText(u"4"_s);
        field(form, u"labelFirstFree"_s)->setText(u"3"_s);
        return true;
    };
    action(u"actionSaveLabels"_s)->trigger();
    QFile pdf(dialogs.nextFile);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    const QByteArray bytes = pdf.readAll();
    EXPECT_TRUE(bytes.contains("/MediaBox [0 0 612"))
        << bytes.mid(bytes.indexOf("/MediaBox"), 60).toStdString();
    EXPECT_TRUE(noticeText().contains(dialogs.nextFile)) << noticeText().toStdString();
    int asked = 0;
    dialogs.fillIn = [&](QDialog &form) {
        ++asked;
        EXPECT_EQ(field(form, u"labelRows"_s)->text(), u"4"_s);
        EXPECT_EQ(field(form, u"labelFirstFree"_s)->text(), u"5"_s); // two were printed
        return false;
    };
    action(u"actionSaveLabels"_s)->trigger();
    EXPECT_EQ(asked, 1);
}

TEST_F(Window, ASheetOfLabelsThatCannotBeKeptIsSaidButTheLabelsAreWritten)
{
    run::Run run = readRun(0.5);
    run.samples[0].dilution = {{5, 50, {}}};
    addRun(run);
    openWindow();
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, book->path()); // a file, no folder
    dialogs.nextFile = folder.filePath(u"labels.pdf"_s);
    action(u"actionSaveLabels"_s)->trigger();
    EXPECT_TRUE(QFile::exists(dialogs.nextFile));
    EXPECT_TRUE(noticeText().contains(dialogs.nextFile)) << noticeText().toStdString();
    EXPECT_TRUE(noticeText().contains(u"not kept for the next time"_s)) << noticeText().toStdString();
}

TEST_F(Window, ARunWithNothingToLabelSaysSoAndAsksForNoFile)
{
    addRun(readRun(0.5));
    openWindow();
    dialogs.nextFile = folder.filePath(u"labels.pdf"_s);
    action(u"actionSaveLabels"_s)->trigger();
    EXPECT_TRUE(noticeText().contains(u"nothing to label"_s)) << noticeText().toStdString();
    EXPECT_FALSE(QFile::exists(dialogs.nextFile));
}

TEST_F(Window, AboutNamesVersionsAndLicences)
{
    openWindow();
    action(u"actionAbout"_s)->trigger();
    ASSERT_EQ(dialogs.told.size(), 1);
    for (const QString &part :
         {u"0.0.0-test"_s, QString::fromLatin1(qVersion()), u"General Public License"_s, u"SQLite 3."_s,
          u"libsodium 1."_s, u"libqrencode"_s, u"nlohmann/json 3."_s, u"Boost 1."_s})
        EXPECT_TRUE(dialogs.told[0].contains(part)) << part.toStdString();
}

TEST_F(Window, RacksAreWalkedInTheirOrder)
{
    for (int rack = 0; rack < 3; ++rack)
        addRun(exampleRun());
    openWindow();
    EXPECT_EQ(labelText(u"rackLetter"_s), u"Rack A"_s);
    action(u"actionNextRack"_s)->trigger();
    EXPECT_EQ(labelText(u"rackLetter"_s), u"Rack B"_s);
    action(u"actionPreviousRack"_s)->trigger();
    action(u"actionPreviousRack"_s)->trigger();
    EXPECT_EQ(labelText(u"rackLetter"_s), u"Rack C"_s);
    EXPECT_EQ(labelText(u"nextAction"_s), u"Rack A, tube 1: add 1\u00a0mL buffer pH 9"_s);
}

TEST_F(Window, UserTextIsNeverTakenForMarkup)
{
    run::Run run = exampleRun();
    run.title = u"<b>bold</b> & <img src=x>"_s;
    run.samples[0].id = u"<i>P</i>"_s;
    run.tubes[2].sample = run.tubes[3].sample = run.samples[0].id;
    for (run::Tube &tube : run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.6}};
    addRun(run);
    openWindow();
    EXPECT_EQ(labelText(u"rackTitle"_s), run.title);
    EXPECT_EQ(find<QLabel>(u"rackTitle"_s)->textFormat(), Qt::PlainText);
    EXPECT_TRUE(workingText().contains(u"<i>P</i>"_s));
}

TEST_F(Window, FollowsThePaletteToDarkAndBack)
{
    addRun(readRun(0.5));
    openWindow();
    const QPalette before = QApplication::palette();
    const QColor lightBand = find<QLabel>(u"verdict"_s)->parentWidget()->palette().color(QPalette::Window);
    QPalette dark(QColor(0x3a, 0x3d, 0x41), QColor(0x2b, 0x2d, 0x30));
    QApplication::setPalette(dark);
    QApplication::processEvents();
    const QColor darkBand = find<QLabel>(u"verdict"_s)->parentWidget()->palette().color(QPalette::Window);
    EXPECT_LT(darkBand.lightness(), lightBand.lightness());
    QApplication::setPalette(before);
    QApplication::processEvents();
    EXPECT_EQ(find<QLabel>(u"verdict"_s)->parentWidget()->palette().color(QPalette::Window), lightBand);
}

} // namespace
} // namespace plateau::test
