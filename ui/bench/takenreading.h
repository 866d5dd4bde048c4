// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

namespace plateau::ui {

/// A number on its way into the notebook.
struct Submission {
    double absorbance = 0;
    /// As keyed, or as it stands in the line it came in.
    QString typed{};
    /// Of a correction.
    QString reason{};
    /// Somebody was asked about it and wants it stored as read.
    bool asked = false;
    notebook::ReadingOrigin origin{};
};

} // namespace plateau::ui
