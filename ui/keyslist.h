// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

class QMenuBar;

namespace plateau::ui {

/// One thing that keys do: where, which, what.
struct KeyEntry {
    QString where;
    QString keys;
    QString does;
    bool operator==(const KeyEntry &) const = default;
};

/// Every key of the window: of the menus as they are, so that none is forgotten here, then of the pages, in
/// the order of the work.
std::vector<KeyEntry> keyEntries(const QMenuBar &menus);

/// The same on paper; empty where it could not be drawn.
QByteArray keysPdf(const std::vector<KeyEntry> &entries);

} // namespace plateau::ui
