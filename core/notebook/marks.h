// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/ids.h"
#include "core/timing/stamp.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::notebook {

/// One component's addition to one tube. A method adds a component once, so the two name it; a spike goes in
/// with the sample and is a dose of its own.
struct Dose {
    /// Index in the run's order.
    int tube = 0;
    /// Of the method's step, whatever stands in for it (diluent in a blank, a standard in place of the
    /// sample).
    QString component;
    bool spike = false;
    bool operator==(const Dose &) const = default;
};

/// What is said of a dose that was pipetted.
struct DoneDose {
    Dose dose;
    /// What was really pipetted; absent: what the method and the tube's plan say.
    std::optional<double> volume_mL{};
    /// The container it was taken from, of the lots in hand.
    std::optional<LotId> lot{};
    QString pipette{};
    QString note{};
};

/// Done and Undone are of a dose, Spoilt and Unspoilt of a tube; of each the last one counts.
enum class MarkKind { Done, Undone, Spoilt, Unspoilt };

/// A mark as it was made on the worksheet. Only ever added.
struct StoredMark {
    MarkId id;
    MarkKind kind = MarkKind::Done;
    /// Of a whole tube: component is empty.
    Dose dose;
    /// Of Done: what went in, and what was to go in; else 0.
    double volume_mL = 0;
    double planned_mL = 0;
    std::optional<LotId> lot;
    /// What was known of the lot then; lotExpires is its last good day by all that limits it (planning::useByOf).
    QString lotName;
    std::optional<QDate> lotExpires;
    QString pipette;
    /// Of Spoilt and Unspoilt the reason, which is never blank.
    QString note;
    QString person;
    QDateTime at;
    /// The place among all that was marked and read at the bench, as StoredReading::order.
    qint64 order = 0;
    /// id is empty where it is not known, as for a mark that came with its run.
    timing::BootTime boot{};
};

/// The mark that says that the dose is done; nullptr where it is not, or not any more.
const StoredMark *doneMark(const std::vector<StoredMark> &marks, const Dose &dose);
/// The mark that says that the tube is spoilt; nullptr where it is not, or not any more.
const StoredMark *spoiltMark(const std::vector<StoredMark> &marks, int tube);

} // namespace plateau::notebook
