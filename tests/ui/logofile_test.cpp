// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "ui/books/logofile.h"

#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

using planning::LogoKind;

QByteArray pngOf(int width, int height)
{
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    EXPECT_TRUE(image.save(&buffer, "PNG"));
    return bytes;
}

const QByteArray drawingWithProlog =
    R"(<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><rect width="40" height="20" fill="#005500"/></svg>)";

class LogoFileTest : public ::testing::Test
{
protected:
    ui::LogoFile read(const QString &name, const QByteArray &bytes)
    {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(bytes), bytes.size());
        file.close();
        return ui::readLogoFile(file.fileName());
    }
    void expectRefused(const QString &name, const QByteArray &bytes, const QString &fragment)
    {
        const ui::LogoFile file = read(name, bytes);
        EXPECT_FALSE(file.logo) << name.toStdString();
        EXPECT_TRUE(file.refusal.startsWith(name + u" was not taken: "_s)) << file.refusal.toStdString();
        EXPECT_TRUE(file.refusal.contains(fragment)) << file.refusal.toStdString();
        EXPECT_TRUE(file.refusal.endsWith(u"Choose a PNG or SVG picture of at most 256 kB."_s));
    }
    QTemporaryDir folder;
};

TEST_F(LogoFileTest, WhatItHoldsDecidesNotItsName)
{
    const ui::LogoFile png = read(u"logo.svg"_s, pngOf(30, 12));
    ASSERT_TRUE(png.logo) << png.refusal.toStdString();
    EXPECT_EQ(png.logo->kind, LogoKind::Png);
    EXPECT_EQ(png.logo->bytes, pngOf(30, 12)) << "byte by byte";
    EXPECT_EQ(ui::logoText(*png.logo), u"PNG, 30 × 12 pixels, 1 kB"_s);
    const ui::LogoFile drawing = read(u"logo"_s, drawingWithProlog);
    ASSERT_TRUE(drawing.logo) << drawing.refusal.toStdString();
    EXPECT_EQ(drawing.logo->kind, LogoKind::Svg);
    EXPECT_EQ(ui::logoText(*drawing.logo), u"SVG, 1 kB"_s);
    EXPECT_TRUE(drawing.refusal.isEmpty());
}

TEST_F(LogoFileTest, WhatIsNoLogoIsRefusedInOneSentence)
{
    expectRefused(u"notes.txt"_s, "Orchard Lane 4", u"neither a PNG nor an SVG picture"_s);
    expectRefused(u"empty.png"_s, {}, u"neither a PNG nor an SVG picture"_s);
    expectRefused(u"page.svg"_s, "<html></html>", u"not an SVG picture"_s);
    expectRefused(u"cut.png"_s, pngOf(300, 200).left(40), u"cannot be drawn"_s);
    expectRefused(u"wide.png"_s, pngOf(4097, 1), u"4097 by 1 pixels"_s);
    expectRefused(u"large.png"_s, pngOf(4, 4) + QByteArray(300 * 1024, 'x'), u"it has 301 kB"_s);
    QByteArray outside = drawingWithProlog;
    outside.replace("</svg>", R"(<image href="file:///etc/motd"/></svg>)");
    expectRefused(u"outside.svg"_s, outside, u"from outside"_s);
    const ui::LogoFile missing = ui::readLogoFile(folder.filePath(u"nowhere.png"_s));
    EXPECT_FALSE(missing.logo);
    EXPECT_TRUE(missing.refusal.startsWith(u"nowhere.png was not taken: it cannot be opened"_s));
}

TEST_F(LogoFileTest, IsDrawnOnWhiteWithinItsRoom)
{
    const ui::LogoFile drawing = read(u"logo.svg"_s, drawingWithProlog);
    ASSERT_TRUE(drawing.logo);
    const QPixmap picture = ui::logoPicture(*drawing.logo, QSize(100, 100), 2);
    EXPECT_EQ(picture.size(), QSize(200, 100)) << "2 to 1, at two dots a point";
    EXPECT_EQ(picture.deviceIndependentSize(), QSizeF(100, 50));
    EXPECT_EQ(picture.toImage().pixelColor(100, 50), QColor(0, 0x55, 0));
    EXPECT_TRUE(ui::logoPicture({LogoKind::Png, "no picture"}, QSize(10, 10), 1).isNull());
}

} // namespace
} // namespace plateau::test
