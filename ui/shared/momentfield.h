// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QDateTime>
#include <QWidget>

class QLabel;
class QLineEdit;

namespace plateau::ui {

class Clock;
class Theme;

/// Where a time in the past is keyed, with its reply: the time as understood and how long ago that is, or why
/// the text is none. Starts empty: a time that nobody gave must not look like one that somebody did.
class MomentField : public QWidget
{
    Q_OBJECT

public:
    MomentField(const Theme &theme, const Clock &clock, QWidget *parent = nullptr);

    QString text() const;
    void setText(const QString &text);
    void clear();

Q_SIGNALS:
    void changed();

private:
    void answer();

    const Clock &m_clock;
    QLineEdit *m_entry;
    QLabel *m_reply;
};

} // namespace plateau::ui
