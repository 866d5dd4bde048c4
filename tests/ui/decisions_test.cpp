// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/controls.h"
#include "tests/ui/reviewbench.h"
#include "ui/bench/samplechoicesmodel.h"
#include "ui/books/reportedmodel.h"
#include "ui/shared/offerfield.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QComboBox>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>

using namespace Qt::StringLiterals;
using namespace plateau::notebook;

namespace plateau::test {
namespace {

class Choices : public Bench
{
protected:
    std::vector<ui::SampleChoiceRow> rowsOf(const run::Run &run)
    {
        return ui::startingChoices(run, evaluation::evaluate(method(), run));
    }
    ui::Theme theme;
};

TEST_F(Choices, StartWithWhatTheEvaluationSays)
{
    const auto rows = rowsOf(runOf({good, high, apart}));
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0].choice, ui::SampleChoice::AsRun);
    EXPECT_EQ(rows[1].choice, ui::SampleChoice::Repeat);
    EXPECT_EQ(rows[2].choice, ui::SampleChoice::Undecided);
    EXPECT_TRUE(rows[1].advice.startsWith(u"dilute "_s)) << rows[1].advice.toStdString();
    EXPECT_EQ(ui::whatHappens(rows, DecisionKind::Accepted),
              u"If the run is accepted: 1 sample(s) will be reported. 1 sample(s) will go back to those that "
              u"wait, to be repeated: %1. "
              "1 sample(s) will stay undecided."_s.arg(rows[1].advice));
    EXPECT_EQ(ui::whatHappens(rows, DecisionKind::Rejected),
              u"If the run is rejected: 1 sample(s) will go back to those that wait, to be repeated: %1. 2 "
              u"sample(s) will be "
              "rejected."_s.arg(rows[1].advice));
    ASSERT_EQ(ui::sampleDecisions(rows).size(), 1U) << "what follows the run is not said twice";
    EXPECT_EQ(ui::sampleDecisions(rows)[0].kind, SampleDecisionKind::Repeat);
    EXPECT_EQ(ui::undecidedSamples(rows), QStringList{u"P-3"_s});
}

TEST_F(Choices, WhatWasRepeatedInTheRackIsRejectedForThatReason)
{
    run::Run run = runOf({high, {u"P-2, 10-fold"_s, 0.3, 0.3}});
    run.samples[1].repeats = u"P-2"_s;
    const auto rows = rowsOf(run);
    EXPECT_EQ(rows[0].choice, ui::SampleChoice::Rejected);
    EXPECT_EQ(rows[0].reason, u"repeated in this rack as P-2, 10-fold"_s);
    EXPECT_EQ(rows[1].choice, ui::SampleChoice::AsRun);
}

TEST_F(Choices, KeepWhatSomebodyChoseWhileTheEvaluationChanges)
{
    auto before = rowsOf(runOf({good, high, apart}));
    before[2].choice = ui::SampleChoice::Rejected;
    before[2].reason = u"spilt"_s;
    before[2].touched = true;
    const auto after = ui::withKept(rowsOf(runOf({{u"P-1"_s, 1.5, 1.5}, {u"P-2"_s}, apart})), before);
    EXPECT_EQ(after[0].choice, ui::SampleChoice::Repeat) << "untouched: follows";
    EXPECT_EQ(after[1].choice, ui::SampleChoice::AsRun);
    EXPECT_EQ(after[2].choice, ui::SampleChoice::Rejected);
    EXPECT_EQ(after[2].reason, u"spilt"_s);
}

TEST_F(Choices, AreAModelThatIsEdited)
{
    using Model = ui::SampleChoicesModel;
    Model model(theme);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.show(rowsOf(runOf({good, high, apart})));
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    QSignalSpy edited(&model, &Model::edited);
    const auto at = [&](int row, int column) { return model.index(row, column); };
    EXPECT_EQ(at(0, Model::Choice).data(), u"as the run"_s);
    EXPECT_EQ(at(0, Model::Consequence).data(), u"reported"_s);
    EXPECT_EQ(at(2, Model::Consequence).data(), u"look into its checks, then decide"_s);
    EXPECT_FALSE(at(0, Model::Reason).flags() & Qt::ItemIsEditable);
    EXPECT_FALSE(model.setData(at(0, Model::Reason), u"why"_s, Qt::EditRole)) << "it would be lost";
    EXPECT_FALSE(model.setData(at(0, Model::Choice), 17, Qt::EditRole));
    EXPECT_EQ(edited.count(), 0);
    EXPECT_TRUE(model.setData(at(0, Model::Choice), int(ui::SampleChoice::Rejected), Qt::EditRole));
    EXPECT_EQ(at(0, Model::Reason).data(), u"say why"_s);
    EXPECT_TRUE(model.setData(at(0, Model::Reason), u" spilt  over "_s, Qt::EditRole));
    EXPECT_EQ(at(0, Model::Reason).data(), u"spilt over"_s);
    EXPECT_EQ(at(0, Model::Consequence).data(), u"not reported"_s);
    EXPECT_EQ(edited.count(), 2);
    EXPECT_EQ(changed.count(), 2);
}

