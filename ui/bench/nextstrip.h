// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace plateau::ui {

class BenchSession;
class Theme;

/// The next thing to do over all racks on the bench, above everything else in the window.
class NextStrip : public QWidget
{
    Q_OBJECT

public:
    NextStrip(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

Q_SIGNALS:
    /// The user wants to be taken to what the strip says.
    void wanted();

private:
    void refresh();
    void dress();

    const Theme &m_theme;
    BenchSession &m_session;
    QLabel *m_next;
    QLabel *m_action;
    QLabel *m_progress;
    QPushButton *m_go;
};

} // namespace plateau::ui
