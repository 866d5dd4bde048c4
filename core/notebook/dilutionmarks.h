// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/marks.h"

namespace plateau::notebook {

/// One step of diluting one sample of a run; indices from 0 in the run's order.
struct DilutionPlace {
    int sample = 0;
    int step = 0;
    auto operator<=>(const DilutionPlace &) const = default;
};

/// A dilution step as it was ticked, or taken back. Only ever added; of each step the last one counts. It says
/// that the step was made and by whom, and changes nothing of what the run is worked out from.
struct StoredDilutionMark {
    DilutionMarkId id;
    /// Done or Undone.
    MarkKind kind = MarkKind::Done;
    DilutionPlace place;
    /// The newest mark in a tube of the run then; 0 for none.
    MarkId after;
    QString person;
    QDateTime at;
};

/// The mark that says that the step is made; nullptr where it is not, or not any more.
const StoredDilutionMark *doneMark(const std::vector<StoredDilutionMark> &marks, const DilutionPlace &place);

} // namespace plateau::notebook
