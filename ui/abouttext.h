// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::ui {

/// Versions of the program and of what it runs on, and the licences of all of it.
QString aboutText();

} // namespace plateau::ui
