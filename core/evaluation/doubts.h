// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

#include <optional>
#include <vector>

namespace plateau::evaluation {

/// Something about an absorbance that is worth a look before it is stored.
struct Doubt {
    /// Most serious first.
    enum class Kind {
        /// No photometer shows it. Nothing else is said then.
        Implausible,
        /// The signal it completes runs in the wrong direction. Nothing else is said then.
        WrongDirection,
        /// Above the method's maxAbsorbance.
        AbsorbanceHigh,
        /// With it a blank's signal is beyond the method's maxBlankSignal.
        BlankHigh,
        FarFromReplicate,
        /// Of a falling method, before anything was used up: below what must remain at the end, or nearer to a
        /// tenth of what must be there at the start (startbounds.h). Nothing is beside it yet that it could be
        /// held against.
        ReagentMissing,
        /// Of a rising method, in the first tube, a blank or a standard: no room for the largest signal below the
        /// photometer's limit (startbounds.h).
        StartHigh,
        /// A first reading, where every tube holds the same reagents: far from the other tubes, or from the blanks of
        /// earlier runs where nothing is beside it yet.
        FarFromOthers,
        /// A falling reagent is used up (asked of the first tube of its contents, since a slipped decimal
        /// point looks the same, which is said where ten times the value would lie between the reserve and what
        /// the tube began with), or nearly so: less than 1.5 times the reserve is left.
        ReserveLow,
        ReserveNear,
        /// The net signal it completes lies past the method's window.
        SignalHigh,
        SignalLow,
        /// To the last digit what the tube read just before shows, which holds something else.
        SameAsNeighbour,
    } kind = Kind::Implausible;
    /// One for a person, with the number, the limit and what to do.
    QString sentence;
    /// Points to a slip of the hand: to be asked before it is stored. Else a fact that is told beside it.
    bool asks = false;
    bool operator==(const Doubt &) const = default;
};

/// All that is worth a look about this absorbance as that reading of the tube, most serious first, each kind
/// once.
///
/// Far from a replicate (same contents, same sample volume): at the first reading by more than first readings
/// scatter; where it completes a signal, by more in signal than the method's repeatability limit comes to by
/// absorptivity, else than the laboratory's own (of blanks: than Rules::maxBlankSpread, or the noise). At any
/// reading, as by a slipped decimal point: more than 0.05 and more than three scaled median absolute
/// deviations from their median, and by a factor of more than the root of ten, so that it is closer to their
/// tenth or tenfold than to them.
///
/// Far from the others (only without a replicate to be held against): as by a slipped decimal point, or by
/// more than Rules::firstReadingScatter, 3 % and three scaled median absolute deviations from the median of
/// at least three others of a like matrix: blanks and standards among themselves, samples by sample; a sample
/// may lie above blanks and standards, since it may be coloured, but not below. So a coloured sample is asked
/// about once at most. All of this: common practice, no source.
///
/// The first tube of a rack, a blank or a standard, has no others yet: it is held against usualBlank, the middle of what
/// blanks of earlier runs by the method showed at that reading, as by a slipped decimal point only. A bound of
/// startbounds.h that usualBlank lies beyond as well asks nothing.
///
/// What the tube and the run have read so far stands in the run; a value already there is not looked at, so
/// that a correction is judged like a first reading. The method has that reading and the run that tube.
std::vector<Doubt> doubtsAbout(const assay::Method &method, const run::Run &run, int tube,
                               const QString &reading, double absorbance, const Rules &rules = {},
                               std::optional<double> usualBlank = {});

/// The sentence of the first that asks; empty if none does.
QString doubtAbout(const assay::Method &method, const run::Run &run, int tube, const QString &reading,
                   double absorbance, const Rules &rules = {}, std::optional<double> usualBlank = {});

} // namespace plateau::evaluation
