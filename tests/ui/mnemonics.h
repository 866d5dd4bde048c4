// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStringList>

#include <vector>

class QWidget;

namespace plateau::test {

/// The captions that have a mnemonic, in lists within which it has to stand once: those in sight (menus, buttons, labels of
/// fields, groups and tabs), then those in each menu of the menu bar.
std::vector<QStringList> captionsWithMnemonics(const QWidget &window);
/// Where a mnemonic stands twice: the keys and whose they are, a line each.
QStringList mnemonicClashes(const QWidget &window);

} // namespace plateau::test
