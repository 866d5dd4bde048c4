// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/worksheetcontent.h"

namespace plateau::test {

assay::Method shippedMethod(const QString &id);

/// Two blanks, two standards "Working standard", then samples "Perry, tank 1" … in duplicate, every third
/// diluted twice; the very last tube with 0.2 mL. Lots of buffer and starter.
run::Run rackOf(int tubes, const QString &method = QStringLiteral("l-malic-acid"));

/// With the usual glassware, a rack of rows of six.
ui::WorksheetContent sheetOf(const run::Run &run);

} // namespace plateau::test
