// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QPageLayout>
#include <QString>

#include <functional>

namespace plateau::ui {

class Canvas;

/// A document whose pages paint draws; newPage ends a page and begins the next. Fonts are embedded, text can
/// be searched. Made in memory, since Qt's PDF writer notices no full disk. Empty where it could not be made.
/// Needs a QGuiApplication.
using PagePainter = std::function<void(Canvas &canvas, const std::function<void()> &newPage)>;
QByteArray paintedPdf(const QString &title, const QPageLayout &sheet, const PagePainter &paint);

/// The whole file or nothing: what was there stays until the new one is complete. Empty, or why it was not
/// written, in one sentence that names the file.
QString savePdf(const QString &path, const QByteArray &pdf);

/// The same of a file of any kind, which may be empty.
QString saveBytes(const QString &path, const QByteArray &bytes);

/// What a file dialog proposes: the text on one line, without signs that folders do not take.
QString fileNameOf(const QString &text, const QString &ending);

} // namespace plateau::ui
