// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QString>

namespace plateau::exchange {

inline constexpr char16_t methodFormat[] = u"plateau-method/1";
inline constexpr char16_t runFormat[] = u"plateau-run/1";
inline constexpr char16_t laboratoryFormat[] = u"plateau-laboratory/1";
inline constexpr char16_t specificationsFormat[] = u"plateau-specifications/1";

/// The format that a document states, to choose its reader by; empty where it states none or is no document.
QString formatOf(const QByteArray &json);

} // namespace plateau::exchange
