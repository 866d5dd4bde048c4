// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/copiesview.h"

#include "core/notebook/importfolder.h"
#include "ui/books/factsmodel.h"
#include "ui/books/keeper.h"
#include "ui/books/longtask.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTemporaryDir>

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
    layout->addWidget(buildBackups(theme), 1);
    layout->addWidget(buildCopies(theme));
    connect(m_task, &LongTask::progressed, m_progress, &QProgressBar::setValue);
    connect(m_task, &LongTask::ended, this, [this] { showRunning({}); });
    connect(m_task, &LongTask::stopped, this, [this] {
        m_notice.say(State::Info, tr("Stopped; nothing was made, and nothing is known of the rest."));
    });
    connect(m_task, &LongTask::failed, this,
            [this](const QString &sentence) { m_notice.say(State::Bad, sentence); });
    connect(&keeper, &Keeper::backupsChanged, this, &CopiesView::refresh);
    showRunning({});
}

QWidget *CopiesView::buildVerifying(const Theme &theme)
{
    auto *row = new QWidget(this);
    auto *heading = plainLabel(tr("Are the records whole?"), row);
    heading->setFont(theme.bold());
    auto *verify = button(theme, tr("Verif&y now"), u"verifyNow"_s, row);
    m_starters.push_back(verify);
    m_doing = plainLabel({}, row);
    m_doing->setObjectName(u"taskRunning"_s);
    m_stop = button(theme, tr("&Stop"), u"stopTask"_s, row);
    m_progress = new QProgressBar(row);
    m_progress->setRange(0, 1000);
    m_progress->setObjectName(u"taskProgress"_s);
    m_progress->setAccessibleName(tr("How far it has come"));
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins({});
    layout->addWidget(heading);
    layout->addWidget(verify);
    layout->addStretch(1);
    layout->addWidget(m_doing);
    layout->addWidget(m_progress, 2);
    layout->addWidget(m_stop);
    connect(verify, &QPushButton::clicked, this, &CopiesView::verify);
    connect(m_stop, &QPushButton::clicked, m_task, &LongTask::stop);
    return row;
}

QWidget *CopiesView::buildBackups(const Theme &theme)
{
    auto *part = new QWidget(this);
    auto *heading = plainLabel(tr("Backups"), part);
    heading->setFont(theme.bold());
    m_where = plainLabel({}, part);
    m_where->setObjectName(u"backupsWhere"_s);
    m_where->setWordWrap(true);
    m_empty = plainLabel(tr("There is no backup of this notebook yet: make one now."), part);
    m_empty->setObjectName(u"backupsEmpty"_s);
    m_table = new Table(theme, m_backups, tr("Backups, the newest first"), u"backups"_s, part);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    auto *now = button(theme, tr("&Back up now"), u"backUpNow"_s, part);
    m_restore = button(theme, tr("Restore &into a new notebook…"), u"restoreBackup"_s, part);
    auto *folder = button(theme, tr("&Keep them elsewhere…"), u"backupFolder"_s, part);
    auto *buttons = new QHBoxLayout;
    for (QPushButton *each : {now, m_restore, folder})
        buttons->addWidget(each);
    buttons->addStretch(1);
    auto *layout = new QVBoxLayout(part);
    layout->setContentsMargins({});
    layout->addWidget(heading);
    layout->addWidget(m_where);
    layout->addWidget(m_empty);
    layout->addWidget(m_table, 1);
    layout->addLayout(buttons);
    connect(now, &QPushButton::clicked, this, &CopiesView::backUp);
    connect(m_restore, &QPushButton::clicked, this, &CopiesView::restore);
    connect(folder, &QPushButton::clicked, this, &CopiesView::chooseFolder);
    return part;
}

