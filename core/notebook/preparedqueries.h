// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QSqlQuery>
#include <QString>

#include <optional>
#include <unordered_map>
#include <vector>

namespace plateau::notebook {

/// The statements of one connection that are prepared and not in use: to prepare one takes the engine several times as long
/// as to run it, and an act at the bench runs some dozens. Holds none that changes the schema or a setting: those are
/// partly carried out while they are prepared.
class PreparedQueries
{
public:
    /// One of that text, with the values of its last use.
    std::optional<QSqlQuery> take(const QString &sql);
    /// It has read to its end or has been left, and has not failed.
    void giveBack(const QString &sql, QSqlQuery &&query);
    /// Before the connection closes.
    void clear() { m_queries.clear(); }

private:
    std::unordered_map<QString, std::vector<QSqlQuery>> m_queries;
};

} // namespace plateau::notebook
