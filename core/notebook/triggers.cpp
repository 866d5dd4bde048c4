// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/triggers.h"

#include "core/notebook/statement.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

WithoutTriggers::WithoutTriggers(const Database &database)
    : m_database(database)
{
    {
        Statement query(database,
                        u"SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' ORDER BY rowid"_s);
        query.run();
        while (query.next())
            m_triggers.emplace_back(query.text(0), query.text(1));
    }
    for (const auto &[name, sql] : m_triggers)
        database.execute(u"DROP TRIGGER \"%1\""_s.arg(name));
}

void WithoutTriggers::putBack()
{
    for (const auto &[name, sql] : m_triggers)
        m_database.execute(sql);
    m_triggers.clear();
}

} // namespace plateau::notebook
