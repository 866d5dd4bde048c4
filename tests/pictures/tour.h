// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "tests/pictures/samplewindow.h"

#include <functional>
#include <vector>

namespace plateau::test {

/// Shows what is to be looked at: the window, or a dialog over it.
using Look = std::function<void(QWidget &)>;

/// A place in the program.
struct Stop {
    QString name;
    /// Goes there as a person does, and has a look; once for every place.
    std::function<void(SampleWindow &, const Look &)> visit;
};

/// Every page and dialog of the program. In this order, which leaves what changes the notebook for the end;
/// single ones in any order.
std::vector<Stop> tour();

} // namespace plateau::test
