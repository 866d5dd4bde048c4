// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QObject>
#include <QPalette>
#include <QString>

#include <functional>

class QActionGroup;
class QMenu;

namespace plateau::ui {

/// Light or dark: as the desktop has it, or forced by the person.
enum class Ground { Desktop, Light, Dark };

/// Every role of it reads at 4.5:1 at least on the ground it stands on; tests/ui/colours_test.cpp measures
/// it.
QPalette lightPalette();
QPalette darkPalette();

/// The choice, kept over the end of the program, in force for the whole application. Forced colours come with
/// Qt's own Fusion style, since a desktop's style may not take another palette than its own.
class Colours : public QObject
{
    Q_OBJECT

public:
    explicit Colours(QObject *parent = nullptr);

    /// What was chosen before; to be called once the windows that are there can take it.
    void applyKept();
    Ground ground() const { return m_ground; }
    /// False where it holds now but could not be kept for the next time.
    bool choose(Ground ground);
    /// A submenu with the three, one of them marked. tell: called where a choice could not be kept.
    void addTo(QMenu &menu, const std::function<void()> &tell);

private:
    void apply(Ground ground);

    Ground m_ground = Ground::Desktop;
    QString m_desktopStyle;
    QActionGroup *m_choices = nullptr;
};

} // namespace plateau::ui
