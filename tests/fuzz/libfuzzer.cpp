// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The entry of libFuzzer for one target, PLATEAU_FUZZ_TARGET.
#include "tests/fuzz/targets.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *bytes, std::size_t size)
{
    plateau::fuzz::PLATEAU_FUZZ_TARGET(QByteArray(reinterpret_cast<const char *>(bytes), qsizetype(size)));
    return 0;
}
