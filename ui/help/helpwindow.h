// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/help/helppages.h"

#include <QWidget>

#include <vector>

class QAction;
class QLabel;
class QLineEdit;
class QListView;
class QPushButton;

namespace plateau::ui {

class HelpListModel;
class HelpView;
class Notice;
class Theme;

/// The help in a window of its own, beside which the work goes on: contents and search on the left, the page
/// on the right. Its size is kept over the end of the program.
class HelpWindow : public QWidget
{
    Q_OBJECT

public:
    HelpWindow(const Theme &theme, HelpPages pages, QWidget *parent = nullptr);
    ~HelpWindow() override;

    /// Shows it, and the way back leads to what was read before.
    void go(const HelpPlace &place);
    /// The keys scroll the page.
    void takeFocus();
    /// What is read now.
    HelpPlace place() const;
    const HelpPages &pages() const { return m_pages; }

protected:
    void hideEvent(QHideEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    /// A place that was read, and how far down.
    struct Visit {
        HelpPlace place;
        int scrolled = 0;
    };

    QWidget *buildList();
    QWidget *buildPage();
    void addActions();
    QAction *addKeys(const QString &text, const QList<QKeySequence> &keys);
    void keepSize() const;
    void follow(const QUrl &link);
    void choose(const QModelIndex &index);
    void search();
    /// Esc: first what is typed goes, then the window.
    void leave();
    void step(int by);
    void showVisit(const Visit &visit);
    void showList();
    void updateTitle();

    const Theme &m_theme;
    HelpPages m_pages;
    HelpListModel *m_rows;
    QLineEdit *m_search;
    QLabel *m_found;
    QListView *m_list;
    QPushButton *m_back;
    QPushButton *m_forward;
    Notice *m_notice;
    HelpView *m_view;
    QAction *m_backAction = nullptr;
    QAction *m_forwardAction = nullptr;
    std::vector<Visit> m_visits;
    std::size_t m_at = 0;
};

} // namespace plateau::ui
