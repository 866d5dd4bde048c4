// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/benchclock.h"

#include "core/assay/limits.h"

#include <algorithm>
#include <variant>

namespace plateau::notebook {

namespace {

struct ClockMoment {
    std::variant<ReadingId, MarkId> what;
    qint64 order = 0;
    timing::Stamp stamp;
};

/// Those without an order are of a notebook that kept none: older than all that have one, and in the order of
/// the clock on the wall, which is all that is known.
bool isBefore(const ClockMoment &a, const ClockMoment &b)
{
    if (a.order == 0 && b.order == 0)
        return a.stamp.wall < b.stamp.wall;
    return a.order < b.order;
}

/// What came with the run has its time, and no order.
template <class Row>
void addMoments(std::vector<ClockMoment> &moments, const std::vector<Row> &rows, decltype(Row::id) newest,
                const QDateTime &arrivedAt)
{
    for (const Row &row : rows) {
        if (row.id <= newest && (row.order > 0 || row.at != arrivedAt))
            moments.push_back({row.id, row.order, {row.at, row.boot}});
    }
}

bool saysTimes(const run::Run &run)
{
    return std::ranges::any_of(run.tubes, [](const run::Tube &tube) {
        return !tube.addedAt_min.empty() || !tube.readAt_min.empty();
    });
}

template <class Key> std::optional<double> found(const std::map<Key, double> &times_min, const Key &key)
{
    const auto at = times_min.find(key);
    return at == times_min.end() ? std::nullopt : std::optional(at->second);
}

/// nullptr in a file that was changed from outside, which verify finds.
template <class Run> auto tubeAt(Run &run, int index) -> decltype(run.tubes.data())
{
    const auto place = static_cast<std::size_t>(index);
    return place < run.tubes.size() ? run.tubes.data() + place : nullptr;
}

void placeReadingTimes(run::Run &run, const BenchClock &clock, const std::vector<StoredReading> &readings,
                       ReadingId newest)
{
    for (const StoredReading &reading : readings) {
        const bool corrects = reading.corrects && !reading.again;
        run::Tube *tube = tubeAt(run, reading.tube);
        if (reading.id > newest || corrects || !tube)
            continue;
        auto &readAt_min = tube->readAt_min;
        if (const auto time_min = clock.minutesOf(reading.id))
            readAt_min[reading.reading] = *time_min;
        else if (reading.again)
            readAt_min.erase(reading.reading);
    }
}

/// The ticks of one dose, one after the other.
struct Ticks {
    const StoredMark *first = nullptr;
    const StoredMark *last = nullptr;
    bool takenBack = false;
};

std::vector<std::pair<Dose, Ticks>> ticksOf(const std::vector<StoredMark> &marks, MarkId newest)
{
    std::vector<std::pair<Dose, Ticks>> all;
    std::map<std::tuple<int, QString, bool>, std::size_t> places;
    for (const StoredMark &mark : marks) {
        if (mark.id > newest || mark.dose.component.isEmpty())
            continue;
        const Dose &dose = mark.dose;
        const auto [place, isNew] = places.try_emplace({dose.tube, dose.component, dose.spike}, all.size());
        if (isNew)
            all.emplace_back(dose, Ticks{});
        Ticks &ticks = all[place->second].second;
        if (mark.kind == MarkKind::Undone) {
            ticks = {nullptr, nullptr, true};
            continue;
        }
        if (!ticks.first)
            ticks.first = &mark;
        ticks.last = &mark;
    }
    return all;
}

bool holds(const run::Tube &tube, const QString &standard)
{
    return tube.standard == standard || (tube.spike && tube.spike->standard == standard);
}

/// Of the tick that brought the standard into a tube: of the spike, or of what stands in for the sample.
bool brings(const run::Tube &tube, const assay::Method &method, const Dose &dose, const QString &standard)
{
    if (dose.spike)
        return tube.spike && tube.spike->standard == standard;
    return dose.component == method.sample && tube.standard == standard;
}

std::optional<QDateTime> firstTick(const run::Run &run, const assay::Method &method, const BenchClock &clock,
                                   const std::vector<StoredMark> &marks, MarkId newest,
                                   const run::Standard &standard)
{
    const StoredMark *earliest = nullptr;
    for (const auto &[dose, ticks] : ticksOf(marks, newest)) {
        const run::Tube *tube = tubeAt(run, dose.tube);
        if (!tube || !ticks.first || ticks.last->volume_mL <= 0 || !clock.isOfBench(ticks.first->id) ||
            !brings(*tube, method, dose, standard.id) || ticks.first->at < *standard.preparedAt)
            continue;
        if (!earliest || ticks.first->id < earliest->id)
            earliest = ticks.first;
    }
    return earliest ? std::optional(earliest->at) : std::nullopt;
}

std::optional<QDateTime> firstReading(const run::Run &run, const std::vector<StoredReading> &readings,
                                      ReadingId newest, const run::Standard &standard)
{
    for (const StoredReading &reading : readings) { // oldest first
        const bool keyed = !reading.typed.isEmpty() && reading.at >= *standard.preparedAt;
        const run::Tube *tube = tubeAt(run, reading.tube);
        if (reading.id <= newest && keyed && tube && holds(*tube, standard.id))
            return reading.at;
    }
    return std::nullopt;
}

} // namespace

BenchClock::BenchClock(const run::Run &planned, const QDateTime &arrivedAt,
                       const std::vector<StoredReading> &readings, const std::vector<StoredMark> &marks,
                       const Seen &newest)
{
    std::vector<ClockMoment> moments;
    addMoments(moments, readings, newest.reading, arrivedAt);
    addMoments(moments, marks, newest.mark, arrivedAt);
    std::ranges::stable_sort(moments, isBefore);
    const bool hasOwn = saysTimes(planned);
    if (hasOwn && planned.startedAt)
        m_timeline.add({*planned.startedAt});
    for (const ClockMoment &moment : moments) {
        const auto *mark = std::get_if<MarkId>(&moment.what);
        if (mark)
            m_ofBench.insert(*mark);
        if (hasOwn && !planned.startedAt)
            continue;
        const double time_min = m_timeline.add(moment.stamp);
        if (time_min > assay::limit::clock_min) // nobody times a tube over months
            continue;
        if (mark)
            m_marks_min[*mark] = time_min;
        else
            m_readings_min[std::get<ReadingId>(moment.what)] = time_min;
    }
}

std::optional<double> BenchClock::minutesOf(ReadingId reading) const
{
    return found(m_readings_min, reading);
}

std::optional<double> BenchClock::minutesOf(MarkId mark) const
{
    return found(m_marks_min, mark);
}

void placeTimes(run::Run &run, const BenchClock &clock, const std::vector<StoredReading> &readings,
                const std::vector<StoredMark> &marks, const Seen &newest)
{
    placeReadingTimes(run, clock, readings, newest.reading);
    for (const auto &[dose, ticks] : ticksOf(marks, newest.mark)) {
        run::Tube *tube = tubeAt(run, dose.tube);
        if (dose.spike || !tube)
            continue;
        auto &addedAt_min = tube->addedAt_min;
        if (ticks.takenBack)
            addedAt_min.erase(dose.component);
        const auto time_min = ticks.first ? clock.minutesOf(ticks.first->id) : std::nullopt;
        if (time_min)
            addedAt_min.try_emplace(dose.component, *time_min);
    }
}

void placeTimesOfUse(run::Run &run, const assay::Method &method, const BenchClock *clock,
                     const std::vector<StoredReading> &readings, const std::vector<StoredMark> &marks,
                     const Seen &newest)
{
    for (run::Standard &standard : run.standards) {
        if (standard.usedAt || !standard.preparedAt)
            continue;
        if (clock)
            standard.usedAt = firstTick(run, method, *clock, marks, newest.mark, standard);
        if (!standard.usedAt)
            standard.usedAt = firstReading(run, readings, newest.reading, standard);
    }
}

} // namespace plateau::notebook
