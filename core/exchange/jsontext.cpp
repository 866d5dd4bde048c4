// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/jsontext.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <string>

namespace plateau::exchange {

namespace {

using nlohmann::ordered_json;

constexpr std::size_t lineLength = 110;

std::string numberText(double value)
{
    if (!std::isfinite(value))
        return "null";
    char text[32];
    const auto end = std::to_chars(text, text + sizeof text, value).ptr;
    return {text, end};
}

std::string plainText(const ordered_json &value)
{
    return value.is_number_float() ? numberText(value.get<double>()) : value.dump();
}

std::string keyText(const std::string &key)
{
    return ordered_json(key).dump() + ": ";
}

/// All on one line; longer than longest as soon as that is certain.
void writeInline(const ordered_json &value, std::size_t longest, std::string &line)
{
    if (!value.is_structured()) {
        line += plainText(value);
        return;
    }
    line += value.is_object() ? '{' : '[';
    bool first = true;
    for (const auto &[key, element] : value.items()) {
        if (line.size() > longest)
            return;
        line += first ? "" : ", ";
        line += value.is_object() ? keyText(key) : "";
        writeInline(element, longest, line);
        first = false;
    }
    line += value.is_object() ? '}' : ']';
}

bool isShallow(const ordered_json &value)
{
    return std::none_of(value.begin(), value.end(), [](const ordered_json &element) {
        return element.is_structured() && std::any_of(element.begin(), element.end(), [](const auto &inner) {
                   return inner.is_structured();
               });
    });
}

void write(const ordered_json &value, std::size_t indent, std::size_t used, std::string &out)
{
    std::string line;
    if (!value.is_structured() || isShallow(value))
        writeInline(value, lineLength, line);
    if (!value.is_structured() || value.empty() ||
        (!line.empty() && indent > 0 && indent + used + line.size() <= lineLength)) {
        out += line;
        return;
    }
    out += value.is_object() ? "{\n" : "[\n";
    bool first = true;
    for (const auto &[key, element] : value.items()) {
        out += first ? "" : ",\n";
        out.append(indent + 2, ' ');
        const std::string name = value.is_object() ? keyText(key) : std::string();
        out += name;
        write(element, indent + 2, name.size(), out);
        first = false;
    }
    out += '\n';
    out.append(indent, ' ');
    out += value.is_object() ? '}' : ']';
}

} // namespace

QByteArray jsonText(const ordered_json &document)
{
    std::string text;
    write(document, 0, 0, text);
    text += '\n';
    return QByteArray::fromStdString(text);
}

QByteArray jsonLine(const ordered_json &document)
{
    std::string text;
    writeInline(document, std::numeric_limits<std::size_t>::max(), text);
    text += '\n';
    return QByteArray::fromStdString(text);
}

} // namespace plateau::exchange
