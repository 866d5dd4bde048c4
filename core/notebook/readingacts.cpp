// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/readingacts.h"

#include "core/assay/label.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/inputs.h"
#include "core/notebook/lotopening.h"
#include "core/notebook/methodstore.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/rawline.h"
#include "core/notebook/readingstore.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/stampstore.h"
#include "core/run/waits.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

QString readingNameOf(const assay::Method &method, const QString &component)
{
    const assay::Component *found = assay::findComponent(method, component);
    return found ? found->name : component;
}

void requireOrigin(const ReadingOrigin &origin)
{
    if (origin.kind == ReadingOrigin::Kind::Keyed && !(origin == ReadingOrigin{}))
        throw refused(Sentence::tr("The reading was not stored: a keyed reading has no line it came in; name "
                                   "another origin or leave the line out."));
    if (const auto fault = assay::proseFault(origin.source))
        throw refused(
            Sentence::tr("The reading was not stored, since the name of its source cannot be used: %1.")
                .arg(*fault));
    if (const auto fault = assay::proseFault(origin.line))
        throw refused(
            Sentence::tr("The reading was not stored, since the line it came in cannot be kept: %1.")
                .arg(*fault));
    if (origin.line.size() > longestRawLine)
        throw refused(Sentence::tr("The reading was not stored, since the line it came in has more than %1 "
                                   "characters: shorten it.")
                          .arg(longestRawLine));
}

/// One reading of one tube, against what the run holds. Of that no more is read than is asked for: a first reading, the act
/// there is most of, needs the method alone.
class AtPlace
{
public:
    AtPlace(Act &act, const ReadingPlace &place)
        : m_act(act)
        , m_place(place)
    {
        act.concerns(place.run);
        m_row = tubeRow(act.database(), place.run, place.tube);
        requireOnBench(act.database(), place.run);
    }

    bool isTaken() const
    {
        Statement query(m_act.database(), u"SELECT 1 FROM reading WHERE tube = ? AND name = ?"_s);
        query.run(m_row, m_place.reading);
        return query.next();
    }
    const Inputs &inputs()
    {
        if (!m_inputs)
            m_inputs = loadInputs(m_act.database(), m_place.run);
        return *m_inputs;
    }
    const StoredReading *current() { return currentReading(inputs().readings, m_place.tube, m_place.reading); }
    const StoredReading &toCorrect()
    {
        if (const StoredReading *reading = current())
            return *reading;
        throw refused(
            Sentence::tr("Tube %1 has no reading %2 to correct; nothing was stored: add it instead.")
                .arg(m_place.tube + 1)
                .arg(m_place.reading));
    }

    ReadingId store(NewReading reading)
    {
        reading.tubeRow = m_row;
        reading.name = m_place.reading;
        requireReading(loadMethod(m_act.database(), methodRowOf(m_act.database(), m_place.run)), m_place.tube,
                       m_place.reading, reading.value);
        requireOrigin(reading.origin);
        const ReadingId id = storeReading(m_act, reading);
        storeStamp(m_act, id);
        if (!reading.corrects) {
            m_act.onlyTakesReading();
            if (namesClosedLot(m_act.database(), m_place.run))
                openTaken(m_act, lotsTakenUntil(m_act.database(), inputs(), m_place.tube, m_place.reading),
                          timeOf(m_act.at()).date());
        }
        m_act.commit();
        return id;
    }

private:
    Act &m_act;
    ReadingPlace m_place;
    qint64 m_row = 0;
    std::optional<Inputs> m_inputs;
};

/// The minutes of a series: since the last addition before its point in the same tube.
class SeriesClock
{
public:
    SeriesClock(const Inputs &inputs, const ReadingPlace &place)
        : m_inputs(inputs)
        , m_place(place)
        , m_run(inputs.run())
        , m_addition(additionBefore())
        , m_begin_min(timeOf(m_addition))
    {
    }

    double minutesOf(const timing::Stamp &now) const
    {
        return m_inputs.clock().timeline().minutesOf(now) - m_begin_min;
    }

    /// What is there, as a series.
    run::ReadingSeries soFar(const StoredReading &current) const
    {
        if (const auto *series = std::get_if<run::ReadingSeries>(&current.value))
            return *series;
        const auto read_min = run::timeOf_min(tube(), {run::TubeAct::Kind::Read, m_place.reading, {}});
        if (!read_min)
            throw refused(Sentence::tr("Reading %1 of tube %2 was not stored as one more: it is not known "
                                       "when the one before was read, so the two make no series.")
                              .arg(m_place.reading)
                              .arg(m_place.tube + 1));
        if (*read_min < m_begin_min)
            throw refused(Sentence::tr("Reading %1 of tube %2 was not stored as one more: the one before was "
                                       "read before %3 was ticked, so the two make no series.")
                              .arg(m_place.reading, QString::number(m_place.tube + 1),
                                   readingNameOf(m_inputs.method, m_addition.name)));
        return {{*read_min - m_begin_min, std::get<double>(current.value)}};
    }

private:
    const run::Tube &tube() const { return m_run.tubes.at(static_cast<std::size_t>(m_place.tube)); }

