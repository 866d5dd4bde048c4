// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/copiesview.h"

#include "core/notebook/importfolder.h"
#include "ui/books/factsmodel.h"
#include "ui/books/keeper.h"
#include "ui/books/longtask.h"
#include "ui/books/workingcopy.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString notebooksFilter()
{
    return CopiesView::tr("Notebooks (*.plateau)");
}

QString sizeText(qint64 size_bytes)
{
    return CopiesView::tr("%1 kB").arg((size_bytes + 1023) / 1024);
}

} // namespace

CopiesView::CopiesView(const Theme &theme, Dialogs &dialogs, Keeper &keeper, Notice &notice, QWidget *parent)
    : QWidget(parent)
    , m_dialogs(dialogs)
    , m_keeper(keeper)
    , m_notice(notice)
    , m_task(new LongTask(this))
    , m_backups(new FactsModel(this))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(buildVerifying(theme));
    layout->addSpacing(theme.gap());
    addBackups(theme, *layout);
    layout->addSpacing(theme.gap());
    layout->addWidget(buildCopies(theme));
    layout->addStretch(); // what the table does not need
    connectTasks();
    showRunning({});
    showBackingUp();
}

void CopiesView::connectTasks()
{
    connect(m_task, &LongTask::progressed, m_progress, &QProgressBar::setValue);
    connect(m_task, &LongTask::ended, this, [this] { showRunning({}); });
    connect(m_task, &LongTask::stopped, this, [this] {
        m_notice.say(State::Info, tr("Stopped; nothing was made, and nothing is known of the rest."));
    });
    connect(m_task, &LongTask::failed, this,
            [this](const QString &sentence) { m_notice.say(State::Bad, sentence); });
    connect(&m_keeper, &Keeper::backupsChanged, this, &CopiesView::refresh);
    connect(&m_keeper, &Keeper::progressed, m_backupProgress, &QProgressBar::setValue);
    connect(&m_keeper, &Keeper::began, this, &CopiesView::showBackingUp);
    connect(&m_keeper, &Keeper::ended, this, &CopiesView::showBackingUp);
    connect(&m_keeper, &Keeper::made, this,
            [this](const QString &path) { sayOfBackup(State::Good, madeText(path)); });
    connect(&m_keeper, &Keeper::stopped, this,
            [this] { sayOfBackup(State::Info, tr("Stopped; no backup was made.")); });
    connect(&m_keeper, &Keeper::failed, this,
            [this](const QString &sentence) { sayOfBackup(State::Bad, sentence); });
}

void CopiesView::refresh()
{
    std::vector<QStringList> rows;
    std::vector<int> years;
    guarded(m_notice, [&] {
        years = m_keeper.notebook().keeping().years();
        for (const notebook::Backup &backup : m_keeper.backups())
            rows.push_back({momentText(backup.madeAt), sizeText(backup.size_bytes),
                            QDir::toNativeSeparators(backup.path)});
    });
    m_where->setText(
        tr("They are written to %1 when the program starts, every hour and when it ends, if the notebook has "
           "changed; work goes on meanwhile. Each is opened and checked. %2")
            .arg(QDir::toNativeSeparators(m_keeper.root()), notebook::backupRuleText()));
    m_empty->setVisible(rows.empty());
    m_table->setVisible(!rows.empty());
    m_restore->setEnabled(!rows.empty() && !m_task->isRunning());
    const QSignalBlocker quiet(m_year);
    const QString former = m_year->currentText();
    m_year->clear();
    for (auto year = years.rbegin(); year != years.rend(); ++year)
        m_year->addItem(QString::number(*year), *year);
    m_year->setCurrentIndex(std::max(0, m_year->findText(former)));
    m_archive->setEnabled(!years.empty() && !m_task->isRunning());
    m_backups->show({tr("Made"), tr("Size"), tr("File")}, std::move(rows));
    m_table->fit();
    m_table->setMaximumHeight(m_table->horizontalHeader()->sizeHint().height() + m_table->verticalHeader()->length() +
                              m_table->horizontalScrollBar()->sizeHint().height() + 2 * m_table->frameWidth());
    if (!m_table->currentIndex().isValid() && m_backups->rowCount() > 0)
        m_table->selectRow(0);
}

void CopiesView::showRunning(const QString &doing)
{
    const bool running = !doing.isEmpty();
    for (QPushButton *starter : m_starters)
        starter->setEnabled(!running);
    m_stop->setEnabled(running);
    m_stop->setVisible(running);
    m_doing->setVisible(running);
    m_doing->setText(doing);
    m_progress->setVisible(running);
    m_progress->setValue(0);
    if (!running)
        refresh();
}

void CopiesView::showBackingUp()
{
    const bool running = m_keeper.isBackingUp();
    m_backingUp->setVisible(running);
    m_backupProgress->setValue(0);
    for (QPushButton *starter : m_backupStarters)
        starter->setEnabled(!running);
}

void CopiesView::sayOfBackup(State state, const QString &sentence)
{
    if (m_keeper.wasAskedFor())
        m_notice.say(state, sentence);
}

