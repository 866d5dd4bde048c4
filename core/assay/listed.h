// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QStringList>

namespace plateau::assay {

/// Parts of a sentence or a cell, each of which may hold a comma, with the semicolon as the language sets it:
/// French has a narrow space before it. Not for what is read again (files, cells that are typed in): that has
/// a plain "; ".
QString listed(const QStringList &parts);

} // namespace plateau::assay
