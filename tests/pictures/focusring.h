// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStringList>

class QWidget;

namespace plateau::test {

/// Which widgets of the window look the same, or nearly so, with and without the focus, a line each. Enough
/// is what a person finds: some pixels whose contrast with what was there before is 3:1 (WCAG 2.2, 1.4.11 and
/// 2.4.7). The window has to be active; the focus is somewhere else afterwards.
QStringList withoutFocusRing(QWidget &window);

} // namespace plateau::test
