// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

namespace plateau::ui {

class Theme;

/// The whole method as rich text, for somebody who will work by it: cautions first, then what it measures,
/// what is pipetted, the steps, the limits, and what the trade knows of samples.
QString methodHtml(const Theme &theme, const assay::Method &method);

} // namespace plateau::ui
