// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

// As core.h, for tests.
#include "cmake/precompiled/core.h"

#include <gmock/gmock-matchers.h>
#include <gtest/gtest.h>
