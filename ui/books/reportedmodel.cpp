// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/reportedmodel.h"

#include "core/evaluation/format.h"
#include "ui/bench/verdicts.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ReportedmodelWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ReportedResult)
};

QString sourceText(const notebook::ResultSource &from)
{
    return ReportedmodelWords::tr("run %1, revision %2").arg(from.run.value).arg(from.revision);
}

QString partText(const notebook::SampleResults &results, const notebook::ResultSource &from)
{
    if (std::ranges::find(results.reportedFrom, from) == results.reportedFrom.end())
        return {};
    return results.rule == notebook::ReportRule::MeanOfAccepted ? ReportedmodelWords::tr("in the mean")
                                                                : ReportedmodelWords::tr("reported");
}

/// Longer than a sample is measured again; common practice, no source.
constexpr qint64 daysOfOneSample = 30;

qint64 daysBetween(const std::vector<notebook::AcceptedResult> &accepted)
{
    return accepted.empty() ? 0 : accepted.front().decidedAt.daysTo(accepted.back().decidedAt);
}

} // namespace

ReportedModel::ReportedModel(const Theme &theme, QObject *parent)
    : ColumnsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void ReportedModel::show(const notebook::SampleResults &results)
{
    std::vector<ReportedRow> rows;
    for (const notebook::AcceptedResult &accepted : results.accepted) {
        const QString by = accepted.isSigned ? tr("%1, signed").arg(accepted.decidedBy)
                                             : tr("%1, unsigned").arg(accepted.decidedBy);
        rows.push_back({accepted.from, momentText(accepted.decidedAt), by,
                        accepted.dilutionFactor == 1
                            ? tr("undiluted")
                            : tr("%1-fold").arg(evaluation::roundedText(accepted.dilutionFactor, 3)),
                        resultText(accepted.result), partText(results, accepted.from)});
    }
    setRows(std::move(rows));
}

int ReportedModel::reportedRow() const
{
    const auto found = std::ranges::find_if(rows(), [](const auto &row) { return !row.part.isEmpty(); });
    return found == rows().end() ? 0 : static_cast<int>(found - rows().begin());
}

QString ReportedModel::text(const ReportedRow &row, int column) const
{
    switch (column) {
    case Run:
        return sourceText(row.from);
    case Sample:
        return row.from.sample;
    case Decided:
        return row.decided;
    case By:
        return row.by;
    case Dilution:
        return row.dilution;
    case Result:
        return row.result;
    case Part:
        return row.part;
    default:
        return {};
    }
}

bool ReportedModel::isNumber(int column) const
{
    return column == Dilution || column == Result;
}

QVariant ReportedModel::look(const ReportedRow &row, int column, int role) const
{
    if (role == Qt::FontRole && column == Result)
        return m_theme.bold();
    return role == Qt::DecorationRole && column == Part && !row.part.isEmpty()
               ? QVariant(m_theme.icon(State::Good))
               : QVariant();
}

QString ReportedModel::heading(int column) const
{
    switch (column) {
    case Run:
        return tr("Run");
    case Sample:
        return tr("Sample");
    case Decided:
        return tr("Decided");
    case By:
        return tr("By");
    case Dilution:
        return tr("Dilution");
    case Result:
        return tr("Result");
    case Part:
        return tr("Reported");
    default:
        return {};
    }
}

QString ruleText(notebook::ReportRule rule)
{
    switch (rule) {
    case notebook::ReportRule::LastAccepted:
        return ReportedmodelWords::tr("the last accepted result");
    case notebook::ReportRule::MeanOfAccepted:
        return ReportedmodelWords::tr("the mean of the accepted results");
    case notebook::ReportRule::Named:
        break;
    }
    return ReportedmodelWords::tr("the result that is named");
}

std::vector<Sentence> reportedSentences(const notebook::SampleResults &results, const QString &onReport, bool isControl)
{
    std::vector<Sentence> sentences;
    if (results.reported) {
        QStringList sources;
        for (const notebook::ResultSource &from : results.reportedFrom)
            sources << sourceText(from);
        sentences.push_back({State::Good, ReportedmodelWords::tr("Reported: %1, %2 (%3).")
                                              .arg(resultText(*results.reported), ruleText(results.rule),
                                                   sources.join(ReportedmodelWords::tr("; ")))});
    } else {
        sentences.push_back({State::Attention, results.obstacle});
    }
    if (!onReport.isEmpty())
        sentences.push_back({State::Info, ReportedmodelWords::tr("On the report: %1.").arg(onReport)});
    if (const auto days = daysBetween(results.accepted); days > daysOfOneSample && !isControl)
        sentences.push_back(
            {State::Info,
             ReportedmodelWords::tr("These results were accepted over %n days. Should they be of two samples of one name, give each "
                                    "its day of receipt in the plan: a name received on another day is another sample.",
                                    nullptr, static_cast<int>(days))});
    if (!results.choice) {
        if (results.reported)
            sentences.push_back(
                {State::Info, ReportedmodelWords::tr(
                                  "Nobody has chosen: until somebody does, the last accepted one counts.")});
        return sentences;
    }
    const notebook::ReportChoice &choice = *results.choice;
    const QString mark =
        choice.isSigned ? ReportedmodelWords::tr("signed") : ReportedmodelWords::tr("unsigned");
    sentences.push_back({State::Info, ReportedmodelWords::tr("Chosen by %1, %2 (%3): %4")
                                          .arg(choice.person, momentText(choice.at), mark, choice.reason)});
    if (choice.olderThanResults)
        sentences.push_back(
            {State::Attention,
             ReportedmodelWords::tr("A result was accepted since: see whether the choice still holds.")});
    return sentences;
}

} // namespace plateau::ui
