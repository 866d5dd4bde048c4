// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace plateau::notebook {
struct Verification;
}

namespace plateau::ui {

class Dialogs;
class FactsModel;
class Keeper;
class Notice;
class Table;
class Theme;
class Verifying;

/// Whether the records are whole, the backups, and what is made of the notebook for keeping elsewhere:
/// archive of a year, export, import.
class CopiesView : public QWidget
{
    Q_OBJECT

public:
    CopiesView(const Theme &theme, Dialogs &dialogs, Keeper &keeper, Notice &notice,
               QWidget *parent = nullptr);

    void refresh();

private:
    QWidget *buildVerifying(const Theme &theme);
    QWidget *buildBackups(const Theme &theme);
    QWidget *buildCopies(const Theme &theme);
    void verify();
    void tellVerified(const notebook::Verification &verification);
    void showVerifying(bool running);
    void backUp();
    void restore();
    void chooseFolder();
    void archive();
    void exportAll();
    void importAll();
    void sayMade(const QString &path);

    Dialogs &m_dialogs;
    Keeper &m_keeper;
    Notice &m_notice;
    Verifying *m_verifying;
    FactsModel *m_backups;
    QLabel *m_where;
    QLabel *m_empty;
    Table *m_table;
    QPushButton *m_verify;
    QPushButton *m_stop;
    QPushButton *m_restore;
    QProgressBar *m_progress;
};

} // namespace plateau::ui
