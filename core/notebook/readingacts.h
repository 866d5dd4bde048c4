// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// A reading point of one tube.
struct ReadingPlace {
    RunId run;
    int tube = 0;
    QString reading;
};
/// As it is keyed or comes in.
template <class Value> struct ReadingInput {
    Value value;
    QString typed;
    ReadingOrigin origin{};
};

/// Each is the act of that name of Notebook, from its checks to its commit.
ReadingId addReading(Act &act, const ReadingPlace &place, const ReadingInput<run::Reading> &input);
/// The input's value is the one more.
ReadingId readAgain(Act &act, const ReadingPlace &place, const ReadingInput<double> &input);
ReadingId correctReading(Act &act, const ReadingPlace &place, const ReadingInput<run::Reading> &input,
                         const QString &reason);
/// The input's value is that of the last point.
ReadingId correctLastOfSeries(Act &act, const ReadingPlace &place, const ReadingInput<double> &input,
                              const QString &reason);

} // namespace plateau::notebook
