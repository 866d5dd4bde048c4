// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/runsearch.h"
#include "ui/books/savedfilters.h"

#include <QTimer>
#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class BenchSession;
class Notice;
class RunFilterFields;
class RunsModel;
class Table;
class Theme;

/// The list of runs with what they are found by. Looks a moment after the last key, a page at a time; Down
/// goes from the words to the list, Escape takes the filter away.
class RunListView : public QWidget
{
    Q_OBJECT

public:
    RunListView(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    Notice &notice() { return *m_notice; }
    /// The notebook may have changed.
    void refresh();
    /// The words, selected; nothing where there is nothing to find.
    void focusSearch();
    /// In place of what was asked.
    void find(const notebook::RunFilter &filter);

Q_SIGNALS:
    void opened(plateau::notebook::RunId id);
    void comparisonWanted(plateau::notebook::RunId one, plateau::notebook::RunId other);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void layOut();
    void connectAll();
    notebook::RunPage page(const notebook::RunFilter &filter, notebook::RunOrder order, int size,
                           const std::optional<notebook::PageEnd> &after);
    notebook::RunFilter asked() const;
    notebook::RunOrder order() const;
    /// What was typed is looked for now.
    void look();
    void say();
    void clear();
    void toList();
    void showSaved();
    void keepFilter();
    void forgetFilter();
    void offerComparison();

    const Theme &m_theme;
    BenchSession &m_session;
    RunsModel *m_runs;
    QLineEdit *m_words;
    QPushButton *m_more;
    QComboBox *m_order;
    RunFilterFields *m_fields;
    QComboBox *m_saved;
    QPushButton *m_keep;
    QPushButton *m_forget;
    QPushButton *m_compare;
    Notice *m_notice;
    QLabel *m_count;
    QLabel *m_empty;
    Table *m_table;
    QTimer m_pause;
    SavedFilters m_filters;
    bool m_hasRuns = false;
};

} // namespace plateau::ui
