// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/stopping.h"

#include "core/notebook/database.h"

#include <sqlite3.h>

#include <utility>

namespace plateau::notebook {

namespace {

/// Steps of the engine's own machine between two looks; some tens of thousands are a millisecond.
constexpr int stepsBetweenLooks = 20'000;

} // namespace

StopsStatements::StopsStatements(const Database &database, std::function<bool()> goesOn)
    : m_database(database)
    , m_goesOn(std::move(goesOn))
{
    sqlite3_progress_handler(database.native(), stepsBetweenLooks, &StopsStatements::ask, this);
}

StopsStatements::~StopsStatements()
{
    sqlite3_progress_handler(m_database.native(), 0, nullptr, nullptr);
}

int StopsStatements::ask(void *self)
{
    auto &own = *static_cast<StopsStatements *>(self);
    if (own.m_stopped || own.m_goesOn())
        return 0;
    own.m_stopped = true;
    return 1;
}

} // namespace plateau::notebook
