// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QString>

#include <string_view>
#include <variant>

namespace plateau::exchange {

/// What a photometer's text is written in: declared for each photometer or file, never guessed from cell to
/// cell.
enum class TextEncoding { Utf8, Latin1 };
enum class DecimalSign { Either, Point, Comma };

/// The word for settings, and back; the preset for any other word.
QString wordOf(TextEncoding encoding);
QString wordOf(DecimalSign sign);
TextEncoding encodingFromWord(const QString &word);
DecimalSign decimalSignFromWord(const QString &word);

/// Text of bytes, or one sentence why they are none. A byte order mark is honoured before the encoding asked
/// for: UTF-16 of either order, UTF-8. Malformed sequences are refused with their place; so is NUL.
std::variant<QString, QString> decodeReadings(const QByteArray &bytes, TextEncoding encoding);
/// The same of a line by itself, where what looks like a mark is noise.
std::variant<QString, QString> decodeLine(const QByteArray &bytes, TextEncoding encoding);

/// parseDecimal() for one decimal sign: the number, or one sentence why it is none. What is less or greater
/// than a number is none.
std::variant<double, QString> parseReading(std::string_view utf8, DecimalSign sign);

/// Less than, greater than, about, and how such a limit is refused.
bool isLimit(std::string_view utf8);
QString limitSentence();

/// On one line and no longer than a sentence bears: control characters and signs that reorder a line as
/// codes.
QString onOneLine(const QString &text);
/// The same of a raw line: as UTF-8 if it is, else byte by byte as Latin-1.
QString onOneLine(const QByteArray &raw);

} // namespace plateau::exchange