TEST_F(Choices, ARepeatThatNobodyAdvisedIsMadeAsInTheRun)
{
    using Model = ui::SampleChoicesModel;
    Model model(theme);
    model.show(rowsOf(runOf({good, high})));
    for (const int row : {0, 1})
        model.choose(row, ui::SampleChoice::Repeat);
    EXPECT_EQ(model.index(0, Model::How).data(), u"as in this run"_s);
    EXPECT_EQ(model.index(1, Model::How).data(), u"as advised"_s);
}

TEST_F(Choices, AReportedResultIsAModelAndSentences)
{
    ui::ReportedModel model(theme);
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    SampleResults none = book->resultsOf(u"P-1"_s, u"example-acid"_s);
    model.show(none);
    EXPECT_EQ(model.rowCount(), 0);
    EXPECT_EQ(ui::reportedSentences(none)[0].text, u"No result of this sample is accepted yet."_s);
    for (const double signal : {0.5, 0.51})
        book->decide(addRun(runOf({{u"P-1"_s, signal, signal}})), DecisionKind::Accepted, u"M. Lindqvist"_s,
                     {});
    const SampleResults two = book->resultsOf(u"P-1"_s, u"example-acid"_s);
    model.show(two);
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.index(0, ui::ReportedModel::Part).data(), QString());
    EXPECT_EQ(model.index(1, ui::ReportedModel::Part).data(), u"reported"_s);
    EXPECT_EQ(model.index(1, ui::ReportedModel::By).data(), u"M. Lindqvist, unsigned"_s);
    EXPECT_EQ(model.index(1, ui::ReportedModel::Dilution).data(), u"undiluted"_s);
    EXPECT_EQ(model.reportedRow(), 1);
    EXPECT_TRUE(
        ui::reportedSentences(two)[0].text.endsWith(u"the last accepted result (run 2, revision 1)."_s));
}

TEST_F(Choices, ResultsOfManyWeeksAskForADayOfReceiptButNotOfAControl)
{
    for (const double signal : {0.5, 0.51})
        book->decide(addRun(runOf({{u"P-1"_s, signal, signal}})), DecisionKind::Accepted, u"M. Lindqvist"_s, {});
    SampleResults results = book->resultsOf(u"P-1"_s, u"example-acid"_s);
    ASSERT_EQ(results.accepted.size(), 2U);
    const auto asks = [&](bool isControl) {
        return std::ranges::any_of(ui::reportedSentences(results, {}, isControl), [](const ui::Sentence &sentence) {
            return sentence.text.contains(u"day of receipt"_s);
        });
    };
    EXPECT_FALSE(asks(false));
    results.accepted.front().decidedAt = results.accepted.back().decidedAt.addDays(-31);
    EXPECT_TRUE(asks(false));
    EXPECT_FALSE(asks(true)) << "it is measured under one name for months";
    run::Run run = runOf({{u"P-1"_s, 0.5, 0.5}});
    EXPECT_FALSE(run::isControlSample(run, u"P-1"_s));
    run.tubes.back().role = run::Role::Control;
    EXPECT_TRUE(run::isControlSample(run, u"P-1"_s));
    EXPECT_FALSE(run::isControlSample(run, u"P-2"_s));
}

