// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/logofile.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QPainter>
#include <QSvgRenderer>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct LogoFileWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LogoFile)
};

using planning::Logo;
using planning::LogoKind;

qint64 kilobytes(qint64 bytes)
{
    return (bytes + 1023) / 1024;
}

QImage drawn(const Logo &logo, const QSize &size)
{
    if (logo.kind == LogoKind::Png) {
        const QImage image = QImage::fromData(logo.bytes, "PNG");
        return image.isNull() ? image : image.scaled(size, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    }
    QSvgRenderer drawing(logo.bytes);
    if (!drawing.isValid() || drawing.defaultSize().isEmpty())
        return {};
    QImage image(drawing.defaultSize().scaled(size, Qt::KeepAspectRatio),
                 QImage::Format_ARGB32_Premultiplied);
    if (image.isNull())
        return {};
    image.fill(Qt::transparent);
    QPainter painter(&image);
    drawing.render(&painter);
    return image;
}

std::optional<QString> faultOf(const Logo &logo)
{
    if (auto fault = planning::logoFault(logo))
        return fault;
    constexpr QSize probe(64, 64);
    if (drawn(logo, probe).isNull())
        return LogoFileWords::tr("it cannot be drawn");
    return std::nullopt;
}

} // namespace

LogoFile readLogoFile(const QString &path)
{
    const auto refused = [&path](const QString &why) {
        return LogoFile{
            std::nullopt,
            LogoFileWords::tr("%1 was not taken: %2. Choose a PNG or SVG picture of at most %3 kB.")
                .arg(QFileInfo(path).fileName(), why, QString::number(planning::largestLogo_bytes / 1024))};
    };
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return refused(LogoFileWords::tr("it cannot be opened (%1)").arg(file.errorString()));
    if (file.size() > planning::largestLogo_bytes)
        return refused(LogoFileWords::tr("it has %1 kB").arg(kilobytes(file.size())));
    Logo logo;
    logo.bytes = file.readAll();
    logo.kind = logo.bytes.trimmed().startsWith('<') ? LogoKind::Svg : LogoKind::Png;
    if (logo.kind == LogoKind::Png && !logo.bytes.startsWith("\x89PNG"))
        return refused(LogoFileWords::tr("it is neither a PNG nor an SVG picture"));
    if (const auto fault = faultOf(logo))
        return refused(*fault);
    return {logo, {}};
}

QPixmap logoPicture(const Logo &logo, const QSize &size, double devicePixelRatio)
{
    const QImage image = drawn(logo, size * devicePixelRatio);
    if (image.isNull())
        return {};
    QPixmap picture(image.size());
    picture.fill(Qt::white);
    QPainter painter(&picture);
    painter.drawImage(0, 0, image);
    painter.end();
    picture.setDevicePixelRatio(devicePixelRatio);
    return picture;
}

QString logoText(const Logo &logo)
{
    const qint64 size_kB = kilobytes(logo.bytes.size());
    if (logo.kind == LogoKind::Svg)
        return LogoFileWords::tr("SVG, %1 kB").arg(size_kB);
    const QImage image = QImage::fromData(logo.bytes, "PNG");
    return LogoFileWords::tr("PNG, %1 × %2 pixels, %3 kB")
        .arg(image.width())
        .arg(image.height())
        .arg(size_kB);
}

} // namespace plateau::ui
