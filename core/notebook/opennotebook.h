// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/notebook/audit.h"

#include <memory>

namespace plateau::notebook {

/// A notebook that is open, as all its parts share it.
class OpenNotebook
{
public:
    OpenNotebook(std::unique_ptr<Database> connection, const Surroundings &around);

    Session session() const { return {*database, version, layout, surroundings}; }
    /// Throws Failure where the notebook may only be read, or nobody is named.
    Act act(const QString &person, const QString &action) const;

    std::unique_ptr<Database> database;
    Surroundings surroundings;
    int version;
    Layout layout;
};

/// Failure(Refused).
Failure refused(const QString &sentence);
/// Throws Failure(Refused) for the first error; sentence: with places for the pointer and the message.
void requireUsable(const assay::Problems &problems, const QString &sentence);

} // namespace plateau::notebook
