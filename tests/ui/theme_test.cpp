// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/theme.h"

#include "ui/shared/focusring.h"

#include <QApplication>
#include <QCheckBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QVBoxLayout>
#include <QtTest/QTest>

#include <gtest/gtest.h>

#include <array>

using namespace Qt::StringLiterals;

namespace plateau::ui {
namespace {

constexpr std::array allStates{State::Good, State::Attention, State::Bad, State::Pending, State::Info};

QPalette darkPalette()
{
    QPalette palette(QColor(0x3a, 0x3d, 0x41), QColor(0x2b, 0x2d, 0x30));
    palette.setColor(QPalette::Base, QColor(0x1e, 0x1f, 0x22));
    palette.setColor(QPalette::WindowText, QColor(0xe6, 0xe6, 0xe6));
    return palette;
}

QPalette lightPalette()
{
    QPalette palette(QColor(0xef, 0xef, 0xef), QColor(0xef, 0xef, 0xef));
    palette.setColor(QPalette::Base, Qt::white);
    palette.setColor(QPalette::WindowText, Qt::black);
    return palette;
}

TEST(Contrast, IsThatOfThePublishedExamples)
{
    // WCAG 2.2: black on white is 21:1, a colour on itself 1:1. #767676 on white is the well-known last grey
    // above 4.5.
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(Qt::red, Qt::red), 1.0, 1e-12);
    EXPECT_GT(contrast(QColor(0x76, 0x76, 0x76), Qt::white), 4.5);
    EXPECT_LT(contrast(QColor(0x77, 0x77, 0x77), Qt::white), 4.5);
}

class ThemeOn : public ::testing::TestWithParam<bool>
{
protected:
    ThemeOn() { theme.refresh(GetParam() ? darkPalette() : lightPalette(), QFont()); }
    Theme theme;
};

TEST_P(ThemeOn, KnowsDarkFromLight)
{
    EXPECT_EQ(theme.isDark(), GetParam());
}

TEST_P(ThemeOn, WritesEveryTextLegibly)
{
    const QPalette palette = GetParam() ? darkPalette() : lightPalette();
    EXPECT_GE(contrast(theme.mutedText(), palette.color(QPalette::Window)), 4.5);
    EXPECT_GE(contrast(theme.mutedText(), palette.color(QPalette::Base)), 4.5);
    for (const State state : allStates)
        EXPECT_GE(contrast(theme.text(), theme.tint(state)), 4.5) << static_cast<int>(state);
    const QPalette own = theme.adjustments();
    EXPECT_GE(contrast(own.color(QPalette::HighlightedText), own.color(QPalette::Highlight)), 4.5);
}

TEST_P(ThemeOn, TheRingAroundWhatHasTheKeysIsSeen)
{
    const QPalette palette = GetParam() ? darkPalette() : lightPalette();
    EXPECT_GE(contrast(theme.focus(), palette.color(QPalette::Window)), 3);
    EXPECT_GE(contrast(theme.focus(), palette.color(QPalette::Base)), 3);
    QWidget page;
    page.setPalette(palette);
    auto *line = new QLineEdit(&page);
    auto *box = new QCheckBox(QStringLiteral("unticked"), &page);
    auto *layout = new QVBoxLayout(&page);
    layout->addWidget(line);
    layout->addWidget(box);
    FocusRing ring(theme);
    page.show();
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    for (QWidget *widget : std::initializer_list<QWidget *>{line, box}) {
        const auto inked = [&] {
            const QImage image = widget->grab().toImage();
            const QRect place = FocusRing::ringOf(*widget);
            return contrast(image.pixelColor(place.left(), place.center().y()), theme.focus()) < 1.2;
        };
        (widget == line ? static_cast<QWidget *>(box) : line)->setFocus();
        EXPECT_FALSE(inked()) << widget->metaObject()->className();
        widget->setFocus();
        EXPECT_TRUE(inked()) << widget->metaObject()->className();
    }
}

TEST_P(ThemeOn, ShapesDifferWithoutTheirColour)
{
    // As a person sees them who tells no colours apart: in grey.
    std::vector<QImage> shapes;
    for (const State state : allStates)
        shapes.push_back(theme.icon(state).pixmap(32, 32).toImage().convertToFormat(QImage::Format_Alpha8));
    for (std::size_t one = 0; one < shapes.size(); ++one) {
        for (std::size_t other = one + 1; other < shapes.size(); ++other)
            EXPECT_NE(shapes[one], shapes[other]) << one << " and " << other << " have one outline";
    }
}

TEST_P(ThemeOn, DrawsIconsInTheTextColour)
{
    const QImage image = theme.drawing(u"rack"_s).pixmap(48, 48).toImage();
    ASSERT_FALSE(image.isNull());
    bool found = false;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            found = found || (image.pixelColor(x, y).alpha() == 255 &&
                              image.pixelColor(x, y).rgb() == theme.text().rgb());
    }
    EXPECT_TRUE(found);
}

INSTANTIATE_TEST_SUITE_P(LightAndDark, ThemeOn, ::testing::Bool());

TEST(Theme, KnowsADarkDesktopFromTheStart)
{
    const QPalette before = QApplication::palette();
    QApplication::setPalette(darkPalette());
    const Theme dark;
    QApplication::setPalette(lightPalette());
    const Theme light;
    QApplication::setPalette(before);
    EXPECT_TRUE(dark.isDark());
    EXPECT_FALSE(light.isDark());
}

TEST(Theme, SaysOnceThatItChanged)
{
    Theme theme;
    theme.refresh(lightPalette(), QFont());
    const QSignalSpy changed(&theme, &Theme::changed);
    theme.refresh(darkPalette(), QFont());
    theme.refresh(darkPalette(), QFont());
    EXPECT_EQ(changed.count(), 1);
}

} // namespace
} // namespace plateau::ui
