// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::notebook {

/// What a kind of record is called by those who keep it: "plan_owner" is "whose an uncertainty is". Of a kind that a newer
/// program made, its own name without the underscores.
QString recordWord(const QString &table);
/// The same of one of its fields: "make_up_to_mL" is "made up to (mL)".
QString fieldWord(const QString &column);

} // namespace plateau::notebook
