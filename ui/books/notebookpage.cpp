// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/notebookpage.h"

#include "ui/bench/benchsession.h"
#include "ui/books/recordview.h"
#include "ui/books/runsmodel.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QStackedWidget>

using namespace Qt::StringLiterals;

namespace plateau::ui {

NotebookPage::NotebookPage(const Theme &theme, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_session(session)
    , m_runs(new RunsModel(theme, this))
    , m_filter(new RunsFilter(m_runs, this))
    , m_pages(new QStackedWidget(this))
    , m_record(new RecordView(theme, session, this))
{
    m_pages->addWidget(buildList());
    m_pages->addWidget(m_record);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    connect(m_record, &RecordView::closed, this, &NotebookPage::showList);
    connect(m_record, &RecordView::rackWanted, this, &NotebookPage::rackWanted);
    connect(m_record, &RecordView::personWanted, this, &NotebookPage::personWanted);
    connect(&session, &BenchSession::notebookChanged, this, &NotebookPage::refresh);
    updateEmptyText();
}

QWidget *NotebookPage::buildList()
{
    auto *page = new QWidget(this);
    auto *heading = plainLabel(tr("Notebook"), page);
    heading->setFont(m_theme.large());
    m_search = new QLineEdit(page);
    m_search->setObjectName(u"notebookFilter"_s);
    m_search->setMinimumHeight(m_theme.target());
    m_search->setClearButtonEnabled(true);
    auto *caption = new QLabel(tr("Fin&d title, sample, method or state"), page);
    caption->setBuddy(m_search);
    m_table = new Table(m_theme, m_filter, tr("Runs"), u"runs"_s, page);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setFlexibleColumn(RunsModel::Title);
    m_table->setLimit(24);
    m_empty = plainLabel({}, page);
    m_empty->setObjectName(u"notebookEmpty"_s);
    m_empty->setFont(m_theme.large());
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_notice = new Notice(m_theme, page);

    auto *searchRow = new QHBoxLayout;
    searchRow->addWidget(caption);
    searchRow->addWidget(m_search, 1);
    auto *layout = new QVBoxLayout(page);
    setGaps(m_theme, layout);
    layout->addWidget(heading);
    layout->addLayout(searchRow);
    layout->addWidget(m_notice);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_table, 1);

    connect(m_search, &QLineEdit::textChanged, this, [this](const QString &text) {
        m_filter->setFilter(text);
        updateEmptyText();
    });
    // Enter in the search goes to what it found.
    connect(m_search, &QLineEdit::returnPressed, this, [this] {
        if (m_filter->rowCount() == 0)
            return;
        m_table->setFocus();
        m_table->selectRow(0);
    });
    const auto open = [this](const QModelIndex &index) {
        showRecord(m_runs->run(m_filter->mapToSource(index).row()).id);
    };
    connect(m_table, &Table::activated, this, open);
    return page;
}

void NotebookPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
}

void NotebookPage::refresh()
{
    m_stale = !isVisible();
    if (m_stale)
        return;
    const bool read = guarded(*m_notice, [this] { m_runs->setRuns(m_session.allRuns()); });
    if (read)
        m_notice->clear();
    m_table->fit();
    updateEmptyText();
    if (const auto id = openRecord())
        m_record->showRun(*id);
}

void NotebookPage::updateEmptyText()
{
    const bool nothing = m_filter->rowCount() == 0;
    m_table->setVisible(!nothing);
    m_empty->setVisible(nothing);
    m_empty->setText(m_runs->rowCount() == 0
                         ? tr("No run is in the notebook yet. Start one with New run, or open a run file.")
                         : tr("No run has all of these words. Take one away to find more."));
    m_search->setEnabled(m_runs->rowCount() > 0);
}

void NotebookPage::showList()
{
    m_pages->setCurrentIndex(0);
    if (m_runs->rowCount() > 0)
        m_search->setFocus();
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
