// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::ui {

/// Long enough for the next key of somebody who types, too short to be waited for.
inline constexpr int searchPause_ms = 150;

} // namespace plateau::ui
