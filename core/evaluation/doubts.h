// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"

namespace plateau::evaluation {

/// What speaks against storing this absorbance as that reading of the tube: one sentence for a person, the
/// most serious if there are several; empty if nothing does. In this order: no photometer shows it; the
/// signal it completes runs in the wrong direction; it is above the method's maxAbsorbance; it is far from
/// what tubes of the same contents read at that point, or, at the first reading, where every tube holds the
/// same reagents, from what all the others read.
///
/// Far (common practice, no source): more than 0.05 and more than three scaled median absolute deviations
/// from the others' median, and by a factor of more than the root of ten, so that it is closer to their tenth
/// or tenfold than to them. A coloured sample is asked about once at most: its next tube is held against its
/// first.
///
/// What the tube and the run have read so far stands in the run; a value already there is not looked at, so
/// that a correction is judged like a first reading. The method has that reading and the run that tube.
QString doubtAbout(const assay::Method &method, const run::Run &run, int tube, const QString &reading,
                   double absorbance, const Rules &rules = {});

} // namespace plateau::evaluation
