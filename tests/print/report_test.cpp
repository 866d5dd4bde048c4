// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/resultsreport.h"
#include "ui/print/runrecord.h"

#include "core/evaluation/checkfacts.h"
#include "core/evaluation/format.h"
#include "core/evaluation/working.h"
#include "tests/print/printed.h"
#include "tests/print/racks.h"
#include "tests/print/reports.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"
#include "ui/print/reporttext.h"
#include "ui/print/worksheetcontent.h"

#include <QRegularExpression>

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <functional>

// What stands on the pages, read back by a program that is not ours, against the evaluation; every expected
// text is made here from the evaluation and format.h, none by the code that prints.

namespace plateau::ui {

using namespace Qt::StringLiterals;
using test::packed;
using test::Printed;

namespace {

using evaluation::significantText;

/// The signs that a formula has in print; the test's own way of saying it.
QString inPrint(QString text)
{
    static const QRegularExpression minus(u"(?<![A-Za-z0-9.,)_-])-(?=[0-9])"_s);
    static const QRegularExpression leading(u"^- "_s);
    return text.replace(u" x "_s, u" × "_s).replace(u" - "_s, u" − "_s).replace(leading, u"− "_s).replace(minus, u"−"_s);
}

/// A comma where C has a point; the test's own way of saying it.
QString commas(QString text)
{
    return text.replace(u'.', u',');
}

class Numbers
{
public:
    explicit Numbers(const ReportContent &content)
        : m_content(content)
    {
    }
    QString operator()(const QString &text) const
    {
        return m_content.decimalSign == DecimalSign::Comma ? commas(text) : text;
    }
    QString optional(std::optional<double> value, const std::function<QString(double)> &text) const
    {
        return value ? (*this)(text(*value)) : u"–"_s;
    }

private:
    const ReportContent &m_content;
};

QString value(const evaluation::Result &result)
{
    if (!result.value)
        return u"–"_s;
    if (result.lessThan)
        return u"<"_s + evaluation::upperBoundText(*result.lessThan, 2);
    if (result.greaterThan)
        return u">"_s + evaluation::lowerBoundText(*result.greaterThan, 3);
    return evaluation::valueText(*result.value, result.expandedUncertainty);
}

bool isPlainValue(const evaluation::Result &result)
{
    return result.value && !result.lessThan && !result.greaterThan;
}

QString uncertainty(const evaluation::Result &result)
{
    return isPlainValue(result) && result.expandedUncertainty
               ? evaluation::uncertaintyText(*result.expandedUncertainty)
               : u"–"_s;
}

QString coverage(const evaluation::Result &result)
{
    return isPlainValue(result) && result.coverageFactor ? significantText(*result.coverageFactor, 3)
                                                         : u"–"_s;
}

QString signal(double value)
{
    return QString::number(value, 'f', 4);
}
QString five(double value)
{
    return significantText(value, 5);
}

void expectIn(const QString &pages, const QString &wanted)
{
    EXPECT_TRUE(pages.contains(packed(wanted))) << wanted.toStdString();
}

void expectTubeValues(const QString &pages, const ReportContent &content)
{
    const Numbers local(content);
    for (const evaluation::TubeValue &tube : content.evaluation.tubes)
        expectIn(pages, local(five(tube.totalVolume_mL)) + local.optional(tube.signal, signal) +
                            local.optional(tube.netSignal, signal) +
                            local.optional(tube.pipetted_g_per_L, five) +
                            local.optional(tube.concentration_g_per_L, five));
    for (const evaluation::BlankMean &blank : content.evaluation.blanks) {
        if (blank.mean)
            expectIn(pages, u"Mean blank: "_s + local(signal(*blank.mean)));
    }
    for (const evaluation::Factor &factor : content.evaluation.factors)
        expectIn(pages, local(five(factor.factor_g_per_L)));
}

void expectRecoveries(const QString &pages, const ReportContent &content)
{
    const Numbers local(content);
    const auto percent = [](double value) { return QString::number(value, 'f', 1); };
    for (const evaluation::StandardRecovery &standard : content.evaluation.standards)
        expectIn(pages, local(five(standard.expected_g_per_L)) +
                            local.optional(standard.found_g_per_L, five) +
                            local.optional(standard.recovery_percent, percent));
    for (const evaluation::SpikeRecovery &spike : content.evaluation.spikes)
        expectIn(pages, u"––"_s + local.optional(spike.recovery_percent, percent));
    for (const evaluation::SeriesFit &fit : content.evaluation.series)
        expectIn(pages, local(signal(fit.atStart)) + local(significantText(fit.slope_per_min, 3)));
    for (const evaluation::CalibrationLine &line : content.evaluation.lines)
        expectIn(pages, QString::number(line.points) + local(signal(line.intercept)) +
                            local(five(line.slope_per_mg)));
}

void expectBudget(const QString &pages, const ReportContent &content, const evaluation::Result &result)
{
    const Numbers local(content);
    for (const evaluation::BudgetTerm &term : result.budget)
        expectIn(pages, local(term.term) + local(significantText(term.standardUncertainty, 3)) +
                            local(QString::number(term.share * 100, 'f', 1)));
}

/// Every step with the numbers in it, and what comes out, one behind the other.
void expectWorking(const QString &pages, const ReportContent &content, const evaluation::Result &result)
{
    const Numbers local(content);
    for (const evaluation::WorkingSection &section :
         evaluation::working(content.method, content.run, content.evaluation, result.sample, result.measurand,
                             content.rules)) {
        for (const evaluation::WorkingLine &line : section.lines) {
            const bool isOfBudget =
                std::ranges::any_of(result.budget, [&](const auto &term) { return term.term == line.what; });
            if (!isOfBudget)
                expectIn(pages, line.what + inPrint(line.formula) + inPrint(local(line.numbers)) +
                                    inPrint(local(line.value)));
        }
    }
}

void expectReadings(const QString &pages, const ReportContent &content)
{
    const Numbers local(content);
    for (const run::Tube &tube : content.run.tubes) {
        for (const auto &[name, reading] : tube.readings) {
            if (const double *absorbance = std::get_if<double>(&reading)) {
                const QString keyed = evaluation::plainText(*absorbance);
                const QString shown = evaluation::absorbanceText(*absorbance);
                expectIn(pages, local(keyed.size() > shown.size() ? keyed : shown));
                continue;
            }
            for (const run::TimedAbsorbance &point : std::get<run::ReadingSeries>(reading))
                expectIn(pages, local(evaluation::plainText(point.at_min)) + u"min:"_s +
                                    local(evaluation::absorbanceText(point.absorbance)));
        }
    }
}

ReportContent withComma(ReportContent content)
{
    content.decimalSign = DecimalSign::Comma;
    return content;
}

} // namespace

TEST(RunRecord, HoldsEveryNumberOfTheEvaluationInBothDecimalSigns)
{
    for (const QString &file : test::sampleRuns()) {
        for (const DecimalSign sign : {DecimalSign::Point, DecimalSign::Comma}) {
            // The comma, where series, a line and several measurands have their numbers: pages take time.
            const QStringList withBoth{u"line-calibration.json"_s, u"slow-reaction.json"_s,
                                       u"two-measurands.json"_s};
            if (sign == DecimalSign::Comma && !withBoth.contains(file))
                continue;
            SCOPED_TRACE(file.toStdString());
            ReportContent content = test::reportOfSample(file);
            content.decimalSign = sign;
            const Numbers local(content);
            const QString pages = packed(Printed(runRecordPdf(content, Paper::A4)).text());
            for (const evaluation::Result &result : content.evaluation.results) {
                expectIn(pages, result.sample + quantityName(content.method, result.measurand) +
                                    local(value(result)) + local(uncertainty(result)) + result.unit +
                                    local(coverage(result)) + QString::number(result.n));
                expectBudget(pages, content, result);
                expectWorking(pages, content, result);
            }
            expectTubeValues(pages, content);
            expectRecoveries(pages, content);
            expectReadings(pages, content);
        }
    }
}

TEST(RunRecord, NamesEveryCheckWithItsVerdict)
{
    for (const QString &file : test::sampleRuns()) {
        SCOPED_TRACE(file.toStdString());
        const ReportContent content = test::reportOfSample(file);
        const QString pages = packed(Printed(runRecordPdf(content, Paper::A4)).text());
        for (const evaluation::Check &check : content.evaluation.checks) {
            expectIn(pages, check.message());
            expectIn(pages, evaluation::checkTitle(check.id) +
                                (check.passed ? u"passed"_s : u"failed"_s));
        }
    }
}

TEST(ResultsReport, HoldsEveryResultWithItsUncertaintyInBothDecimalSigns)
{
    for (const QString &file : test::sampleRuns()) {
        SCOPED_TRACE(file.toStdString());
        for (const ReportContent &content :
             {test::reportOfSample(file), withComma(test::reportOfSample(file))}) {
            const Numbers local(content);
            const QString pages = packed(Printed(resultsReportPdf(content, Paper::Letter)).text());
            const bool uncertain = content.run.uncertainty.has_value();
            for (const evaluation::Result &result : content.evaluation.results)
                expectIn(pages, result.sample + quantityName(content.method, result.measurand) +
                                    local(value(result)) +
                                    (uncertain ? local(uncertainty(result)) : QString()) + result.unit +
                                    (uncertain ? local(coverage(result)) : QString()));
        }
    }
}

TEST(ResultsReport, HasAPlaceForWhatTheStandardAsksFor)
{
    const ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    const Printed report(resultsReportPdf(content, Paper::A4));
    const QString text = report.text();
    for (const QString &part : {u"Report of results"_s,
                                u"laboratory: name, address, contact"_s,
                                u"place of the tests"_s,
                                u"customer"_s,
                                u"customer's address or contact"_s,
                                u"Method"_s,
                                u"Items tested"_s,
                                u"state on arrival"_s,
                                u"received"_s,
                                u"sampled"_s,
                                u"date of the tests"_s,
                                u"date of issue"_s,
                                u"sampling: plan and method"_s,
                                u"conditions of the tests"_s,
                                u"whatever else was asked for"_s,
                                u"relate only to the items tested"_s,
                                u"unit"_s,
                                u"deviations or exclusions from the method"_s,
                                u"authorised by"_s,
                                u"signature"_s,
                                u"external providers"_s,
                                u"opinions and interpretations"_s,
                                u"not to be reproduced except in full"_s,
                                u"coverage factor k"_s,
                                u"95.45 %"_s,
                                u"2026-03-02"_s,
                                u"page 1 of 1"_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString();
    expectIn(packed(text), u"End of report "_s + reportNumber(content));
    EXPECT_TRUE(text.contains(u"Made with a template whose volumes nobody confirmed"_s));
}

TEST(ResultsReport, TakesFieldsInPlaceOfLinesToWriteOn)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    for (const QString &field :
         {u"customer=Threnholt Cider"_s, u"received=2026-03-01"_s, u"received/Perry, tank 7=2026-02-28"_s,
          u"report-number=R-2026-014"_s, u"opinions=None."_s, u"authorised-by=R. Voss"_s})
        EXPECT_EQ(content.fields.add(field), QString()) << field.toStdString();
    const QString text = Printed(resultsReportPdf(content, Paper::A4)).text();
    for (const QString &part :
         {u"Threnholt Cider"_s, u"2026-03-01"_s, u"2026-02-28"_s, u"Report R-2026-014, revision 1"_s,
          u"End of report R-2026-014"_s, u"R. Voss"_s})
        EXPECT_TRUE(text.contains(part)) << part.toStdString();
}

TEST(Reports, AreDraftsUntilTheRunIsAccepted)
{
    ReportContent content = test::reportOfSample(u"two-measurands.json"_s);
    const auto marks = [&content](const QString &mark) {
        std::array<int, 2> found{};
        const std::array pdfs{resultsReportPdf(content, Paper::A4), runRecordPdf(content, Paper::A4)};
        for (std::size_t i = 0; i < pdfs.size(); ++i) {
            const Printed pages(pdfs[i]);
            for (int page = 1; page <= pages.pages(); ++page)
                found[i] += pages.text(page).contains(mark) ? 1 : 0;
            found[i] = found[i] == pages.pages() ? 1 : found[i] == 0 ? 0 : -1;
        }
        return found;
    };
    EXPECT_EQ(marks(u"DRAFT"_s), (std::array{1, 1}));
    test::accept(content);
    EXPECT_EQ(marks(u"DRAFT"_s), (std::array{0, 0}));
    EXPECT_EQ(marks(u"COPY"_s), (std::array{0, 1}));
    content.record->state = ReportState::Rejected;
    EXPECT_EQ(marks(u"REJECTED"_s), (std::array{1, 1}));
}

TEST(Reports, CountTheirPagesAndEndOnTheLast)
{
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const ReportContent content =
            test::reportOfRun(test::rackOf(96), test::shippedMethod(u"l-malic-acid"_s));
        const Printed record(runRecordPdf(content, paper));
        const int pages = record.pages();
        EXPECT_GT(pages, 2);
        EXPECT_NEAR(record.pageSize_mm().height(), paper == Paper::A4 ? 297 : 279.4, 0.5);
        for (int page = 1; page <= pages; ++page) {
            const QString text = record.text(page);
            EXPECT_TRUE(text.contains(u"page %1 of %2"_s.arg(page).arg(pages))) << page;
            EXPECT_EQ(text.contains(u"End of the run record"_s), page == pages) << page;
        }
        for (const auto &[name, isEmbedded] : record.fonts())
            EXPECT_TRUE(isEmbedded) << name.toStdString();
    }
}

TEST(RunRecord, FollowsADerivedResultIntoTheRunItTakesFrom)
{
    assay::Method free = test::risingMethod();
    free.id = u"free"_s;
    const QString measurand = free.measurands.front().id;
    assay::Method total = test::risingMethod();
    total.derived = {{u"bound"_s, u"Bound acid"_s, {{{}, measurand, 1}, {u"free"_s, measurand, -1}}}};
    run::Run totalRun = test::plainRun();
    totalRun.uncertainty = test::uncertainties();
    run::Run freeRun = totalRun;
    freeRun.title = u"The other rack"_s;
    freeRun.method = u"free"_s;
    for (run::Tube &tube : freeRun.tubes) {
        if (tube.role == run::Role::Sample)
            tube.readings[u"A2"_s] = 0.2875;
    }
    ReportContent content = reportOf(total, totalRun, {{free, freeRun}});
    const auto &results = content.evaluation.results;
    ASSERT_EQ(results.size(), 2U);
    ASSERT_EQ(results.back().terms.size(), 2U);
    ASSERT_TRUE(results.back().expandedUncertainty.has_value());

    const QString record = packed(Printed(runRecordPdf(content, Paper::A4)).text());
    for (const evaluation::Result &result : results) {
        expectIn(record,
                 result.sample + quantityName(total, result.measurand) + value(result) + uncertainty(result));
        expectBudget(record, content, result);
        expectWorking(record, content, result);
    }
    expectIn(record, u"Run that results are taken from: The other rack"_s);
    // the other run's own way from its readings to the term
    const evaluation::Evaluation other = evaluation::evaluate(free, freeRun);
    for (const auto &section :
         evaluation::working(free, freeRun, other, other.results[0].sample, measurand)) {
        for (const evaluation::WorkingLine &line : section.lines) {
            if (!line.numbers.isEmpty())
                expectIn(record, line.what + inPrint(line.formula) + inPrint(line.numbers) +
                                     inPrint(line.value));
        }
    }
    const QString report = packed(Printed(resultsReportPdf(content, Paper::A4)).text());
    expectIn(report, u"Bound acid"_s + value(results.back()) + uncertainty(results.back()));
    expectIn(report, u"Bound acid is calculated: the sum of"_s);
}

TEST(RunRecord, MarksACorrectedReadingAndTellsItsOldValueAndWhy)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    test::accept(content);
    const QDateTime at(QDate(2026, 3, 2), QTime(11, 4, 9), Qt::OffsetFromUTC, 3600);
    content.record->readings = {{4, u"A2"_s, 0.914, u"0,914"_s, {u"M. Keel"_s, {}, {}, at, {}}, {}},
                                {4,
                                 u"A2"_s,
                                 0.941,
                                 u"0.941"_s,
                                 {u"M. Keel"_s, {}, u"digits were swapped"_s, at, {}},
                                 run::Reading(0.914)}};
    const QString text = Printed(runRecordPdf(content, Paper::A4)).text();
    EXPECT_TRUE(text.contains(u"0.941 a)"_s)) << text.toStdString();
    EXPECT_TRUE(
        text.contains(u"a) tube 5, A2: was 0.914, corrected to 0.941 by M. Keel on 2026-03-02 11:04:09 "
                      "+01:00. Reason: digits were swapped"_s));
    EXPECT_TRUE(text.contains(u"0,914"_s)); // as it was typed
}

