// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/readers.h"
#include "core/exchange/writers.h"
#include "core/notebook/methodcatalogue.h"
#include "tests/ui/bench.h"
#include "tests/ui/shown.h"
#include "ui/bench/resultsmodel.h"
#include "ui/bench/verdicts.h"
#include "ui/books/comparisonmodel.h"
#include "ui/books/methodactwords.h"
#include "ui/books/methodsmodel.h"
#include "ui/books/methodviewtext.h"
#include "ui/books/wordfilter.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTextBrowser>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

assay::Method withBuffer(assay::Method method, double volume_mL)
{
    method.components[0].volume_mL = volume_mL;
    return method;
}

class MethodModels : public Bench
{
protected:
    std::vector<notebook::StoredMethod> catalogue() const
    {
        return notebook::catalogueOf(book->methods(), library.methods());
    }
    ui::Theme theme;
};

TEST_F(MethodModels, ListSaysHowEachMethodStands)
{
    ui::MethodsModel model(theme);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    const QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    const QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    const QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    using Model = ui::MethodsModel;

    model.setCatalogue(catalogue());
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(shown(model, 0, Model::Name), u"Example acid"_s);
    EXPECT_EQ(shown(model, 0, Model::Version), u"1"_s);
    EXPECT_EQ(shown(model, 0, Model::Standing), u"in use"_s);
    EXPECT_EQ(shown(model, 0, Model::Origin), u"shipped with the program"_s);
    EXPECT_EQ(shown(model, 0, Model::Runs), u"0"_s);

    addRun(exampleRun());
    book->saveMethod(withBuffer(method(), 1.5), u"R. Okafor"_s, {}, library.methods());
    model.setCatalogue(catalogue());
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(shown(model, 0, Model::Version), u"2"_s);
    EXPECT_EQ(shown(model, 0, Model::Standing), u"in use"_s);
    EXPECT_EQ(shown(model, 1, Model::Standing), u"earlier version"_s);
    EXPECT_EQ(shown(model, 1, Model::Runs), u"1"_s);

    book->importMethod(withBuffer(method(), 3), u"other.json"_s, u"R. Okafor"_s, library.methods());
    model.setCatalogue(catalogue());
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(shown(model, 1, Model::Version), u"1 (%1)"_s.arg(catalogue()[1].mark()));
    EXPECT_NE(shown(model, 1, Model::Version), shown(model, 2, Model::Version));

    const assay::Method newest = catalogue()[0].method;
    book->retireMethod(newest, u"R. Okafor"_s, u"old"_s);
    model.setCatalogue(catalogue());
    EXPECT_EQ(shown(model, 0, Model::Standing), u"retired"_s);
    EXPECT_EQ(reset.count(), 0);
    EXPECT_EQ(inserted.count(), 3);
    EXPECT_GE(changed.count(), 3);
    EXPECT_EQ(model.rowOf(catalogue()[2].contentHash), 2);
    EXPECT_EQ(model.rowOf(u"x"_s), -1);
}

TEST_F(MethodModels, MethodThatOnlyCameWithARunIsOnRecord)
{
    assay::Method other = method();
    other.id = u"other"_s;
    run::Run run = exampleRun();
    run.method = other.id;
    book->addRun(run, other, u"R. Okafor"_s);
    ui::MethodsModel model(theme);
    model.setCatalogue(catalogue(), u"other"_s);
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(shown(model, 0, ui::MethodsModel::Standing), u"on record"_s);
}

TEST_F(MethodModels, FilterKeepsWhatHasEveryWord)
{
    ui::MethodsModel model(theme);
    ui::WordFilter filter(&model);
    book->saveMethod(withBuffer(method(), 1.5), u"R. Okafor"_s, {}, library.methods());
    model.setCatalogue(catalogue());
    filter.setFilter(u"ACID okafor"_s);
    EXPECT_EQ(filter.rowCount(), 1);
    filter.setFilter(u"acid earlier"_s);
    EXPECT_EQ(filter.rowCount(), 1);
    filter.setFilter(u"acid nothing"_s);
    EXPECT_EQ(filter.rowCount(), 0);
    filter.setFilter({});
    EXPECT_EQ(filter.rowCount(), 2);
}