TEST_F(Decisions, ALetterActsOnTheRowThatTheKeysAreAt)
{
    openReview({good, high, {u"P-4"_s}});
    tabTo(u"sampleDecisions"_s);
    auto *table = find<QTableView>(u"sampleDecisions"_s);
    const int last = table->model()->rowCount() - 1;
    ASSERT_GT(last, 0);
    const auto choiceAt = [table](int row) {
        return table->model()->index(row, ui::SampleChoicesModel::Choice).data().toString();
    };
    press(Qt::Key_Home);
    EXPECT_EQ(table->currentIndex().row(), 0);
    const QString first = choiceAt(0);
    press(Qt::Key_End, Qt::ControlModifier);
    press(Qt::Key_W);
    EXPECT_EQ(choiceAt(last), u"repeat"_s);
    EXPECT_EQ(choiceAt(0), first) << "which is not where the keys are";
    press(Qt::Key_End);
    EXPECT_EQ(table->currentIndex().row(), last);
}

TEST_F(Decisions, SamplesAreDecidedOneByOneByKeys)
{
    setRules(false, false, {u"spilt"_s, u"wrong flask"_s});
    openReview({good, high, {u"P-4"_s}, {u"P-5"_s}, {u"P-6"_s}});
    EXPECT_EQ(labelText(u"decisionUnsigned"_s), u"unsigned: nobody is set up"_s);
    tabTo(u"sampleDecisions"_s); // unfolded, since one is to be repeated
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_R);
    ASSERT_EQ(find<QTableView>(u"sampleDecisions"_s)->currentIndex().row(), 2);
    type(u"spilt over"_s);
    press(Qt::Key_Return);
    ASSERT_EQ(focusName(), u"sampleDecisions"_s);
    press(Qt::Key_Down);
    press(Qt::Key_W);
    press(Qt::Key_Escape); // no reason
    press(Qt::Key_Down);
    press(Qt::Key_W);
    press(Qt::Key_Escape);
    press(Qt::Key_Delete);
    EXPECT_TRUE(
        labelText(u"decisionHappens"_s)
            .startsWith(u"If the run is accepted: 2 sample(s) will be reported. 2 sample(s) will go back"_s))
        << labelText(u"decisionHappens"_s).toStdString();
    EXPECT_TRUE(labelText(u"decisionHappens"_s).endsWith(u"1 sample(s) will be rejected."_s));
    decideAs(u"M. Lindqvist"_s); // what did not pass is answered sample by sample: no reason is asked for again
    ASSERT_TRUE(isDecided());
    const Decision made = decision();
    EXPECT_EQ(made.reason, u"What did not pass is decided sample by sample; everything else passed."_s);
    EXPECT_FALSE(made.acceptable);
    ASSERT_EQ(made.samples.size(), 3U);
    EXPECT_EQ(made.samples[1], (SampleDecision{u"P-4"_s, SampleDecisionKind::Rejected, u"spilt over"_s, {}}));
    EXPECT_EQ(made.repeats, (QStringList{u"P-2"_s, u"P-5"_s}));
    EXPECT_EQ(decidedOf(made, u"P-6"_s), SampleDecisionKind::Accepted);
    EXPECT_FALSE(made.signedAs);
    EXPECT_EQ(book->shelf().waiting().size(), 2U);
}

