// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

namespace plateau::ui {

/// A method that a new run may have, and the words that tell it from every other one offered.
struct MethodOffer {
    assay::Method method;
    QString label;
    bool operator==(const MethodOffer &) const = default;
};

} // namespace plateau::ui
