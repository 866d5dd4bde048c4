// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/ids.h"
#include "core/planning/planrecord.h"
#include "sampledata/maker/chance.h"
#include "sampledata/maker/house.h"

#include <map>
#include <optional>
#include <vector>

namespace plateau::sampledata {

/// A sample that is to be run, and what is true of it.
struct MadeSample {
    run::Sample sample;
    planning::PlannedSample planned;
    /// g/L as received, of a solid g/100 g.
    std::map<QString, double> content;
    std::optional<double> volume_mL{};
    int repeated = 0;
    /// By measurand: in the solution that is pipetted.
    std::map<QString, double> pipetted_g_per_L() const;
};

/// The dilution that brings what is expected into the method's window, with glass of the house; and the glass
/// of such a dilution.
std::vector<run::DilutionStep> dilutionFor(const assay::Method &method,
                                           const std::map<QString, double> &expected);
std::vector<planning::StepGlass> glassOf(const std::vector<run::DilutionStep> &steps);

/// Where the samples come from: tanks that are looked at again and again, and what is counted on.
class SampleSource
{
public:
    explicit SampleSource(quint64 seed)
        : m_seed(seed)
    {
    }

    /// One that the method can measure and whose name is not among those taken.
    MadeSample next(const assay::Method &method, const QStringList &taken, const QDateTime &now,
                    Chance &chance);
    /// The same once more, as a run advises.
    static MadeSample repeatOf(const MadeSample &sample, const std::optional<evaluation::Advice> &advice,
                               notebook::RunId run);

private:
    QString nameOf(const ProductLine &line, int &tank, Chance &chance);

    quint64 m_seed;
    /// By the line's name.
    std::map<QString, int> m_counted;
};

} // namespace plateau::sampledata
