// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/resultsreport.h"

#include "core/evaluation/format.h"
#include "core/evaluation/wideuncertainty.h"
#include "core/exchange/moment.h"
#include "ui/print/knownfields.h"
#include "ui/print/pdf.h"
#include "ui/print/reportclosing.h"
#include "ui/print/reporthead.h"
#include "ui/print/reporttext.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ResultsreportWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Report)
};

using Fit = TableColumn::Fit;
constexpr double body_pt = 8.5;
/// Of a page: what a customer is told is never cut, but for what no page would hold.
constexpr int wholeCell = 60;

class ResultsReport
{
public:
    ResultsReport(const ReportContent &content, PageFlow &flow)
        : m_content(content)
        , m_flow(flow)
    {
    }

    void write()
    {
        paintLaboratory(m_flow, m_content.laboratory);
        paintTitle(m_flow, ResultsreportWords::tr("Report of results"), numberLine());
        writeParties();
        writeItems();
        writeResults();
        writeCompliance();
        writeReportClosing(m_flow, m_content);
        paintEnd(m_flow, ResultsreportWords::tr("End of report %1").arg(numberOf(m_content)));
    }

    static QString numberOf(const ReportContent &content)
    {
        return fieldOf(content, u"report-number"_s);
    }

private:
    QString field(const QString &name) const { return fieldOf(m_content, name); }

    QString numberLine() const
    {
        return ResultsreportWords::tr("Report %1, revision %2")
            .arg(numberOf(m_content))
            .arg(revisionOf(m_content));
    }

    void writeParties()
    {
        m_flow.fields(
            {{ResultsreportWords::tr("customer"), field(u"customer"_s), 1},
             {ResultsreportWords::tr("customer's address or contact"), field(u"customer-contact"_s), 1},
             {ResultsreportWords::tr("order or reference"), field(u"order"_s), 1},
             {ResultsreportWords::tr("date of the tests"), field(u"tested"_s), 1},
             {ResultsreportWords::tr("place of the tests, if elsewhere"), field(u"location"_s), 1},
             {ResultsreportWords::tr("date of issue"), field(u"issued"_s), 1}},
            3, body_pt);
    }

    /// In the order of the results, each once.
    QStringList samples() const
    {
        QStringList samples;
        for (const evaluation::Result &result : m_content.evaluation.results) {
            if (!samples.contains(result.sample))
                samples << result.sample;
        }
        return samples;
    }

    QString orField(const QString &known, const QString &name, const QString &sample) const
    {
        const QString given = m_content.fields.value(name, sample);
        return given.isEmpty() ? known : given;
    }

    void writeItems()
    {
        m_flow.heading(ResultsreportWords::tr("Items tested"));
        PrintedTable table;
        table.size_pt = body_pt;
        table.mostLines = wholeCell;
        table.columns = {{ResultsreportWords::tr("sample"), Fit::Wrap, false, true},
                         {ResultsreportWords::tr("what it is"), Fit::Wrap},
                         {ResultsreportWords::tr("state on arrival"), Fit::Wrap},
                         {ResultsreportWords::tr("received")},
                         {ResultsreportWords::tr("sampled")}};
        // A line to write on where nobody knows.
        const auto known = [](const QString &text) { return text.isEmpty() ? u"______________"_s : text; };
        for (const QString &sample : samples()) {
            const ReportItem *item = findItem(m_content, sample);
            QString received;
            if (item && item->receivedAt)
                received = dayOnReport(*item->receivedAt);
            table.rows.push_back({sample, known(orField(item ? item->product : QString(), u"item"_s, sample)),
                                  known(orField({}, u"condition"_s, sample)),
                                  known(orField(received, u"received"_s, sample)),
                                  known(orField({}, u"sampled"_s, sample))});
        }
        m_flow.table(table);
    }

    /// What has to be said of a result beside its number.
    QStringList remarksOn(const evaluation::Result &result) const
    {
        QStringList remarks;
        if (const ReportedResult *reported = reportedAs(m_content, result);
            reported && !reported->remark.isEmpty())
            remarks << local(m_content, reported->remark);
        for (const evaluation::Check &check : result.checks) {
            if (!check.passed)
                remarks << checkOnReport(m_content, check);
        }
        // What failed for the run or its standard is behind every result of it: the customer is told why one stands all the same
        // only if told that it failed (ISO/IEC 17025:2017, 7.8.2.1, deviations).
        for (const evaluation::Check &check : m_content.evaluation.checks) {
            const bool isOfIt = check.scope.measurand.isEmpty() || check.scope.measurand == result.measurand;
            if (!check.passed && isOfIt && check.scope.kind != evaluation::Scope::Kind::Sample)
                remarks << checkOnReport(m_content, check);
        }
        if (const QString acceptance = acceptanceOnReport(m_content, result); !acceptance.isEmpty())
            remarks << acceptance;
        if (const ReportedResult *reported = reportedAs(m_content, result);
            !reported || reported->isReported) {
            if (const QString wide = evaluation::wideUncertaintyText(finalOf(m_content, result));
                !wide.isEmpty())
                remarks << local(m_content, wide);
        }
        remarks.removeDuplicates();
        return remarks;
    }

    QString footnoteOf(const QString &remark)
    {
        qsizetype place = m_footnotes.indexOf(remark);
        if (place < 0) {
            place = m_footnotes.size();
            m_footnotes << remark;
        }
        return footnoteMark(static_cast<int>(place));
    }

