// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/books/bookpage.h"

class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class BookList;
class Dialogs;
class MethodBook;
class MethodEditor;
class MethodView;
class MethodsModel;
class Notice;
class Theme;

/// The book of methods: a list with a filter, one method to read, and the editor.
class MethodsPage : public BookPage
{
    Q_OBJECT

public:
    /// book, session and dialogs outlive it.
    MethodsPage(const Theme &theme, Dialogs &dialogs, BenchSession &session, MethodBook &book,
                QWidget *parent = nullptr);

    /// The list, or the editor while there is something in it that is not saved.
    void open() override;
    void importFile(const QString &path);
    /// The same of a file that came from outside; without a person at the bench that is asked first.
    void takeFile(const QString &path);
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void buildList();
    void connectView();
    void connectEditor();
    /// At once while it can be seen, else when it is shown next.
    void refresh();
    bool readCatalogue();
    void showList();
    void showMethod(const QString &contentHash);
    void showEditor();
    void chooseFile();
    void exportShown();
    void changeState();
    void save(const assay::Method &method, const QString &note);
    /// False, and the person is asked for, where nobody said who is there.
    bool personIsKnown(Notice &notice);
    static QString sayWhoIsThere();
    void dropAnsweredQuestion();
    Notice &noticeOnShow();

    const Theme &m_theme;
    Dialogs &m_dialogs;
    BenchSession &m_session;
    MethodBook &m_book;
    MethodsModel *m_methods;
    QStackedWidget *m_pages;
    BookList *m_list;
    MethodView *m_view;
    MethodEditor *m_editor;
    QWidget *m_beforeEditor = nullptr;
    std::vector<notebook::StoredMethod> m_catalogue;
    bool m_stale = true;
};

} // namespace plateau::ui
