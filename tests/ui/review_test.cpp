// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/format.h"
#include "tests/ui/reviewbench.h"
#include "ui/bench/repeathow.h"
#include "ui/bench/resultsmodel.h"
#include "ui/bench/reviewbasis.h"
#include "ui/bench/reviewedresult.h"
#include "ui/shared/barchart.h"
#include "ui/shared/pointchart.h"
#include "ui/shared/sentencelist.h"

#include <QAction>
#include <QComboBox>
#include <QScrollBar>
#include <QTabWidget>

namespace plateau::test {
namespace {

using Column = ui::ResultsModel::Column;

constexpr auto product = "perry"_L1;

/// Review as it is read: verdict, results, what they are held against, what each rests on.
class Review : public Decisions
{
protected:
    /// The results' product is "perry", of the run as well as of its limits.
    RunId addPlanned(const run::Run &run, const assay::Method &by)
    {
        planning::PlanRecord plan;
        for (const run::Sample &sample : run.samples) {
            planning::PlannedSample planned;
            planned.sample.id = sample.id;
            planned.sample.product = product;
            plan.samples.push_back(planned);
        }
        return book->addRun(run, by, u"R. Okafor"_s, plan);
    }
    void openReviewOf(const run::Run &run) { openReviewOf(run, method()); }
    void openReviewOf(const run::Run &run, const assay::Method &by)
    {
        id = addPlanned(run, by);
        openWindow();
        press(Qt::Key_3, Qt::ControlModifier);
    }
    void saveLimit(double upper_mg_per_L)
    {
        evaluation::Specification limit;
        limit.product = product;
        limit.measurand = u"Example acid"_s;
        limit.upper = upper_mg_per_L;
        limit.unit = evaluation::ReportUnit::MilligramPerLitre;
        limit.source = u"house specification 4"_s;
        limit.date = QDate(2026, 2, 1);
        book->saveSpecifications({limit}, u"M. Lindqvist"_s, u"as agreed"_s);
    }
    void saveUnit(evaluation::ReportUnit unit)
    {
        planning::Laboratory laboratory = planning::usualLaboratory();
        laboratory.reportUnits = {{product, {}, unit}};
        book->saveLaboratory(laboratory, u"M. Lindqvist"_s);
    }
    /// With a standard of 0.2 g/L that is found with this recovery.
    static run::Run withStandard(double recovery)
    {
        run::Run run = runOf({good});
        run.standards = {{u"House standard"_s, 0.2, {}, {}, {}, 0}};
        run::Tube standard;
        standard.role = run::Role::Standard;
        standard.standard = run.standards[0].id;
        standard.readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.11 + 0.2 / exampleFactor_g_per_L * recovery}};
        run.tubes.push_back(standard);
        return run;
    }
    QString result(int row, int column) const
    {
        return find<QTableView>(u"results"_s)->model()->index(row, column).data().toString();
    }
    QString check(int row, int column) const
    {
        return find<QTableView>(u"checks"_s)->model()->index(row, column).data().toString();
    }
    QStringList said() const
    {
        QStringList lines;
        for (const ui::Sentence &sentence : find<ui::SentenceList>(u"aboutResult"_s)->sentences().rows())
            lines << sentence.text;
        return lines;
    }
    std::vector<double> recoveriesShown() const
    {
        std::vector<double> values;
        for (const auto &point : find<ui::PointChart>(u"recoveryHistory"_s)->history().points)
            values.push_back(point.value);
        return values;
    }
    std::vector<ui::BarChart::Bar> budget() const
    {
        for (ui::BarChart *chart : window->findChildren<ui::BarChart *>(u"budget"_s)) {
            if (chart->parentWidget()->parentWidget()->isVisible())
                return chart->bars();
        }
        return {};
    }
    /// The record that opens when a run is decided is on show.
    void expectLocked()
    {
        EXPECT_TRUE(find<QPushButton>(u"reopenRun"_s));
        for (const QString &name : {u"acceptRun"_s, u"rejectRun"_s, u"readingEntry"_s}) {
            for (const QWidget *widget : window->findChildren<QWidget *>(name))
                EXPECT_FALSE(widget->isVisible()) << name.toStdString();
        }
    }
    void reopenFor(const QString &reason)
    {
        press(Qt::Key_E, Qt::AltModifier);
        ASSERT_EQ(focusName(), u"reopenReason"_s);
        press(Qt::Key_A, Qt::ControlModifier);
        type(reason);
        press(Qt::Key_Return);
    }
};

