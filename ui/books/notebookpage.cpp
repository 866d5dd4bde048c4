// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/notebookpage.h"

#include "ui/bench/benchsession.h"
#include "ui/books/booklist.h"
#include "ui/books/recordview.h"
#include "ui/books/runsmodel.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QStackedWidget>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

NotebookPage::NotebookPage(const Theme &theme, BenchSession &session, QWidget *parent)
    : BookPage(parent)
    , m_session(session)
    , m_runs(new RunsModel(theme, this))
    , m_pages(new QStackedWidget(this))
    , m_list(
          new BookList(theme, new RunsFilter(m_runs, [this](const QString &code) { return findRuns(code); }),
                       {u"notebook"_s, u"runs"_s},
                       {tr("Notebook"), tr("Runs"), tr("Fin&d title, sample, method, state or printed code"),
                        tr("No run is in the notebook yet. Start one with New run, or open a run file."),
                        tr("No run has all of these words, or that code. Take a word away to find more.")},
                       this))
    , m_record(new RecordView(theme, session, this))
{
    m_list->table().setFlexibleColumn(RunsModel::Title);
    m_list->table().setLimit(24);
    m_pages->addWidget(m_list);
    m_pages->addWidget(m_record);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    connect(m_list, &BookList::opened, this, [this](int row) { showRecord(m_runs->run(row).id); });
    connect(m_record, &RecordView::closed, this, &NotebookPage::showList);
    connect(m_record, &RecordView::rackWanted, this, &NotebookPage::runWanted);
    connect(&session, &BenchSession::notebookChanged, this, &NotebookPage::refresh);
}

std::vector<notebook::RunId> NotebookPage::findRuns(const QString &runCode)
{
    std::vector<notebook::RunId> found;
    guarded(m_list->notice(), [&] { found = m_session.findRuns(runCode); });
    return found;
}

void NotebookPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    if (m_stale)
        refresh();
}

void NotebookPage::refresh()
{
    m_stale = !isVisible();
    if (m_stale)
        return;
    const bool read = guarded(m_list->notice(), [this] { m_runs->setRuns(m_session.allRuns()); });
    if (read)
        m_list->notice().clear();
    m_list->refresh();
    if (const auto id = openRecord())
        m_record->showRun(*id);
}

void NotebookPage::showList()
{
    m_pages->setCurrentIndex(0);
    m_list->focusSearch();
    Q_EMIT pageChanged();
}

void NotebookPage::showRecord(notebook::RunId id)
{
    if (!m_record->showRun(id))
        return;
    m_pages->setCurrentWidget(m_record);
    m_record->takeFocus();
    Q_EMIT pageChanged();
}

std::optional<notebook::RunId> NotebookPage::openRecord() const
{
    return m_pages->currentWidget() == m_record ? std::optional(m_record->runId()) : std::nullopt;
}

} // namespace plateau::ui
