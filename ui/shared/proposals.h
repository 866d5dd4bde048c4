// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <functional>

class QComboBox;
class QObject;

namespace plateau::ui {

/// Enter in a box that is typed in and proposes what fits: while its list of proposals is open, Enter chooses from it, or
/// keeps what was typed where none is marked, and `chosen` follows; only otherwise `entered` does. What the mouse chooses
/// is chosen too. The calls end with the owner.
void connectEnter(QComboBox *box, QObject *owner, const std::function<void()> &entered, const std::function<void()> &chosen);

} // namespace plateau::ui