TEST_F(Review, AGoodRunIsSaidToBeGood)
{
    openReviewOf(withStandard(1));
    EXPECT_EQ(labelText(u"verdict"_s), u"All results are reportable"_s);
    EXPECT_EQ(labelText(u"failures"_s), u"Every check passed."_s);
    EXPECT_EQ(check(0, 1), u"passed"_s);
    EXPECT_EQ(result(0, Column::Verdict), u"reportable"_s);
    EXPECT_TRUE(find<QTableView>(u"results"_s)->isColumnHidden(Column::Limits)) << "there are no limits";
}

TEST_F(Review, ARunWithoutTheStandardThatItsMethodJudgesIsNotSaidToBeGood)
{
    openReviewOf(runOf({good}));
    EXPECT_EQ(labelText(u"verdict"_s), u"Not every check could be made"_s);
    EXPECT_EQ(labelText(u"failures"_s),
              u"No check failed. Not made, though the method asks for it: recovery of the standard."_s);
    EXPECT_EQ(check(0, 0), u"Recovery of the standard"_s);
    EXPECT_EQ(check(0, 1), u"not made"_s);
    EXPECT_EQ(check(0, 3), u"95 to 105\u00a0%"_s);
    EXPECT_EQ(said().front(), u"No check failed for this result."_s) << "more is not known of it";
    EXPECT_TRUE(said().at(1).startsWith(u"No standard was measured"_s)) << said().at(1).toStdString();
}

TEST_F(Review, ASampleThatWentInAsItIsIsCalledUndilutedAndItsSpreadHasTheUnitOfItsResult)
{
    run::Run run = runOf({{u"P-1"_s, 0.5, 0.51}, {u"P-2"_s}});
    run.samples[1].dilution = {{5, 50}};
    openReviewOf(run);
    EXPECT_EQ(result(0, Column::Dilution), u"undiluted"_s);
    EXPECT_EQ(result(1, Column::Dilution), u"10-fold"_s);
    EXPECT_FALSE(result(0, Column::Spread).contains(u"g/L"_s)) << result(0, Column::Spread).toStdString();
    const QModelIndex spread = find<QTableView>(u"results"_s)->model()->index(0, Column::Spread);
    EXPECT_EQ(spread.data(Qt::AccessibleTextRole).toString(), result(0, Column::Spread) + u"\u00a0g/L"_s);
}

TEST_F(Review, TheSpreadStandsInTheUnitOfTheResultWhateverThatIs)
{
    id = addPlanned(runOf({good}), method());
    ui::ReviewBasis basis;
    basis.laboratory.reportUnits = {{product, {}, evaluation::ReportUnit::MilligramPerLitre}};
    evaluation::Result result;
    result.sample = good.sample;
    result.measurand = method().measurands[0].id;
    result.unit = u"g/L"_s;
    result.n = 2;
    result.spread = 0.012;
    const auto shown = [&] { return ui::reviewed(book->load(id), {}, result, basis); };
    for (const double value_g_per_L : {0.25, 0.0, -0.01}) {
        result.value = value_g_per_L;
        EXPECT_EQ(shown().unit, evaluation::ReportUnit::MilligramPerLitre);
        EXPECT_EQ(shown().spread, u"12"_s) << value_g_per_L;
    }
    result.lessThan = 0.02;
    EXPECT_EQ(shown().spread, u"12"_s) << "of what is too little to have a value";
}

