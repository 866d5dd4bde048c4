// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/copiesview.h"

#include "ui/books/factsmodel.h"
#include "ui/books/keeper.h"
#include "ui/books/longtask.h"
#include "ui/shared/notice.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

QWidget *CopiesView::buildVerifying(const Theme &theme)
{
    auto *part = new QWidget(this);
    auto *heading = plainLabel(tr("Are the records intact?"), part);
    heading->setFont(theme.bold());
    auto *verify = button(theme, tr("Verif&y now"), u"verifyNow"_s, part);
    m_starters.push_back(verify);
    m_doing = plainLabel({}, part);
    m_doing->setObjectName(u"taskRunning"_s);
    m_stop = button(theme, tr("&Stop"), u"stopTask"_s, part);
    m_progress = new QProgressBar(part);
    m_progress->setRange(0, 1000);
    m_progress->setObjectName(u"taskProgress"_s);
    m_progress->setAccessibleName(tr("Progress"));
    // As the other parts of the page: what it is about, and its buttons below.
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(verify);
    buttons->addStretch(1);
    buttons->addWidget(m_doing);
    buttons->addWidget(m_progress, 2);
    buttons->addWidget(m_stop);
    auto *layout = new QVBoxLayout(part);
    layout->setContentsMargins({});
    layout->addWidget(heading);
    layout->addLayout(buttons);
    connect(verify, &QPushButton::clicked, this, &CopiesView::verify);
    connect(m_stop, &QPushButton::clicked, m_task, &LongTask::stop);
    return part;
}

/// Straight into the page: the table may grow as far as its rows need, and what is left over stands below everything.
void CopiesView::addBackups(const Theme &theme, QVBoxLayout &page)
{
    auto *heading = plainLabel(tr("Backups"), this);
    heading->setFont(theme.bold());
    m_where = plainLabel({}, this);
    m_where->setObjectName(u"backupsWhere"_s);
    m_where->setWordWrap(true);
    m_empty = plainLabel(tr("There is no backup of this notebook yet: make one now."), this);
    m_empty->setObjectName(u"backupsEmpty"_s);
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_table = new Table(theme, m_backups, tr("Backups, the newest first"), u"backups"_s, this);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setFlexibleColumn(2); // the file
    auto *now = button(theme, tr("Back up no&w"), u"backUpNow"_s, this);
    m_restore = button(theme, tr("Restore &into a new notebook…"), u"restoreBackup"_s, this);
    auto *folder = button(theme, tr("&Keep them elsewhere…"), u"backupFolder"_s, this);
    m_starters.push_back(m_restore);
    m_backupStarters = {now, folder};
    auto *buttons = new QHBoxLayout;
    for (QPushButton *each : {now, m_restore, folder})
        buttons->addWidget(each);
    buttons->addWidget(buildBackingUp(theme), 1);
    buttons->addStretch(1);
    page.addWidget(heading);
    page.addWidget(m_where);
    page.addWidget(m_empty);
    page.addWidget(m_table, 1);
    page.addLayout(buttons);
    connect(now, &QPushButton::clicked, this, [this] {
        m_notice.clear();
        m_keeper.backUp();
    });
    connect(m_restore, &QPushButton::clicked, this, &CopiesView::restore);
    connect(folder, &QPushButton::clicked, this, &CopiesView::chooseFolder);
}

QWidget *CopiesView::buildBackingUp(const Theme &theme)
{
    m_backingUp = new QWidget(this);
    m_backingUp->setObjectName(u"backingUp"_s);
    m_backupProgress = new QProgressBar(m_backingUp);
    m_backupProgress->setRange(0, 1000);
    m_backupProgress->setObjectName(u"backupProgress"_s);
    m_backupProgress->setAccessibleName(tr("Progress of the backup"));
    auto *stop = button(theme, tr("Stop the ba&ckup"), u"stopBackup"_s, m_backingUp);
    auto *layout = new QHBoxLayout(m_backingUp);
    layout->setContentsMargins({});
    layout->addWidget(m_backupProgress, 1);
    layout->addWidget(stop);
    connect(stop, &QPushButton::clicked, &m_keeper, &Keeper::stop);
    return m_backingUp;
}

QWidget *CopiesView::buildCopies(const Theme &theme)
{
    auto *part = new QWidget(this);
    auto *heading = plainLabel(tr("For keeping elsewhere"), part);
    heading->setFont(theme.bold());
    auto *text =
        plainLabel(tr("An archive is a notebook of everything up to the end of a year, read-only; nothing is "
                      "taken out of this one. An export is everything as JSON and CSV, with a page that says "
                      "how to read it without the program; imported, it is the same notebook again."),
                   part);
    text->setWordWrap(true);
    m_archive = button(theme, tr("&Archive of the year…"), u"archiveYear"_s, part);
    m_year = new QComboBox(part);
    m_year->setObjectName(u"yearToArchive"_s);
    m_year->setAccessibleName(tr("Year to archive"));
    m_year->setMinimumHeight(theme.target());
    auto *out = button(theme, tr("E&xport everything…"), u"exportAll"_s, part);
    auto *in = button(theme, tr("No&tebook from an export…"), u"importAll"_s, part);
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

} // namespace plateau::ui
