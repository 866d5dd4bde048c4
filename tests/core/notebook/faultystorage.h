// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

namespace plateau::test {

/// Makes one call of this program's to the storage fail: its pwrite64 and fdatasync stand before the C
/// library's, and SQLite finds them first.
namespace storage {

enum class Call { Write, Sync };
/// The call of that kind with this number, counted from 1 and from now, fails with that errno; with lasting
/// also every one after it.
void failAt(Call call, int number, int error, bool lasting);
void work();
/// Calls of that kind since failAt or work.
int count(Call call);

} // namespace storage

} // namespace plateau::test
