// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

#include <cstdio>

/// Used while building: drawicons FROM.svg PIXELS TO.png ...
/// Draws the icons in the sizes that desktops without an SVG reader ask for. Needs no display.
int main(int argc, char **argv)
{
    QSvgRenderer drawing(QString::fromLocal8Bit(argc > 1 ? argv[1] : ""));
    bool good = argc > 3 && argc % 2 == 0 && drawing.isValid();
    for (int i = 2; good && i + 1 < argc; i += 2) {
        const int side = QByteArray(argv[i]).toInt();
        QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::transparent);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        drawing.render(&painter);
        painter.end();
        good = image.save(QString::fromLocal8Bit(argv[i + 1]), "PNG");
    }
    if (!good)
        std::fprintf(stderr, "drawicons: %s could not be drawn\n", argc > 1 ? argv[1] : "nothing");
    return good ? 0 : 1;
}
