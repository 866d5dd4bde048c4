// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/library.h"
#include "core/run/run.h"

namespace plateau::test {

/// The small method of the window's tests, a reading due three seconds after what comes ahead of it, so that
/// there is always something waiting. folder: an empty one, for its file.
exchange::MethodLibrary quickMethod(const QString &folder);

/// A rack of it: two blanks, four samples twice.
run::Run quickRack();

} // namespace plateau::test
