// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QWidget>

class QLabel;

namespace plateau::ui {

class NumberEntry;
class Theme;

/// A number entry with its reply: the value as understood, or why the text is none.
class NumberField : public QWidget
{
    Q_OBJECT

public:
    /// Beside: reply to the right of the entry, for forms. Below: for the large entry of the bench.
    enum class Reply { Beside, Below };
    NumberField(const Theme &theme, Reply reply, const QString &unit = {}, QWidget *parent = nullptr);

    NumberEntry *entry() const { return m_entry; }

private:
    void answer();

    NumberEntry *m_entry;
    QLabel *m_reply;
    QString m_unit;
};

} // namespace plateau::ui
