// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reportsource.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "ui/bench/reportdialog.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QLineEdit>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace plateau::ui {

using namespace Qt::StringLiterals;

namespace {

const QString keyed = u"M. Keel"_s;
const QString reviewer = u"R. Voss"_s;

class ReportSource : public ::testing::Test
{
protected:
    ReportSource()
        : m_notebook(notebook::Notebook::create(m_folder.filePath(u"cellar.plateau"_s)))
    {
    }

    /// A run of the sample "S", with what is known of it, and a signal that is larger by so much.
    notebook::RunId put(double more = 0)
    {
        run::Run run = test::plainRun();
        run.uncertainty = test::uncertainties();
        for (run::Tube &tube : run.tubes) {
            if (!tube.sample.isEmpty())
                tube.readings[u"A2"_s] = std::get<double>(tube.readings[u"A2"_s]) + more;
        }
        planning::PlanRecord plan;
        planning::PlannedSample sample;
        sample.sample.id = u"S"_s;
        sample.sample.product = u"perry"_s;
        plan.samples = {sample};
        return m_notebook->addRun(run, test::risingMethod(), keyed, plan);
    }
    notebook::RunId putAccepted(double more = 0)
    {
        const notebook::RunId run = put(more);
        m_notebook->decide(run, notebook::DecisionKind::Accepted, reviewer, u"seen"_s);
        return run;
    }
    ReportContent report(notebook::RunId run, std::optional<int> revision = {}) const
    {
        return reportOf(*m_notebook, run, revision);
    }

    QTemporaryDir m_folder;
    std::unique_ptr<notebook::Notebook> m_notebook;
};

} // namespace

TEST_F(ReportSource, SaysWhoDecidedOnExactlyThis)
{
    const notebook::RunId run = put();
    EXPECT_EQ(stateOf(report(run)), ReportState::Draft);
    EXPECT_EQ(decisionOf(report(run)), nullptr);
    m_notebook->decide(run, notebook::DecisionKind::Accepted, reviewer, u"seen"_s);
    const ReportContent content = report(run);
    EXPECT_EQ(stateOf(content), ReportState::Accepted);
    ASSERT_NE(decisionOf(content), nullptr);
    EXPECT_EQ(decisionOf(content)->act.person, reviewer);
    EXPECT_EQ(decisionOf(content)->act.isSigned, std::optional(false));
    EXPECT_EQ(decisionOf(content)->contentHash, content.contentHash);
    EXPECT_EQ(content.record->notebook, u"cellar.plateau"_s);
    EXPECT_EQ(content.record->auditHead, m_notebook->auditHead().hash);
    EXPECT_EQ(content.record->auditEntries, m_notebook->auditHead().entries);
    EXPECT_EQ(content.evaluation, notebook::evaluationOf(m_notebook->load(run)));
}

TEST_F(ReportSource, KeepsTheOldValueOfACorrectionAndTheRevisionThatHadIt)
{
    const notebook::RunId run = putAccepted();
    const ReportContent before = report(run);
    m_notebook->reopen(run, reviewer, u"a reading was mistyped"_s);
    const notebook::StoredRun stored = m_notebook->load(run);
    const int tube = static_cast<int>(stored.run.tubes.size()) - 1;
    const double old = std::get<double>(stored.run.tubes.back().readings.at(u"A2"_s));
    m_notebook->correctReading(run, tube, u"A2"_s, old + 0.004, u"0.5"_s, keyed, u"digits swapped"_s);
    EXPECT_EQ(stateOf(report(run)), ReportState::Draft);
    m_notebook->decide(run, notebook::DecisionKind::Accepted, reviewer, u"seen again"_s);

    const ReportContent now = report(run);
    EXPECT_EQ(now.record->revision, 2);
    ASSERT_EQ(now.record->decisions.size(), 2U);
    ASSERT_TRUE(now.record->decisions.front().takenBack.has_value());
    EXPECT_EQ(now.record->decisions.front().takenBack->reason, u"a reading was mistyped"_s);
    const ReportReading &corrected = now.record->readings.back();
    EXPECT_EQ(corrected.replaces, std::optional<run::Reading>(old));
    EXPECT_EQ(corrected.act.reason, u"digits swapped"_s);

    const ReportContent first = report(run, 1);
    EXPECT_EQ(stateOf(first), ReportState::Replaced);
    EXPECT_EQ(first.record->revision, 1);
    EXPECT_EQ(first.contentHash, before.contentHash);
    EXPECT_EQ(first.evaluation, before.evaluation);
    EXPECT_EQ(stateOf(report(run, 2)), ReportState::Accepted);
    EXPECT_THROW(report(run, 3), notebook::Failure);
}

