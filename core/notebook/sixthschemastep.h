// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/schemawords.h"

namespace plateau::notebook {

/// What one subject adds to schema step 6.
struct SchemaPart {
    /// One SQL statement each, as writtenOut gives them.
    QStringList statements;
    /// The tables of records among them, all of them; derived ones (isDerived) are not protected.
    std::vector<ProtectedTable> records;
};

/// Each in a file of its own, in the order they are made.
SchemaPart ownersPart();
SchemaPart stockPart();
SchemaPart chartsPart();
SchemaPart reviewPart();
SchemaPart recordPart();
SchemaPart searchPart();

} // namespace plateau::notebook
