// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

#include <optional>
#include <vector>

namespace plateau::evaluation {

/// Tubes with what they show at one reading.
struct ReadTubes {
    std::vector<int> tubes;
    std::vector<double> absorbances;
    bool isEmpty() const { return tubes.empty(); }
};

double medianOf(std::vector<double> values);
/// The median absolute deviation from it, as the standard deviation it stands for with normal values.
double scaledDeviationOf(const std::vector<double> &values, double median);

/// What one reading of one tube can be held against. Spoilt tubes and the tube itself are left out.
class OtherTubes
{
public:
    OtherTubes(const assay::Method &method, const run::Run &run, int tube, const QString &reading);

    /// Before everything that differs between tubes was added.
    bool isFirstReading() const;
    /// A blank, or of a standard: without a sample that may be coloured.
    bool isClear() const { return own().sample.isEmpty(); }
    /// The same sample, standard or blank in the same volume.
    ReadTubes replicates() const;
    /// The same sample or standard in any volume; at the first reading its blank and its spiked tube as well.
    ReadTubes ofSameContents() const;
    ReadTubes all() const;
    /// Blanks and tubes of standards, which are clear.
    ReadTubes clear() const;
    /// One for each other sample, at the middle of what its tubes show.
    std::vector<double> samples() const;
    /// The tube read just before, by the times that were marked, else by its place; where it holds something
    /// else.
    std::optional<int> neighbour() const;
    double absorbanceOf(int tube) const;

private:
    const run::Tube &own() const { return m_run.tubes[static_cast<size_t>(m_tube)]; }
    bool holdsTheSame(const run::Tube &other) const;
    bool isReplicate(const run::Tube &other) const;
    template <class Belongs> ReadTubes readWhere(Belongs belongs) const;

    const assay::Method &m_method;
    const run::Run &m_run;
    int m_tube;
    const QString &m_reading;
};

} // namespace plateau::evaluation
