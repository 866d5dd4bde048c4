// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/labelchoice.h"

#include <QDialog>

#include <array>

class QBoxLayout;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class LabelSheetPicture;
class Notice;
class NumberField;
class Theme;

/// On which labels to print. Whatever is typed is judged at once; what can't be printed can't be accepted.
class LabelSheetDialog : public QDialog
{
    Q_OBJECT

public:
    /// labels: how many there are to print, 1 or more. choice: what the form is filled in with.
    LabelSheetDialog(const Theme &theme, int labels, const LabelChoice &choice, QWidget *parent = nullptr);

    /// As typed; sound once the form is accepted.
    LabelChoice choice() const;
    /// What keeps it from being printed, in one sentence; empty if nothing does.
    QString fault() const;

    void accept() override;

private:
    /// In the order of the form.
    enum Field { Columns, Rows, Width, Height, Left, Top, ColumnGap, RowGap, FirstFree, FieldCount };

    QFormLayout *buildForm();
    QBoxLayout *buildButtons();
    void fillIn(const LabelSheet &sheet);
    /// Another paper takes its own usual sheet, unless another sheet was typed.
    void takePaper();
    void judge();
    QString faultOfField(Field field) const;
    int count(Field field) const;

    const Theme &m_theme;
    QComboBox *m_paper;
    std::array<NumberField *, FieldCount> m_fields{};
    QLineEdit *m_by;
    LabelSheetPicture *m_picture;
    QLabel *m_words;
    Notice *m_fault;
    QPushButton *m_usual;
    QPushButton *m_save;
    Paper m_shownPaper;
};

} // namespace plateau::ui
