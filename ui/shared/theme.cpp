// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/theme.h"

#include <QFile>
#include <QFontMetrics>
#include <QGuiApplication>
#include <QPainter>
#include <QPixmap>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QColor mixed(const QColor &ground, const QColor &over, double part)
{
    const auto mix = [part](int a, int b) { return static_cast<int>(std::lround(a + (b - a) * part)); };
    return QColor(mix(ground.red(), over.red()), mix(ground.green(), over.green()),
                  mix(ground.blue(), over.blue()));
}

double luminance(const QColor &colour)
{
    const auto linear = [](double part) {
        return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

bool isDarkOn(const QPalette &palette)
{
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

QColor focusOn(bool isDark)
{
    return isDark ? QColor(0x6c, 0xc0, 0xf0) : QColor(0x00, 0x72, 0xb2);
}

} // namespace

QColor focusColour(const QPalette &palette)
{
    return focusOn(isDarkOn(palette));
}

double contrast(const QColor &one, const QColor &other)
{
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

Theme::Theme(QObject *parent)
    : QObject(parent)
    , m_palette(QGuiApplication::palette())
    , m_font(QGuiApplication::font())
    , m_dark(isDarkOn(m_palette))
{
}

void Theme::refresh(const QPalette &palette, const QFont &font)
{
    if (palette == m_palette && font == m_font)
        return;
    m_palette = palette;
    m_font = font;
    m_dark = isDarkOn(palette);
    m_icons.clear();
    m_drawings.clear();
    Q_EMIT changed();
}

QColor Theme::text() const
{
    return m_palette.color(QPalette::WindowText);
}

QColor Theme::mutedText() const
{
    // As far towards the window as 4.5:1 on window and base allows.
    const QColor window = m_palette.color(QPalette::Window);
    for (double part = 0.45; part > 0; part -= 0.05) {
        const QColor muted = mixed(text(), window, part);
        if (contrast(muted, window) >= 4.5 && contrast(muted, base()) >= 4.5)
            return muted;
    }
    return text();
}

QColor Theme::base() const
{
    return m_palette.color(QPalette::Base);
}

QColor Theme::colour(State state) const
{
    switch (state) {
    case State::Good:
        return QColor(0x00, 0x9e, 0x73); // bluish green
    case State::Attention:
        return QColor(0xe6, 0x9f, 0x00); // orange
    case State::Bad:
        return QColor(0xd5, 0x5e, 0x00); // vermilion
    case State::Info:
        // blue on light ground, its sky blue twin on dark
        return m_dark ? QColor(0x56, 0xb4, 0xe9) : QColor(0x00, 0x72, 0xb2);
    case State::Pending:
        break;
    }
    return mixed(text(), m_palette.color(QPalette::Window), 0.45);
}

QColor Theme::tint(State state) const
{
    return mixed(m_palette.color(QPalette::Window), colour(state), m_dark ? 0.25 : 0.18);
}

QColor Theme::part(int number) const
{
    const QColor hues[] = {QColor(0xcc, 0x79, 0xa7),                                    // reddish purple
                           m_palette.color(QPalette::Window), QColor(0x56, 0xb4, 0xe9), // sky blue
                           QColor(0xf0, 0xe4, 0x42)};                                   // yellow
    return mixed(m_palette.color(QPalette::Window), hues[number % 4], m_dark ? 0.45 : 0.6);
}

QColor Theme::focus() const
{
    return focusOn(m_dark);
}

QPalette Theme::adjustments() const
{
    QPalette own;
    own.setColor(QPalette::Highlight, QColor(0x00, 0x72, 0xb2));
    own.setColor(QPalette::HighlightedText, Qt::white);
    own.setColor(QPalette::PlaceholderText, mutedText());
    return own;
}

QIcon Theme::icon(State state) const
{
    if (const auto known = m_icons.find(state); known != m_icons.end())
        return known->second;
    QPixmap pixmap(96, 96);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    paintShape(painter, QRectF(4, 4, 88, 88), state);
    QIcon icon(pixmap);
    icon.addPixmap(pixmap, QIcon::Selected); // else the style washes it out on a chosen row
    m_icons[state] = icon;
    return icon;
}

QIcon Theme::drawing(const QString &name) const
{
    if (const auto known = m_drawings.find(name); known != m_drawings.end())
        return known->second;
    QFile file(u":/icons/%1.svg"_s.arg(name));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const QByteArray svg = file.readAll();
    const auto drawn = [&svg](const QColor &ink) {
        QPixmap pixmap;
        pixmap.loadFromData(QByteArray(svg).replace("currentColor", ink.name().toLatin1()), "svg");
        return pixmap;
    };
    QIcon icon(drawn(text()));
    icon.addPixmap(drawn(adjustments().color(QPalette::HighlightedText)), QIcon::Selected);
    m_drawings[name] = icon;
    return icon;
}

int Theme::gap() const
{
    return QFontMetrics(m_font).height() / 3;
}

int Theme::wideGap() const
{
    return QFontMetrics(m_font).height();
}

int Theme::target() const
{
    return std::max(28, QFontMetrics(m_font).height() * 9 / 5);
}

QFont Theme::bold() const
{
    QFont font = m_font;
    font.setBold(true);
    return font;
}

QFont Theme::large() const
{
    QFont font = m_font;
    font.setPointSizeF(m_font.pointSizeF() * 1.5);
    return font;
}

QFont Theme::huge() const
{
    QFont font = m_font;
    font.setPointSizeF(m_font.pointSizeF() * 2.8);
    font.setBold(true);
    return font;
}

} // namespace plateau::ui
