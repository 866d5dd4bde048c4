// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/theme.h"

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
    void clear();
    QString sentence() const;

private:
    void dress();

    const Theme &m_theme;
    QLabel *m_shape;
    QLabel *m_text;
    State m_state = State::Info;
};

} // namespace plateau::ui
