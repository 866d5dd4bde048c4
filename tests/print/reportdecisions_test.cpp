// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/resultsreport.h"
#include "ui/print/runrecord.h"

#include "core/evaluation/evaluation.h"
#include "core/evaluation/format.h"
#include "tests/print/printed.h"
#include "tests/print/reports.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <algorithm>

// What the pages say of a run that was rejected, taken back, corrected, or decided by a name that was only
// typed.

namespace plateau::ui {

using namespace Qt::StringLiterals;
using test::packed;
using test::Printed;

namespace {

struct Pages {
    explicit Pages(const ReportContent &content)
        : report(packed(Printed(resultsReportPdf(content, Paper::A4)).text()))
        , record(packed(Printed(runRecordPdf(content, Paper::A4)).text()))
    {
    }
    QString report;
    QString record;
};

void expectOnBoth(const Pages &pages, const QString &wanted)
{
    EXPECT_TRUE(pages.report.contains(packed(wanted))) << wanted.toStdString();
    EXPECT_TRUE(pages.record.contains(packed(wanted))) << wanted.toStdString();
}

ReportContent accepted()
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    test::accept(content);
    return content;
}

/// The first result's value and uncertainty as they stand beside each other on the page.
QString firstResult(const ReportContent &content)
{
    const evaluation::Result &result = content.evaluation.results.front();
    return evaluation::valueText(*result.value, result.expandedUncertainty) +
           evaluation::uncertaintyText(*result.expandedUncertainty);
}

/// The same run with one reading corrected and decided on again.
ReportContent revised(const ReportContent &first)
{
    run::Run run = first.run;
    const auto tube = std::ranges::find(run.tubes, run.samples.front().id, &run::Tube::sample);
    const double old = std::get<double>(tube->readings.at(u"A2"_s));
    tube->readings[u"A2"_s] = old - 0.010;
    ReportContent second = test::reportOfRun(run, first.method);
    test::accept(second);
    second.record->revision = 2;
    ReportDecision before = first.record->decisions.front();
    before.takenBack =
        ReportAct{u"R. Voss"_s, u"reviewer"_s, u"a reading was mistyped"_s, first.madeAt, false};
    second.record->decisions.insert(second.record->decisions.begin(), before);
    return second;
}

} // namespace

TEST(ReportedDecision, OfARejectedRunIsOnEveryPageWithItsReason)
{
    ReportContent content = accepted();
    content.record->state = ReportState::Rejected;
    content.record->decisions.front().what = u"rejected"_s;
    content.record->decisions.front().act.reason = u"the standard was two days old"_s;
    const Pages pages(content);
    expectOnBoth(pages, u"The run was rejected; its results are not to be used."_s);
    EXPECT_TRUE(pages.record.contains(packed(u"the standard was two days old"_s)));
    // nobody authorises what was rejected
    EXPECT_FALSE(pages.report.contains(packed(u"R. Voss (reviewer), signed with a passphrase"_s)));
    // the record still tells what was found
    EXPECT_TRUE(pages.record.contains(packed(firstResult(content))));
}

TEST(ReportedDecision, SaysOfATypedNameThatItIsUnsigned)
{
    ReportContent content = accepted();
    ReportAct &act = content.record->decisions.front().act;
    act.role.clear();
    act.isSigned = false;
    expectOnBoth(Pages(content), u"R. Voss, a typed name, unsigned"_s);
    act.isSigned = true;
    expectOnBoth(Pages(content), u"R. Voss, signed with a passphrase"_s);
    act.isSigned.reset();
    const Pages unknown(content);
    EXPECT_FALSE(unknown.report.contains(u"signed"_s));
}

TEST(ReportedDecision, EachRevisionHasItsOwnNumbers)
{
    ReportContent first = accepted();
    const ReportContent second = revised(first);
    const QString before = firstResult(first);
    const QString after = firstResult(second);
    ASSERT_NE(before, after);

    const Pages now(second);
    expectOnBoth(now, after);
    EXPECT_FALSE(now.report.contains(packed(before)));
    EXPECT_TRUE(now.report.contains(packed(u"revision 2"_s)));
    EXPECT_TRUE(now.report.contains(packed(u"replaces revision 1"_s)));
    EXPECT_TRUE(now.record.contains(packed(first.contentHash + u" (another: it was changed since)"_s)));
    EXPECT_TRUE(now.record.contains(packed(second.contentHash + u" (the same)"_s)));
    EXPECT_TRUE(now.record.contains(packed(u"R. Voss (reviewer), a typed name, unsigned"_s)));

    first.record->state = ReportState::Replaced;
    const Pages old(first);
    expectOnBoth(old, before);
    expectOnBoth(old, u"This revision was taken back; what counts is the latest one in the notebook."_s);
    EXPECT_FALSE(old.report.contains(packed(after)));
    EXPECT_TRUE(old.report.contains(packed(u"revision 1"_s)));
}