TEST_F(Decisions, ARepeatAsksWhyAndTheReasonOfAnotherChoiceDoesNotStay)
{
    setRules(false, false, {u"spilt"_s});
    openReview({good, high, {u"P-4"_s}});
    tabTo(u"sampleDecisions"_s);
    const auto *table = find<QTableView>(u"sampleDecisions"_s);
    const auto text = [table](int row, int column) { return table->model()->index(row, column).data().toString(); };
    using Model = ui::SampleChoicesModel;
    press(Qt::Key_Home);
    press(Qt::Key_R);
    type(u"a wrong flask"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(text(0, Model::Reason), u"a wrong flask"_s);
    press(Qt::Key_W);
    EXPECT_EQ(text(0, Model::Choice), u"repeat"_s);
    EXPECT_EQ(text(0, Model::Reason), QString()) << "that was why it was rejected";
    type(u"warm, read late"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(text(0, Model::Choice), u"repeat"_s) << "its letters decided on nothing";
    EXPECT_EQ(text(0, Model::Reason), u"warm, read late"_s);
    press(Qt::Key_A);
    EXPECT_EQ(text(0, Model::Reason), QString());
    press(Qt::Key_W);
    type(u"20"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(text(0, Model::How), u"20"_s) << "a dilution is no reason";
    EXPECT_EQ(text(0, Model::Reason), QString());
}

TEST_F(Decisions, TabGoesFromWhoDecidesOverTheReasonToTheActs)
{
    openReview({good});
    press(Qt::Key_D, Qt::AltModifier);
    ASSERT_EQ(focusName(), u"decisionPerson"_s);
    for (const QString &next : {u"decisionReason"_s, u"acceptRun"_s, u"rejectRun"_s}) {
        press(Qt::Key_Tab);
        EXPECT_EQ(focusName(), next);
    }
    find<QPushButton>(u"bySample"_s)->setFocus();
    press(Qt::Key_Tab);
    EXPECT_EQ(focusName(), u"decisionPerson"_s) << "its table is folded";
}

TEST_F(Decisions, AKnownNameIsTakenWithDownAndEnterLeadsToItsPassphrase)
{
    setPersons();
    openReview({good});
    press(Qt::Key_D, Qt::AltModifier);
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"m. l"_s);
    const auto *person = find<ui::OfferField>(u"decisionPerson"_s);
    EXPECT_EQ(person->text(), u"m. l"_s) << "no letter that nobody typed";
    EXPECT_EQ(person->completion(), u"M. Lindqvist"_s);
    press(Qt::Key_Down);
    EXPECT_EQ(person->text(), u"M. Lindqvist"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(focusName(), u"decisionPassphrase"_s);
    press(Qt::Key_D, Qt::AltModifier);
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"m. lx"_s);
    EXPECT_EQ(person->completion(), QString()) << "nobody is called so";
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"h. a"_s);
    press(Qt::Key_Tab);
    EXPECT_EQ(person->text(), u"H. Ahlgren"_s) << "a beginning is no name";
    EXPECT_EQ(focusName(), u"decisionPassphrase"_s);
    press(Qt::Key_D, Qt::AltModifier);
    press(Qt::Key_A, Qt::ControlModifier);
    type(u"m."_s);
    press(Qt::Key_Return);
    EXPECT_EQ(person->text(), u"M. Lindqvist"_s);
    EXPECT_EQ(focusName(), u"decisionPassphrase"_s);
}

TEST_F(Decisions, OneSampleIsLookedAtInBothTables)
{
    openReview({good, high, {u"P-4"_s}});
    auto *results = find<QTableView>(u"results"_s);
    tabTo(u"sampleDecisions"_s);
    auto *choices = find<QTableView>(u"sampleDecisions"_s);
    press(Qt::Key_Home);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    EXPECT_EQ(results->currentIndex().row(), 2);
    results->setFocus();
    press(Qt::Key_Up);
    EXPECT_EQ(results->currentIndex().row(), 1);
    EXPECT_EQ(choices->currentIndex().row(), 1);
    choices->selectAll();
    press(Qt::Key_Up);
    EXPECT_EQ(choices->selectionModel()->selectedRows().size(), 3) << "several that are chosen stay chosen";
}

TEST_F(Decisions, ReasonsAreOfferedForWhatIsDone)
{
    setRules(false, false, {u"spilt"_s, u"wrong flask"_s});
    openReview({good, apart});
    const auto offered = [this](const QString &name) {
        const auto *field = find<QLineEdit>(name);
        const QAbstractItemModel *offers = field->findChild<QCompleter *>()->model();
        QStringList texts;
        for (int row = 0; row < offers->rowCount(); ++row)
            texts << offers->index(row, 0).data().toString();
        return texts;
    };
    const QStringList ofRun = offered(u"decisionReason"_s);
    ASSERT_GT(ofRun.size(), 2);
    EXPECT_TRUE(ofRun.front().startsWith(u"accepted: "_s)) << "it would be accepted though it did not pass";
    EXPECT_EQ(ofRun.last(), u"wrong flask"_s);
}

TEST_F(Decisions, WhatMustBeInvestigatedIsDecidedFirst)
{
    openReview({good, apart});
    giveReason(u"one is out"_s);
    decideAs(u"M. Lindqvist"_s);
    expectRefused(u"first decide on P-3"_s);
    ASSERT_EQ(focusName(), u"sampleDecisions"_s);
    EXPECT_EQ(find<QTableView>(u"sampleDecisions"_s)->currentIndex().row(), 1);
    press(Qt::Key_R);
    press(Qt::Key_Escape); // no reason
    EXPECT_TRUE(noticeText().isEmpty());
    act(Qt::Key_A);
    expectRefused(u"rejecting the sample \"P-3\" needs a reason"_s);
    tabTo(u"sampleDecisions"_s);
    press(Qt::Key_A);
    act(Qt::Key_A);
    ASSERT_TRUE(isDecided());
    EXPECT_EQ(decidedOf(decision(), u"P-3"_s), SampleDecisionKind::Accepted);
    EXPECT_EQ(decision().reason, u"one is out"_s);
}

TEST_F(Decisions, SeveralSamplesAtATimeShareOneReason)
{
    openReview({good, {u"P-4"_s}, high});
    tabTo(u"sampleDecisions"_s);
    press(Qt::Key_A, Qt::ControlModifier);
    press(Qt::Key_R);
    type(u"rack fell over"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"decisionHappens"_s), u"If the run is accepted: 3 sample(s) will be rejected."_s);
    giveReason(u"all spilt"_s);
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    for (const SampleDecision &own : decision().samples)
        EXPECT_EQ(own.reason, u"rack fell over"_s) << own.sample.toStdString();
    EXPECT_EQ(decision().samples.size(), 3U);
}

