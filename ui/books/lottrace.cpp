// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lottrace.h"

#include "core/evaluation/format.h"
#include "core/exchange/moment.h"

#include <QStringList>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString cell(const QString &value)
{
    QString text = value;
    if (!text.isEmpty() && u"=+-@\t\r\n"_s.contains(text.front()))
        text.prepend(u'\'');
    const bool quoted = std::ranges::any_of(
        text, [](QChar sign) { return sign == u',' || sign == u'"' || sign == u'\n' || sign == u'\r'; });
    return quoted ? u'"' + text.replace(u'"', u"\"\""_s) + u'"' : text;
}

QString number(const std::optional<double> &value)
{
    return value ? evaluation::plainText(*value) : QString();
}

QString stateOf(const notebook::StoredRun &stored)
{
    switch (stored.summary.state) {
    case notebook::RunState::OnBench:
        return u"on bench"_s;
    case notebook::RunState::Accepted:
        return u"accepted"_s;
    default:
        return u"rejected"_s;
    }
}

QString decisionOn(const notebook::StoredRun &stored, const QString &sample)
{
    if (stored.summary.state == notebook::RunState::OnBench || stored.decisions.empty())
        return {};
    const auto &samples = stored.decisions.back().samples;
    const auto own = std::ranges::find(samples, sample, &notebook::SampleDecision::sample);
    if (own == samples.end())
        return stateOf(stored);
    switch (own->kind) {
    case notebook::SampleDecisionKind::Accepted:
        return u"accepted"_s;
    case notebook::SampleDecisionKind::Rejected:
        return u"rejected"_s;
    default:
        return u"repeat"_s;
    }
}

QStringList headOf(const planning::Lot &lot, const TracedRun &traced)
{
    const notebook::StoredRun &stored = traced.stored;
    const notebook::RunSummary &summary = stored.summary;
    const bool decided = summary.state != notebook::RunState::OnBench;
    return {cell(lot.reagent),
            cell(lot.lot),
            QString::number(traced.taking.run.value),
            cell(stored.run.title),
            cell(stored.method.id),
            QString::number(stored.method.version),
            exchange::momentText(stored.run.startedAt.value_or(summary.createdAt)),
            stateOf(stored),
            decided ? exchange::momentText(summary.decidedAt) : QString(),
            cell(summary.decidedBy),
            evaluation::plainText(traced.taking.volume_mL),
            QString::number(traced.taking.tubes)};
}

} // namespace

QByteArray lotTraceCsv(const planning::Lot &lot, const std::vector<TracedRun> &runs)
{
    QString text = u"reagent,lot,run,title,method,method_version,begun,state,decided,decided_by,taken_mL,"
                   "tubes,sample,measurand,value,expanded_uncertainty,less_than,greater_than,unit,verdict,"
                   "decision,by_way_of\r\n"_s;
    for (const TracedRun &traced : runs) {
        const QStringList head = headOf(lot, traced);
        const evaluation::Evaluation evaluation = notebook::evaluationOf(traced.stored);
        for (const evaluation::Result &result : evaluation.results) {
            const QStringList row = head + QStringList{cell(result.sample),
                                                       cell(result.measurand),
                                                       number(result.value),
                                                       number(result.expandedUncertainty),
                                                       number(result.lessThan),
                                                       number(result.greaterThan),
                                                       result.unit,
                                                       evaluation::verdictWord(result.verdict),
                                                       decisionOn(traced.stored, result.sample),
                                                       cell(traced.taking.through)};
            text += row.join(u',') + u"\r\n"_s;
        }
        if (evaluation.results.empty())
            text += head.join(u',') + QString(10, u',') + cell(traced.taking.through) + u"\r\n"_s;
    }
    return text.toUtf8();
}

} // namespace plateau::ui
