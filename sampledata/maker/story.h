// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDate>

#include <vector>

namespace plateau::sampledata {

/// What goes wrong in the laboratory, and when it is found.
struct Story {
    /// The first sulphite run from that day on opens the weak lot of sulphite oxidase.
    QDate weakLotFrom;
    /// The smallest piston pipette scatters more and more, until its check fails.
    QDate pipetteWearsFrom;
    QDate pipetteFails;
    QDate pipetteRepaired;
    /// The photometer shows more than there is, a little more every day, until its lamp is changed.
    QDate scaleCreepsFrom;
    QDate lampChanged;

    /// Over the days that are worked, one at least.
    static Story over(const std::vector<QDate> &worked);
    /// What the photometer shows of an absorbance of 1.
    double scaleOn(const QDate &day) const;
    /// Of the smallest piston pipette (k = 1), relative, beyond what the hand does.
    double pipetteScatterOn(const QDate &day) const;
};

} // namespace plateau::sampledata
