// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QWidget>

class QAbstractItemModel;
class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace plateau::ui {

class Notice;
class Table;
class Theme;
class WordFilter;

/// The first page of a book: its name, a search by words, and a table to choose from. Where the table is
/// empty, a sentence says what to do.
class BookList : public QWidget
{
    Q_OBJECT

public:
    struct Texts {
        QString heading;
        /// Caption of the search, with its letter.
        QString search;
        QString empty;
        QString noMatch;
    };
    /// name: object name of the table; those of the search and of the sentence begin with it.
    BookList(const Theme &theme, QAbstractItemModel *model, const QString &name, const Texts &texts,
             QWidget *parent = nullptr);

    Table &table() { return *m_table; }
    Notice &notice() { return *m_notice; }
    /// Beside the heading.
    void addButton(QWidget *button);
    /// To be called when the model has changed for good.
    void refresh();
    /// The table, with a row chosen; the search where the table is empty.
    void takeFocus();

Q_SIGNALS:
    /// A row of the model, by Enter or a double click.
    void opened(int row);

private:
    void sayWhatToDo();

    const Theme &m_theme;
    QAbstractItemModel *m_model;
    WordFilter *m_filter;
    Texts m_texts;
    QHBoxLayout *m_head;
    QLineEdit *m_search;
    Notice *m_notice;
    QLabel *m_empty;
    Table *m_table;
};

} // namespace plateau::ui