TEST(RunRecord, SaysWhoTickedWhichDilution)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    test::accept(content);
    const QString none = packed(Printed(runRecordPdf(content, Paper::A4)).text());
    EXPECT_FALSE(none.contains(packed(u"Dilutions as they were ticked"_s)));
    const QDateTime at(QDate(2026, 3, 2), QTime(8, 5), Qt::OffsetFromUTC, 3600);
    content.record->dilutions = {{u"Cask twelve"_s, 2, 3, {10, 20, {}}, u"M. Keel"_s, at}};
    const QString text = packed(Printed(runRecordPdf(content, Paper::A4)).text());
    EXPECT_TRUE(text.contains(packed(u"Dilutions as they were ticked"_s)));
    EXPECT_TRUE(text.contains(packed(u"Cask twelve 2 of 3"_s)));
    EXPECT_TRUE(text.contains(packed(dilutionOnPaper({{10, 20, {}}})))) << text.toStdString();
}

TEST(RunRecord, SaysWhoDecidedAndWhatVerifyConfirms)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    test::accept(content);
    content.record->revision = 2;
    content.record->decisions.insert(content.record->decisions.begin(), content.record->decisions.front());
    content.record->decisions.front().contentHash = QString(64, u'b');
    content.record->decisions.front().takenBack =
        ReportAct{u"R. Voss"_s, u"reviewer"_s, u"a reading was mistyped"_s, content.madeAt, true};
    const QString record = packed(Printed(runRecordPdf(content, Paper::A4)).text());
    expectIn(record, content.contentHash + u" (the same)"_s);
    expectIn(record, QString(64, u'b') + u" (another: it was changed since)"_s);
    expectIn(record, u"Audit: 42 entries, head "_s + QString(64, u'c'));
    expectIn(record, u"R. Voss (reviewer), signed with a passphrase"_s);
    expectIn(record, u"a reading was mistyped"_s);
    const QString report = packed(Printed(resultsReportPdf(content, Paper::A4)).text());
    expectIn(report, u"This is revision 2 and replaces revision 1."_s);
    expectIn(report, u"a reading was mistyped"_s);
}

