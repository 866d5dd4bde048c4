// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/documentformat.h"

#include "core/exchange/json.h"

namespace plateau::exchange {

QString formatOf(const QByteArray &json)
{
    const json::Document document = json::parse(json);
    const auto *object = document.root ? std::get_if<json::Object>(&document.root->value) : nullptr;
    if (!object)
        return {};
    for (const json::Member &member : *object) {
        const auto *text = std::get_if<QString>(&member.value.value);
        if (member.key == QLatin1StringView("format") && text)
            return *text;
    }
    return {};
}

} // namespace plateau::exchange
