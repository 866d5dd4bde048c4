// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <functional>

namespace plateau::ui {

class Theme;

/// Null where there is none.
using MethodOfId = std::function<const assay::Method *(const QString &id)>;

/// The whole method as rich text, for somebody who will work by it: cautions first, then what it measures,
/// what is pipetted, the steps, the limits, and what the trade knows of samples. others: by which a term of a derived
/// quantity is measured, for their names.
QString methodHtml(const Theme &theme, const assay::Method &method, const MethodOfId &others);

} // namespace plateau::ui