TEST_F(ReportSource, HasTheDilutionsThatAreTickedAsMade)
{
    run::Run diluted = test::plainRun();
    diluted.samples[0].dilution = {{5, 50}, {10, 25}};
    const notebook::RunId run = m_notebook->addRun(diluted, test::risingMethod(), keyed);
    m_notebook->pipetting().markDilutionsDone(run, {{0, 0}, {0, 1}}, keyed);
    m_notebook->pipetting().markDilutionsUndone(run, {{0, 0}}, reviewer);
    const ReportContent content = report(run);
    ASSERT_EQ(content.record->dilutions.size(), 1U);
    const ReportDilution &made = content.record->dilutions.front();
    EXPECT_EQ(made.sample, diluted.samples[0].id);
    EXPECT_EQ(made.step, 2);
    EXPECT_EQ(made.steps, 2);
    EXPECT_EQ(made.volumes.take_mL, 10);
    EXPECT_EQ(made.person, keyed);
    EXPECT_EQ(made.at, m_notebook->load(run).dilutionMarks[1].at);
}

TEST_F(ReportSource, SaysWhichOfSeveralResultsIsReportedAndWhy)
{
    const notebook::RunId first = putAccepted();
    EXPECT_TRUE(report(first).reported.front().remark.isEmpty());
    const notebook::RunId second = putAccepted(0.010);
    EXPECT_FALSE(report(first).reported.front().isReported);
    EXPECT_TRUE(report(first).reported.front().remark.contains(u"the last of 2 accepted results"_s));
    EXPECT_TRUE(report(second).reported.front().isReported);

    m_notebook->chooseReported(u"S"_s, u"analyte"_s,
                               {notebook::ReportRule::MeanOfAccepted, {}, reviewer, {}, u"both are good"_s});
    for (const notebook::RunId run : {first, second}) {
        const ReportContent content = report(run);
        const ReportedResult &reported = content.reported.front();
        EXPECT_TRUE(reported.isReported);
        EXPECT_TRUE(reported.remark.contains(u"both are good"_s)) << reported.remark.toStdString();
        const double mean = (*report(first).evaluation.results.front().value +
                             *report(second).evaluation.results.front().value) /
                            2;
        EXPECT_NEAR(*finalOf(content, content.evaluation.results.front()).value, mean, 1e-12);
    }
}

TEST_F(ReportSource, GivesTheDayOfTheRegistrationThatTheRunTookAndNoneOfAnEarlierSample)
{
    const auto registered = [&](int month) {
        planning::ShelfSample sample;
        sample.id = u"S"_s;
        sample.receivedAt = QDateTime(QDate(2026, month, 2), QTime(8, 0), Qt::OffsetFromUTC, 3600);
        m_notebook->shelf().registerSample(sample, keyed);
    };
    const auto monthOf = [&](notebook::RunId run) {
        const ReportContent content = report(run);
        const ReportItem *item = findItem(content, u"S"_s);
        return item && item->receivedAt ? item->receivedAt->date().month() : 0;
    };
    registered(1);
    const notebook::RunId first = putAccepted();
    EXPECT_EQ(monthOf(first), 1);
    const notebook::RunId typed = putAccepted(0.010);
    EXPECT_EQ(monthOf(typed), 0) << "a line to write on, not the day of the sample before";
    registered(2);
    const notebook::RunId second = putAccepted(0.020);
    EXPECT_EQ(monthOf(second), 2);
    EXPECT_EQ(monthOf(first), 1);
}

TEST_F(ReportSource, LeavesOutASampleThatWasRejected)
{
    const notebook::RunId run = put();
    notebook::RunDecision decision;
    decision.person = reviewer;
    decision.reason = u"seen"_s;
    decision.samples = {{u"S"_s, notebook::SampleDecisionKind::Rejected, u"cloudy"_s, {}}};
    m_notebook->decide(run, decision);
    const ReportContent content = report(run);
    EXPECT_EQ(stateOf(content), ReportState::Accepted);
    EXPECT_FALSE(content.reported.front().isReported);
    EXPECT_TRUE(content.reported.front().remark.contains(u"cloudy"_s));
}

