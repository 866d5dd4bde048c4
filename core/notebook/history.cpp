// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/history.h"

#include "core/notebook/statement.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

std::vector<AuditEntry> loadHistory(const Database &database, RunId run)
{
    Statement query(database,
                    u"SELECT id, at_utc, at_offset_min, person, account, host, program_version, action, "
                    "details, hash, run FROM audit WHERE run = ? OR id IN (SELECT audit FROM audit_record "
                    "JOIN clock_jump_run ON clock_jump_run.id = audit_record.record_id "
                    "WHERE record_table = 'clock_jump_run' AND clock_jump_run.run = ?) ORDER BY id"_s);
    query.run(run.value, run.value);
    std::vector<AuditEntry> entries;
    while (query.next())
        entries.push_back({query.integer(0), query.time(1), query.text(3), query.text(4), query.text(5),
                           query.text(6), query.text(7), query.isNull(10) ? std::nullopt : std::optional(run),
                           query.text(8), query.text(9)});
    return entries;
}

} // namespace plateau::notebook