TEST(ResultsReport, LeavesOutWhatIsNotReportedAndSaysWhy)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    test::accept(content);
    const evaluation::Result &result = content.evaluation.results[1];
    content.reported = {{result.sample, result.measurand, false, u"Perry, tank 7: rejected (cloudy)"_s, {}}};
    const QString text = Printed(resultsReportPdf(content, Paper::A4)).text();
    EXPECT_FALSE(text.contains(evaluation::valueText(*result.value, result.expandedUncertainty)));
    EXPECT_TRUE(text.contains(u"not reported"_s));
    EXPECT_TRUE(text.contains(u"rejected (cloudy)"_s));
}

TEST(Reports, GiveAResultInTheUnitOfTheLaboratory)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    const evaluation::Result &result = content.evaluation.results.front();
    content.reported = {
        {result.sample, result.measurand, true, {}, evaluation::ReportUnit::MilligramPerLitre}};
    const QString inMilligrams =
        evaluation::valueText(*result.value * 1000, *result.expandedUncertainty * 1000) + u" "_s +
        evaluation::uncertaintyText(*result.expandedUncertainty * 1000) + u" mg/L"_s;
    expectIn(packed(Printed(resultsReportPdf(content, Paper::A4)).text()), inMilligrams);
    const QString record = packed(Printed(runRecordPdf(content, Paper::A4)).text());
    expectIn(record, inMilligrams);
    expectIn(record, u"That is the result below, in g/L, times 1000.0."_s);
}

