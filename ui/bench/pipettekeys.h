// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QWidget>

class QPushButton;

namespace plateau::ui {

class Theme;

/// What can be done on the worksheet, for a hand on the mouse, and saying which key does it.
class PipetteKeys : public QWidget
{
    Q_OBJECT

public:
    explicit PipetteKeys(const Theme &theme, QWidget *parent = nullptr);

    /// While additions are ticked. spoilt: the tube at the cursor is. untouched: nothing was ticked yet.
    void showAdding(bool spoilt, bool untouched);
    /// While dilutions are ticked. isTicked: the one at the cursor is.
    void showDiluting(bool isTicked);
    /// While something else is to be done: the way there. Empty: nothing. spoilt: of the tube at the cursor.
    void showPause(const QString &goOn, bool spoilt);
    void setUndoable(bool undoable);
    /// False where there is no way on to be shown.
    bool focusGoOn();

Q_SIGNALS:
    void tickWanted();
    void rowWanted();
    void roundWanted();
    void undoWanted();
    void volumeWanted();
    void spoiltWanted();
    void fromPaperWanted();
    void goOnWanted();

private:
    void sayWhetherSpoilt(bool spoilt);
    QPushButton *key(const QString &text, const QString &name, void (PipetteKeys::*signal)());

    const Theme &m_theme;
    QPushButton *m_goOn;
    QPushButton *m_tick;
    QPushButton *m_row;
    QPushButton *m_round;
    QPushButton *m_undo;
    QPushButton *m_volume;
    QPushButton *m_spoilt;
    QPushButton *m_fromPaper;
};

} // namespace plateau::ui