TEST_F(ReportSource, TellsWhoseNumbersTheBudgetIsMadeOf)
{
    run::Run run = test::plainRun();
    run.uncertainty = test::uncertainties();
    planning::PlanRecord plan;
    plan.owners = {
        {planning::UncertaintyInput::Absorbance, {}, u"photometer P1"_s, u"check record 7"_s, false}};
    const ReportContent content = report(m_notebook->addRun(run, test::risingMethod(), keyed, plan));
    ASSERT_EQ(content.inputs.size(), 7U);
    EXPECT_EQ(content.inputs[0].owner, u"photometer P1"_s);
    EXPECT_EQ(content.inputs[0].value, run.uncertainty->absorbance);
    EXPECT_FALSE(content.inputs[1].isKnown);
    EXPECT_TRUE(reportOf(test::risingMethod(), run).inputs.empty()) << "a file does not say";
}

TEST_F(ReportSource, TakesUnitsLimitsAndHeadFromTheLaboratory)
{
    planning::Laboratory laboratory = m_notebook->laboratory();
    laboratory.name = u"Threnholt laboratory"_s;
    laboratory.reportHead.address = {u"Orchard Lane 4"_s, u"Threnholt"_s};
    laboratory.reportUnits = {{u"Perry"_s, {}, evaluation::ReportUnit::MilligramPerLitre}};
    m_notebook->saveLaboratory(laboratory, keyed);
    evaluation::Specification limit;
    limit.product = u"perry"_s;
    limit.measurand = u"analyte"_s;
    limit.upper = 1.0;
    limit.source = u"House rule 7"_s;
    limit.date = QDate(2026, 1, 2);
    m_notebook->saveSpecifications({limit}, keyed, u"first limits"_s);
    const ReportContent content = report(putAccepted());
    EXPECT_EQ(content.laboratory.name, u"Threnholt laboratory"_s);
    EXPECT_EQ(content.laboratory.address, u"Orchard Lane 4\nThrenholt"_s);
    const evaluation::Result &result = content.evaluation.results.front();
    EXPECT_EQ(reportedOf(content, result).unit, evaluation::ReportUnit::MilligramPerLitre);
    EXPECT_NEAR(*reportedOf(content, result).value, *result.value * 1000, 1e-9);
    ASSERT_EQ(content.compliance.size(), 1U);
    EXPECT_TRUE(content.compliance.front().specification.contains(u"House rule 7"_s));
    EXPECT_TRUE(
        content.compliance.front().statement.startsWith(*result.value < 1 ? u"inside"_s : u"outside"_s));
}

TEST_F(ReportSource, EveryRevisionIsHeldAgainstTheLimitsOfItsTime)
{
    const auto saveLimit = [this](double upper) {
        evaluation::Specification limit;
        limit.product = u"perry"_s;
        limit.measurand = u"analyte"_s;
        limit.upper = upper;
        limit.source = u"House rule 7"_s;
        limit.date = QDate(2026, 1, 2);
        m_notebook->saveSpecifications({limit}, keyed, u"as agreed"_s);
    };
    saveLimit(0.001);
    const notebook::RunId run = putAccepted();
    saveLimit(1000);
    ASSERT_EQ(report(run).compliance.size(), 1U);
    EXPECT_TRUE(report(run).compliance[0].statement.startsWith(u"outside"_s));
    m_notebook->reopen(run, reviewer, u"look again"_s);
    m_notebook->decide(run, notebook::DecisionKind::Accepted, reviewer, u"seen"_s);
    EXPECT_TRUE(report(run).compliance.at(0).statement.startsWith(u"inside"_s));
    EXPECT_TRUE(report(run, 1).compliance.at(0).statement.startsWith(u"outside"_s));
}

TEST(AReportDialog, ShowsWholeWhatTheReportWillSay)
{
    const Theme theme;
    const QString authorised = u"Corin Dast (head of the laboratory), signed on 05/06/2026"_s;
    ReportDialog dialog(theme, {{u"authorised-by"_s, authorised}});
    dialog.show();
    QApplication::processEvents();
    const auto *line = dialog.findChild<QLineEdit *>(u"report-authorised-by"_s);
    ASSERT_TRUE(line);
    EXPECT_EQ(line->placeholderText(), authorised);
    constexpr int frame = 8;
    EXPECT_GE(line->width() - frame, line->fontMetrics().horizontalAdvance(authorised));
}

} // namespace plateau::ui
