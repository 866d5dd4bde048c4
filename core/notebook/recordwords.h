// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

/// What a kind of record is called by those who keep it: "plan_owner" is "owner of an uncertainty". Of a kind that a newer
/// program made, its own name without the underscores.
QString recordWord(const QString &table);
/// The same of one of its fields, a column or a key of a document: "make_up_to_mL" is "made up to (mL)".
QString fieldWord(const QString &field);
/// Whether it is known and not only its name without the underscores.
bool hasRecordWord(const QString &table);
bool hasFieldWord(const QString &field);

/// Who and when stand with the entry, the reason apart; hashes, counters and what names are compared by say nothing to a person.
bool isFieldTold(const QString &column);

} // namespace plateau::notebook
