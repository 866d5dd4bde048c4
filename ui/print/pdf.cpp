// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/pdf.h"

#include "ui/print/canvas.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPdfWriter>
#include <QSaveFile>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct PdfWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Pdf)
};

/// Finer than any office printer.
constexpr int dotsPerInch = 1200;

} // namespace

QByteArray paintedPdf(const QString &title, const QPageLayout &sheet, const PagePainter &paint)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(dotsPerInch);
    writer.setPageLayout(sheet);
    writer.setTitle(title);
    writer.setCreator(u"Plateau"_s);
    QPainter painter;
    if (!painter.begin(&writer))
        return {};
    Canvas canvas(painter);
    bool complete = true;
    paint(canvas, [&] { complete = writer.newPage() && complete; });
    complete = painter.end() && complete;
    return complete ? bytes : QByteArray();
}

QString savePdf(const QString &path, const QByteArray &pdf)
{
    if (pdf.isEmpty())
        return PdfWords::tr("%1 was not written: the pages could not be drawn.").arg(path);
    return saveBytes(path, pdf);
}

QString saveBytes(const QString &path, const QByteArray &bytes)
{
    QSaveFile file(path);
    const bool written =
        file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
    return written ? QString()
                   : PdfWords::tr("%1 was not written: %2. Name a file in a folder that you may write to.")
                         .arg(path, file.errorString());
}

QString fileNameOf(const QString &text, const QString &ending)
{
    QString name = text;
    for (QChar &sign : name) {
        if (u"/\\:*?\"<>|"_s.contains(sign))
            sign = u'-';
    }
    return name.simplified() + ending;
}

} // namespace plateau::ui