TEST_F(MethodModels, ComparisonShowsFieldBeforeAndAfter)
{
    ui::ComparisonModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    assay::Method after = withBuffer(method(), 1.5);
    after.window.maxAbsorbance.reset();
    const QSignalSpy header(&model, &QAbstractItemModel::headerDataChanged);
    model.show(exchange::differences(method(), after), u"Version 1"_s, u"Version 2"_s);
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(shown(model, 0, 0), u"Volume of Buffer pH 9"_s);
    EXPECT_EQ(shown(model, 0, 1), u"1 mL"_s);
    EXPECT_EQ(shown(model, 0, 2), u"1.5 mL"_s);
    EXPECT_EQ(shown(model, 1, 2), u"–"_s);
    EXPECT_EQ(model.headerData(1, Qt::Horizontal, Qt::DisplayRole).toString(), u"Version 1"_s);
    EXPECT_EQ(header.count(), 1);
    model.show({}, u"Version 1"_s, u"Version 2"_s);
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(MethodModels, PageOfAMethodHoldsEverythingThatIsSaidInIt)
{
    assay::Method full = method();
    full.principle = u"<b>One</b> NADH each"_s;
    full.cautions = {u"Wear goggles."_s};
    full.reactions = {u"Acid -> base"_s};
    full.interferences = {u"Tannins."_s};
    full.samplePreparation = {{assay::Matrix::Turbid, u"Filter it."_s}};
    full.derived = {
        {u"bound"_s, u"Bound acid"_s, {{{}, u"example-acid"_s, 1.5}, {u"free-acid"_s, u"acid"_s, -1}}}};
    full.extrapolate = assay::Extrapolation{u"A2"_s, 4};
    full.measurands[0].typicalRange_g_per_L = assay::Interval{0.5, 12};
    QTextBrowser page;
    const auto unknown = [](const QString &) -> const assay::Method * { return nullptr; };
    page.setHtml(ui::methodHtml(theme, full, unknown));
    const QString text = page.toPlainText();
    for (const QString &part : {u"Wear goggles."_s,
                                u"made up for the tests"_s,
                                u"<b>One</b> NADH each"_s,
                                u"Acid -> base"_s,
                                u"Example acid"_s,
                                u"100 g/mol"_s,
                                u"1 NADH per molecule"_s,
                                u"A2 \u2212 A1"_s,
                                u"usually 0.5 to 12 g/L"_s,
                                u"1.5 \u00d7 Example acid \u2212 acid by free-acid"_s,
                                u"1 mL"_s,
                                u"0.05 to 0.5 mL allowed"_s,
                                u"suspension: swirl before use"_s,
                                u"add 1 mL buffer pH 9"_s,
                                u"mix"_s,
                                u"wait 3 to 10 min"_s,
                                u"read A1"_s,
                                u"last 4 readings"_s,
                                u"NADH, made by the reaction"_s,
                                u"340 nm"_s,
                                u"10 mm"_s,
                                u"6300 L/(mol cm) at 340 nm"_s,
                                u"0.1 to 1"_s,
                                u"95 to 105 %"_s,
                                u"r = 0.01 g/L + 3 % of the mean"_s,
                                u"2 % in an hour"_s,
                                u"Filter it."_s,
                                u"Turbid"_s,
                                u"Tannins."_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString() << "\n" << text.toStdString();
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    page.setHtml(ui::methodHtml(theme, full, unknown));
    for (const QString &part : {u"1,5 \u00d7 Example acid"_s, u"0,1 to 1"_s, u"usually 0,5 to 12 g/L"_s})
        EXPECT_TRUE(page.toPlainText().contains(part)) << part.toStdString();
    QLocale::setDefault(QLocale::c());
    assay::Method other = method();
    other.id = u"free-acid"_s;
    other.name = u"Free acid by itself"_s;
    other.measurands[0].id = u"acid"_s;
    other.measurands[0].name = u"The free acid"_s;
    page.setHtml(ui::methodHtml(theme, full, [&other](const QString &id) { return id == other.id ? &other : nullptr; }));
    EXPECT_TRUE(page.toPlainText().contains(u"1.5 \u00d7 Example acid \u2212 The free acid by Free acid by itself"_s));
}

class MethodsWindow : public WindowBench
{
protected:
    void open()
    {
        openWindow();
        press(Qt::Key_M, Qt::ControlModifier);
        QApplication::processEvents();
    }
    void nameBench()
    {
        QLineEdit *person = find<QLineEdit>(u"person"_s);
        person->setFocus();
        type(u"R. Okafor"_s);
        press(Qt::Key_Return);
    }
    /// A button that is pressed by its letter stays down for a moment before it acts.
    void pressLetter(Qt::Key key)
    {
        press(key, Qt::AltModifier);
        EXPECT_TRUE(QTest::qWaitFor([this] {
            const auto buttons = window->findChildren<QPushButton *>();
            return std::none_of(buttons.begin(), buttons.end(),
                                [](auto *button) { return button->isDown(); });
        }));
    }
    QString importOf(const assay::Method &method)
    {
        return writeFile(u"other.json"_s, exchange::writeMethod(method));
    }
    void importByKeys(const QString &path)
    {
        dialogs.nextFile = path;
        pressLetter(Qt::Key_I);
    }
    QAbstractItemModel &model(const QString &name) const { return *find<QAbstractItemView>(name)->model(); }
};

TEST_F(MethodsWindow, ListOpensByKeysAndAMethodIsRead)
{
    open();
    EXPECT_EQ(focusName(), u"methods"_s);
    EXPECT_EQ(shown(model(u"methods"_s), 0, 0), u"Example acid"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(focusName(), u"methodPage"_s);
    EXPECT_EQ(labelText(u"methodTitle"_s), u"Example acid"_s);
    EXPECT_EQ(labelText(u"methodSubtitle"_s), u"Version 1, in use, shipped with the program; runs: 0"_s);
    EXPECT_TRUE(find<QTextBrowser>(u"methodPage"_s)->toPlainText().contains(u"add 1 mL buffer pH 9"_s));
    press(Qt::Key_Escape);
    EXPECT_EQ(focusName(), u"methods"_s);
}

TEST_F(MethodsWindow, SideListLeadsThereAndIsMarked)
{
    open();
    const auto *places = find<QAbstractItemView>(u"places"_s);
    EXPECT_EQ(places->currentIndex().data().toString(), u"Methods"_s);
}

TEST_F(MethodsWindow, MethodIsRetiredAndReinstatedWithAReason)
{
    open();
    nameBench();
    press(Qt::Key_M, Qt::ControlModifier);
    press(Qt::Key_Return);
    pressLetter(Qt::Key_I); // no reason yet
    EXPECT_TRUE(noticeText().contains(u"needs a reason"_s)) << noticeText().toStdString();
    EXPECT_TRUE(book->methods().empty());
    ASSERT_EQ(focusName(), u"methodReason"_s);
    type(u"the kit is gone"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->methods().size(), 1U);
    EXPECT_TRUE(book->methods()[0].retired);
    EXPECT_EQ(book->methods()[0].acts[0].person, u"R. Okafor"_s);
    EXPECT_EQ(book->methods()[0].acts[0].note, u"the kit is gone"_s);
    EXPECT_TRUE(labelText(u"methodSubtitle"_s).contains(u"retired"_s));
    EXPECT_TRUE(find<QLineEdit>(u"methodReason"_s)->text().isEmpty());
    EXPECT_EQ(find<QPushButton>(u"methodStateChange"_s)->text(), u"Re&instate"_s);
    find<QLineEdit>(u"methodReason"_s)->setFocus();
    type(u"a new kit"_s);
    press(Qt::Key_Return);
    EXPECT_FALSE(book->methods()[0].retired);
    pressLetter(Qt::Key_Y);
    const QAbstractItemModel &acts = model(u"methodActs"_s);
    ASSERT_EQ(acts.rowCount(), 3);
    EXPECT_TRUE(shown(acts, 0, 0).endsWith(u"reinstated by R. Okafor: a new kit"_s));
    EXPECT_TRUE(shown(acts, 1, 0).endsWith(u"retired by R. Okafor: the kit is gone"_s));
    EXPECT_EQ(shown(acts, 2, 0), u"Shipped with the program"_s);
}

TEST_F(MethodsWindow, NobodyAtTheBenchIsAskedFirst)
{
    open();
    importByKeys(importOf(withBuffer(method(), 2)));
    EXPECT_TRUE(noticeText().contains(u"First say who is at the bench"_s));
    EXPECT_EQ(focusName(), u"person"_s);
    EXPECT_TRUE(book->methods().empty());
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(noticeText(), QString()) << "that was answered";
    importByKeys(importOf(withBuffer(method(), 2)));
    EXPECT_EQ(book->methods().size(), 1U);
}

TEST_F(MethodsWindow, NobodyAtTheBenchIsAskedBeforeAMethodIsSaved)
{
    open();
    press(Qt::Key_Return);
    pressLetter(Qt::Key_C);
    type(u"Our acid"_s);
    pressLetter(Qt::Key_S);
    ASSERT_EQ(focusName(), u"methodNote"_s);
    type(u"a name of our own"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(noticeText().contains(u"First say who is at the bench"_s)) << noticeText().toStdString();
    ASSERT_EQ(focusName(), u"person"_s);
    type(u"R. Okafor"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(noticeText(), QString());
    ASSERT_EQ(focusName(), u"methodNote"_s) << "and back to where it was";
    press(Qt::Key_Return);
    ASSERT_EQ(book->methods().size(), 1U);
    EXPECT_EQ(book->methods()[0].acts[0].note, u"a name of our own"_s);
}

TEST_F(MethodsWindow, RunFileThatNamesOneOfTwoMethodsIsRefusedWithBoth)
{
    book->importMethod(withBuffer(method(), 3), u"other.json"_s, u"R. Okafor"_s, library.methods());
    open();
    nameBench();
    dialogs.nextFile = writeFile(u"run.json"_s, exchange::writeRun(exampleRun()));
    press(Qt::Key_O, Qt::ControlModifier);
    const QAbstractItemModel &problems = model(u"fileProblems"_s);
    ASSERT_EQ(problems.rowCount(), 1);
    const QString said = shown(problems, 0, 0);
    EXPECT_TRUE(said.contains(u"2 methods with the id \"example-acid\" are in use: version 1, "_s))
        << said.toStdString();
    EXPECT_TRUE(said.contains(u"version 1, shipped with the program ("_s)) << said.toStdString();
    EXPECT_TRUE(said.contains(u"version 1, imported from other.json on "_s)) << said.toStdString();
    EXPECT_TRUE(book->runs().empty());

    book->retireMethod(withBuffer(method(), 3), u"R. Okafor"_s, u"taken in by mistake"_s);
    window.reset();
    openWindow();
    nameBench();
    press(Qt::Key_O, Qt::ControlModifier);
    ASSERT_EQ(book->runs().size(), 1U);
    EXPECT_EQ(book->load(book->runs()[0].id).method, method());
}

TEST_F(MethodsWindow, ImportOfOtherContentShowsWhatDiffers)
{
    open();
    nameBench();
    press(Qt::Key_M, Qt::ControlModifier);
    importByKeys(importOf(withBuffer(method(), 2)));
    EXPECT_TRUE(noticeText().contains(u"kept apart"_s)) << noticeText().toStdString();
    ASSERT_EQ(book->methods().size(), 1U);
    EXPECT_EQ(book->methods()[0].acts[0].fileName, u"other.json"_s);
    EXPECT_EQ(focusName(), u"methodVersions"_s);
    EXPECT_EQ(model(u"methodVersions"_s).rowCount(), 2);
    const QAbstractItemModel &differences = model(u"methodDifferences"_s);
    ASSERT_EQ(differences.rowCount(), 1);
    EXPECT_EQ(shown(differences, 0, 0), u"Volume of Buffer pH 9"_s);
    EXPECT_EQ(shown(differences, 0, 1), u"1 mL"_s);
    EXPECT_EQ(shown(differences, 0, 2), u"2 mL"_s);
    const QString before = labelText(u"methodSubtitle"_s);
    press(Qt::Key_Return); // opens the other one
    EXPECT_NE(labelText(u"methodSubtitle"_s), before);
    EXPECT_TRUE(labelText(u"methodSubtitle"_s).contains(u"shipped with the program"_s));
}

TEST_F(MethodsWindow, ImportOfWhatIsThereOrOfNoMethodStoresNothing)
{
    open();
    nameBench();
    press(Qt::Key_M, Qt::ControlModifier);
    importByKeys(importOf(method()));
    EXPECT_TRUE(noticeText().contains(u"Nothing was stored"_s)) << noticeText().toStdString();
    press(Qt::Key_Escape);
    importByKeys(writeFile(u"run.json"_s, exchange::writeRun(exampleRun())));
    EXPECT_TRUE(noticeText().contains(u"expected the format"_s)) << noticeText().toStdString();
    importByKeys(folder.filePath(u"absent.json"_s));
    EXPECT_TRUE(noticeText().contains(u"there is no such file"_s)) << noticeText().toStdString();
    EXPECT_TRUE(book->methods().empty());
}

TEST_F(MethodsWindow, ExportedFileReadsBackTheSame)
{
    open();
    press(Qt::Key_Return);
    dialogs.nextFile = folder.filePath(u"out.json"_s);
    pressLetter(Qt::Key_X);
    QFile file(dialogs.nextFile);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(exchange::readMethod(file.readAll()).value, method());
    dialogs.nextFile = folder.filePath(u"nowhere/out.json"_s);
    pressLetter(Qt::Key_X);
    EXPECT_TRUE(noticeText().contains(u"could not be written"_s)) << noticeText().toStdString();
    dialogs.nextFile.clear(); // thought better of it
    pressLetter(Qt::Key_X);
    EXPECT_TRUE(noticeText().contains(u"could not be written"_s));
}

TEST_F(MethodsWindow, ChangedMethodIsSavedAsTheNextVersion)
{
    open();
    nameBench();
    press(Qt::Key_M, Qt::ControlModifier);
    press(Qt::Key_Return);
    pressLetter(Qt::Key_C);
    QLineEdit *name = find<QLineEdit>(u"methodName"_s);
    ASSERT_NE(name, nullptr);
    name->setFocus();
    name->selectAll();
    type(u"Example acid, our volumes"_s);
    pressLetter(Qt::Key_S);
    ASSERT_EQ(focusName(), u"methodNote"_s) << noticeText().toStdString();
    type(u"the volumes of the new kit"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(book->methods().size(), 1U) << noticeText().toStdString();
    EXPECT_EQ(book->methods()[0].method.version, 2);
    EXPECT_EQ(book->methods()[0].method.name, u"Example acid, our volumes"_s);
    EXPECT_EQ(book->methods()[0].acts[0].person, u"R. Okafor"_s);
    EXPECT_EQ(labelText(u"methodTitle"_s), u"Example acid, our volumes"_s);
    EXPECT_TRUE(noticeText().contains(u"Example acid, our volumes, version 2, is saved."_s))
        << noticeText().toStdString();
    pressLetter(Qt::Key_Y);
    EXPECT_TRUE(
        shown(model(u"methodActs"_s), 0, 0).endsWith(u"saved by R. Okafor: the volumes of the new kit"_s));
    pressLetter(Qt::Key_S);
    EXPECT_EQ(shown(model(u"methodVersions"_s), 0, ui::MethodsModel::Note), u"the volumes of the new kit"_s);
    EXPECT_EQ(shown(model(u"methodVersions"_s), 1, ui::MethodsModel::Note), QString());
    press(Qt::Key_Escape);
    ASSERT_EQ(model(u"methods"_s).rowCount(), 2);
    EXPECT_EQ(shown(model(u"methods"_s), 1, ui::MethodsModel::Standing), u"earlier version"_s);

    press(Qt::Key_N, Qt::ControlModifier);
    const QComboBox *choice = find<QComboBox>(u"method"_s);
    ASSERT_EQ(choice->count(), 1) << "the newest version is what a new run is offered";
    EXPECT_EQ(choice->itemText(0), u"Example acid, our volumes, version 2"_s);
}

TEST_F(MethodsWindow, ADerivedResultIsSaidToComeAndThenStandsBesideTheMeasured)
{
    assay::Method free = method();
    free.id = u"free-acid"_s;
    assay::Method total = method();
    total.id = u"total-acid"_s;
    total.derived = {
        {u"bound"_s, u"Bound acid"_s, {{{}, u"example-acid"_s, 1}, {u"free-acid"_s, u"example-acid"_s, -1}}}};
    const auto run = [](const assay::Method &of, double risen) {
        run::Run made = exampleRun();
        made.method = of.id;
        for (run::Tube &tube : made.tubes) {
            const double rise = tube.role == run::Role::Blank ? 0.01 : risen;
            tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.1 + rise}};
        }
        return made;
    };
    book->addRun(run(total, 0.51), total, u"R. Okafor"_s);
    openWindow(); // at the review that is next
    const auto said = [this](const QString &fragment) {
        const QAbstractItemModel &checks = model(u"aboutResult"_s);
        for (int row = 0; row < checks.rowCount(); ++row) {
            if (checks.index(row, 0).data().toString().contains(fragment))
                return true;
        }
        return false;
    };
    EXPECT_EQ(model(u"results"_s).rowCount(), 1);
    EXPECT_TRUE(said(u"Bound acid is worked out as soon as a run by free-acid"_s)) << "nobody knows its name";
    const auto named = ui::derivedToCome(total, {}, {{u"free-acid"_s, free.name}});
    ASSERT_EQ(named.size(), 1U);
    EXPECT_TRUE(named[0].text.contains(u"a run by %1 with"_s.arg(free.name))) << named[0].text.toStdString();
    window.reset();

    const notebook::RunId other = book->addRun(run(free, 0.21), free, u"R. Okafor"_s);
    book->decide(other, notebook::DecisionKind::Accepted, u"R. Okafor"_s, {});
    openWindow(); // at the review that is next
    ASSERT_EQ(model(u"results"_s).rowCount(), 2);
    EXPECT_EQ(shown(model(u"results"_s), 1, ui::ResultsModel::Measurand), u"Bound acid"_s);
    // (0.50 - 0.20) x 0.33651 g/L
    EXPECT_TRUE(shown(model(u"results"_s), 1, ui::ResultsModel::Value).startsWith(u"0.10"_s))
        << shown(model(u"results"_s), 1, ui::ResultsModel::Value).toStdString();
    EXPECT_FALSE(said(u"worked out as soon as"_s));
}

TEST_F(MethodsWindow, ResultsOfATemplateSaySoWhereverTheyAreRead)
{
    run::Run run = exampleRun();
    for (run::Tube &tube : run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.61}};
    const auto decided = [&](assay::Method used) {
        used.id = u"acid-"_s + used.name.left(3).toLower();
        run.method = used.id;
        const notebook::RunId id = book->addRun(run, used, u"R. Okafor"_s);
        book->decide(id, notebook::DecisionKind::Accepted, u"R. Okafor"_s, {});
        return id;
    };
    assay::Method pattern = method();
    pattern.name = u"Pear acid (template)"_s;
    decided(pattern);
    run.method = pattern.id;
    book->addRun(run, pattern, u"R. Okafor"_s);
    openWindow(); // at the review that is next
    const QString mark =
        u"Made with a template whose volumes nobody confirmed: Pear acid (template), version 1."_s;
    EXPECT_EQ(labelText(u"templateText"_s), mark);
    press(Qt::Key_B, Qt::ControlModifier);
    press(Qt::Key_Return); // from the search to the list
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"verdict"_s), u"Not every check could be made"_s);
    EXPECT_EQ(labelText(u"templateText"_s), mark);
    window.reset();

    decided(method());
    openWindow();
    press(Qt::Key_B, Qt::ControlModifier);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"verdict"_s), u"Not every check could be made"_s);
    EXPECT_FALSE(window->findChildren<QLabel *>(u"templateText"_s).isEmpty());
    for (const auto *text : window->findChildren<QLabel *>(u"templateText"_s))
        EXPECT_FALSE(text->isVisible()) << text->text().toStdString();
}