TEST(ReportedDecision, SampleBySampleIsToldWithTheReasonOfEach)
{
    ReportContent content = accepted();
    const QString sample = content.evaluation.results.front().sample;
    ReportDecision rejected;
    rejected.what = u"rejected"_s;
    rejected.samples = {sample};
    rejected.act = {u"R. Voss"_s, u"reviewer"_s, u"cloudy"_s, content.madeAt, true};
    rejected.contentHash = content.contentHash;
    content.record->decisions.insert(content.record->decisions.begin(), rejected);
    content.reported = {
        {sample, content.evaluation.results.front().measurand, false, sample + u": rejected (cloudy)"_s, {}}};
    const Pages pages(content);
    EXPECT_TRUE(pages.record.contains(packed(u"rejected: "_s + sample)));
    expectOnBoth(pages, u"cloudy"_s);
    EXPECT_FALSE(pages.report.contains(packed(firstResult(content))));
    EXPECT_TRUE(pages.record.contains(packed(firstResult(content))));
}

TEST(ReportedDecision, OfASampleWithAFailedCheckSaysWhatItMeansAndWhyItStands)
{
    ReportContent content = test::reportOfSample(u"poor-duplicates.json"_s);
    const auto spread = std::ranges::find_if(content.evaluation.checks, [](const evaluation::Check &check) {
        return check.id == evaluation::CheckId::DuplicateSpread && !check.passed;
    });
    ASSERT_NE(spread, content.evaluation.checks.end());
    const QString finding = u"a) Sample Keeved cider, tank 4: "_s + spread->finding +
                            u" The result is their mean, which is less well known than usual."_s;
    const auto reportText = [](const ReportContent &of) {
        return packed(Printed(resultsReportPdf(of, Paper::A4)).text());
    };
    const QString draft = reportText(content);
    EXPECT_TRUE(draft.contains(packed(finding))) << draft.toStdString();
    EXPECT_FALSE(draft.contains(packed(u"Accepted by"_s)));

    test::accept(content);
    content.record->decisions.front().act.reason = u"the customer knows of the haze"_s;
    const QString report = reportText(content);
    EXPECT_TRUE(report.contains(packed(
        finding + u"b) Accepted by R. Voss: the customer knows of the haze (one reason for the whole run)"_s)))
        << report.toStdString();
    // what the bench is to do is no part of it, but of the record
    EXPECT_FALSE(report.contains(packed(u"Read them again"_s)));
    EXPECT_TRUE(packed(Printed(runRecordPdf(content, Paper::A4)).text()).contains(packed(spread->message())));

    content.reported = {{u"Keeved cider, tank 4"_s, content.evaluation.results.back().measurand, true, {}, {}, {},
                         u"a third tube agreed"_s}};
    EXPECT_TRUE(reportText(content).contains(packed(u"b) Accepted by R. Voss: a third tube agreed"_s)));
    content.reported.front().isReported = false;
    EXPECT_FALSE(reportText(content).contains(packed(u"Accepted by"_s)));
}

TEST(ReportedDecision, OfResultsWithoutAFailedCheckNeedsNoReason)
{
    EXPECT_FALSE(packed(Printed(resultsReportPdf(accepted(), Paper::A4)).text()).contains(packed(u"Accepted by"_s)));
}

TEST(ReportedMethod, IsNamedWithItsPrincipleAndWhatIsPublished)
{
    const ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    const QString report = packed(Printed(resultsReportPdf(content, Paper::A4)).text());
    EXPECT_TRUE(report.contains(packed(u"(total-sulphite), version 1"_s)));
    EXPECT_TRUE(report.contains(packed(content.method.principle)));
    EXPECT_TRUE(report.contains(packed(u"Source: Interferences: EN 1988-2:1998, scope. Absorptivities: Russian standard "
                                       "for citric acid in juices, document 1200102279, section 8."_s)));
    EXPECT_FALSE(report.contains(packed(u"from memory"_s)));
    EXPECT_FALSE(report.contains(packed(u"reagent supplier"_s)));
    // who works by the method reads it whole
    EXPECT_TRUE(packed(Printed(runRecordPdf(content, Paper::A4)).text()).contains(packed(content.method.source)));
}

} // namespace plateau::ui
