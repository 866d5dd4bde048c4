// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"

#include <QString>

#include <utility>
#include <vector>

namespace plateau::notebook {

/// Takes the triggers of a file that is only being made away while it lives, so that rows can be put into it
/// in any order or taken out of it, and puts them back as they were. Inside a transaction of the caller's.
class WithoutTriggers
{
public:
    explicit WithoutTriggers(const Database &database);
    WithoutTriggers(const WithoutTriggers &) = delete;
    WithoutTriggers &operator=(const WithoutTriggers &) = delete;
    /// Before the transaction is committed; one that is rolled back has its triggers anyway.
    void putBack();

private:
    const Database &m_database;
    /// Name and SQL.
    std::vector<std::pair<QString, QString>> m_triggers;
};

} // namespace plateau::notebook
