// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/theme.h"

#include <QDeadlineTimer>
#include <QFrame>

class QLabel;

namespace plateau::ui {

/// A sentence in the page with the shape of its state: what went wrong or what is asked, without a dialog.
/// Hidden while it has nothing to say; screen readers are told.
class Notice : public QFrame
{
    Q_OBJECT

public:
    explicit Notice(const Theme &theme, QWidget *parent = nullptr);

    void say(State state, const QString &sentence);
    /// Something is done, and there is nothing to do about it: it leaves with the next key or click elsewhere, once it was
    /// there long enough to be read.
    void sayDone(const QString &sentence, int least_ms = usualLeast_ms);
    /// At the next act: clears what there is to say, but not what is done and was not there long enough to be read.
    void moveOn();
    void clear();
    QString sentence() const;

    static constexpr int usualLeast_ms = 4000;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void dress();
    void stay();
    void leave();
    void keepSpace(int height);
    void giveSpaceBack();

    const Theme &m_theme;
    QLabel *m_shape;
    QLabel *m_text;
    State m_state = State::Info;
    bool m_isLeaving = false;
    QDeadlineTimer m_readBy;
};

} // namespace plateau::ui