TEST_F(MethodsWindow, UnchangedMethodIsNotSavedAgain)
{
    open();
    nameBench();
    press(Qt::Key_M, Qt::ControlModifier);
    press(Qt::Key_Return);
    pressLetter(Qt::Key_C);
    pressLetter(Qt::Key_S);
    EXPECT_EQ(noticeText(), u"There is nothing to save: version 1 says exactly this."_s);
    EXPECT_EQ(labelText(u"methodSummary"_s), noticeText());
    EXPECT_TRUE(book->methods().empty());
}

TEST_F(MethodsWindow, WhatIsTypedStaysWhileTheWindowIsElsewhere)
{
    open();
    pressLetter(Qt::Key_W); // a new one
    type(u"Own acid"_s);
    EXPECT_EQ(find<QLineEdit>(u"methodName"_s)->text(), u"Own acid"_s);
    press(Qt::Key_B, Qt::ControlModifier);
    press(Qt::Key_M, Qt::ControlModifier);
    EXPECT_EQ(find<QLineEdit>(u"methodName"_s)->text(), u"Own acid"_s);
    dialogs.answer = false; // stay
    EXPECT_FALSE(window->close());
    ASSERT_EQ(dialogs.questions.size(), 1);
    EXPECT_TRUE(dialogs.questions[0].contains(u"A method that is not saved yet"_s));
}

TEST_F(MethodsWindow, EmptySearchSaysWhatToDo)
{
    open();
    pressLetter(Qt::Key_D);
    ASSERT_EQ(focusName(), u"methodsFilter"_s);
    type(u"zzz"_s);
    EXPECT_TRUE(labelText(u"methodsEmpty"_s).contains(u"No method contains all of these words"_s));
}

} // namespace
} // namespace plateau::test