    bool isTicked(const QString &component) const
    {
        return doneMark(m_inputs.marks, {m_place.tube, component, false}) != nullptr;
    }

    run::TubeAct additionBefore() const
    {
        const std::vector<run::TubeAct> acts = run::tubeActs(m_inputs.method, tube());
        const auto reading = std::ranges::find_if(acts, [this](const run::TubeAct &act) {
            return act.kind == run::TubeAct::Kind::Read && act.name == m_place.reading;
        });
        requireNothingAfter(reading, acts.end());
        for (auto act = reading; act != acts.begin();) {
            --act;
            if (act->kind == run::TubeAct::Kind::Add)
                return *act;
        }
        throw refused(Sentence::tr("Reading %1 of tube %2 was not stored: nothing was added before it, from "
                                   "which the minutes of a series could count.")
                          .arg(m_place.reading)
                          .arg(m_place.tube + 1));
    }

    template <class It> void requireNothingAfter(It reading, It end) const
    {
        const auto later = std::find_if(reading, end, [this](const run::TubeAct &act) {
            return act.kind == run::TubeAct::Kind::Add && isTicked(act.name);
        });
        if (later != end)
            throw refused(Sentence::tr("Reading %1 of tube %2 was not stored: %3 is ticked there already, so "
                                       "what is read now is no longer part of that series.")
                              .arg(m_place.reading, QString::number(m_place.tube + 1),
                                   readingNameOf(m_inputs.method, later->name)));
    }

    double timeOf(const run::TubeAct &addition) const
    {
        const bool hasClock = !m_inputs.clock().timeline().isEmpty();
        if (const auto time_min = run::timeOf_min(tube(), addition); time_min && hasClock)
            return *time_min;
        const QString name = readingNameOf(m_inputs.method, addition.name);
        if (isTicked(addition.name) || run::timeOf_min(tube(), addition))
            throw refused(Sentence::tr("Reading %1 of tube %2 was not stored as one more: it is not known "
                                       "when %3 went in, and a series counts its minutes from there.")
                              .arg(m_place.reading, QString::number(m_place.tube + 1), name));
        throw refused(Sentence::tr("Reading %1 was not stored as one more: tick %3 of tube %2 first, since a "
                                   "series counts its minutes from there.")
                          .arg(m_place.reading, QString::number(m_place.tube + 1), name));
    }

    const Inputs &m_inputs;
    ReadingPlace m_place;
    run::Run m_run;
    run::TubeAct m_addition;
    double m_begin_min;
};

} // namespace

ReadingId addReading(Act &act, const ReadingPlace &place, const ReadingInput<run::Reading> &input)
{
    AtPlace at(act, place);
    if (at.isTaken())
        throw refused(
            Sentence::tr("Tube %1 has a reading %2 already; nothing was stored: correct it, with a reason.")
                .arg(place.tube + 1)
                .arg(place.reading));
    NewReading reading;
    reading.value = input.value;
    reading.typed = input.typed;
    reading.origin = input.origin;
    return at.store(reading);
}

ReadingId readAgain(Act &act, const ReadingPlace &place, const ReadingInput<double> &input)
{
    AtPlace at(act, place);
    const StoredReading *current = at.current();
    if (!current)
        throw refused(Sentence::tr("Tube %1 has no reading %2 yet; nothing was stored: add it first.")
                          .arg(place.tube + 1)
                          .arg(place.reading));
    const SeriesClock clock(at.inputs(), place);
    run::ReadingSeries series = clock.soFar(*current);
    series.push_back({clock.minutesOf(act.stamp()), input.value});
    NewReading reading;
    reading.value = series;
    reading.typed = input.typed;
    reading.corrects = current->id;
    reading.again = true;
    reading.origin = input.origin;
    return at.store(reading);
}

ReadingId correctReading(Act &act, const ReadingPlace &place, const ReadingInput<run::Reading> &input,
                         const QString &reason)
{
    AtPlace at(act, place);
    if (at.toCorrect().value == input.value)
        throw refused(Sentence::tr("Reading %1 of tube %2 has that value already; nothing was stored: a "
                                   "correction gives another value.")
                          .arg(place.reading)
                          .arg(place.tube + 1));
    NewReading reading;
    reading.corrects = at.toCorrect().id;
    reading.value = input.value;
    reading.typed = input.typed;
    reading.reason = reason;
    return at.store(reading);
}

ReadingId correctLastOfSeries(Act &act, const ReadingPlace &place, const ReadingInput<double> &input,
                              const QString &reason)
{
    AtPlace at(act, place);
    NewReading reading;
    reading.corrects = at.toCorrect().id;
    reading.value = at.toCorrect().value;
    if (auto *series = std::get_if<run::ReadingSeries>(&reading.value))
        series->back().absorbance = input.value;
    else
        reading.value = input.value;
    reading.typed = input.typed;
    reading.reason = reason;
    return at.store(reading);
}

} // namespace plateau::notebook
