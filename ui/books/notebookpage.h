// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/runsearch.h"
#include "ui/books/bookpage.h"

#include <vector>

class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class ComparedRunsView;
class RecordView;
class RunListView;
class Theme;

/// The book of runs: a list with what runs are found by, one run as it was, and two side by side.
class NotebookPage : public BookPage
{
    Q_OBJECT

public:
    NotebookPage(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    void open() override { showList(); }
    void showList();
    void showRecord(notebook::RunId id);
    /// The list of what that finds.
    void find(const notebook::RunFilter &filter);
    /// The run that is open to read, if one is.
    std::optional<notebook::RunId> openRecord() const;

Q_SIGNALS:
    void pageChanged();

protected:
    void showEvent(QShowEvent *event) override;

private:
    void compare(notebook::RunId one, notebook::RunId other);
    /// At once while it can be seen, else when it is shown next.
    void refresh();

    QStackedWidget *m_pages;
    RunListView *m_list;
    RecordView *m_record;
    ComparedRunsView *m_compared;
    bool m_stale = true;
};

} // namespace plateau::ui
