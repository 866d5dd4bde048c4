// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLineEdit>

#include <optional>

class QAction;

namespace plateau::ui {

class Theme;

/// The one place where a number is keyed. A plain line edit, never a validator: Qt's own number widgets drop
/// signs they do not like and turn "0,512" into 51. Point or comma is the decimal mark in every locale; a
/// text that is no number stays as typed, the field is marked, and fault() says why.
class NumberEntry : public QLineEdit
{
    Q_OBJECT

public:
    explicit NumberEntry(const Theme &theme, QWidget *parent = nullptr);

    /// Nothing while the field is empty or holds no number.
    std::optional<double> value() const { return m_value; }
    void setValue(double value);
    /// Digits alone are thousandths: 512 is 0.512. A text with a decimal mark stays what it is.
    void setThousandths(bool thousandths);
    bool isBlank() const;
    /// One sentence; empty for a number and for an empty field.
    QString fault() const { return m_fault; }

Q_SIGNALS:
    /// After every change of the text, value() and fault() being those of the new text.
    void judged();

private:
    void judge();
    void mark();

    const Theme &m_theme;
    QAction *m_mark;
    bool m_thousandths = false;
    std::optional<double> m_value;
    QString m_fault;
};

} // namespace plateau::ui
