// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettesheet.h"

#include "ui/bench/volumewords.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace plateau::ui {

namespace {

struct PipetteSheetWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PipetteSheet)
};

using Kind = SheetStep::Kind;

std::vector<SheetStep> dilutionsOf(const run::Run &run)
{
    std::vector<SheetStep> steps;
    for (int sample = 0; sample < static_cast<int>(run.samples.size()); ++sample) {
        const auto &dilution = run.samples[static_cast<std::size_t>(sample)].dilution;
        for (int step = 0; step < static_cast<int>(dilution.size()); ++step)
            steps.push_back({Kind::Dilute, -1, {},
                             PipetteSheetWords::tr("Dilute %1: %2")
                                 .arg(dilutionStepWords(dilution[static_cast<std::size_t>(step)]),
                                      dilutionName(run, {sample, step})),
                             {sample, step}});
    }
    return steps;
}

/// A spike is a second round of the sample's step.
std::vector<SheetStep> stepsOf(const assay::Method &method, const run::Run &run,
                               const std::vector<planning::Round> &rounds)
{
    std::vector<SheetStep> steps = dilutionsOf(run);
    for (std::size_t at = 0; at < method.steps.size(); ++at) {
        const assay::Step &step = method.steps[at];
        if (std::holds_alternative<assay::AddStep>(step)) {
            for (std::size_t round = 0; round < rounds.size(); ++round) {
                if (rounds[round].step == static_cast<int>(at))
                    steps.push_back({Kind::Add, static_cast<int>(round), {}, rounds[round].name});
            }
        } else if (std::holds_alternative<assay::MixStep>(step)) {
            steps.push_back({Kind::Mix, -1, {}, PipetteSheetWords::tr("Mix")});
        } else if (const auto *wait = std::get_if<assay::WaitStep>(&step)) {
            steps.push_back({Kind::Wait, -1, {}, waitWords(*wait)});
        } else if (const auto *read = std::get_if<assay::ReadStep>(&step)) {
            steps.push_back(
                {Kind::Read, -1, read->reading, PipetteSheetWords::tr("Read %1").arg(read->reading)});
        }
    }
    return steps;
}

} // namespace

QString dilutionName(const run::Run &run, const notebook::DilutionPlace &place)
{
    const run::Sample &sample = run.samples.at(static_cast<std::size_t>(place.sample));
    if (sample.dilution.size() < 2)
        return sample.id;
    return PipetteSheetWords::tr("%1, step %2 of %3", "a sample and a step of its dilution")
        .arg(sample.id, QString::number(place.step + 1), QString::number(sample.dilution.size()));
}

PipetteSheet::PipetteSheet(const assay::Method &method, const run::Run &run,
                           std::vector<planning::Round> rounds, PipetteMarks marks)
    : m_run(run)
    , m_rounds(std::move(rounds))
    , m_marks(std::move(marks))
    , m_steps(stepsOf(method, run, m_rounds))
{
}

bool PipetteSheet::isRead(int index, const QString &reading) const
{
    return tube(index).readings.contains(reading);
}

bool PipetteSheet::isSpike(int index) const
{
    return index > 0 && round(index).step == round(index - 1).step;
}

QString PipetteSheet::spoilt(int index) const
{
    return tube(index).spoilt;
}

const planning::Round::Dose *PipetteSheet::doseOf(const Dosing &dosing) const
{
    const auto &doses = round(dosing.round).doses;
    const auto at = static_cast<std::size_t>(dosing.tube);
    return at < doses.size() && doses[at] ? &*doses[at] : nullptr;
}

const Pipetted *PipetteSheet::pipetted(const Dosing &dosing) const
{
    const auto found = m_marks.ticked.find(dosing);
    return found == m_marks.ticked.end() ? nullptr : &found->second;
}

bool PipetteSheet::isDifferent(const Dosing &dosing) const
{
    const Pipetted *went = pipetted(dosing);
    return went && std::abs(went->volume_mL - went->planned_mL) > 1e-9;
}