TEST_F(Review, TheUnitOfTheProductStandsEverywhereOnThePage)
{
    saveUnit(evaluation::ReportUnit::MilligramPerLitre);
    openReviewOf(runOf({apart}));
    EXPECT_TRUE(result(0, Column::Value).endsWith(u"mg/L"_s)) << result(0, Column::Value).toStdString();
    const auto *checks = find<QTableView>(u"checks"_s)->model();
    for (int row = 0; row < checks->rowCount(); ++row) {
        for (int column = 0; column < checks->columnCount(); ++column)
            EXPECT_FALSE(check(row, column).contains(u"\u00a0g/L"_s)) << check(row, column).toStdString();
    }
    bool inMilligrams = false;
    for (const QString &line : said()) {
        EXPECT_FALSE(line.contains(u"\u00a0g/L"_s)) << line.toStdString();
        inMilligrams |= line.contains(u"mg/L apart"_s);
    }
    EXPECT_TRUE(inMilligrams);
}

TEST_F(Review, ARepeatInTheRackSettlesWhatItRepeats)
{
    run::Run run = withStandard(1);
    for (run::Tube &tube : run.tubes) {
        if (tube.role == run::Role::Sample)
            tube.readings[u"A2"_s] = 1.6;
    }
    run::Sample repeat = run.samples[0];
    repeat.repeats = repeat.id;
    repeat.id += u", 10-fold"_s;
    repeat.dilution = {{10, 100, {}}};
    run.samples.push_back(repeat);
    for (int replicate = 0; replicate < 2; ++replicate) {
        run::Tube tube;
        tube.sample = repeat.id;
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.25}};
        run.tubes.push_back(tube);
    }
    openReviewOf(run);
    EXPECT_EQ(labelText(u"verdict"_s), u"All are reportable, 1 by a repeat in the rack"_s);
    EXPECT_EQ(result(0, Column::Verdict), u"repeated"_s);
    EXPECT_EQ(result(1, Column::Verdict), u"reportable"_s);
}

TEST_F(Review, WhatFailedIsSaidFirstAndWithItsLimit)
{
    openReviewOf(runOf({good, apart, high}));
    EXPECT_EQ(labelText(u"verdict"_s), u"1 to investigate and 1 to repeat, of 3"_s);
    EXPECT_TRUE(labelText(u"failures"_s).contains(u"checks failed: "_s))
        << labelText(u"failures"_s).toStdString();
    EXPECT_EQ(check(0, 1), u"failed"_s);
    EXPECT_TRUE(check(0, 0).contains(u"P-3"_s)) << check(0, 0).toStdString();
    EXPECT_TRUE(check(0, 2).endsWith(u"g/L"_s)) << "what was found";
    EXPECT_TRUE(check(0, 3).contains(u"g/L"_s)) << "its limit";
    EXPECT_EQ(check(0, 4), u"method"_s) << "where the limit comes from";
    EXPECT_FALSE(labelText(u"checkText"_s).isEmpty()) << "what to do, without being asked for";
}

TEST_F(Review, SixResultsAreReadBeforeTheTableScrollsAndSamplesAreFoldedUntilOneNeedsADecision)
{
    openReviewOf(runOf({good, {u"P-2"_s}, {u"P-3"_s}, {u"P-4"_s}, {u"P-5"_s}, {u"P-6"_s}}));
    EXPECT_FALSE(find<QPushButton>(u"bySample"_s)->isChecked());
    window->resize(1280, 800);
    const auto *results = find<QTableView>(u"results"_s);
    ASSERT_EQ(results->model()->rowCount(), 6);
    (void)QTest::qWaitFor([&] { return results->verticalScrollBar()->maximum() == 0; });
    EXPECT_EQ(results->verticalScrollBar()->maximum(), 0);
}

