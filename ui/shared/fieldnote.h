// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/theme.h"

#include <QStringList>
#include <QWidget>

class QLabel;

namespace plateau::ui {

/// What is wrong with one field, or odd about it, below it, with the shape of that state; hidden while nothing is. A
/// screen reader hears it as the field's description.
class FieldNote : public QWidget
{
    Q_OBJECT

public:
    FieldNote(const Theme &theme, QWidget *field, QWidget *parent, State state = State::Bad);

    /// The first few, and how many more there are.
    void say(const QStringList &sentences);
    QString text() const;

private:
    void dress();

    const Theme &m_theme;
    State m_state;
    QWidget *m_field;
    QLabel *m_shape;
    QLabel *m_text;
};

} // namespace plateau::ui
