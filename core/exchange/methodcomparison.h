// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace plateau::exchange {

/// One thing that is not the same in two methods.
struct Difference {
    /// JSON pointer into the later document; into the earlier one where it is gone.
    QString place;
    /// "Volume of Buffer pH 9"
    QString words;
    /// With the unit: "1 mL"; nothing where the method does not have it.
    std::optional<QString> before;
    std::optional<QString> after;
    bool operator==(const Difference &) const = default;
};

/// Field by field, over the documents as writeMethod writes them, so that what a method holds cannot be
/// missed; numbers in full. Components, measurands, derived results and their parts are told apart by their
/// ids, a preparation by its matrix; another order of them is a difference of its own. Steps and texts are
/// aligned by the longest common sequence. In the order of the document; empty for the same content.
std::vector<Difference> differences(const assay::Method &before, const assay::Method &after);

/// "Volume of Buffer pH 9, Wavelength and 3 more": what differs, in the middle of a sentence. named: how many
/// by name, at least one.
QString differenceWords(const std::vector<Difference> &differences, int named = 3);

} // namespace plateau::exchange
