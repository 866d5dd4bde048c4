// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/fuzz/targets.h"

#include <cstdio>
#include <cstdlib>

namespace plateau::fuzz {

void require(bool holds, const char *sentence)
{
    if (holds)
        return;
    std::fprintf(stderr, "does not hold: %s\n", sentence);
    std::abort();
}

} // namespace plateau::fuzz
