// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/othertubes.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/runhistory.h"
#include "core/notebook/statement.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

std::optional<double> RunHistory::usualBlank(const QString &method, const QString &reading) const
{
    constexpr std::size_t fewest = 3;
    Statement query(
        *m_open.database,
        u"SELECT reading.absorbance FROM ("
        "SELECT run.id FROM run JOIN method ON method.id = run.method JOIN decision ON decision.run = run.id "
        "WHERE method.method_id = ? AND decision.kind = 'accepted' "
        "AND decision.id NOT IN (SELECT decision FROM reopening) ORDER BY run.id DESC LIMIT 10) AS newest "
        "JOIN tube ON tube.run = newest.id AND tube.role = 'blank' "
        "JOIN reading ON reading.tube = tube.id AND reading.name = ? AND reading.absorbance IS NOT NULL "
        "AND NOT EXISTS (SELECT 1 FROM reading AS later WHERE later.corrects = reading.id)"_s);
    query.run(method, reading);
    std::vector<double> absorbances;
    while (query.next())
        absorbances.push_back(query.real(0));
    return absorbances.size() < fewest ? std::nullopt : std::optional(evaluation::medianOf(absorbances));
}

} // namespace plateau::notebook
