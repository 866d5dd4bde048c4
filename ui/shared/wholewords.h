// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QObject>

namespace plateau::ui {

/// Watches the application: where the choice of a box or the words in an empty field are cut off for want of
/// room (a large font, a long name), the pointer is told the whole of them. A widget's own tool tip goes
/// first.
class WholeWords : public QObject
{
    Q_OBJECT

public:
    explicit WholeWords(QObject *parent = nullptr);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
};

} // namespace plateau::ui
