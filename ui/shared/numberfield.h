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
    explicit NumberField(const Theme &theme, const QString &unit = {}, QWidget *parent = nullptr);

    NumberEntry *entry() const { return m_entry; }
    QString unit() const { return m_unit; }
    /// The reply on one line, the whole of it as a tip: for rows of a form that come and go, since the form
    /// layout of Qt 6.4 lays a hidden row whose height follows from its width over another.
    void setOneLine();
    /// The entry in one font and the reply in another, for the bench.
    void setFonts(const QFont &entry, const QFont &reply);

private:
    void answer();
    void setEntrySize();

    const Theme &m_theme;
    NumberEntry *m_entry;
    QLabel *m_reply;
    QString m_unit;
};

} // namespace plateau::ui
