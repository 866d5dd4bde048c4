// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QEvent>
#include <QString>

class QWidget;

namespace plateau::ui {

/// A place in the help: a page, and in it a section by its anchor or by what the program calls it; empty:
/// from the top.
struct HelpPlace {
    QString page;
    QString section;
    bool operator==(const HelpPlace &) const = default;
};

/// What F1 opens from the widget and from all that stands in it and has no place of its own.
void setHelp(QWidget &widget, const HelpPlace &place);
/// The place of the widget, else of what is nearest around it; without a page where nothing around it has
/// one.
HelpPlace helpOf(const QWidget *widget);

/// A widget asks for its help by other means than F1. It goes to the widget itself, and whoever shows the
/// help takes it from there (ui/help/helpdesk.h), so that nothing between the two has to pass it on.
class HelpCall : public QEvent
{
public:
    HelpCall();
    static Type type();
};
void callHelp(QWidget &widget);

} // namespace plateau::ui