TEST_F(Review, ResultsStandInTheUnitOfTheirProductAgainstItsLimit)
{
    saveUnit(evaluation::ReportUnit::MilligramPerLitre);
    saveLimit(100); // 168 mg/L is found
    openReviewOf(runOf({good}));
    EXPECT_TRUE(result(0, Column::Value).startsWith(u"168."_s)) << result(0, Column::Value).toStdString();
    EXPECT_TRUE(result(0, Column::Value).endsWith(u"mg/L"_s)) << result(0, Column::Value).toStdString();
    EXPECT_EQ(result(0, Column::Limits), u"outside"_s);
    EXPECT_EQ(labelText(u"limitsText"_s), u"Against the limits of the products: outside: P-1."_s);
    const QString sentences = said().join(u'\n');
    EXPECT_TRUE(sentences.contains(u"house specification 4, 2026-02-01"_s)) << sentences.toStdString();
    EXPECT_TRUE(sentences.contains(u"at most 100"_s)) << sentences.toStdString();
    EXPECT_FALSE(sentences.contains(u"legal"_s) || sentences.contains(u"safe"_s));
}

TEST_F(Review, ADecidedRunShowsTheLimitAndTheUnitOfItsTime)
{
    saveUnit(evaluation::ReportUnit::MilligramPerLitre);
    saveLimit(100);
    openReviewOf(runOf({good}));
    giveName();
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    saveUnit(evaluation::ReportUnit::GramPerLitre);
    saveLimit(500);
    window.reset();
    openWindow();
    giveName();
    press(Qt::Key_B, Qt::ControlModifier);
    tabTo(u"runs"_s);
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    EXPECT_TRUE(result(0, Column::Value).endsWith(u"mg/L"_s)) << result(0, Column::Value).toStdString();
    EXPECT_EQ(result(0, Column::Limits), u"outside"_s);
    reopenFor(u"look again"_s);
    ASSERT_FALSE(isDecided());
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_FALSE(result(0, Column::Value).contains(u"mg/L"_s)) << "on the bench it is what holds now";
    EXPECT_EQ(result(0, Column::Limits), u"inside"_s);
}

TEST_F(Review, TheRecordShowsTheRecoveryAmongItsHistoryUpToThen)
{
    const RunId earlier = addPlanned(withStandard(0.98), method());
    book->decide(earlier, DecisionKind::Accepted, u"M. Lindqvist"_s, {});
    openReviewOf(withStandard(1.02));
    const std::vector<double> atReview = recoveriesShown();
    ASSERT_EQ(atReview.size(), 2U);
    EXPECT_NEAR(atReview[0], 98, 0.01);
    EXPECT_NEAR(atReview[1], 102, 0.01) << "the newest last";
    EXPECT_EQ(find<ui::PointChart>(u"recoveryHistory"_s)->history().lower, 95);
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    EXPECT_EQ(recoveriesShown(), atReview);
}

TEST_F(Review, ADerivedResultHasItsCalculationAndItsBudget)
{
    QByteArray text = exampleMethod();
    text.replace("\"window\"", R"("derived": [{"id": "example-salt", "name": "Example salt",
                 "terms": [{"measurand": "example-acid", "factor": 1.5}]}], "window")");
    const auto read = exchange::readMethod(text);
    ASSERT_TRUE(read.value);
    openReviewOf(runOf({good}), *read.value);
    ASSERT_EQ(find<QTableView>(u"results"_s)->model()->rowCount(), 2);
    EXPECT_EQ(result(1, Column::Measurand), u"Example salt"_s);
    const auto acidBudget = budget();
    find<QTableView>(u"results"_s)->setFocus();
    press(Qt::Key_Down);
    const evaluation::Evaluation evaluation = evaluationOf(book->load(id));
    const evaluation::Result &salt = evaluation.results[1];
    EXPECT_NEAR(*salt.value, 1.5 * 0.5 * exampleFactor_g_per_L, 1e-9);
    EXPECT_NEAR(*salt.expandedUncertainty, 1.5 * *evaluation.results[0].expandedUncertainty, 1e-9);
    EXPECT_TRUE(workingText().contains(u"example-salt"_s)) << workingText().toStdString();
    EXPECT_TRUE(workingText().contains(evaluation::significantText(1.5, 2))) << workingText().toStdString();
    ASSERT_EQ(budget().size(), salt.budget.size());
    ASSERT_FALSE(budget().empty());
    double all = 0;
    double before = 100;
    for (const ui::BarChart::Bar &bar : budget()) {
        EXPECT_LE(bar.value, before) << "largest first";
        before = bar.value;
        all += bar.value;
    }
    EXPECT_NEAR(all, 100, 1e-6);
    EXPECT_NEAR(budget()[0].value, acidBudget[0].value, 1e-6) << "one factor changes no share";
}

