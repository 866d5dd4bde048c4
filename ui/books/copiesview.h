// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/progress.h"
#include "ui/shared/theme.h"

#include <QWidget>

#include <functional>
#include <vector>

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

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

/// Whether the records are whole, the backups, and what is made of the notebook for keeping elsewhere:
/// archive of a year, export, import. What takes its time is done beside the work, one thing at a time and
/// a backup beside it, shows how far it has come and can be stopped.
class CopiesView : public QWidget
{
    Q_OBJECT

public:
    CopiesView(const Theme &theme, Dialogs &dialogs, Keeper &keeper, Notice &notice,
               QWidget *parent = nullptr);

    void refresh();

private:
    QWidget *buildVerifying(const Theme &theme);
    void addBackups(const Theme &theme, QVBoxLayout &page);
    QWidget *buildBackingUp(const Theme &theme);
    void connectTasks();
    QWidget *buildCopies(const Theme &theme);
    void verify();
    void tellVerified(const notebook::Verification &verification);
    /// Done in a thread on a copy of the notebook as it is now; what it returns is done here.
    using Reading = std::function<std::function<void()>(const notebook::Notebook &, const notebook::Watch &)>;
    enum class Copy { Checked, AsItIs };
    void start(const QString &doing, Copy copy, Reading reading);
    /// Of files alone.
    void startWithFiles(const QString &doing, std::function<void(const notebook::Watch &)> work,
                        const QString &sentence);
    void showRunning(const QString &doing);
    void showBackingUp();
    /// What is of a backup that somebody asked for; of the others the window says it.
    void sayOfBackup(State state, const QString &sentence);
    void restore();
    void chooseFolder();
    void archive();
    void exportAll();
    void importAll();
    static QString madeText(const QString &path);

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
    /// Of a backup, which has its own: it may run beside another task.
    QWidget *m_backingUp;
    QProgressBar *m_backupProgress;
    /// Not while one is made.
    std::vector<QPushButton *> m_backupStarters;
};

} // namespace plateau::ui
