// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::planning {

/// How far two volumes or factors that were computed in different ways may lie apart and still be the same (relative).
constexpr double slack = 1e-9;

} // namespace plateau::planning
