// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QString>

namespace plateau::exchange {

/// A name, a caution or another text of a method in the language of the window where it is one that the shipped methods
/// say, to the letter; else as it was written: a method of a laboratory is data. In a program without a window: English.
QString inWindowLanguage(const QString &text);
/// The same of all its texts. Ids, numbers and equations stay.
void putInWindowLanguage(assay::Method &method);

} // namespace plateau::exchange
