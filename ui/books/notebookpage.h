// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/books/bookpage.h"

#include <vector>

class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BookList;
class RecordView;
class RunsModel;
class Theme;

/// The book of runs: a list with a filter, and one run as it was.
class NotebookPage : public BookPage
{
    Q_OBJECT

public:
    NotebookPage(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    void open() override { showList(); }
    void showList();
    void showRecord(notebook::RunId id);
    /// The run that is open to read, if one is.
    std::optional<notebook::RunId> openRecord() const;

Q_SIGNALS:
    void pageChanged();

protected:
    void showEvent(QShowEvent *event) override;

private:
    std::vector<notebook::RunId> findRuns(const QString &runCode);
    /// At once while it can be seen, else when it is shown next.
    void refresh();

    BenchSession &m_session;
    RunsModel *m_runs;
    QStackedWidget *m_pages;
    BookList *m_list;
    RecordView *m_record;
    bool m_stale = true;
};

} // namespace plateau::ui
