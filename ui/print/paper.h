// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QPageLayout>
#include <QString>

#include <optional>

class QLocale;

namespace plateau::ui {

enum class Paper { A4, Letter };

/// Letter in the territories that CLDR lists for "US-Letter" (supplemental data, paperSize; from memory),
/// else A4.
Paper usualPaper(const QLocale &locale);
/// "a4", "letter", in any case.
std::optional<Paper> paperFromWord(const QString &word);

/// The whole sheet without margins: what is drawn keeps its own distance from the edges.
QPageLayout sheetOf(Paper paper, QPageLayout::Orientation orientation);

} // namespace plateau::ui
