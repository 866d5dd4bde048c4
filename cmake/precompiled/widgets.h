// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

// As core.h, for the window.
#include "cmake/precompiled/core.h"

#include <QtWidgets>
