// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/resultscsv.h"

#include "core/evaluation/format.h"
#include "core/exchange/moment.h"
#include "ui/print/canvas.h"
#include "ui/print/pdf.h"
#include "ui/print/reporttext.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ResultsCsvWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ResultsCsv)
};

class Rows
{
public:
    Rows(DecimalSign sign, CsvCells cells)
        : m_sign(sign)
        , m_cells(cells)
    {
    }

    void text(const QString &value)
    {
        // OWASP, "CSV Injection": what a cell of a spreadsheet must not begin with.
        const bool isFormula = !value.isEmpty() && u"=+-@\t\r\n"_s.contains(value.front());
        add(isFormula && m_cells == CsvCells::Safe ? u'\'' + value : value);
    }
    void number(double value) { add(localNumbers(evaluation::plainText(value), m_sign)); }
    void number(std::optional<double> value)
    {
        if (value)
            number(*value);
        else
            add({});
    }
    void count(qint64 value) { add(QString::number(value)); }
    void endRow()
    {
        m_text += "\r\n"_L1;
        m_first = true;
    }
    QByteArray bytes() const { return m_text.toUtf8(); }

private:
    void add(QString cell)
    {
        if (!std::exchange(m_first, false))
            m_text += m_sign == DecimalSign::Comma ? u';' : u',';
        const bool quotes = cell.contains(u',') || cell.contains(u';') || cell.contains(u'"') ||
                            cell.contains(u'\n') || cell.contains(u'\r');
        const bool needsQuotes = quotes && !(m_sign == DecimalSign::Comma && isPlain(cell));
        m_text += needsQuotes ? u'"' + cell.replace(u'"', u"\"\""_s) + u'"' : cell;
    }
    /// With a decimal comma and nothing that has to be quoted among semicolons.
    static bool isPlain(const QString &cell)
    {
        return !cell.contains(u';') && !cell.contains(u'"') && !cell.contains(u'\n') && !cell.contains(u'\r');
    }

    DecimalSign m_sign;
    CsvCells m_cells;
    QString m_text;
    bool m_first = true;
};

QString stateWord(ReportState state)
{
    switch (state) {
    case ReportState::Accepted:
        return u"accepted"_s;
    case ReportState::Rejected:
        return u"rejected"_s;
    case ReportState::Replaced:
        return u"replaced"_s;
    case ReportState::Draft:
        break;
    }
    return u"draft"_s;
}

/// With the run's own offset from UTC, so that the times of a row can be told apart at sight.
QDateTime besideStart(const ReportContent &content, const QDateTime &at)
{
    return content.run.startedAt ? at.toOffsetFromUtc(content.run.startedAt->offsetFromUtc()) : at;
}

void addResult(Rows &rows, const ReportContent &content, const evaluation::Result &result)
{
    const ReportDecision *decision = decisionOf(content);
    const ReportedResult *reported = reportedAs(content, result);
    const evaluation::Result &final = finalOf(content, result);
    const evaluation::Reported given = reportedOf(content, final);
    rows.text(reportNumber(content));
    rows.count(revisionOf(content));
    rows.text(stateWord(stateOf(content)));
    rows.text(content.run.title);
    rows.text(content.method.id);
    rows.count(content.method.version);
    rows.text(result.sample);
    rows.text(quantityName(content.method, result.measurand));
    rows.text(result.measurand);
    // A bound is the result: a number beside it would be taken for one.
    const bool isBound = given.lessThan || given.greaterThan;
    const auto ofValue = [isBound](const std::optional<double> &number) { return isBound ? std::nullopt : number; };
    rows.number(ofValue(given.value));
    rows.number(ofValue(given.expandedUncertainty));
    rows.number(ofValue(given.coverageFactor));
    rows.text(evaluation::reportUnitWord(given.unit));
    rows.number(given.lessThan);
    rows.number(given.greaterThan);
    rows.count(final.n);
    // One tube has none.
    rows.number(final.spread && final.n > 1 ? std::optional(*final.spread * reportingFactor(content, result))
                                            : std::nullopt);
    rows.text(evaluation::verdictWord(result.verdict));
    rows.text(!reported || reported->isReported ? u"yes"_s : u"no"_s);
    rows.text(!reported ? QString() : reported->remark.isEmpty() ? reported->reason : reported->remark);
    rows.text(content.run.startedAt ? exchange::momentText(*content.run.startedAt) : QString());
    rows.text(decision ? exchange::momentText(besideStart(content, decision->act.at)) : QString());
    rows.text(decision ? decision->act.person : QString());
    rows.text(content.contentHash);
    rows.text(content.programVersion);
    rows.endRow();
}

} // namespace

QByteArray resultsCsv(const ReportContent &content, CsvCells cells)
{
    Rows rows(content.decimalSign, cells);
    // Names for programs: never translated.
    for (const QString &name : {u"report"_s,
                                u"revision"_s,
                                u"state"_s,
                                u"run"_s,
                                u"method"_s,
                                u"method_version"_s,
                                u"sample"_s,
                                u"quantity"_s,
                                u"measurand"_s,
                                u"value"_s,
                                u"expanded_uncertainty"_s,
                                u"coverage_factor"_s,
                                u"unit"_s,
                                u"less_than"_s,
                                u"greater_than"_s,
                                u"tubes"_s,
                                u"spread"_s,
                                u"verdict"_s,
                                u"reported"_s,
                                u"remark"_s,
                                u"started"_s,
                                u"decided"_s,
                                u"decided_by"_s,
                                u"content_sha256"_s,
                                u"program"_s})
        rows.text(name);
    rows.endRow();
    for (const evaluation::Result &result : content.evaluation.results)
        addResult(rows, content, result);
    return rows.bytes();
}

QString resultsCsvFileName(const ReportContent &content)
{
    return fileNameOf(
        ResultsCsvWords::tr("Results %1", "a file name").arg(printable(content.run.title).left(80)),
        u".csv"_s);
}

} // namespace plateau::ui
