// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QStringList>

namespace plateau::app {

/// plateau worksheet RUN.json --pdf FILE [--notebook FILE] [--paper a4|letter] [--by NAME]. Needs a
/// QGuiApplication, but no display.
int printWorksheet(const QStringList &arguments);

/// plateau labels RUN.json --pdf FILE [--notebook FILE] [--paper a4|letter] [--by NAME] [--sheet SIZES]
/// [--first N]. The same.
int printLabels(const QStringList &arguments);

} // namespace plateau::app
