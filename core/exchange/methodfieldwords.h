// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

#include <nlohmann/json.hpp>

namespace plateau::exchange {

/// The field of a plateau-method/1 document as a person calls it: "Path length" for pathLength_mm. The key
/// itself where it has no words.
QString fieldWords(const QString &key);
/// One element of a list: "Caution" for cautions. The key itself where it has no words.
QString elementWords(const QString &key);
/// The unit that the end of the key names, "mL" for volume_mL; empty for none.
QString unitOf(const QString &key);
/// How an element of a list is called in the middle of a line: its name, else what its key members say.
QString elementLabel(const nlohmann::ordered_json &element);
/// A value in words, whole: "3 to 10 min", "yes", "add Buffer pH 9". method: where names are looked up.
QString valueText(const QString &key, const nlohmann::ordered_json &value,
                  const nlohmann::ordered_json &method);

} // namespace plateau::exchange
