// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/exportmanifest.h"

namespace plateau::notebook {

/// README.txt of an export: how it is laid out, so that it can be read without the program. In English, as
/// the names in the files are.
QByteArray exportReadme(const ExportManifest &manifest);

} // namespace plateau::notebook
