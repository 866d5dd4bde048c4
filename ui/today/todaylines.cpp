// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/today/todaylines.h"

#include "core/equipment/standing.h"
#include "core/evaluation/format.h"
#include "ui/bench/actionwords.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/timewords.h"
#include "ui/bench/waitingwords.h"
#include "ui/books/equipmentwords.h"
#include "ui/books/lotwords.h"
#include "ui/books/standardwords.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct TodayLinesWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::TodayLines)
};

TodayLine lineOf(const BenchSession &session, const Rack &rack)
{
    const auto next = session.nextOf(rack);
    const QString how = TodayLinesWords::tr("%1: %2 of %3 read.")
                            .arg(rack.stored.run.title)
                            .arg(rack.stored.summary.readingsTaken)
                            .arg(rack.stored.summary.readingsPlanned);
    TodayLine line{{State::Pending, how}, rack.id, {}};
    if (!next)
        return line;
    const QString what = actionWords(*next, rack);
    line.sentence.state = stateOf(*next) == State::Info ? State::Pending : stateOf(*next);
    line.sentence.text = next->times
                             ? TodayLinesWords::tr("%1 %2, %3.")
                                   .arg(how, what, countdownText(next->times->opens_s, next->times->closes_s))
                             : TodayLinesWords::tr("%1 %2.").arg(how, what);
    return line;
}

QString decisionText(const notebook::RunSummary &run)
{
    QStringList beside;
    if (run.revision > 1)
        beside << TodayLinesWords::tr("revision %1").arg(run.revision);
    if (run.samplesToRepeat > 0)
        beside << TodayLinesWords::tr("%n sample(s) to repeat", nullptr, run.samplesToRepeat);
    if (run.samplesRejected > 0)
        beside << TodayLinesWords::tr("%n sample(s) rejected", nullptr, run.samplesRejected);
    if (!run.isSigned)
        beside << TodayLinesWords::tr("unsigned");
    const QString what = run.state == notebook::RunState::Accepted
                             ? TodayLinesWords::tr("Run %1, %2: accepted by %3, %4")
                             : TodayLinesWords::tr("Run %1, %2: rejected by %3, %4");
    const QString text =
        what.arg(QString::number(run.id.value), run.title, run.decidedBy, momentText(run.decidedAt));
    return beside.isEmpty()
               ? text
               : TodayLinesWords::tr("%1 (%2)").arg(text, beside.join(TodayLinesWords::tr(", ")));
}

} // namespace

std::vector<TodayLine> benchLines(const BenchSession &session)
{
    std::vector<TodayLine> lines;
    for (const Rack &rack : session.racks())
        lines.push_back(lineOf(session, rack));
    return lines;
}

std::vector<TodayLine> waitingLines(const std::vector<notebook::WaitingSample> &waiting)
{
    std::vector<TodayLine> lines;
    for (const notebook::WaitingSample &sample : waiting) {
        const State state = sample.repeat ? State::Attention : State::Pending;
        lines.push_back({{state, TodayLinesWords::tr("%1: %2").arg(sample.sample.id, whyItWaits(sample))},
                         {},
                         Book::Samples});
    }
    return lines;
}

std::vector<TodayLine> standardLines(const std::vector<planning::HeldPreparation> &preparations,
                                     const QDateTime &now)
{
    std::vector<TodayLine> lines;
    for (const planning::HeldPreparation &held : preparations) {
        if (!planning::isAlive(held, now))
            continue;
        const PreparationStanding standing = standingOf(held, now);
        lines.push_back(
            {{standing.shape, TodayLinesWords::tr("%1: %2 now, %3")
                                  .arg(held.preparation.name, strengthNowText(held, now), standing.words)},
             {},
             Book::Standards});
    }
    return lines;
}

std::vector<TodayLine> equipmentLines(const std::vector<equipment::HeldItem> &items, const QDate &today)
{
    std::vector<std::pair<equipment::AspectStanding, QString>> found;
    for (const equipment::HeldItem &held : items) {
        const equipment::AspectStanding standing = equipment::standingOf(held, today);
        if (standing.standing >= equipment::Standing::DueSoon)
            found.emplace_back(standing, equipment::titleOf(held.item));
    }
    std::ranges::stable_sort(found, std::greater(), [](const auto &one) { return one.first.standing; });
    std::vector<TodayLine> lines;
    for (const auto &[standing, title] : found)
        lines.push_back({{stateOf(standing.standing),
                          TodayLinesWords::tr("%1: %2").arg(evaluation::capitalised(title),
                                                            equipment::standingText(standing, today))},
                         {},
                         Book::Equipment});
    return lines;
}

std::vector<TodayLine> lotLines(const std::vector<planning::Lot> &lots, const QDateTime &now,
                                const ReagentNames &doses, int rackPlaces)
{
    std::vector<TodayLine> lines;
    for (const planning::Lot &lot : lots) {
        const LotStanding standing = standingOf(lot, now, {doses.largestDose_mL(lot.reagent), rackPlaces});
        if (standing.shape == State::Attention || standing.shape == State::Bad)
            lines.push_back(
                {{standing.shape,
                  TodayLinesWords::tr("%1, lot %2: %3").arg(lot.reagent, lot.lot, standing.words)},
                 {},
                 Book::Lots});
    }
    return lines;
}

std::vector<TodayLine> decisionLines(std::vector<notebook::RunSummary> runs, std::size_t most)
{
    std::erase_if(runs,
                  [](const notebook::RunSummary &run) { return run.state == notebook::RunState::OnBench; });
    std::ranges::stable_sort(runs, std::greater(), &notebook::RunSummary::decidedAt);
    if (runs.size() > most)
        runs.resize(most);
    std::vector<TodayLine> lines;
    for (const notebook::RunSummary &run : runs)
        lines.push_back(
            {{run.state == notebook::RunState::Accepted ? State::Good : State::Bad, decisionText(run)},
             run.id,
             {}});
    return lines;
}

} // namespace plateau::ui
