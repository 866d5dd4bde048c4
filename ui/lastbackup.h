// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QObject>

class QProgressDialog;

namespace plateau::ui {

class Keeper;

/// What stands between the wish to close the window and its end: where the notebook has changed since its
/// newest backup, one is made first, and the window stays and says so meanwhile. It can be closed without it
/// at any time; the backup is stopped then, and nothing half is left of it.
class LastBackup : public QObject
{
    Q_OBJECT

public:
    LastBackup(Keeper &keeper, QWidget *window);

    /// True where the window may close now. Else a backup is being made and the window is closed after it, or
    /// none could be made, which was said, and the next time it is true.
    bool letsClose();
    /// The window is being closed after its backup, or without it; what was asked before is not asked again.
    bool isClosing() const { return m_isClosing; }

Q_SIGNALS:
    /// No backup was made, so the window is still there.
    void failed(const QString &sentence);

private:
    enum class State { Free, Waiting, GivenUp };

    void show();
    void hide();
    void closeWindow(State state);

    Keeper &m_keeper;
    QWidget *m_window;
    QProgressDialog *m_progress = nullptr;
    State m_state = State::Free;
    bool m_isClosing = false;
};

} // namespace plateau::ui
