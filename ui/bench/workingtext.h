// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/working.h"

#include <QString>

#include <vector>

namespace plateau::ui {

class Theme;

/// The calculation as rich text: a heading for each section, a line for each step with its formula and
/// numbers.
QString workingHtml(const Theme &theme, const std::vector<evaluation::WorkingSection> &sections);

} // namespace plateau::ui