TEST(ResultsReport, GivesWhatTheRuleOfTheSamplePutsInPlaceOfTheRunsOwn)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    const evaluation::Result &own = content.evaluation.results.front();
    evaluation::Result mean = own;
    mean.value = 0.1357;
    mean.expandedUncertainty = 0.0042;
    content.reported = {
        {own.sample, own.measurand, true, u"Reported is the mean of 2 accepted results"_s, {}, mean}};
    content.compliance = {{own.sample, own.measurand, u"perry: at most 200 mg/L"_s, u"simple acceptance"_s,
                           u"inside: 135.7 ± 4.2 mg/L"_s}};
    const QString report = packed(Printed(resultsReportPdf(content, Paper::A4)).text());
    expectIn(report, own.sample + quantityName(content.method, own.measurand) + u"0.1357 0.0042 g/L"_s);
    expectIn(report, u"a) Reported is the mean of 2 accepted results"_s);
    expectIn(report, u"perry: at most 200 mg/L"_s);
    expectIn(report, u"simple acceptance"_s);
    // the record keeps what this run found
    const QString record = packed(Printed(runRecordPdf(content, Paper::A4)).text());
    expectIn(record, quantityName(content.method, own.measurand) + value(own) + uncertainty(own));
}

TEST(ResultsReport, LosesNothingOfWhatItComparesWithSpecifications)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    const evaluation::Result &own = content.evaluation.results.front();
    // As the window says it, with its no-break spaces; the last ones are wider than any column.
    const QStringList statements{
        u"dans les limites\u00a0: 148,7 ± 3,8\u00a0mg/L pour au plus 180\u00a0mg/L (bande de garde pour l\u2019acceptation, "
        "1,64\u00a0u = 3,1\u00a0mg/L)"_s,
        u"innerhalb der Grenzen: 148,7 ± 3,8\u00a0mg/L bei höchstens 180\u00a0mg/L (Sicherheitsabstand für die Annahme "
        "zulasten des Laboratoriums, 1,64\u00a0u = 3,1\u00a0mg/L)"_s,
        u"inside: 2.5 ± 0.3\u00a0g/100\u00a0g\u00a0of\u00a0the\u00a0fruit\u00a0as\u00a0it\u00a0was\u00a0received\u00a0"
        "at\u00a0the\u00a0packing\u00a0line of at most 3\u00a0g/100\u00a0g"_s,
        u"inside: "_s + u"word by word, "_s.repeated(40) + u"to its end"_s,
    };
    for (const QString &statement : statements)
        content.compliance.push_back({own.sample, own.measurand, u"cider: at most 180\u00a0mg/L (House specification of the cidery, "
                                                                 "as agreed with every customer)"_s,
                                      u"guard band for acceptance, guard band 3.1\u00a0mg/L"_s, statement});
    for (const Paper paper : {Paper::A4, Paper::Letter}) {
        const Printed report(resultsReportPdf(content, paper));
        const QString text = report.text();
        EXPECT_FALSE(text.contains(u'…')) << text.toStdString();
        EXPECT_FALSE(text.contains(u'\u2060')) << "nobody would find the unit";
        for (const ReportCompliance &line : content.compliance) {
            expectIn(packed(text), line.specification);
            expectIn(packed(text), line.rule);
            expectIn(packed(text), line.statement);
        }
        EXPECT_TRUE(std::ranges::none_of(report.words(), [](const Printed::Word &word) {
            return word.text.endsWith(u"mg/"_s) || word.text.endsWith(u"g/"_s);
        })) << "no unit is broken at its slash";
    }
}

