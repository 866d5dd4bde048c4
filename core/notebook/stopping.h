// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <functional>

namespace plateau::notebook {

class Database;

/// While it lives, the engine asks in the middle of every statement of the connection whether to go on, so
/// that one that takes minutes can be stopped: it throws Stopped then (statement.h), and those that tidy up
/// behind it run as always. One at a time for a connection.
class StopsStatements
{
public:
    /// goesOn: must not throw; asked in the connection's thread.
    StopsStatements(const Database &database, std::function<bool()> goesOn);
    ~StopsStatements();
    StopsStatements(const StopsStatements &) = delete;
    StopsStatements &operator=(const StopsStatements &) = delete;

private:
    static int ask(void *self);

    const Database &m_database;
    std::function<bool()> m_goesOn;
    bool m_stopped = false;
};

} // namespace plateau::notebook
