// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/colours.h"

#include "tests/ui/bench.h"
#include "ui/shared/darkstyle.h"
#include "ui/shared/theme.h"

#include <QAction>
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <QPlainTextEdit>
#include <QStyleOption>
#include <QTextEdit>

#include <array>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

struct Pair {
    QPalette::ColorRole text;
    QPalette::ColorRole ground;
};

/// Everything that is written on something, in the palettes that the program brings itself.
constexpr std::array written{
    Pair{QPalette::WindowText, QPalette::Window},
    Pair{QPalette::Text, QPalette::Base},
    Pair{QPalette::Text, QPalette::AlternateBase},
    Pair{QPalette::ButtonText, QPalette::Button},
    Pair{QPalette::ToolTipText, QPalette::ToolTipBase},
    Pair{QPalette::PlaceholderText, QPalette::Base},
    Pair{QPalette::PlaceholderText, QPalette::Window},
    Pair{QPalette::HighlightedText, QPalette::Highlight},
    Pair{QPalette::Link, QPalette::Base},
    Pair{QPalette::Link, QPalette::Window},
    Pair{QPalette::LinkVisited, QPalette::Base},
    Pair{QPalette::LinkVisited, QPalette::Window},
};

class ForcedColours : public ::testing::TestWithParam<bool>
{
protected:
    QPalette palette() const { return GetParam() ? ui::darkPalette() : ui::lightPalette(); }
};

TEST_P(ForcedColours, ReadAtFourAndAHalfToOneEverywhere)
{
    // WCAG 2.2, 1.4.3. Disabled text is exempt there and still held to it on its own ground.
    for (const QPalette::ColorGroup group : {QPalette::Active, QPalette::Inactive}) {
        for (const Pair &pair : written)
            EXPECT_GE(ui::contrast(palette().color(group, pair.text), palette().color(group, pair.ground)),
                      4.5)
                << "role " << pair.text << " on " << pair.ground;
    }
    EXPECT_GE(ui::contrast(palette().color(QPalette::Disabled, QPalette::WindowText),
                           palette().color(QPalette::Window)),
              4.5);
    EXPECT_GE(
        ui::contrast(palette().color(QPalette::Disabled, QPalette::Text), palette().color(QPalette::Base)),
        4.5);
}

TEST(DarkOutlines, ReadAtThreeToOneOnWhatTheyStandOn)
{
    // WCAG 2.2, 1.4.11
    const QPalette dark = ui::darkPalette();
    for (const QPalette::ColorRole ground : {QPalette::Window, QPalette::Base, QPalette::AlternateBase})
        EXPECT_GE(ui::contrast(ui::DarkStyle::outline(dark), dark.color(ground)), 3.0) << "role " << ground;
}

TEST_P(ForcedColours, WhatTheKeysGoToHasAnOutlineThatIsSeen)
{
    // WCAG 2.2, 1.4.11
    for (const QPalette::ColorRole ground : {QPalette::Base, QPalette::AlternateBase, QPalette::Window})
        EXPECT_GE(ui::contrast(ui::RoomyStyle::currentOutline(palette(), QStyle::State_HasFocus),
                               palette().color(ground)),
                  3.0)
            << "role " << ground;
    EXPECT_GE(ui::contrast(ui::RoomyStyle::currentOutline(palette(), QStyle::State_HasFocus | QStyle::State_Selected),
                           palette().color(QPalette::Highlight)),
              3.0);
}

TEST_P(ForcedColours, TheOutlineOfACellLeavesItsWordsAsTheyAre)
{
    const ui::RoomyStyle style(u"Fusion"_s);
    for (const bool isSelected : {false, true}) {
        const QColor ground = palette().color(isSelected ? QPalette::Highlight : QPalette::Base);
        QImage picture(40, 30, QImage::Format_RGB32);
        picture.fill(ground);
        QStyleOptionFocusRect cell;
        cell.palette = palette();
        cell.rect = QRect(5, 5, 20, 20);
        cell.state = QStyle::State_Enabled | QStyle::State_Item | QStyle::State_HasFocus | QStyle::State_KeyboardFocusChange;
        cell.state.setFlag(QStyle::State_Selected, isSelected);
        QPainter painter(&picture);
        style.drawPrimitive(QStyle::PE_FrameFocusRect, &cell, &painter, nullptr);
        painter.end();
        EXPECT_EQ(picture.pixelColor(15, 15), ground) << "in its middle";
        EXPECT_EQ(picture.pixelColor(4, 15), ground) << "beside it";
        EXPECT_GE(ui::contrast(picture.pixelColor(5, 15), ground), 3.0);
        EXPECT_GE(ui::contrast(picture.pixelColor(15, 24), ground), 3.0);
    }
}

