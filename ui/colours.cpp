// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/colours.h"

#include "ui/shared/darkstyle.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QEvent>
#include <QMenu>
#include <QSettings>
#include <QStyle>
#include <QWidget>

#include <array>
#include <utility>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

const QString groundKey = QStringLiteral("view/colours");

constexpr std::array groundWords{std::pair{Ground::Desktop, "desktop"_L1},
                                 std::pair{Ground::Light, "light"_L1}, std::pair{Ground::Dark, "dark"_L1}};

QSettings groundSettings()
{
    return QSettings(QSettings::IniFormat, QSettings::UserScope, u"plateau"_s, u"plateau"_s);
}

Ground keptGround()
{
    const QString kept = groundSettings().value(groundKey).toString();
    for (const auto &[ground, word] : groundWords) {
        if (kept == word)
            return ground;
    }
    return Ground::Desktop;
}

struct Inks {
    QColor window, text, base, alternate, button, faint, highlight, highlightedText, link, visited;
};

QPalette paletteOf(const Inks &inks)
{
    QPalette palette(inks.text, inks.button, inks.button.lighter(130), inks.button.darker(170),
                     inks.button.darker(130), inks.text, inks.highlightedText, inks.base, inks.window);
    palette.setColor(QPalette::AlternateBase, inks.alternate);
    palette.setColor(QPalette::ButtonText, inks.text);
    palette.setColor(QPalette::BrightText, inks.text);
    palette.setColor(QPalette::ToolTipBase, inks.base);
    palette.setColor(QPalette::ToolTipText, inks.text);
    palette.setColor(QPalette::PlaceholderText, inks.faint);
    palette.setColor(QPalette::Highlight, inks.highlight);
    palette.setColor(QPalette::HighlightedText, inks.highlightedText);
    palette.setColor(QPalette::Link, inks.link);
    palette.setColor(QPalette::LinkVisited, inks.visited);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, inks.faint);
    return palette;
}

/// A proxy has none of its own.
QString nameOf(const QStyle &style)
{
    const auto *proxy = qobject_cast<const RoomyStyle *>(&style);
    return proxy ? proxy->baseStyle()->name() : style.name();
}

} // namespace

QPalette lightPalette()
{
    return paletteOf({QColor(0xef, 0xef, 0xef), QColor(0x14, 0x14, 0x14), Qt::white, QColor(0xf6, 0xf6, 0xf6),
                      QColor(0xe6, 0xe6, 0xe6), QColor(0x5c, 0x5c, 0x5c), QColor(0x00, 0x72, 0xb2), Qt::white,
                      QColor(0x00, 0x5a, 0x8e), QColor(0x6a, 0x3d, 0x7c)});
}

QPalette darkPalette()
{
    return paletteOf({QColor(0x2b, 0x2d, 0x30), QColor(0xe8, 0xe8, 0xe8), QColor(0x1e, 0x1f, 0x22),
                      QColor(0x25, 0x27, 0x2a), QColor(0x3a, 0x3d, 0x41), QColor(0xb4, 0xb7, 0xbb),
                      QColor(0x00, 0x72, 0xb2), Qt::white, QColor(0x6c, 0xc0, 0xf0),
                      QColor(0xd6, 0xa4, 0xe6)});
}

Colours::Colours(QObject *parent)
    : QObject(parent)
    , m_desktopStyle(nameOf(*QApplication::style()))
{
}

void Colours::applyKept()
{
    if (const Ground kept = keptGround(); kept != m_ground)
        apply(kept);
    else if (!qobject_cast<RoomyStyle *>(QApplication::style()))
        QApplication::setStyle(new RoomyStyle(m_desktopStyle)); // the application owns it
}

bool Colours::choose(Ground ground)
{
    if (ground != m_ground)
        apply(ground);
    QSettings settings = groundSettings();
    for (const auto &[known, word] : groundWords) {
        if (known == ground)
            settings.setValue(groundKey, QString(word));
    }
    settings.sync();
    return settings.status() == QSettings::NoError;
}

void Colours::apply(Ground ground)
{
    m_ground = ground;
    if (ground == Ground::Dark)
        QApplication::setStyle(new DarkStyle);
    else
        QApplication::setStyle(new RoomyStyle(ground == Ground::Desktop ? m_desktopStyle : u"Fusion"_s));
    // An empty palette is the desktop's again.
    QApplication::setPalette(ground == Ground::Light  ? lightPalette()
                             : ground == Ground::Dark ? darkPalette()
                                                      : QPalette());
    // A window with colours of its own over the desktop's works out anew what they stand on.
    for (QWidget *window : QApplication::topLevelWidgets()) {
        QEvent change(QEvent::PaletteChange);
        QApplication::sendEvent(window, &change);
    }
    if (m_choices) {
        for (QAction *action : m_choices->actions())
            action->setChecked(action->data().value<int>() == static_cast<int>(ground));
    }
}

void Colours::addTo(QMenu &menu, const std::function<void()> &tell)
{
    QMenu *colours = menu.addMenu(tr("C&olours"));
    m_choices = new QActionGroup(this);
    const std::array choices{std::tuple{Ground::Desktop, tr("As the &desktop"), u"actionColoursDesktop"_s},
                             std::tuple{Ground::Light, tr("&Light"), u"actionColoursLight"_s},
                             std::tuple{Ground::Dark, tr("D&ark"), u"actionColoursDark"_s}};
    for (const auto &[ground, text, name] : choices) {
        QAction *action = colours->addAction(text);
        action->setObjectName(name);
        action->setCheckable(true);
        action->setData(static_cast<int>(ground));
        action->setChecked(ground == m_ground);
        m_choices->addAction(action);
        connect(action, &QAction::triggered, this, [this, ground = ground, tell] {
            if (!choose(ground))
                tell();
        });
    }
}

} // namespace plateau::ui
