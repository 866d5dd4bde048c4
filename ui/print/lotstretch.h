// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDate>
#include <QString>

#include <optional>

namespace plateau::ui {

/// Neighbouring tubes of one addition that take a reagent from one container.
struct LotStretch {
    /// That stands in for the addition's own; empty: the addition's own.
    QString standIn;
    /// Indices from 0.
    int firstTube = 0;
    int lastTube = 0;
    /// Behind it the addition takes that reagent for no other tube.
    bool isLast = false;
    /// Empty: by the book none holds what the tubes take.
    QString lot;
    std::optional<QDate> lastGoodDay{};
    /// Of the same lot as the stretch before it.
    bool isAnotherContainer = false;
    bool operator==(const LotStretch &) const = default;
};

} // namespace plateau::ui
