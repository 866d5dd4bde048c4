// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace plateau::ui {

class BenchSession;
class BenchSettings;
class Theme;
struct NextAction;

/// The next thing to do over all racks on the bench, above everything else in the window: counting down to
/// its time, then up from it.
class NextStrip : public QWidget
{
    Q_OBJECT

public:
    NextStrip(const Theme &theme, BenchSession &session, BenchSettings &settings, QWidget *parent = nullptr);

Q_SIGNALS:
    /// The user wants to be taken to what the strip says.
    void wanted();
    /// What the strip says was done just now.
    void doneWanted();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void build();
    void refresh();
    void dress();
    void showSound();
    void say(const NextAction &action);

    const Theme &m_theme;
    BenchSession &m_session;
    BenchSettings &m_settings;
    QLabel *m_next;
    QLabel *m_action;
    QLabel *m_progress;
    QLabel *m_countdown;
    QPushButton *m_done;
    QPushButton *m_go;
    QPushButton *m_sound;
};

} // namespace plateau::ui
