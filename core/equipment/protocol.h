// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/item.h"

#include <QStringList>

namespace plateau::equipment {

/// A number of a check that is keyed once.
struct ProtocolField {
    QString key;
    QString name;
    QString unit;
    double lowest = 0;
    double highest = 0;
    /// What is offered; where there is none and it is needed, it has to be keyed.
    std::optional<double> usual{};
    bool needed = true;
    /// What it is, and where what is offered comes from.
    QString about{};
};

/// A column of a check's table. What is given stands there already.
struct ProtocolColumn {
    QString name;
    QString unit;
    double lowest = 0;
    double highest = 0;
    bool given = false;
};

/// What is keyed for one kind of check, and how it is done.
struct Protocol {
    QString how;
    QStringList cautions{};
    std::vector<ProtocolField> fields{};
    std::vector<ProtocolColumn> columns{};
    /// As many as there can be; the given columns are filled.
    std::vector<std::vector<std::optional<double>>> rows{};
    /// What a row is, where it has a name: "holmium perchlorate".
    QStringList rowNames{};
};
/// Every aspect of aspectsOf(item.kind); the others have an empty one.
Protocol protocolFor(const Item &item, Aspect aspect);

/// So many weighings of each volume, as ISO 8655-6 asks; of glass, which nobody sets, so many fillings
/// (common practice, no source).
inline constexpr int weighingsOfAVolume = 10;
inline constexpr int leastFillings = 3;
/// So many readings, weighings of one load (common practice, no source).
inline constexpr int leastRepeats = 6;

/// A number that is missing or outside of what can be, too few of them to judge by, a day that is to come.
/// Pointers: /day, /conditions/KEY, /rows/ROW/COLUMN, /rows, /source.
assay::Problems problemsOf(const Item &item, const Check &check, const QDate &today);

} // namespace plateau::equipment
