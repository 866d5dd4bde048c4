// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/notebookpage.h"

#include "ui/bench/benchsession.h"
#include "ui/books/comparedrunsview.h"
#include "ui/books/recordview.h"
#include "ui/books/runlistview.h"
#include "ui/shared/scrolledpage.h"

#include <QStackedWidget>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

NotebookPage::NotebookPage(const Theme &theme, BenchSession &session, QWidget *parent)
    : BookPage(parent)
    , m_pages(new PageStack(this))
    , m_list(new RunListView(theme, session, this))
    , m_record(new RecordView(theme, session, this))
    , m_compared(new ComparedRunsView(theme, session, this))
{
    for (QWidget *page : std::initializer_list<QWidget *>{m_list, m_record, m_compared})
        m_pages->addWidget(page);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    connect(m_list, &RunListView::opened, this, &NotebookPage::showRecord);
    connect(m_list, &RunListView::comparisonWanted, this, &NotebookPage::compare);
    connect(m_compared, &ComparedRunsView::closed, this, &NotebookPage::showList);
    connect(m_record, &RecordView::closed, this, &NotebookPage::showList);
    connect(m_record, &RecordView::rackWanted, this, &NotebookPage::runWanted);
    connect(m_record, &RecordView::chartWanted, this, &NotebookPage::chartWanted);
    connect(&session, &BenchSession::notebookChanged, this, &NotebookPage::refresh);
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
    m_list->refresh();
    if (const auto id = openRecord())
        m_record->showRun(*id);
}

void NotebookPage::showList()
{
    m_pages->setCurrentWidget(m_list);
    m_list->focusSearch();
    Q_EMIT pageChanged();
}

void NotebookPage::showRecord(notebook::RunId id)
{
    if (!m_record->openRun(id))
        return;
    m_pages->setCurrentWidget(m_record);
    m_record->takeFocus();
    Q_EMIT pageChanged();
}

void NotebookPage::find(const notebook::RunFilter &filter)
{
    m_list->find(filter);
    showList();
}

void NotebookPage::compare(notebook::RunId one, notebook::RunId other)
{
    if (!m_compared->show(one, other))
        return;
    m_pages->setCurrentWidget(m_compared);
    m_compared->takeFocus();
    Q_EMIT pageChanged();
}

std::optional<notebook::RunId> NotebookPage::openRecord() const
{
    return m_pages->currentWidget() == m_record ? std::optional(m_record->runId()) : std::nullopt;
}

} // namespace plateau::ui
