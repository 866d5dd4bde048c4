// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/bookpage.h"

class QTabWidget;

namespace plateau::ui {

class BenchSession;
class CopiesView;
class Dialogs;
class Keeper;
class Notice;
class Theme;
class TrailView;

/// The book of records: who did what when, whether the records are whole, and how they are kept.
class RecordsPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    RecordsPage(const Theme &theme, Dialogs &dialogs, const BenchSession &session, Keeper &keeper,
                QWidget *parent = nullptr);

    void open() override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void refresh();

    Notice *m_notice;
    QTabWidget *m_tabs;
    TrailView *m_trail;
    CopiesView *m_copies;
};

} // namespace plateau::ui