TEST_F(Decisions, ARejectedRunTakesItsSamplesAlong)
{
    openReview({good, {u"P-4"_s}});
    press(Qt::Key_M, Qt::AltModifier);
    ASSERT_TRUE(waitFor([this] { return focusName() == u"sampleDecisions"_s; }));
    press(Qt::Key_A);
    decideAs(u"M. Lindqvist"_s, Qt::Key_J);
    expectRefused(u"P-1"_s);
    giveReason(u"rack fell over"_s);
    act(Qt::Key_J);
    expectRefused(u"of a rejected run cannot be accepted"_s);
    EXPECT_EQ(find<QLineEdit>(u"decisionReason"_s)->text(), u"rack fell over"_s);
    tabTo(u"sampleDecisions"_s);
    press(Qt::Key_W);
    act(Qt::Key_J);
    ASSERT_TRUE(isDecided());
    EXPECT_EQ(decidedOf(decision(), u"P-1"_s), SampleDecisionKind::Repeat);
    EXPECT_EQ(decidedOf(decision(), u"P-4"_s), SampleDecisionKind::Rejected);
}

TEST_F(Decisions, ASignatureNeedsThePassphraseOfSomebodyWhoMaySign)
{
    setPersons();
    book->persons().add(u"O. Gone"_s, PersonRole::Reviewer, secret, {u"H. Ahlgren"_s, secret});
    book->persons().retire(book->persons().find(u"O. Gone"_s)->id, {u"H. Ahlgren"_s, secret}, u"left"_s);
    openReview({good});
    EXPECT_EQ(find<QLineEdit>(u"decisionPassphrase"_s)->echoMode(), QLineEdit::Password);
    giveReason(u"as usual"_s);
    decideAs(u"M. Lindqvist"_s);
    expectRefused(u"needs the passphrase of \"M. Lindqvist\""_s);
    givePassphrase(u"wrong words altogether"_s);
    act(Qt::Key_A);
    expectRefused(u"This is not the passphrase"_s);
    EXPECT_EQ(focusName(), u"decisionPassphrase"_s);
    EXPECT_TRUE(find<QLineEdit>(u"decisionPassphrase"_s)->text().isEmpty());
    EXPECT_EQ(find<QLineEdit>(u"decisionReason"_s)->text(), u"as usual"_s);
    EXPECT_EQ(find<QLineEdit>(u"decisionPerson"_s)->text(), u"M. Lindqvist"_s);
    givePassphrase(secret);
    decideAs(u"Nobody Known"_s);
    expectRefused(u"Nobody who is set up is called so"_s);
    EXPECT_FALSE(noticeText().contains(u"Nobody Known"_s)) << "it may be a passphrase in the wrong field";
    EXPECT_EQ(focusName(), u"decisionPerson"_s);
    EXPECT_EQ(find<QLineEdit>(u"decisionPassphrase"_s)->text(), secret) << "it was the name that was wrong";
    decideAs(u"O. Gone"_s);
    expectRefused(u"is retired"_s);
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    EXPECT_EQ(decision().signedAs, PersonRole::Reviewer);
    EXPECT_EQ(decision().person, u"M. Lindqvist"_s);
}

