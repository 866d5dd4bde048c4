// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/reporting.h"

#include <QPixmap>
#include <QSize>
#include <QString>

#include <optional>

namespace plateau::ui {

/// A logo read from a file, or why it is none.
struct LogoFile {
    std::optional<planning::Logo> logo;
    /// One sentence for a person; empty where there is a logo.
    QString refusal;
};
/// What the file holds decides, not its name. What cannot be drawn is refused here, not on the first report.
LogoFile readLogoFile(const QString &path);

/// As it stands on paper, on white, fitted into size; a null picture where it cannot be drawn.
QPixmap logoPicture(const planning::Logo &logo, const QSize &size, double devicePixelRatio);
/// "PNG, 240 x 100 pixels, 12 kB", "SVG, 3 kB".
QString logoText(const planning::Logo &logo);

} // namespace plateau::ui
