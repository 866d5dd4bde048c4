// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>

namespace plateau::exchange {

/// A caution of a method as it is shown: in the language of the window where it is one that the shipped
/// methods say, else as it was written.
QString shownCaution(const QString &caution);

} // namespace plateau::exchange
