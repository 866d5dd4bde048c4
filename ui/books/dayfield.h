// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace plateau::ui {

class Theme;

/// Where the last good day of a label is keyed. Beside it stands the day as it was understood where that reads otherwise,
/// as of a month alone its last day.
class DayField : public QWidget
{
public:
    explicit DayField(const Theme &theme, QWidget *parent = nullptr);

    QLineEdit *entry() const { return m_entry; }

private:
    void answer();

    QLineEdit *m_entry;
    QLabel *m_reply;
};

} // namespace plateau::ui
