// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/reportcontent.h"

#include <map>

namespace plateau::ui {

/// What the report says of a field (ReportFields::names) that nobody gives: its number, its day, when it was tested,
/// who decided; of the samples, where the shelf knows it, each once. A field that is not here becomes a line to write
/// on.
std::map<QString, QString> knownFields(const ReportContent &content);
/// As it was given, else as it is known; empty where neither.
QString fieldOf(const ReportContent &content, const QString &name);

} // namespace plateau::ui
