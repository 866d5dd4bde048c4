// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QDate>

namespace plateau::notebook {

class OpenNotebook;

/// Of which runs. What is empty or absent asks for nothing. Names are compared as texts exactly, samples and
/// products without regard to case.
struct HistoryFilter {
    /// Id of the method, any version.
    QString method{};
    QString measurand{};
    QString sample{};
    QString product{};
    QString standard{};
    /// Somebody who did something on the run.
    QString person{};
    std::optional<LotId> container{};
    std::optional<QDate> from{};
    std::optional<QDate> to{};
    /// Rejected runs too, and results that were rejected or are to be repeated; runs on the bench never.
    bool rejectedToo = false;
    /// Only what began before it or with it.
    std::optional<QDateTime> until{};
    /// Of the decided runs by the method until then only so many, the newest.
    std::optional<int> newestRuns{};
};

/// What all points share: the run, decided, and what may be drawn or said of it.
struct HistoryRun {
    RunId run;
    QString title;
    QString method;
    int methodVersion = 1;
    /// The run's own start, else when it was put into the notebook.
    QDateTime at;
    /// Who decided.
    QString person;
    bool rejected = false;
};

/// A standard in one run, expected at the moment of its use. One that calibrates its run is none: it recovers
/// itself to the last digit.
struct RecoveryPoint {
    HistoryRun of;
    QString standard;
    QString measurand;
    double expected_g_per_L = 0;
    double found_g_per_L = 0;
    double recovery_percent = 0;
    /// Hours from when it was made to its use; absent where either is not known.
    std::optional<double> age_h;
    std::optional<QDateTime> preparedAt;
};

/// The mean signal of a run's blanks.
struct BlankPoint {
    HistoryRun of;
    QString measurand;
    double mean = 0;
    int n = 0;
};

/// A result: of a sample or a control, with the range of its n tubes.
struct ResultPoint {
    HistoryRun of;
    QString sample;
    QString product;
    QString measurand;
    QString unit;
    double value = 0;
    std::optional<double> expandedUncertainty;
    int n = 0;
    /// Largest less smallest of the n tubes, in the result's unit.
    std::optional<double> range;
    bool rejected = false;
};

/// What the decisions that stand found over the years, for charts; oldest first. Reads the index of the
/// search, not the runs. Throws Failure.
class RunHistory
{
public:
    explicit RunHistory(OpenNotebook &open)
        : m_open(open)
    {
    }

    std::vector<RecoveryPoint> recoveries(const HistoryFilter &filter) const;
    std::vector<BlankPoint> blanks(const HistoryFilter &filter) const;
    /// Only those with a value.
    std::vector<ResultPoint> results(const HistoryFilter &filter) const;
    /// Those of two tubes and more.
    std::vector<ResultPoint> duplicates(const HistoryFilter &filter) const;
    /// The middle of what the blanks of the newest ten accepted runs by that method (its id) show at the reading;
    /// nothing of fewer than three blanks. Reads the runs.
    std::optional<double> usualBlank(const QString &method, const QString &reading) const;

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
