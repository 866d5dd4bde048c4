// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/cellsmodel.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/numberreader.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace plateau::ui {

/// Reads the texts of a laboratory; a number that is still shown as it was is that to its last digit.
class LaboratoryReader : public NumberReader
{
public:
    using NumberReader::NumberReader;

    double keptNumber(const QString &text, const std::optional<double> &kept, const QString &pointer) const
    {
        return kept && text == keyedText(threeFigures(*kept)) ? *kept : number(text, pointer);
    }
    std::optional<double> keptOptional(const QString &text, const std::optional<double> &kept,
                                       const QString &pointer) const
    {
        return kept && text == keyedText(threeFigures(*kept)) ? kept : optionalNumber(text, pointer);
    }
};

inline QString optionalText(const std::optional<double> &number)
{
    return number ? keyedText(threeFigures(*number)) : QString();
}

/// The one whose member was the row's key when the draft was made; nullptr for a new row.
template <class Piece>
const Piece *findKept(const std::vector<Piece> &pieces, QString Piece::*member, const QString &key)
{
    const auto found = std::ranges::find_if(pieces, [&](const Piece &piece) { return piece.*member == key; });
    return found == pieces.end() ? nullptr : &*found;
}

inline const QString &cell(const CellRow &row, int column)
{
    return row.cells[static_cast<std::size_t>(column)];
}

} // namespace plateau::ui