TEST_F(Review, ACalibratingStandardsOwnUncertaintyIsInTheBudget)
{
    run::Run run = withStandard(1);
    run.calibration = run::Calibration::Standard;
    run.standards[0].uncertainty_percent = 10;
    openReviewOf(run);
    ASSERT_FALSE(budget().empty());
    EXPECT_TRUE(budget()[0].label.contains(u"standard"_s)) << budget()[0].label.toStdString();
    EXPECT_GT(budget()[0].value, 90) << "10 % is more than anything else";
}

TEST_F(Review, ASampleIsRepeatedWithAnotherDilutionThanTheAdvisedOne)
{
    openReviewOf(runOf({good, high}));
    tabTo(u"sampleDecisions"_s);
    press(Qt::Key_Down); // P-2, to be repeated as advised
    type(u"50"_s);       // a digit begins how
    press(Qt::Key_Return);
    EXPECT_EQ(focusName(), u"sampleDecisions"_s);
    EXPECT_TRUE(labelText(u"decisionHappens"_s).contains(u"dilute 50-fold (1\u00a0mL to 50\u00a0mL)"_s))
        << labelText(u"decisionHappens"_s).toStdString();
    giveReason(u"P-2 is beyond the window"_s);
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    ASSERT_EQ(decision().samples.size(), 1U);
    ASSERT_TRUE(decision().samples[0].advice);
    EXPECT_EQ(decision().samples[0].advice->factor, 50);
    const auto waiting = book->shelf().waiting();
    ASSERT_EQ(waiting.size(), 1U);
    EXPECT_EQ(waiting[0].sample.id, u"P-2"_s);
    ASSERT_EQ(waiting[0].repeat->advice.size(), 1U);
    EXPECT_EQ(waiting[0].repeat->advice[0].advice.factor, 50);
    EXPECT_EQ(waiting[0].repeat->run, id) << "linked to the original";
}

TEST_F(Review, ADilutionThatCannotBeReadDecidesNothing)
{
    openReviewOf(runOf({good, high}));
    tabTo(u"sampleDecisions"_s);
    press(Qt::Key_Down);
    type(u"5 in 100"_s);
    press(Qt::Key_Return);
    giveReason(u"beyond the window"_s);
    decideAs(u"M. Lindqvist"_s);
    expectRefused(u"how P-2 is to be repeated cannot be read"_s);
    EXPECT_EQ(focusName(), u"sampleDecisions"_s);
    press(Qt::Key_Delete); // as advised again
    act(Qt::Key_A);
    ASSERT_TRUE(isDecided());
    EXPECT_EQ(decision().repeats, QStringList{u"P-2"_s});
    EXPECT_FALSE(decision().samples.at(0).advice);
}

TEST_F(Review, ARejectionTakesAReasonOfTheList)
{
    setRules(false, false, {u"spilt"_s, u"wrong flask"_s});
    openReviewOf(runOf({good}));
    decideAs(u"M. Lindqvist"_s, Qt::Key_J);
    expectRefused(u"needs a reason"_s);
    ASSERT_EQ(focusName(), u"decisionReason"_s);
    press(Qt::Key_Down); // offers them
    QWidget *popup = QApplication::activePopupWidget();
    ASSERT_NE(popup, nullptr);
    QTest::keyClick(popup, Qt::Key_Down);
    QTest::keyClick(popup, Qt::Key_Return);
    const QString chosen = find<QLineEdit>(u"decisionReason"_s)->text();
    EXPECT_TRUE(chosen == u"spilt"_s || chosen == u"wrong flask"_s) << chosen.toStdString();
    act(Qt::Key_J);
    ASSERT_TRUE(isDecided());
    EXPECT_EQ(decision().kind, DecisionKind::Rejected);
    EXPECT_EQ(decision().reason, chosen);
    EXPECT_EQ(labelText(u"verdict"_s), u"Rejected"_s);
    expectLocked();
}

