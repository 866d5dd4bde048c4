// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/database.h"
#include "core/notebook/schema.h"

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

/// The connection to a notebook that may be worked with. For writing: ours, not newer than the steps, held
/// exclusively, brought up to date, and checked. For reading: ours and of this schema; nothing else is asked.
std::unique_ptr<Database> openNotebookFile(const QString &path, Access access,
                                           const std::vector<SchemaStep> &steps,
                                           const Surroundings &surroundings);

} // namespace plateau::notebook
