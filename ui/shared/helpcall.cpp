// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/helpcall.h"

#include <QCoreApplication>
#include <QVariant>
#include <QWidget>

namespace plateau::ui {

namespace {

constexpr const char *placeProperty = "helpPlace";

} // namespace

void setHelp(QWidget &widget, const HelpPlace &place)
{
    widget.setProperty(placeProperty, QVariant::fromValue(place));
}

HelpPlace helpOf(const QWidget *widget)
{
    for (; widget; widget = widget->parentWidget()) {
        const auto place = widget->property(placeProperty).value<HelpPlace>();
        if (!place.page.isEmpty())
            return place;
    }
    return {};
}

HelpCall::HelpCall()
    : QEvent(type())
{
}

QEvent::Type HelpCall::type()
{
    static const int registered = QEvent::registerEventType();
    return static_cast<Type>(registered);
}

void callHelp(QWidget &widget)
{
    HelpCall call;
    QCoreApplication::sendEvent(&widget, &call);
}

} // namespace plateau::ui
