// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QMetaType>
#include <QString>

#include <optional>
#include <vector>

namespace plateau::ui {

/// An absorbance that was not keyed but came from the photometer, with where it comes from.
struct TakenReading {
    enum class Origin { Pasted, File, Serial, Network };

    /// Finite; not judged otherwise.
    double absorbance = 0;
    /// The line it was read from, on one line, control characters shown as codes.
    QString raw;
    /// Which tube the text says it is of, by number or name, as it stands there; absent where it says
    /// nothing.
    std::optional<QString> tube;
    Origin origin = Origin::Pasted;
    /// The name of the photometer or of the file; empty for what was pasted.
    QString source;
    bool operator==(const TakenReading &) const = default;
};

} // namespace plateau::ui

Q_DECLARE_METATYPE(plateau::ui::TakenReading)
Q_DECLARE_METATYPE(std::vector<plateau::ui::TakenReading>)
