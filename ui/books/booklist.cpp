// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/booklist.h"

#include "ui/books/wordfilter.h"
#include "ui/shared/notice.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

BookList::BookList(const Theme &theme, WordFilter *filter, const Names &names, const Texts &texts,
                   QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_filter(filter)
    , m_texts(texts)
    , m_head(new QHBoxLayout)
    , m_search(new QLineEdit(this))
    , m_notice(new Notice(theme, this))
    , m_empty(plainLabel({}, this))
    , m_table(new Table(theme, m_filter, texts.rows, names.table, this))
{
    m_filter->setParent(this);
    auto *heading = plainLabel(texts.heading, this);
    heading->setFont(theme.large());
    m_search->setObjectName(names.book + u"Filter"_s);
    m_search->setMinimumHeight(theme.target());
    m_search->setClearButtonEnabled(true);
    auto *caption = new QLabel(texts.search, this);
    caption->setBuddy(m_search);
    m_empty->setObjectName(names.book + u"Empty"_s);
    m_empty->setFont(theme.large());
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);

    m_head->addWidget(heading, 1);
    auto *searchRow = new QHBoxLayout;
    searchRow->addWidget(caption);
    searchRow->addWidget(m_search, 1);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addLayout(m_head);
    layout->addLayout(searchRow);
    layout->addWidget(m_notice);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_table, 1);

    connect(m_search, &QLineEdit::textChanged, this, [this](const QString &text) {
        m_filter->setFilter(text);
        sayWhatToDo();
    });
    // Enter in the search goes to what it found.
    connect(m_search, &QLineEdit::returnPressed, this, &BookList::toFound);
    m_search->installEventFilter(this);
    connect(m_table, &Table::activated, this,
            [this](const QModelIndex &index) { Q_EMIT opened(m_filter->mapToSource(index).row()); });
    sayWhatToDo();
}

void BookList::addButton(QWidget *button)
{
    m_head->addWidget(button);
    if (!m_firstButton && qobject_cast<QPushButton *>(button))
        m_firstButton = button;
    // Where they stand is where Tab comes to them.
    setTabOrder(button, m_search);
}

void BookList::setSortable(int role)
{
    m_filter->setSortRole(role);
    m_filter->setSortCaseSensitivity(Qt::CaseInsensitive);
    m_filter->setSortLocaleAware(true);
    QHeaderView *header = m_table->horizontalHeader();
    header->setSortIndicator(-1, Qt::AscendingOrder);
    header->setSortIndicatorClearable(true);
    m_table->setSortingEnabled(true);
}

void BookList::refresh()
{
    m_table->fit();
    sayWhatToDo();
}

void BookList::takeFocus()
{
    if (m_filter->rowCount() == 0) {
        QWidget *const next = m_search->isEnabled() || !m_firstButton ? m_search : m_firstButton;
        next->setFocus();
        return;
    }
    // A table that got the focus by itself has a current row that is not chosen.
    if (!m_table->selectionModel()->hasSelection())
        m_table->selectRow(std::max(0, m_table->currentIndex().row()));
    m_table->setFocus();
}

void BookList::focusSearch()
{
    if (m_filter->sourceModel()->rowCount() == 0)
        return;
    m_search->setFocus();
    m_search->selectAll();
}

void BookList::toFound()
{
    if (m_filter->rowCount() == 0)
        return;
    m_table->setFocus();
    m_table->selectRow(0);
}

bool BookList::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_search && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent *>(event)->key() == Qt::Key_Down) {
        toFound();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void BookList::sayWhatToDo()
{
    const bool nothing = m_filter->rowCount() == 0;
    m_table->setVisible(!nothing);
    m_empty->setVisible(nothing);
    m_empty->setText(m_filter->sourceModel()->rowCount() == 0 ? m_texts.empty : m_texts.noMatch);
    m_search->setEnabled(m_filter->sourceModel()->rowCount() > 0);
}

} // namespace plateau::ui
