// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <optional>

namespace plateau::notebook {

/// What a word or a yes (1) and no (0) of the file means to a person: "sampleBlank" of a role is "sample blank". Nothing of a
/// field that holds numbers or a text of somebody's own, and of a word that a newer program wrote.
std::optional<QString> valueWord(const QString &field, const QString &value);

/// Where in a document something stands: "/glassware/pipettes/0/largest_mL" is "pipette 1, largest volume (mL)".
QString placeWord(const QString &pointer);

/// A number that was keyed with a check of equipment, with its unit: "temperature_C" is "Water at (°C)".
QString conditionWord(const QString &key);

} // namespace plateau::notebook
