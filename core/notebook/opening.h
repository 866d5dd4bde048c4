// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/schema.h"
#include "core/notebook/updating.h"

#include <functional>
#include <memory>

namespace plateau::notebook {

/// What is put into a notebook before it has its name. Takes the connection, and has closed it when it
/// returns.
using Filling = std::function<void(std::unique_ptr<Database>)>;

/// A new notebook of that name, whole or not at all, with what fill puts into it. Throws Failure, and what
/// fill throws; a file of that name is left alone.
void createNotebookFile(const QString &path, const std::vector<SchemaStep> &steps,
                        const Surroundings &surroundings, const Filling &fill = {});

/// How a notebook is opened for writing. One of some years is looked through as a whole each time. Of a
/// larger one, where that would take longer than anybody waits, it is the schema and the end of the chain,
/// where a crash or a torn copy shows, and every backup looks through the whole.
struct OpeningManner {
    /// So many audit entries are a notebook that is looked through as a whole.
    qint64 mostEntries = 20'000;
    /// So many are looked at of a larger one.
    qint64 lastEntries = 100;
    /// Of what takes long with an older one.
    UpdateWatch watch{};
};

/// The connection to a notebook that may be worked with. For writing: ours, not newer than the steps, held
/// exclusively, brought up to date, and checked. For reading: ours and of this schema; nothing else is asked.
/// Throws Failure, and Stopped where the watch says so.
std::unique_ptr<Database> openNotebookFile(const QString &path, Access access,
                                           const std::vector<SchemaStep> &steps,
                                           const Surroundings &surroundings,
                                           const OpeningManner &manner = {});
/// The first look at it: ours and not newer. Nothing is changed, nobody is kept out.
std::unique_ptr<Database> lookAtNotebookFile(const QString &path, Access access, int newest);

} // namespace plateau::notebook