QWidget *CopiesView::buildCopies(const Theme &theme)
{
    auto *part = new QWidget(this);
    auto *heading = plainLabel(tr("For keeping elsewhere"), part);
    heading->setFont(theme.bold());
    auto *text =
        plainLabel(tr("An archive is a notebook of everything up to the end of a year, to be read only; "
                      "nothing is taken out of this one. An export is everything as JSON and CSV, with a "
                      "page that says how to read it without the program; imported, it is the same "
                      "notebook again."),
                   part);
    text->setWordWrap(true);
    m_archive = button(theme, tr("&Archive of the year…"), u"archiveYear"_s, part);
    m_year = new QComboBox(part);
    m_year->setObjectName(u"yearToArchive"_s);
    m_year->setAccessibleName(tr("Year to archive"));
    m_year->setMinimumHeight(theme.target());
    auto *out = button(theme, tr("E&xport everything…"), u"exportAll"_s, part);
    auto *in = button(theme, tr("Notebook o&ut of an export…"), u"importAll"_s, part);
    auto *buttons = new QHBoxLayout;
    for (QWidget *each : std::initializer_list<QWidget *>{m_archive, m_year, out, in})
        buttons->addWidget(each);
    m_starters.insert(m_starters.end(), {m_archive, out, in});
    buttons->addStretch(1);
    auto *layout = new QVBoxLayout(part);
    layout->setContentsMargins({});
    layout->addWidget(heading);
    layout->addWidget(text);
    layout->addLayout(buttons);
    connect(m_archive, &QPushButton::clicked, this, &CopiesView::archive);
    connect(out, &QPushButton::clicked, this, &CopiesView::exportAll);
    connect(in, &QPushButton::clicked, this, &CopiesView::importAll);
    return part;
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
    m_where->setText(tr("They go to %1, where the notebook has changed since the last one: when the program "
                        "starts, every hour, and when it ends. Each is opened and checked. %2")
                         .arg(QDir::toNativeSeparators(m_keeper.root()), notebook::backupRuleText()));
    m_empty->setVisible(rows.empty());
    m_restore->setEnabled(!rows.empty());
    const QSignalBlocker quiet(m_year);
    const QString former = m_year->currentText();
    m_year->clear();
    for (auto year = years.rbegin(); year != years.rend(); ++year)
        m_year->addItem(QString::number(*year), *year);
    m_year->setCurrentIndex(std::max(0, m_year->findText(former)));
    m_archive->setEnabled(!years.empty() && !m_task->isRunning());
    m_backups->show({tr("Made"), tr("Size"), tr("File")}, std::move(rows));
    m_table->fit();
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

void CopiesView::start(const QString &doing, Reading reading)
{
    m_notice.clear();
    guarded(m_notice, [&] {
        const auto folder = std::make_shared<QTemporaryDir>();
        // Under its own name, which an export tells.
        const QString copy = folder->filePath(QFileInfo(m_keeper.notebook().path()).fileName());
        m_keeper.notebook().keeping().copyTo(copy);
        showRunning(doing);
        m_stop->setFocus();
        m_task->start([folder, copy, reading = std::move(reading)](const notebook::Watch &watch) {
            return reading(*notebook::Notebook::open(copy, notebook::Access::ReadOnly), watch);
        });
    });
}

void CopiesView::verify()
{
    start(tr("Verifying"), [this](const notebook::Notebook &copy, const notebook::Watch &watch) {
        return [this, verification = copy.verify(watch)] { tellVerified(verification); };
    });
}

void CopiesView::tellVerified(const notebook::Verification &verification)
{
    if (verification.sound()) {
        m_notice.say(State::Good,
                     tr("Whole: %1 audit entries, %2 runs, %3 decisions evaluated again with the same "
                        "result. Audit head %4.")
                         .arg(verification.auditEntries)
                         .arg(verification.runsChecked)
                         .arg(verification.decisionsChecked)
                         .arg(verification.auditHead));
        return;
    }
    const notebook::Finding &first = verification.findings.front();
    m_notice.say(State::Bad, tr("%n findings. The first: %1: %2. plateau verify lists them all.", nullptr,
                                static_cast<int>(verification.findings.size()))
                                 .arg(first.place, first.message));
}

void CopiesView::sayMade(const QString &path)
{
    m_notice.say(State::Good, tr("Made and checked: %1").arg(QDir::toNativeSeparators(path)));
}

void CopiesView::backUp()
{
    guarded(m_notice, [this] { sayMade(m_keeper.backUp().backup.path); });
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
    guarded(m_notice, [&] {
        notebook::restoreBackup(backup, target);
        m_notice.say(State::Good,
                     tr("%1 is the notebook as it was then; this one is kept as it is. Open it with "
                        "plateau --notebook.")
                         .arg(QDir::toNativeSeparators(target)));
    });
}

void CopiesView::chooseFolder()
{
    const QString folder = m_dialogs.folderToUse(this, tr("Folder for backups"));
    if (folder.isEmpty())
        return;
    m_keeper.setRoot(folder);
    backUp();
}

void CopiesView::archive()
{
    const int year = m_year->currentData().toInt();
    const QString target =
        m_dialogs.fileToSave(this, tr("Archive of %1").arg(year),
                             tr("notebook-%1.plateau", "a file name").arg(year), notebooksFilter());
    if (target.isEmpty())
        return;
    start(tr("Making the archive"),
          [this, year, target](const notebook::Notebook &copy, const notebook::Watch &) {
              copy.keeping().archive(year, target);
              return [this, target] { sayMade(target); };
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
    start(tr("Exporting"), [this, folder](const notebook::Notebook &copy, const notebook::Watch &watch) {
        copy.keeping().exportTo(folder, watch);
        return [this, folder] { sayMade(folder); };
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
    m_notice.clear();
    showRunning(tr("Importing"));
    m_stop->setFocus();
    m_task->start([this, folder, target](const notebook::Watch &watch) {
        notebook::importNotebook(folder, target, watch);
        return [this, target] { sayMade(target); };
    });
}

} // namespace plateau::ui
