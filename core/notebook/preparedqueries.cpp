// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/preparedqueries.h"

#include <algorithm>
#include <array>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// Searches are put together from what is asked: their texts have no end.
constexpr std::size_t mostTexts = 300;
/// A statement may be read within a reading of itself.
constexpr std::size_t mostOfOneText = 2;

bool mayRunAgain(const QString &sql)
{
    constexpr std::array words{"SELECT"_L1, "INSERT"_L1, "UPDATE"_L1, "DELETE"_L1, "WITH"_L1, "BEGIN"_L1, "COMMIT"_L1};
    return std::ranges::any_of(words, [&sql](QLatin1StringView word) { return sql.startsWith(word); });
}

} // namespace

std::optional<QSqlQuery> PreparedQueries::take(const QString &sql)
{
    const auto found = m_queries.find(sql);
    if (found == m_queries.end() || found->second.empty())
        return std::nullopt;
    std::optional<QSqlQuery> query(std::move(found->second.back()));
    found->second.pop_back();
    return query;
}

void PreparedQueries::giveBack(const QString &sql, QSqlQuery &&query)
{
    if (!mayRunAgain(sql))
        return;
    if (m_queries.size() >= mostTexts && !m_queries.contains(sql))
        m_queries.clear();
    std::vector<QSqlQuery> &kept = m_queries[sql];
    if (kept.size() < mostOfOneText)
        kept.push_back(std::move(query));
}

} // namespace plateau::notebook