int PipetteSheet::stepOf(int round) const
{
    const auto found = std::find_if(m_steps.begin(), m_steps.end(),
                                    [round](const SheetStep &step) { return step.round == round; });
    return static_cast<int>(found - m_steps.begin());
}

bool PipetteSheet::startsWait(int round) const
{
    using Kind = SheetStep::Kind;
    const auto at = m_steps.begin() + stepOf(round);
    // Not every tube gets a spike: of the others the wait starts with the sample.
    const auto next = std::find_if_not(std::next(at), m_steps.end(), [this](const SheetStep &step) {
        return step.kind == Kind::Mix || (step.kind == Kind::Add && isSpike(step.round));
    });
    return next != m_steps.end() && next->kind == Kind::Wait;
}

bool PipetteSheet::hasDose(int sample, std::initializer_list<State> states) const
{
    const QString &id = m_run.samples.at(static_cast<std::size_t>(sample)).id;
    for (int round = 0; round < static_cast<int>(m_rounds.size()); ++round) {
        for (int tube = 0; tube < tubes(); ++tube) {
            const planning::Round::Dose *dose = doseOf({round, tube});
            if (dose && dose->content == id &&
                std::find(states.begin(), states.end(), stateOf({round, tube})) != states.end())
                return true;
        }
    }
    return false;
}

bool PipetteSheet::hasDilutionToMake() const
{
    bool isToMake = false;
    for (const SheetStep &step : m_steps) {
        if (step.kind != Kind::Dilute)
            continue;
        const State state = dilutionState(step.dilution);
        if (state == State::Passed && m_marks.diluted.empty())
            return false;
        isToMake = isToMake || (state == State::Due && hasDose(step.dilution.sample, {State::Due}));
    }
    return isToMake;
}

PipetteSheet::State PipetteSheet::dilutionState(const notebook::DilutionPlace &place) const
{
    if (m_marks.diluted.contains(place))
        return State::Ticked;
    return hasDose(place.sample, {State::Ticked, State::Passed}) ? State::Passed : State::Due;
}

std::optional<int> PipetteSheet::nextDilution(int fromStep) const
{
    const int count = static_cast<int>(m_steps.size());
    for (int ahead = 0; ahead < count; ++ahead) {
        const int at = (fromStep + ahead) % count;
        const SheetStep &step = m_steps[static_cast<std::size_t>(at)];
        if (step.kind == Kind::Dilute && dilutionState(step.dilution) == State::Due)
            return at;
    }
    return std::nullopt;
}

std::vector<notebook::DilutionPlace> PipetteSheet::dilutionsDue() const
{
    std::vector<notebook::DilutionPlace> due;
    for (const SheetStep &step : m_steps) {
        if (step.kind == Kind::Dilute && dilutionState(step.dilution) == State::Due)
            due.push_back(step.dilution);
    }
    return due;
}

StepCount PipetteSheet::countOfDilutions() const
{
    StepCount all;
    for (int step = 0; step < static_cast<int>(m_steps.size()); ++step) {
        if (m_steps[static_cast<std::size_t>(step)].kind != Kind::Dilute)
            continue;
        all.done += countOf(step).done;
        ++all.planned;
    }
    return all;
}

PipetteSheet::State PipetteSheet::stateOf(const Dosing &dosing) const
{
    if (!doseOf(dosing))
        return State::Nothing;
    if (!spoilt(dosing.tube).isEmpty())
        return State::Spoilt;
    if (pipetted(dosing))
        return State::Ticked;
    if (dosing.tube < m_marks.elsewhere)
        return State::Passed;
    const bool readSince =
        std::any_of(m_steps.begin() + stepOf(dosing.round), m_steps.end(), [&](const SheetStep &step) {
            return step.kind == Kind::Read && isRead(dosing.tube, step.reading);
        });
    return readSince ? State::Passed : State::Due;
}