    void writeResults()
    {
        m_flow.heading(ResultsreportWords::tr("Results"));
        const auto &results = m_content.evaluation.results;
        const bool uncertain = std::ranges::any_of(
            results, [](const auto &result) { return result.expandedUncertainty.has_value(); });
        PrintedTable table;
        table.size_pt = 9;
        table.mostLines = wholeCell;
        table.columns = {{ResultsreportWords::tr("sample"), Fit::Wrap},
                         {ResultsreportWords::tr("quantity"), Fit::Wrap},
                         {ResultsreportWords::tr("result"), Fit::Natural, true, true}};
        if (uncertain)
            table.columns.push_back({ResultsreportWords::tr("± U"), Fit::Natural, true});
        table.columns.push_back({ResultsreportWords::tr("unit")});
        if (uncertain)
            table.columns.push_back({ResultsreportWords::tr("k"), Fit::Natural, true});
        const bool noted =
            std::ranges::any_of(results, [this](const auto &result) { return !remarksOn(result).isEmpty(); });
        if (noted)
            table.columns.push_back({ResultsreportWords::tr("note")});
        for (const evaluation::Result &result : results) {
            table.rows.push_back(resultRow(result, uncertain));
            if (noted)
                table.rows.back() << notesOn(result);
        }
        m_flow.table(table);
        for (qsizetype i = 0; i < m_footnotes.size(); ++i)
            m_flow.paragraph(
                ResultsreportWords::tr("%1) %2").arg(footnoteMark(static_cast<int>(i)), m_footnotes[i]), 7.5);
        m_flow.paragraph(uncertain ? uncertaintySentence()
                                   : ResultsreportWords::tr(
                                         "No uncertainty is stated: the run states none for its inputs."),
                         7.5);
    }

    QStringList resultRow(const evaluation::Result &result, bool uncertain)
    {
        const ReportedResult *reported = reportedAs(m_content, result);
        const bool isReported = !reported || reported->isReported;
        const ResultWords words = wordsOf(m_content, finalOf(m_content, result));
        QStringList row{result.sample, quantityName(m_content.method, result.measurand),
                        isReported ? words.value : ResultsreportWords::tr("not reported")};
        if (uncertain)
            row << (isReported ? words.uncertainty : none);
        row << (isReported ? words.unit : none);
        if (uncertain)
            row << (isReported ? words.coverage : none);
        return row;
    }

    QString notesOn(const evaluation::Result &result)
    {
        QStringList notes;
        for (const QString &remark : remarksOn(result))
            notes << footnoteOf(remark);
        return notes.join(u", "_s);
    }

    /// k and level as the evaluation makes them: k = 2 from 30 effective degrees of freedom, else Student's t
    /// at 95.45 %.
    QString uncertaintySentence() const
    {
        return local(m_content,
                     ResultsreportWords::tr(
                         "U is the expanded uncertainty of the result, in its unit: the standard "
                         "uncertainty multiplied by the coverage factor k of its line, for a level of "
                         "confidence of about 95 % (95.45 %). A result with < or > is a bound and has "
                         "no U."));
    }

    void writeCompliance()
    {
        if (m_content.compliance.empty())
            return;
        m_flow.heading(ResultsreportWords::tr("Comparison with specifications"));
        PrintedTable table;
        table.size_pt = body_pt;
        table.mostLines = wholeCell;
        table.columns = {{ResultsreportWords::tr("sample"), Fit::Wrap},
                         {ResultsreportWords::tr("quantity"), Fit::Wrap},
                         {ResultsreportWords::tr("specification"), Fit::Wrap},
                         {ResultsreportWords::tr("statement"), Fit::Wrap, false, true},
                         {ResultsreportWords::tr("decision rule"), Fit::Wrap}};
        for (const ReportCompliance &line : m_content.compliance)
            table.rows.push_back({line.sample, quantityName(m_content.method, line.measurand),
                                  local(m_content, line.specification), local(m_content, line.statement),
                                  local(m_content, line.rule)});
        m_flow.table(table);
    }

    const ReportContent &m_content;
    PageFlow &m_flow;
    QStringList m_footnotes;
};

} // namespace

QByteArray resultsReportPdf(const ReportContent &content, Paper paper)
{
    const QString number = ResultsReport::numberOf(content);
    RunningText running;
    running.title = ResultsreportWords::tr("Report of results %1").arg(number);
    running.headLeft = content.laboratory.name.isEmpty() ? running.title : content.laboratory.name;
    running.headRight = ResultsreportWords::tr("report %1, revision %2").arg(number).arg(revisionOf(content));
    running.mark = stateMark(stateOf(content));
    running.foot = ResultsreportWords::tr("Report %1, revision %2, made %3 with Plateau %4")
                       .arg(number)
                       .arg(revisionOf(content))
                       .arg(momentOnReport(content.madeAt), content.programVersion);
    return flowedPdf(running, paper, [&](PageFlow &flow) { ResultsReport(content, flow).write(); });
}

QString resultsReportFileName(const ReportContent &content)
{
    return fileNameOf(
        ResultsreportWords::tr("Report %1", "a file name").arg(printable(content.run.title).left(80)),
        u".pdf"_s);
}

} // namespace plateau::ui
