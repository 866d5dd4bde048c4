// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <cstddef>
#include <cstdint>

#include <QByteArray>

/// What is tried with bytes from outside, one function for each kind of them. More than that nothing crashes
/// is asked for: a property that does not hold ends the process.
namespace plateau::fuzz {

/// A run file: what is read is written and read again as the same, and evaluated.
void tryRun(const QByteArray &bytes);
/// A method file: what is read is written and read again as the same.
void tryMethod(const QByteArray &bytes);
/// A pasted or delimited column; its first six bytes choose the mapping.
void tryColumn(const QByteArray &bytes);
/// What a photometer sends; its first six bytes choose the pattern and how the bytes arrive.
void tryLine(const QByteArray &bytes);
/// A keyed number, and a keyed time of day.
void tryNumber(const QByteArray &bytes);

/// Ends the process with the sentence where it does not hold.
void require(bool holds, const char *sentence);

} // namespace plateau::fuzz
