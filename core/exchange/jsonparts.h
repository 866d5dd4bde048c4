// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"

#include <nlohmann/json.hpp>

#include <QString>

#include <optional>
#include <string>
#include <vector>

namespace plateau::exchange {

/// Parts that more than one document has.
nlohmann::ordered_json methodJson(const assay::Method &method);
nlohmann::ordered_json dilutionJson(const std::vector<run::DilutionStep> &steps);

inline std::string utf8(const QString &text)
{
    return text.toStdString();
}

/// The value, or null.
template <class T> nlohmann::ordered_json orNull(const std::optional<T> &value)
{
    return value ? nlohmann::ordered_json(*value) : nlohmann::ordered_json(nullptr);
}

/// Writes the field only where there is a value.
template <class T>
void writeOptional(nlohmann::ordered_json &object, const char *key, const std::optional<T> &value)
{
    if (value)
        object[key] = *value;
}

/// A list of what write makes of each item; [] for none.
template <class Items, class Write> nlohmann::ordered_json listOf(const Items &items, Write write)
{
    auto list = nlohmann::ordered_json::array();
    for (const auto &item : items)
        list.push_back(write(item));
    return list;
}

} // namespace plateau::exchange
