// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QObject>

#include <functional>

class QWidget;

namespace plateau::ui {

/// Brings a widget up to date: at once while it can be seen, else when it is shown next, so that a key at the
/// bench pays only for what is on show.
class WhenSeen : public QObject
{
    Q_OBJECT

public:
    /// Lives as long as the widget.
    WhenSeen(QWidget *widget, std::function<void()> update);

    void request();
    /// What was requested and not done yet is done now, seen or not.
    void catchUp();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QWidget &m_widget;
    std::function<void()> m_update;
    bool m_wanted = false;
};

} // namespace plateau::ui