bool PipetteSheet::isLed() const
{
    if (m_marks.elsewhere > 0)
        return true;
    if (m_marks.fromPaper)
        return false;
    return !m_marks.ticked.empty() || std::all_of(m_run.tubes.begin(), m_run.tubes.end(),
                                                  [](const auto &tube) { return tube.readings.empty(); });
}

StepCount PipetteSheet::countOfRound(int round) const
{
    StepCount count;
    for (int tube = 0; tube < tubes(); ++tube) {
        const State state = stateOf({round, tube});
        if (state == State::Ticked || state == State::Passed)
            ++count.done;
        if (state != State::Nothing && state != State::Spoilt)
            ++count.planned;
    }
    return count;
}

StepCount PipetteSheet::countOf(int index) const
{
    const SheetStep &step = m_steps.at(static_cast<std::size_t>(index));
    if (step.kind == Kind::Add)
        return countOfRound(step.round);
    if (step.kind == Kind::Dilute)
        return {dilutionState(step.dilution) == State::Due ? 0 : 1, 1};
    StepCount count;
    if (step.kind != Kind::Read)
        return count;
    for (int tube = 0; tube < tubes(); ++tube) {
        if (!spoilt(tube).isEmpty())
            continue;
        ++count.planned;
        if (isRead(tube, step.reading))
            ++count.done;
    }
    return count;
}

int PipetteSheet::currentStep() const
{
    int first = static_cast<int>(m_steps.size());
    // Mixing and waiting leave no mark; they belong to whatever comes after them.
    for (int step = static_cast<int>(m_steps.size()) - 1; step >= 0; --step) {
        if (m_steps[static_cast<std::size_t>(step)].kind == Kind::Dilute)
            continue;
        const StepCount count = countOf(step);
        if (count.done < count.planned)
            first = step;
    }
    return first;
}

std::optional<Dosing> PipetteSheet::next() const
{
    const int step = currentStep();
    if (!isLed() || step == static_cast<int>(m_steps.size()))
        return std::nullopt;
    const int round = m_steps[static_cast<std::size_t>(step)].round;
    return round < 0 ? std::nullopt : nextIn(round);
}

std::optional<Dosing> PipetteSheet::nextIn(int round, int fromTube) const
{
    for (int step = 0; step < tubes(); ++step) {
        const Dosing dosing{round, (fromTube + step) % tubes()};
        if (stateOf(dosing) == State::Due)
            return dosing;
    }
    return std::nullopt;
}

std::vector<Dosing> PipetteSheet::dueIn(int round, int firstTube, int lastTube) const
{
    std::vector<Dosing> due;
    for (int tube = firstTube; tube <= std::min(lastTube, tubes() - 1); ++tube) {
        if (stateOf({round, tube}) == State::Due)
            due.push_back({round, tube});
    }
    return due;
}

bool PipetteSheet::isReadable(int tube, const QString &reading) const
{
    if (!isLed() || isUntouched())
        return true;
    for (const SheetStep &step : m_steps) {
        if (step.reading == reading)
            break;
        if (step.round >= 0 && stateOf({step.round, tube}) == State::Due)
            return false;
    }
    return true;
}

QString PipetteSheet::currentReading() const
{
    QString reading;
    for (int step = 0; step < static_cast<int>(m_steps.size()); ++step) {
        const SheetStep &own = m_steps[static_cast<std::size_t>(step)];
        if (own.kind != Kind::Read)
            continue;
        reading = own.reading;
        if (const StepCount count = countOf(step); count.done < count.planned)
            break;
    }
    return reading;
}

QStringList PipetteSheet::readingsMissingBefore(const Dosing &dosing) const
{
    QStringList missing;
    for (int step = 0; step < stepOf(dosing.round); ++step) {
        const QString &reading = m_steps[static_cast<std::size_t>(step)].reading;
        if (!reading.isEmpty() && !isRead(dosing.tube, reading))
            missing << reading;
    }
    return missing;
}

} // namespace plateau::ui
