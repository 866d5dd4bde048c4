// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

/// True if somebody reading the text would see something: blanks, control and invisible format characters
/// (zero-width space, direction marks) do not count.
bool isVisible(const QString &text);

/// By which names are compared: without regard to case, spaces at the ends and the form of letters.
QString comparisonKey(const QString &name);

/// Throws Failure(Refused) for text that would come back from the file as another text: U+0000, U+FFFE,
/// U+FFFF, a lone surrogate, or a leading U+FEFF, which SQLite takes for a byte-order mark.
void requireStorable(const QString &text);

/// Throws Failure(Refused) unless the text names a person: visible, and a label (assay::labelFault).
void requirePerson(const QString &person);

/// Throws Failure(Refused) with the sentence where the reason is blank; else unless it is prose
/// (assay::proseFault).
void requireReason(const QString &reason, const QString &sentence);

} // namespace plateau::notebook