TEST_F(Decisions, APassphraseIsGoneWhenThePageIsLeft)
{
    setPersons();
    openReview({good});
    givePassphrase(secret);
    EXPECT_EQ(find<QLineEdit>(u"decisionPassphrase"_s)->text(), secret);
    find<QAction>(u"actionNotebook"_s)->trigger();
    EXPECT_TRUE(window->findChild<QLineEdit *>(u"decisionPassphrase"_s)->text().isEmpty());
}

TEST_F(Decisions, ThreeWrongPassphrasesMakeOneWait)
{
    setPersons();
    openReview({good});
    decideAs(u"M. Lindqvist"_s);
    for (int wrong = 0; wrong < 3; ++wrong) {
        givePassphrase(u"wrong words altogether"_s);
        act(Qt::Key_A);
        expectRefused(u"This is not the passphrase"_s);
    }
    givePassphrase(secret);
    act(Qt::Key_A);
    expectRefused(u"wait"_s);
}

TEST_F(Decisions, NobodyReviewsTheirOwnRunWhereTheLaboratorySaysSo)
{
    setRules(false, true);
    openReview({good});
    EXPECT_EQ(labelText(u"decisionRules"_s),
              u"Nobody reviews their own run: R. Okafor worked on this one."_s);
    decideAs(u"R. Okafor"_s);
    expectRefused(u"nobody reviews their own run here"_s);
    decideAs(u"M. Lindqvist"_s);
    EXPECT_TRUE(isDecided());
}

TEST_F(Decisions, AnAnalystDoesNotDecideWhereAReviewerHasTo)
{
    setPersons();
    setRules(true, false);
    openReview({good});
    EXPECT_EQ(labelText(u"decisionRules"_s),
              u"A reviewer or a head decides here; R. Okafor is an analyst. "
              "May decide: H. Ahlgren and M. Lindqvist."_s);
    find<QLineEdit>(u"decisionPassphrase"_s)->setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(focusName(), u"acceptRun"_s) << "Enter decides nothing by itself";
    givePassphrase(secret);
    decideAs(u"R. Okafor"_s);
    expectRefused(u"a reviewer or a head decides here"_s);
    EXPECT_FALSE(window->findChild<QLabel *>(u"decisionRules"_s)->isVisible())
        << "what was refused stands in its place";
    decideAs(u"H. Ahlgren"_s);
    expectRefused(u"needs the passphrase"_s); // that of another person signs for nobody else
    givePassphrase(secret);
    act(Qt::Key_A);
    ASSERT_TRUE(isDecided());
    EXPECT_EQ(decision().signedAs, PersonRole::Head);
}

TEST_F(Decisions, WhoDecidesIsAskedFor)
{
    openReview({good});
    act(Qt::Key_A);
    expectRefused(u"Say who decides"_s);
    EXPECT_EQ(focusName(), u"decisionPerson"_s);
}

TEST_F(Decisions, WhatWasChosenForARackWaitsThere)
{
    openReview({good, {u"P-4"_s}});
    addRun(runOf({{u"P-1"_s}}));
    window.reset();
    openWindow();
    press(Qt::Key_3, Qt::ControlModifier);
    press(Qt::Key_M, Qt::AltModifier);
    ASSERT_TRUE(waitFor([this] { return focusName() == u"sampleDecisions"_s; }));
    press(Qt::Key_W);
    giveReason(u"cloudy"_s);
    press(Qt::Key_PageDown, Qt::ControlModifier);
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(labelText(u"decisionHappens"_s), u"If the run is accepted: 1 sample(s) will be reported."_s);
    EXPECT_TRUE(find<QLineEdit>(u"decisionReason"_s)->text().isEmpty());
    press(Qt::Key_PageDown, Qt::ControlModifier);
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(labelText(u"decisionHappens"_s), u"If the run is accepted: 1 sample(s) will be reported. 1 "
                                               u"sample(s) will go back to those that wait, to be "
                                               "repeated."_s);
    EXPECT_EQ(find<QLineEdit>(u"decisionReason"_s)->text(), u"cloudy"_s);
}