TEST(DarkOutlines, AreDrawnRoundFieldsAndABox)
{
    const ui::DarkStyle style;
    const auto drawn = [&style](QStyle::PrimitiveElement element, QStyleOption &option, const QWidget *widget = nullptr) {
        QImage picture(40, 30, QImage::Format_RGB32);
        picture.fill(ui::darkPalette().color(QPalette::Window));
        option.palette = ui::darkPalette();
        option.rect = QRect(5, 5, 20, 20);
        QPainter painter(&picture);
        style.drawPrimitive(element, &option, &painter, widget);
        painter.end();
        return picture.pixelColor(15, 5); // in the middle of the upper edge
    };
    QStyleOptionFrame field;
    field.lineWidth = 1;
    QStyleOptionButton box;
    QStyleOptionFrame frame;
    frame.lineWidth = 1;
    const QPlainTextEdit plain;
    const QTextEdit rich;
    for (const QColor &edge : {drawn(QStyle::PE_PanelLineEdit, field), drawn(QStyle::PE_IndicatorCheckBox, box),
                               drawn(QStyle::PE_Frame, frame, &plain), drawn(QStyle::PE_Frame, frame, &rich)})
        EXPECT_GE(ui::contrast(edge, ui::darkPalette().color(QPalette::Window)), 2.5) << edge.name().toStdString();
}

TEST_P(ForcedColours, TheThemeTakesThemForWhatTheyAre)
{
    ui::Theme theme;
    theme.refresh(palette(), QFont());
    EXPECT_EQ(theme.isDark(), GetParam());
    for (const ui::State state :
         {ui::State::Good, ui::State::Attention, ui::State::Bad, ui::State::Pending, ui::State::Info}) {
        EXPECT_GE(ui::contrast(theme.text(), theme.tint(state)), 4.5);
        // WCAG 2.2, 1.4.11 asks 3:1 of a shape; ours has an outline in text colour round its fill.
        EXPECT_GE(ui::contrast(theme.text(), palette().color(QPalette::Window)), 3.0);
    }
    EXPECT_GE(ui::contrast(theme.mutedText(), palette().color(QPalette::Window)), 4.5);
}

INSTANTIATE_TEST_SUITE_P(LightAndDark, ForcedColours, ::testing::Bool());

class ColourMenu : public WindowBench
{
protected:
    ~ColourMenu() override
    {
        window.reset();
        QApplication::setPalette(QPalette());
        QApplication::setStyle(u"Fusion"_s);
    }
    bool isDark() const
    {
        return window->palette().color(QPalette::Window).lightness() <
               window->palette().color(QPalette::WindowText).lightness();
    }
    QAction *action(const QString &name) const { return window->findChild<QAction *>(name); }
};

TEST_F(ColourMenu, ForcesLightOrDarkAndGoesBackToTheDesktop)
{
    openWindow();
    const QPalette desktop = QApplication::palette();
    EXPECT_TRUE(action(u"actionColoursDesktop"_s)->isChecked());
    action(u"actionColoursDark"_s)->trigger();
    EXPECT_TRUE(isDark());
    action(u"actionColoursLight"_s)->trigger();
    EXPECT_FALSE(isDark());
    EXPECT_TRUE(action(u"actionColoursLight"_s)->isChecked());
    EXPECT_FALSE(action(u"actionColoursDark"_s)->isChecked());
    action(u"actionColoursDesktop"_s)->trigger();
    EXPECT_EQ(QApplication::palette().color(QPalette::Window), desktop.color(QPalette::Window));
}

TEST_F(ColourMenu, TheChoiceIsThereAtTheNextStart)
{
    openWindow();
    action(u"actionColoursDark"_s)->trigger();
    window.reset();
    QApplication::setPalette(QPalette());
    openWindow();
    EXPECT_TRUE(isDark());
    EXPECT_TRUE(action(u"actionColoursDark"_s)->isChecked());
}

} // namespace
} // namespace plateau::test