TEST_F(Review, ADecidedRunIsLocked)
{
    openReviewOf(runOf({good}));
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    expectLocked();
    EXPECT_FALSE(window->findChild<QAction *>(u"actionRead"_s)->isEnabled());
    EXPECT_THROW(book->correctReading(id, 2, u"A2"_s, 0.7, u"0.7"_s, u"R. Okafor"_s, u"misread"_s), Failure);
    EXPECT_THROW(book->decide(id, DecisionKind::Rejected, u"M. Lindqvist"_s, u"second thoughts"_s), Failure);
}

TEST_F(Review, PuttingARunBackIsSignedOncePersonsAreSetUp)
{
    setPersons();
    setRules(true, false);
    id = addRun(runOf({good}));
    book->decide(id, {DecisionKind::Accepted, u"M. Lindqvist"_s, secret, {}, {}});
    openWindow();
    giveName(); // R. Okafor, an analyst
    press(Qt::Key_B, Qt::ControlModifier);
    tabTo(u"runs"_s);
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    expectLocked();
    EXPECT_EQ(find<QLineEdit>(u"reopenPassphrase"_s)->echoMode(), QLineEdit::Password);
    const auto passphrase = [this](const QString &typed) {
        find<QLineEdit>(u"reopenPassphrase"_s)->setFocus();
        type(typed);
        press(Qt::Key_Return);
    };
    reopenFor(u"tube 3 was misread"_s);
    EXPECT_TRUE(noticeText().contains(u"needs the passphrase"_s)) << noticeText().toStdString();
    ASSERT_EQ(focusName(), u"reopenPassphrase"_s);
    passphrase(u"wrong words altogether"_s);
    EXPECT_TRUE(noticeText().contains(u"This is not the passphrase"_s)) << noticeText().toStdString();
    EXPECT_TRUE(find<QLineEdit>(u"reopenPassphrase"_s)->text().isEmpty());
    EXPECT_EQ(find<QLineEdit>(u"reopenReason"_s)->text(), u"tube 3 was misread"_s);
    passphrase(secret);
    EXPECT_TRUE(noticeText().contains(u"a reviewer or a head decides here"_s)) << noticeText().toStdString();
    ASSERT_TRUE(isDecided());
    find<QLineEdit>(u"reopenPerson"_s)->setFocus();
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"M. Lindqvist"_s);
    passphrase(secret);
    ASSERT_FALSE(isDecided());
    EXPECT_EQ(book->load(id).reopenings.at(0).signedAs, PersonRole::Reviewer);
    EXPECT_TRUE(find<ui::SentenceList>(u"decisions"_s)
                    ->sentences()
                    .rows()
                    .back()
                    .text.contains(u"signed as reviewer"_s));
}

TEST_F(Review, RevisionOneStaysReadableWithItsOwnLimit)
{
    saveLimit(100);
    openReviewOf(runOf({good}));
    giveName();
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    reopenFor(u"tube 3 was misread"_s);
    ASSERT_FALSE(isDecided());
    saveLimit(500);
    book->correctReading(id, 2, u"A2"_s, 0.612, u"0.612"_s, u"R. Okafor"_s, u"misread"_s);
    press(Qt::Key_3, Qt::ControlModifier);
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    EXPECT_EQ(result(0, Column::Limits), u"inside"_s);
    press(Qt::Key_S, Qt::AltModifier);
    ASSERT_EQ(focusName(), u"revisions"_s);
    press(Qt::Key_Down);
    EXPECT_EQ(noticeText(), u"This is revision 1 as it was decided; revision 2 stands."_s);
    EXPECT_EQ(result(0, Column::Limits), u"outside"_s);
}

