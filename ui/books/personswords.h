// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"

namespace plateau::ui {

/// "Analyst", "Reviewer", "Head".
QString personRoleText(notebook::PersonRole role);
/// What a signature of that role does, as a sentence.
QString personRoleMeaning(notebook::PersonRole role);

} // namespace plateau::ui
