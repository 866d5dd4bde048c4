// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/audit.h"

namespace plateau::notebook {

/// What Notebook::methods gives: every row of the table method, by id and version, then as they came.
std::vector<StoredMethod> loadMethods(const Database &database);

struct NewMethodAct {
    MethodActKind kind = MethodActKind::Saved;
    QString note;
    QString fileName;
};
/// The row of the act on the method in that row, with the act's person and time.
void storeMethodAct(Act &act, qint64 methodRow, const NewMethodAct &what);

} // namespace plateau::notebook
