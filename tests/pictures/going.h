// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "tests/pictures/tour.h"

#include <functional>

class QTabWidget;

/// How one goes from place to place on the tour. A name that is not on show ends the program: a tour that
/// leaves a page out unnoticed would be worth nothing.
namespace plateau::test {

/// By the name of the menu's action.
void trigger(SampleWindow &sample, const QString &action);
/// The button of that name that can be seen.
void click(SampleWindow &sample, const QString &button);
/// Chooses the row of the list that can be seen, the first one that has the text in a cell, and presses
/// Enter.
void openRow(SampleWindow &sample, const QString &list, const QString &text = {});
void chooseRow(SampleWindow &sample, const QString &list, const QString &text = {});
/// The box of that name, as if the item with that text had been chosen; the number where there is no text.
void choose(SampleWindow &sample, const QString &box, const QString &data);
void typeInto(SampleWindow &sample, const QString &field, const QString &text);
void showTab(SampleWindow &sample, const QString &tabs, int number);
/// Goes to the rack on the bench whose title begins so, by the keys that change the rack.
void goToRack(SampleWindow &sample, const QString &title);
/// A dialog that the action opens and waits for.
void lookAtForm(SampleWindow &sample, const Look &look, const QString &action);
/// A dialog that the action leaves open beside the window.
/// fill: what is typed into it before.
void lookAtOpen(SampleWindow &sample, const Look &look, const QString &action,
                const std::function<void(QDialog &)> &fill = {});

} // namespace plateau::test
