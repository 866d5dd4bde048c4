// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace plateau::ui {

class DayField;
class Theme;

/// What stands on a container, as fields of a form: reagent, lot, last good day, how long it keeps once
/// opened.
class LotLabelForm : public QObject
{
    Q_OBJECT

public:
    /// The rows go into the form.
    LotLabelForm(const Theme &theme, QFormLayout *form, const QString &objectName);

    /// What the methods call their components.
    void setReagents(const QStringList &names);
    void setLabel(const notebook::LotLabel &label);
    /// Nothing, and the fault says why, where a field cannot be read; the cursor then goes there.
    std::optional<notebook::LotLabel> label(QString &fault) const;
    /// What label() would refuse, and nothing moves; empty where it would not.
    QString fault() const;
    void setVisible(bool visible);
    /// Whether it is asked how long it keeps once dissolved: of what is or was dry.
    void askForDissolved(bool asked);
    void takeFocus();
    /// The one to go on with for the next container.
    void focusLot();

Q_SIGNALS:
    void returnPressed();
    /// What is typed in one of the fields changed.
    void edited();

private:
    std::optional<notebook::LotLabel> readLabel(QString &fault, QWidget *&where) const;
    QLineEdit *addLine(const Theme &theme, const QString &caption, const QString &objectName);

    QFormLayout *m_form;
    QComboBox *m_reagent;
    QLineEdit *m_lot;
    DayField *m_expires;
    QLineEdit *m_keeps_days;
    QLineEdit *m_dissolved_days;
    bool m_isVisible = true;
    bool m_asksForDissolved = false;
};

} // namespace plateau::ui