TEST_F(Review, NothingIsAskedWhereNothingWasTyped)
{
    openReviewOf(runOf({good, high}));
    EXPECT_TRUE(window->close());
    EXPECT_TRUE(dialogs.questions.isEmpty());
}

TEST_F(Review, AnUnfinishedDecisionIsAskedAboutBeforeTheWindowCloses)
{
    openReviewOf(runOf({good, {u"P-4"_s}}));
    press(Qt::Key_M, Qt::AltModifier);
    ASSERT_TRUE(waitFor([this] { return focusName() == u"sampleDecisions"_s; }));
    press(Qt::Key_W);
    giveReason(u"cloudy"_s);
    dialogs.answer = false;
    EXPECT_FALSE(window->close());
    ASSERT_EQ(dialogs.questions.size(), 1);
    EXPECT_TRUE(
        dialogs.questions[0].contains(u"Rack A, the decision, not taken yet: reason: cloudy, P-1: repeat"_s))
        << dialogs.questions[0].toStdString();
    EXPECT_EQ(find<QLineEdit>(u"decisionReason"_s)->text(), u"cloudy"_s);
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    EXPECT_TRUE(window->close());
    EXPECT_EQ(dialogs.questions.size(), 1) << "what is decided is not asked about";
}

struct HowCase {
    const char *typed;
    double factor;
    std::vector<run::DilutionStep> steps;
};

TEST(RepeatHow, IsReadAsItIsTyped)
{
    const HowCase cases[] = {
        {"20", 20, {{5, 100}}},
        {"20-fold", 20, {{5, 100}}},
        {"20 times", 20, {{5, 100}}},
        {"5 to 100", 20, {{5, 100}}},
        {" 5 mL  to 100 mL ", 20, {{5, 100}}},
        {"2,5 to 50", 20, {{2.5, 50}}},
        {"1 to 10 then 5 to 50", 100, {{1, 10}, {5, 50}}},
        {"1 to 10; 5 to 50", 100, {{1, 10}, {5, 50}}},
    };
    for (const HowCase &one : cases) {
        const ui::RepeatHow how = ui::repeatHow(QString::fromLatin1(one.typed));
        ASSERT_TRUE(how.advice) << one.typed << ": " << how.fault.toStdString();
        EXPECT_EQ(how.advice->kind, evaluation::Advice::Kind::Dilute);
        EXPECT_DOUBLE_EQ(how.advice->factor, one.factor) << one.typed;
        EXPECT_EQ(how.advice->steps.size(), one.steps.size()) << one.typed;
    }
    const ui::RepeatHow volume = ui::repeatHow(u"0,5 mL"_s);
    ASSERT_TRUE(volume.advice);
    EXPECT_EQ(volume.advice->kind, evaluation::Advice::Kind::IncreaseVolume);
    EXPECT_EQ(volume.advice->sampleVolume_mL, 0.5);
    const ui::RepeatHow advised = ui::repeatHow(u" "_s);
    EXPECT_FALSE(advised.advice);
    EXPECT_TRUE(advised.fault.isEmpty());
}

TEST(RepeatHow, WhatIsNoneSaysWhatWouldBeRight)
{
    for (const QString &typed :
         {u"a lot"_s, u"5 in 100"_s, u"100 to 5"_s, u"0"_s, u"1"_s, u"-20"_s, u"5 to"_s, u"0 mL"_s,
          u"5 to 100 to 1000"_s, u"1.5.2"_s, u"5 to 100 then"_s}) {
        const ui::RepeatHow how = ui::repeatHow(typed);
        EXPECT_FALSE(how.advice) << typed.toStdString();
        EXPECT_FALSE(how.fault.isEmpty()) << typed.toStdString();
    }
}

} // namespace
} // namespace plateau::test