TEST(Reports, StayOnTheirPagesWithHostileNames)
{
    const QString names[] = {
        QString(4096, u'W'),
        u"Keeved cider from the tank behind the press "_s.repeated(60),
        u"סיידר אגסים 7"_s.repeated(20),
        u"\u202ereversed\u202c name"_s,
        u"two\nlines\r\nand\ttabs\u2028more"_s,
        u"🍏"_s.repeated(500),
        u"<b>bold</b>"_s,
    };
    for (const QString &name : names) {
        SCOPED_TRACE(name.left(30).toStdString());
        run::Run run = test::rackOf(12);
        run.title = name;
        run.samples[0].id = name;
        run.tubes[4].sample = name;
        run.tubes[5].sample = name;
        const ReportContent content = test::reportOfRun(run, test::shippedMethod(u"l-malic-acid"_s));
        for (const QByteArray &pdf :
             {resultsReportPdf(content, Paper::A4), runRecordPdf(content, Paper::Letter)}) {
            const Printed pages(pdf);
            EXPECT_LE(pages.pages(), 12);
            for (const Printed::Word &word : pages.words()) {
                EXPECT_GE(word.area_mm.left(), 10) << word.text.toStdString();
                EXPECT_LE(word.area_mm.right(), pages.pageSize_mm().width() - 10) << word.text.toStdString();
                EXPECT_LE(word.area_mm.bottom(), pages.pageSize_mm().height() - 8) << word.text.toStdString();
            }
            EXPECT_TRUE(pages.text(pages.pages()).contains(u"page %1 of %1"_s.arg(pages.pages())));
        }
    }
}

TEST(Reports, NameTheLaboratoryWithItsLogo)
{
    ReportContent content = test::reportOfSample(u"clean-run.json"_s);
    content.laboratory = {u"Threnholt laboratory"_s, u"Orchard Lane 4\nThrenholt"_s,
                          u"lab@threnholt.example"_s,
                          "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 20 10'>"
                          "<rect width='20' height='10'/></svg>"};
    const Printed report(resultsReportPdf(content, Paper::A4));
    for (const QString &part : {u"Threnholt laboratory"_s, u"Orchard Lane 4"_s, u"lab@threnholt.example"_s})
        EXPECT_TRUE(report.text().contains(part)) << part.toStdString();
    const QRectF corner(160, 18, 20, 10);
    EXPECT_GT(test::darkPart(report.image(1), corner), 0.9);
    content.laboratory.logo = "no picture";
    EXPECT_LT(test::darkPart(Printed(resultsReportPdf(content, Paper::A4)).image(1), corner), 0.05);
}

} // namespace plateau::ui
