// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QWidget>

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
        /// What the rows are, for a screen reader.
        QString rows;
        /// Caption of the search, with its letter.
        QString search;
        QString empty;
        QString noMatch;
    };
    /// Object names; those of the search and of the sentence begin with that of the book.
    struct Names {
        QString book;
        QString table;
    };
    /// Of the filter's source; the filter becomes the list's child.
    BookList(const Theme &theme, WordFilter *filter, const Names &names, const Texts &texts,
             QWidget *parent = nullptr);

    Table &table() { return *m_table; }
    Notice &notice() { return *m_notice; }
    /// Beside the heading.
    void addButton(QWidget *button);
    /// A click on a heading sorts by it, by what the model says in that role; a third one gives its own order back.
    void setSortable(int role);
    /// To be called when the model has changed for good.
    void refresh();
    /// The table, with a row chosen; the search where it finds nothing; what there is to do where there is
    /// nothing to search.
    void takeFocus();
    /// The search with its words selected, so that the next ones take their place; nothing where there is
    /// nothing to search.
    void focusSearch();

protected:
    /// Down in the search goes to what it found.
    bool eventFilter(QObject *watched, QEvent *event) override;

Q_SIGNALS:
    /// A row of the model, by Enter or a double click.
    void opened(int row);

private:
    void toFound();
    void sayWhatToDo();

    const Theme &m_theme;
    WordFilter *m_filter;
    Texts m_texts;
    QHBoxLayout *m_head;
    QWidget *m_firstButton = nullptr;
    QLineEdit *m_search;
    Notice *m_notice;
    QLabel *m_empty;
    Table *m_table;
};

} // namespace plateau::ui
