// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <nlohmann/json_fwd.hpp>

#include <QByteArray>

namespace plateau::exchange {

/// The document as text: two-space indent, lists and objects of plain values on one line where they fit,
/// numbers in the shortest form that reads back to the same double (what is not finite as null), a line feed
/// at the end.
QByteArray jsonText(const nlohmann::ordered_json &document);
/// The same on one line.
QByteArray jsonLine(const nlohmann::ordered_json &document);

} // namespace plateau::exchange
