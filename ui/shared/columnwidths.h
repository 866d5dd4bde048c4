// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <cstddef>
#include <vector>

namespace plateau::ui {

/// What a column of a table asks for, in pixels; least <= usual <= wanted.
struct ColumnNeed {
    int least = 0;        ///< below that it cannot be read
    int usual = 0;        ///< what it gets before any other gets more than that
    int wanted = 0;       ///< nothing in it is cut
    bool isFirst = false; ///< gets that before any other gets more than usual
};

/// Widths for that room. Too little for what is usual: all give in proportion to what they can spare, and what does not
/// go in then is scrolled to. More than that: what is first is cut no more, the other columns that are cut get it in
/// proportion to what they lack, and only what then is left goes to the flexible one.
std::vector<int> columnWidths(std::vector<ColumnNeed> needs, int room, std::size_t flexible);
/// Gives the columns from that one on one width, their sum staying what it is; nothing changes where one of them needs more
/// than that to be read. Pixels that do not go into it are the last one's.
void shareEqually(std::vector<int> &widths, const std::vector<ColumnNeed> &needs, std::size_t from);

} // namespace plateau::ui
