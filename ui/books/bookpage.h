// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/settings.h"
#include "core/notebook/ids.h"

#include <QWidget>

namespace plateau::ui {

/// A book of the window, as the menu and the side list lead to it.
class BookPage : public QWidget
{
    Q_OBJECT

public:
    using QWidget::QWidget;

    /// Somebody comes to it: shows its list, or what was left there unfinished, and takes the focus.
    virtual void open() = 0;
    /// What was typed there and is nowhere stored, in half a sentence; empty if all is.
    virtual QString unstored() const { return {}; }

Q_SIGNALS:
    /// A change needs somebody to answer for it, and nobody has given a name yet.
    void personWanted();
    /// Its rack where it is on the bench, else its record.
    void runWanted(plateau::notebook::RunId run);
    /// The control charts, with what that is.
    void chartWanted(const plateau::charts::Subject &subject);
};

} // namespace plateau::ui
