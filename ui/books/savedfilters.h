// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/runsearch.h"

#include <map>

class QSettings;

namespace plateau::ui {

/// Filters that somebody gave a name, in alphabetical order. They are a habit of a desk, not a record, so
/// they stand in the program's settings and not in the notebook.
using SavedFilters = std::map<QString, notebook::RunFilter>;

/// What cannot be read is left out.
SavedFilters savedFilters(const QSettings &settings);
void keepFilters(QSettings &settings, const SavedFilters &filters);
/// Those of this user.
SavedFilters savedFilters();
void keepFilters(const SavedFilters &filters);

/// One filter as a line of text, and back; nothing for what is none.
QString filterText(const notebook::RunFilter &filter);
std::optional<notebook::RunFilter> filterOf(const QString &text);

} // namespace plateau::ui
