// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <optional>

namespace plateau::ui {

struct TakenReading;

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
    /// Number or contents of the tube it says it is of; absent: the one that is due.
    std::optional<QString> tube{};
};

/// What came from an instrument, as if it were keyed.
Submission submissionOf(const TakenReading &taken);

/// The tube of that number, from 1, or the first without this reading that holds a sample or standard of that
/// name; nothing where there is none.
std::optional<int> tubeNamed(const run::Run &run, const QString &name, const QString &reading);

} // namespace plateau::ui
