// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/recordtables.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

QStringList recordTables(const Layout &layout)
{
    QStringList tables = exportedTables(layout);
    tables.removeAll(u"audit"_s);
    tables.removeAll(u"audit_record"_s);
    return tables;
}

QStringList exportedTables(const Layout &layout)
{
    QStringList tables;
    for (const auto &[table, columns] : layout.columns) {
        if (!table.startsWith("sqlite_"_L1) && !isDerived(table))
            tables << table;
    }
    return tables;
}

} // namespace plateau::notebook
