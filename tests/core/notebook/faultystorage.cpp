// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/faultystorage.h"

#include <cerrno>
#include <dlfcn.h>
#include <sys/types.h>

namespace plateau::test::storage {

namespace {

struct Plan {
    int calls = 0;
    int failing = 0;
    int error = 0;
    bool lasting = false;
};
Plan plans[2];

bool fails(Call call)
{
    Plan &plan = plans[static_cast<int>(call)];
    ++plan.calls;
    if (plan.failing == 0 || plan.calls < plan.failing || (plan.calls > plan.failing && !plan.lasting))
        return false;
    errno = plan.error;
    return true;
}

template <class Function> Function next(const char *name)
{
    return reinterpret_cast<Function>(::dlsym(RTLD_NEXT, name));
}

} // namespace

void failAt(Call call, int number, int error, bool lasting)
{
    work();
    plans[static_cast<int>(call)] = {0, number, error, lasting};
}

void work()
{
    plans[0] = {};
    plans[1] = {};
}

int count(Call call)
{
    return plans[static_cast<int>(call)].calls;
}

} // namespace plateau::test::storage

extern "C" {

__attribute__((visibility("default"))) ssize_t pwrite64(int file, const void *bytes, size_t size,
                                                        off64_t offset)
{
    using namespace plateau::test::storage;
    static const auto real = next<ssize_t (*)(int, const void *, size_t, off64_t)>("pwrite64");
    return fails(Call::Write) ? -1 : real(file, bytes, size, offset);
}

__attribute__((visibility("default"))) int fdatasync(int file)
{
    using namespace plateau::test::storage;
    static const auto real = next<int (*)(int)>("fdatasync");
    return fails(Call::Sync) ? -1 : real(file);
}
}
