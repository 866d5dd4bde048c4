// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

class QLineEdit;

namespace plateau::ui {

/// What stands in an empty field for a day: "e.g. 31.12.2026", in the form of the locale (core/assay/localday.h).
QString dayExample();

/// Puts it there, and sees to it that the field has room for it.
void showDayExample(QLineEdit &field);

} // namespace plateau::ui