TEST_F(Decisions, ANewRevisionBeginsAndTheOldOneStaysReadable)
{
    openReview({good});
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    giveName();
    press(Qt::Key_E, Qt::AltModifier); // the reason in the record
    ASSERT_EQ(focusName(), u"reopenReason"_s);
    EXPECT_TRUE(find<QLabel>(u"reopenCaption"_s)->text().contains(u"revision 2 begins"_s));
    type(u"tube 3 was misread"_s);
    press(Qt::Key_Return);
    ASSERT_FALSE(isDecided());
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_EQ(labelText(u"decisionHappens"_s),
              u"This becomes revision 2. If the run is accepted: 1 sample(s) will be reported."_s);
    book->correctReading(id, 2, u"A2"_s, 0.612, u"0.612"_s, u"R. Okafor"_s, u"misread"_s);
    decideAs(u"M. Lindqvist"_s);
    ASSERT_TRUE(isDecided());
    ASSERT_EQ(book->load(id).summary.revision, 2);
    press(Qt::Key_S, Qt::AltModifier);
    ASSERT_EQ(focusName(), u"revisions"_s);
    EXPECT_TRUE(find<QComboBox>(u"revisions"_s)->currentText().endsWith(u"(stands)"_s));
    const auto shown = [this] {
        return find<QTableView>(u"results"_s)->model()->index(0, 2).data().toString();
    };
    const QString second = shown();
    press(Qt::Key_Down);
    EXPECT_EQ(noticeText(), u"This is revision 1 as it was decided; revision 2 stands."_s);
    EXPECT_NE(shown(), second);
    press(Qt::Key_Up);
    EXPECT_TRUE(noticeText().isEmpty()) << noticeText().toStdString();
    EXPECT_EQ(shown(), second);
}

TEST_F(Decisions, WhichOfSeveralResultsIsReportedIsChosenWithAReason)
{
    setPersons();
    for (const double signal : {0.5, 0.52}) {
        id = addRun(runOf({{u"P-1"_s, signal, signal}}));
        book->decide(id, {DecisionKind::Accepted, u"M. Lindqvist"_s, secret, {}, {}});
    }
    const auto results = [this] { return book->resultsOf(u"P-1"_s, u"example-acid"_s); };
    openWindow();
    giveName();
    press(Qt::Key_B, Qt::ControlModifier);
    tabTo(u"runs"_s);
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    press(Qt::Key_L, Qt::AltModifier);
    ASSERT_TRUE(waitFor([this] { return focusName() == u"reportedOf"_s; }));
    EXPECT_EQ(find<QTableView>(u"acceptedResults"_s)->model()->rowCount(), 2);
    const auto store = [this] {
        press(Qt::Key_T, Qt::AltModifier);
        (void)waitFor([this] { return !noticeText().isEmpty(); });
    };
    press(Qt::Key_U, Qt::AltModifier);
    press(Qt::Key_Down); // the mean
    store();
    EXPECT_TRUE(noticeText().contains(u"needs a reason"_s)) << noticeText().toStdString();
    ASSERT_EQ(focusName(), u"reportReason"_s);
    type(u"both were good"_s);
    store();
    EXPECT_TRUE(noticeText().contains(u"needs the passphrase"_s)) << noticeText().toStdString();
    ASSERT_EQ(focusName(), u"reportedPassphrase"_s);
    EXPECT_EQ(find<QLineEdit>(u"reportReason"_s)->text(), u"both were good"_s);
    type(secret);
    store();
    EXPECT_EQ(noticeText(), u"The choice is stored."_s);
    EXPECT_EQ(results().rule, ReportRule::MeanOfAccepted);
    EXPECT_EQ(results().choice->reason, u"both were good"_s);
    EXPECT_TRUE(results().choice->isSigned);
    EXPECT_EQ(find<QTableView>(u"acceptedResults"_s)->model()->index(0, ui::ReportedModel::Part).data(),
              u"in the mean"_s);
    press(Qt::Key_U, Qt::AltModifier);
    press(Qt::Key_Down); // the one in the table
    tabTo(u"acceptedResults"_s);
    press(Qt::Key_Up);
    press(Qt::Key_Y, Qt::AltModifier);
    type(u"the second was warm"_s);
    press(Qt::Key_A, Qt::AltModifier);
    type(secret);
    store();
    ASSERT_EQ(results().rule, ReportRule::Named);
    EXPECT_EQ(results().reportedFrom[0].run.value, 1);
    press(Qt::Key_Escape);
    EXPECT_EQ(focusName(), u"results"_s);
}

} // namespace
} // namespace plateau::test
