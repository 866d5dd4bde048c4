// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/run.h"

#include <QString>

#include <optional>

namespace plateau::run {

/// Twelve decimal digits that stand on everything printed of a run and find it again: of the SHA-256 over
/// what is planned (title, start, method and version, standards, samples with their dilutions, tubes). What
/// comes later leaves them as they are: readings, lots, times of use, what was pipetted instead,
/// uncertainties. Two runs planned alike to the last sign share theirs. Digits alone, because a scanner that
/// types like a keyboard gets them right whatever the keyboard's language, and a gloved hand can type them on
/// the number pad.
QString runCode(const Run &run, int methodVersion);

/// For people and scanners: "PLATEAU RUN 4096 2231 7785", which a QR code holds in its short alphabet.
QString scannedText(const QString &runCode);
/// "4096 2231 7785"
QString groupedCode(const QString &runCode);

/// The twelve digits of a text that is such a code, as it is scanned, pasted or typed: blanks do not count,
/// nor do words before the digits. Nothing for any other text.
std::optional<QString> runCodeIn(const QString &text);

} // namespace plateau::run
