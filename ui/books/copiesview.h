// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/progress.h"

#include <QWidget>

#include <functional>
#include <vector>

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace plateau::notebook {
class Notebook;
struct Verification;
} // namespace plateau::notebook

namespace plateau::ui {

class Dialogs;
class FactsModel;
class Keeper;
class LongTask;
class Notice;
class Table;
class Theme;

/// Whether the records are whole, the backups, and what is made of the notebook for keeping elsewhere:
/// archive of a year, export, import. What takes its time is done beside the work, one thing at a time, shows
/// how far it has come and can be stopped.
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
    /// Done in a thread on a copy of the notebook as it is now; what it returns is done here.
    using Reading = std::function<std::function<void()>(const notebook::Notebook &, const notebook::Watch &)>;
    void start(const QString &doing, Reading reading);
    void showRunning(const QString &doing);
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
    LongTask *m_task;
    FactsModel *m_backups;
    QLabel *m_where;
    QLabel *m_empty;
    Table *m_table;
    QLabel *m_doing;
    QPushButton *m_stop;
    QPushButton *m_restore;
    QPushButton *m_archive;
    QComboBox *m_year;
    /// Not while something runs.
    std::vector<QPushButton *> m_starters;
    QProgressBar *m_progress;
};

} // namespace plateau::ui
