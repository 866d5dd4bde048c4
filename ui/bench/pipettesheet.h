// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/notebook/dilutionmarks.h"
#include "core/planning/worksheet.h"
#include "core/run/run.h"

#include <QStringList>

#include <compare>
#include <map>
#include <optional>
#include <set>
#include <vector>

namespace plateau::ui {

/// One addition to one tube: indices from 0 into the rounds and the tubes.
struct Dosing {
    int round = 0;
    int tube = 0;
    auto operator<=>(const Dosing &) const = default;
};

/// What went in.
struct Pipetted {
    double volume_mL = 0;
    /// What was to go in.
    double planned_mL = 0;
    std::optional<notebook::LotId> lot{};
    QString pipette{};
    QString note{};
    bool operator==(const Pipetted &) const = default;
};

/// What the bench has said about the additions of one rack, and about its dilutions.
struct PipetteMarks {
    std::map<Dosing, Pipetted> ticked;
    std::set<notebook::DilutionPlace> diluted{};
    /// The additions were made without the screen.
    bool fromPaper = false;
    /// Of so many tubes, the first ones, while others were added to the rack since, for which the bench is
    /// led.
    int elsewhere = 0;
};

/// One step of the method as the bench takes it: an addition is a round over all tubes.
struct SheetStep {
    /// Dilute stands before the first addition, one for each step of each sample that is diluted. It may be ticked and
    /// need not be: whoever pipettes the sample has made it.
    enum class Kind { Dilute, Add, Mix, Wait, Read } kind = Kind::Mix;
    /// Of Add; -1 else.
    int round = -1;
    /// Of Read.
    QString reading;
    /// "Dilute 5 mL to 50 mL: P-104" (the volumes come first), "Buffer pH 9", "Mix", "Wait 3 to 10 min", "Read A1".
    QString words;
    /// Of Dilute.
    notebook::DilutionPlace dilution{};
    bool operator==(const SheetStep &) const = default;
};

/// "P-104", of a sample that is diluted in several steps "P-104, step 1 of 2".
QString dilutionName(const run::Run &run, const notebook::DilutionPlace &place);

/// How far a step is: tubes that are through with it, of those that go through it. A spoilt tube counts in
/// neither.
struct StepCount {
    int done = 0;
    int planned = 0;
    bool operator==(const StepCount &) const = default;
};

/// The worksheet of one rack with what is ticked on it. Says what to do next; stores nothing.
class PipetteSheet
{
public:
    /// Passed: not ticked, but the tube was read afterwards or pipetted elsewhere, so it happened.
    enum class State { Nothing, Due, Ticked, Passed, Spoilt };

    PipetteSheet() = default;
    PipetteSheet(const assay::Method &method, const run::Run &run, std::vector<planning::Round> rounds,
                 PipetteMarks marks);

    int tubes() const { return static_cast<int>(m_run.tubes.size()); }
    const run::Run &run() const { return m_run; }
    const std::vector<planning::Round> &rounds() const { return m_rounds; }
    const planning::Round &round(int index) const { return m_rounds.at(static_cast<std::size_t>(index)); }
    /// A spike is a round of the sample's step, after the sample's own.
    bool isSpike(int round) const;
    const std::vector<SheetStep> &steps() const { return m_steps; }

    State stateOf(const Dosing &dosing) const;
    /// Due, Ticked, or Passed where a tube got the sample.
    State dilutionState(const notebook::DilutionPlace &place) const;
    /// nullptr where the tube gets nothing in that round.
    const planning::Round::Dose *doseOf(const Dosing &dosing) const;
    /// nullptr unless ticked.
    const Pipetted *pipetted(const Dosing &dosing) const;
    /// Ticked with another volume than was to go in.
    bool isDifferent(const Dosing &dosing) const;
    QString spoilt(int tube) const;

    /// Whether the bench is to be led through the additions at all: not where they were made from paper, nor
    /// where tubes were read and nothing was ever ticked; tubes that were added to such a rack are led.
    bool isLed() const;
    /// Nothing was ticked, and nobody said that it is not going to be.
    bool isUntouched() const
    {
        return m_marks.ticked.empty() && !m_marks.fromPaper && m_marks.elsewhere == 0;
    }
    bool isFromPaper() const { return m_marks.fromPaper; }
    /// The first step with work left, mixing and waiting taken along with what follows them; the number of
    /// steps where there is none. Nobody waits for the tick of a dilution.
    int currentStep() const;
    /// The next addition, while the bench is led and an addition comes before the next reading.
    std::optional<Dosing> next() const;
    /// The first addition due in that round, looking from the tube on (itself included), then from the first.
    std::optional<Dosing> nextIn(int round, int fromTube = 0) const;
    /// All that are due in that round, in tubes first to last.
    std::vector<Dosing> dueIn(int round, int firstTube, int lastTube) const;
    /// The first dilution due, looking from the step on (itself included), then from the first: its step.
    std::optional<int> nextDilution(int fromStep = 0) const;
    std::vector<notebook::DilutionPlace> dilutionsDue() const;
    /// Of a dilution itself, made or not.
    StepCount countOf(int step) const;
    StepCount countOfDilutions() const;
    StepCount countOfRound(int round) const;
    /// Index of the round's step.
    int stepOf(int round) const;
    /// Whether a tube's wait starts with that addition: nothing but mixing, and spikes, lies between them.
    bool startsWait(int round) const;
    /// Whether dilutions are still to be made, as far as the ticks tell: a dose of a sample is due whose dilution is not
    /// ticked. Where no dilution is ticked at all they are made once a dose of any diluted sample has gone in, since they
    /// are made together, before the additions.
    bool hasDilutionToMake() const;
    /// Nothing that goes in before that reading is still to be ticked for the tube; true of every tube where
    /// nothing was ticked at all, and where the bench is not led.
    bool isReadable(int tube, const QString &reading) const;
    /// The first reading that tubes still lack, else the last one; empty for a method without any.
    QString currentReading() const;
    /// Readings that the tube should have had before that addition and has not.
    QStringList readingsMissingBefore(const Dosing &dosing) const;

private:
    const run::Tube &tube(int index) const { return m_run.tubes.at(static_cast<std::size_t>(index)); }
    bool isRead(int tube, const QString &reading) const;
    /// Whether any dose of the sample itself is one of these.
    bool hasDose(int sample, std::initializer_list<State> states) const;

    run::Run m_run;
    std::vector<planning::Round> m_rounds;
    PipetteMarks m_marks;
    std::vector<SheetStep> m_steps;
};

} // namespace plateau::ui
