// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::ui {

/// "reading corrected": an audit entry's action for a person; one that this page does not know in the words
/// it is made of.
QString actText(const QString &action);

} // namespace plateau::ui