void CopiesView::start(const QString &doing, Copy copy, Reading reading)
{
    m_notice.clear();
    guarded(m_notice, [&] {
        // Under its own name, which an export tells.
        const auto place = std::make_shared<WorkingCopy>(QFileInfo(m_keeper.notebook().path()).fileName());
        m_task->start(m_keeper.notebook().keeping().beginCopy(place->path()),
                      [place, copy, reading = std::move(reading)](notebook::CopyToCheck &made,
                                                                  const notebook::Watch &watch) {
                          constexpr int checkedPart = 300;
                          if (copy == Copy::Checked)
                              made.check(notebook::partOf(watch, 0, checkedPart));
                          made.nameForNow();
                          return reading(*notebook::Notebook::open(place->path(), notebook::Access::ReadOnly),
                                         notebook::partOf(watch, checkedPart, 1000));
                      });
        showRunning(doing);
        m_stop->setFocus();
    });
}

void CopiesView::startWithFiles(const QString &doing, std::function<void(const notebook::Watch &)> work,
                                const QString &sentence)
{
    m_notice.clear();
    m_task->start([this, work = std::move(work), sentence](const notebook::Watch &watch) {
        work(watch);
        return [this, sentence] { m_notice.say(State::Good, sentence); };
    });
    showRunning(doing);
    m_stop->setFocus();
}

void CopiesView::verify()
{
    start(tr("Verifying"), Copy::AsItIs,
          [this](const notebook::Notebook &copy, const notebook::Watch &watch) {
              return [this, verification = copy.verify(watch)] { tellVerified(verification); };
          });
}

void CopiesView::tellVerified(const notebook::Verification &verification)
{
    if (verification.sound()) {
        m_notice.say(State::Good,
                     tr("Intact: %1 audit entries, %2 runs, %3 decisions evaluated and %4 checks of "
                        "equipment worked out again with the same result. Audit head %5.")
                         .arg(verification.auditEntries)
                         .arg(verification.runsChecked)
                         .arg(verification.decisionsChecked)
                         .arg(verification.equipmentChecked)
                         .arg(verification.auditHead));
        return;
    }
    const notebook::Finding &first = verification.findings.front();
    m_notice.say(State::Bad, tr("%n findings. The first: %1: %2. plateau verify lists them all.", nullptr,
                                static_cast<int>(verification.findings.size()))
                                 .arg(first.place, first.message));
}

QString CopiesView::madeText(const QString &path)
{
    return tr("Made and checked: %1").arg(QDir::toNativeSeparators(path));
}

void CopiesView::restore()
{
    const int row = m_table->currentIndex().row();
    if (row < 0)
        return;
    const QString backup = QDir::fromNativeSeparators(m_backups->row(row).value(2));
    const QString target = m_dialogs.fileToSave(this, tr("Restore into a new notebook"),
                                                tr("restored.plateau", "a file name"), notebooksFilter());
    if (target.isEmpty())
        return;
    startWithFiles(
        tr("Restoring"),
        [backup, target](const notebook::Watch &watch) { notebook::restoreBackup(backup, target, watch); },
        tr("%1 is the notebook as it was then; this one is kept as it is. Open it by File, Another notebook.")
            .arg(QDir::toNativeSeparators(target)));
}

void CopiesView::chooseFolder()
{
    const QString folder = m_dialogs.folderToUse(this, tr("Folder for backups"));
    if (folder.isEmpty())
        return;
    m_keeper.setRoot(folder);
    m_notice.clear();
    m_keeper.backUp();
}

void CopiesView::archive()
{
    const int year = m_year->currentData().toInt();
    const QString target =
        m_dialogs.fileToSave(this, tr("Archive of %1").arg(year),
                             tr("notebook-%1.plateau", "a file name").arg(year), notebooksFilter());
    if (target.isEmpty())
        return;
    start(tr("Making the archive"), Copy::Checked,
          [this, year, target](const notebook::Notebook &copy, const notebook::Watch &watch) {
              copy.keeping().archive(year, target, watch);
              return [this, target] { m_notice.say(State::Good, madeText(target)); };
          });
}

void CopiesView::exportAll()
{
    const QString parent = m_dialogs.folderToUse(this, tr("Export everything into a new folder in"));
    if (parent.isEmpty())
        return;
    const QString stem = QFileInfo(m_keeper.notebook().path()).completeBaseName();
    const QString folder =
        u"%1/%2-%3"_s.arg(parent, stem, QDateTime::currentDateTime().toString(u"yyyyMMdd-HHmmss"_s));
    start(tr("Exporting"), Copy::Checked,
          [this, folder](const notebook::Notebook &copy, const notebook::Watch &watch) {
              copy.keeping().exportTo(folder, watch);
              return [this, folder] { m_notice.say(State::Good, madeText(folder)); };
          });
}

void CopiesView::importAll()
{
    const QString folder = m_dialogs.folderToUse(this, tr("The folder that an export made"));
    if (folder.isEmpty())
        return;
    const QString target = m_dialogs.fileToSave(this, tr("Import into a new notebook"),
                                                tr("imported.plateau", "a file name"), notebooksFilter());
    if (target.isEmpty())
        return;
    startWithFiles(
        tr("Importing"),
        [folder, target](const notebook::Watch &watch) { notebook::importNotebook(folder, target, watch); },
        madeText(target));
}

} // namespace plateau::ui
