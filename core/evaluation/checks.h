// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/evaluation/layout.h"

#include <QCoreApplication>

#include <span>
#include <vector>

namespace plateau::evaluation {

/// What the checks look at: the laid-out run, the values computed so far, the rules.
struct CheckContext {
    const Layout &layout;
    const Evaluation &evaluation;
    const Rules &rules;
    /// Of one reading (k = 1): the run's, else the rules' assumption.
    double absorbanceUncertainty = 0;

    const TubeValue &value(int tube, size_t measurand) const
    {
        return evaluation.tubes[static_cast<size_t>(tube) * layout.measurands().size() + measurand];
    }
    const TubeTerm &term(int tube, size_t measurand) const
    {
        return layout.measurands()[measurand].tubes[static_cast<size_t>(tube)];
    }
    const run::Tube &tube(int index) const { return layout.run().tubes[static_cast<size_t>(index)]; }
};

/// Text of the checks, translatable under one context.
struct CheckText {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::Checks)
};

/// A group of tubes judged together as one measurand sees them.
struct TubeGroup {
    Scope scope;
    size_t measurand = 0;
    std::vector<int> tubes;
    /// The only reading that is looked at; empty: all that the measurand takes.
    QString reading{};
};

/// Collects the tubes that fail a check, with a part sentence for each, and makes one Check of it.
class CheckBuilder
{
public:
    CheckBuilder(CheckId id, const TubeGroup &group, QString passedFinding);
    /// detail: "0.034 is below 0.100"; the tube's number is put before it.
    void fail(int tube, const QString &detail);
    bool failed() const { return !m_check.passed; }
    /// Said once after the details where a tube failed: what that means, and what to do. Whole sentences, or nothing.
    Check finish(const QString &meaning, const QString &whatToDo);

private:
    Check m_check;
    QStringList m_details;
};

/// Spoilt tubes are not judged; where none of the group is left, reading-missing says so.
/// reading-missing, reading-implausible, absorbance-high, reserve-low (falling), sample-volume-outside-range.
/// Here and below, what rests on the numbers of a tube is silent on one whose readings mean nothing:
/// implausible, or running in the wrong direction.
std::vector<Check> readingChecks(const CheckContext &context, const TubeGroup &group);
/// wrong-direction; nothing while no tube of the group has a signal.
std::vector<Check> directionChecks(const CheckContext &context, const TubeGroup &group);
/// signal-low and signal-high, without advice; nothing while no tube of the group has a net signal.
std::vector<Check> windowChecks(const CheckContext &context, const TubeGroup &group);
/// reaction-unfinished of readings taken as series; empty where there are none.
std::vector<Check> seriesChecks(const CheckContext &context, const TubeGroup &group);
/// reading-early and reading-late, by the times that were marked and by those of series; empty where the time
/// of no reading is known that the method has a wait before. Both ends of the wait are in time, to the
/// second.
std::vector<Check> timingChecks(const CheckContext &context, const TubeGroup &group);

/// Blanks, lots and standards: what holds for every sample of the run.
std::vector<Check> runChecks(const CheckContext &context);
/// All checks of one result, with the advice of a repeat.
std::vector<Check> sampleChecks(const CheckContext &context, const Result &result);

/// Those of the group that are fit to be judged: read plausibly, and in the right direction.
TubeGroup trusted(const CheckContext &context, const TubeGroup &group);
/// Sentences one behind the other; an empty one leaves no trace.
QString inARow(const QString &sentence, const QString &next);
/// "the blank is too high": what a failed check comes to, in the middle of a line that leads to its message.
QString checkPhrase(CheckId id);
/// "tube 3" for index 2: tubes are counted from 1 where a person reads it.
QString tubeName(int tube);
/// "tube 3", "tubes 5 and 6", "tubes 5, 6 and 7".
QString tubeNames(const std::vector<int> &tubes);
/// "10-fold in all, at least (5 mL to 50 mL)" or "0.5 mL of sample".
QString adviceText(const Advice &advice);
/// Measurand id where the method has more than one, else empty.
QString scopeMeasurand(const assay::Method &method, const QString &measurand);

} // namespace plateau::evaluation
