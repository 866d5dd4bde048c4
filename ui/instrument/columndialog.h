// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/photometerstore.h"
#include "ui/instrument/takenreading.h"

#include <QDialog>

class QBoxLayout;
class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace plateau::ui {

class ColumnModel;
class Dialogs;
class MappingForm;
class Notice;
class Table;
class Theme;

/// A column of readings, pasted or from a file, with the mapping that finds it and a preview of every line.
/// All of it is taken or nothing.
class ColumnDialog : public QDialog
{
    Q_OBJECT

public:
    /// What comes in: text that was pasted and can be changed, or a file that stays as it is.
    enum class Kind { Paste, File };

    /// Store and dialogs outlive this.
    ColumnDialog(const Theme &theme, Kind kind, PhotometerStore &store, Dialogs &dialogs,
                 QWidget *parent = nullptr);

    /// A line break at its end is of no matter.
    void setText(const QString &text);
    /// Bytes of a file of that name, in the encoding of the mapping.
    void setFile(const QString &fileName, const QByteArray &bytes);
    /// Asks for a file and shows it; false if none was chosen.
    bool askForFile();

    exchange::ColumnMapping mapping() const;
    /// In the order of the mapping; none while anything is wrong.
    std::vector<TakenReading> readings() const;
    void accept() override;

Q_SIGNALS:
    /// The mapping could not be remembered.
    void notKept();

protected:
    void showEvent(QShowEvent *event) override;

private:
    QWidget *buildForm();
    QWidget *buildText();
    QBoxLayout *buildButtons();
    void fillNames();
    void takeChosen();
    void forget();
    void paste();
    /// The likely delimiter of the first text, unless a mapping was chosen; later ones leave it alone.
    void propose(const QString &text);
    void read();
    void judge();
    void say();

    const Theme &m_theme;
    Kind m_kind;
    PhotometerStore &m_store;
    Dialogs &m_dialogs;
    QString m_fileName;
    QByteArray m_bytes;
    QString m_fileFault;
    bool m_isProposed = false;
    exchange::ReadingColumn m_column;
    ColumnModel *m_model;
    QComboBox *m_remembered;
    MappingForm *m_form;
    QLineEdit *m_name;
    QPlainTextEdit *m_text;
    QLabel *m_file;
    Table *m_table;
    Notice *m_notice;
    QPushButton *m_again;
    QPushButton *m_forget;
    QPushButton *m_take;
};

} // namespace plateau::ui
