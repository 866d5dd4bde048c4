// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodspage.h"

#include "ui/bench/benchsession.h"
#include "ui/books/booklist.h"
#include "ui/books/methodbook.h"
#include "ui/books/methodeditor.h"
#include "ui/books/methodfiles.h"
#include "ui/books/methodsmodel.h"
#include "ui/books/methodview.h"
#include "ui/books/wordfilter.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/guard.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

MethodsPage::MethodsPage(const Theme &theme, Dialogs &dialogs, BenchSession &session, MethodBook &book,
                         QWidget *parent)
    : BookPage(parent)
    , m_theme(theme)
    , m_dialogs(dialogs)
    , m_session(session)
    , m_book(book)
    , m_methods(new MethodsModel(theme, this))
    , m_pages(new PageStack(this))
    , m_list(new BookList(theme, new WordFilter(m_methods), {u"methods"_s, u"methods"_s},
                          {tr("Methods"), tr("Methods"), tr("Fin&d by name, state or origin"),
                           tr("There is no method yet. Import one from a file, or write a new one."),
                           tr("No method contains all of these words. Remove one to find more.")},
                          this))
    , m_view(new MethodView(theme, this))
    , m_editor(new MethodEditor(theme, this))
{
    m_pages->addWidget(m_list);
    m_pages->addWidget(m_view);
    m_pages->addWidget(m_editor);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    buildList();
    connectView();
    connectEditor();
    connect(&book, &MethodBook::changed, this, &MethodsPage::refresh);
    connect(&session, &BenchSession::notebookChanged, this, &MethodsPage::refresh);
    connect(&session, &BenchSession::personChanged, this, &MethodsPage::dropAnsweredQuestion);
}

void MethodsPage::buildList()
{
    auto *fresh = button(m_theme, tr("Ne&w method…"), u"newMethod"_s, m_list);
    auto *import = button(m_theme, tr("&Import from a file…"), u"importMethod"_s, m_list);
    m_list->addButton(fresh);
    m_list->addButton(import);
    m_list->table().setColumnHidden(MethodsModel::Note, true); // stands under Versions
    m_list->table().setFlexibleColumn(MethodsModel::Name);
    m_list->table().setLimit(52);
    connect(fresh, &QPushButton::clicked, this, [this] {
        m_editor->startNew();
        showEditor();
    });
    connect(import, &QPushButton::clicked, this, &MethodsPage::chooseFile);
    connect(m_list, &BookList::opened, this,
            [this](int row) { showMethod(m_methods->row(row).contentHash); });
}

void MethodsPage::connectView()
{
    connect(m_view, &MethodView::closed, this, &MethodsPage::showList);
    connect(m_view, &MethodView::methodWanted, this, &MethodsPage::showMethod);
    connect(m_view, &MethodView::changeWanted, this, [this] {
        m_editor->startVersion(m_view->shown().method);
        showEditor();
    });
    connect(m_view, &MethodView::copyWanted, this, [this] {
        m_editor->startCopy(m_view->shown().method);
        showEditor();
    });
    connect(m_view, &MethodView::exportWanted, this, &MethodsPage::exportShown);
    connect(m_view, &MethodView::stateChangeWanted, this, &MethodsPage::changeState);
}

void MethodsPage::connectEditor()
{
    connect(m_editor, &MethodEditor::saved, this, &MethodsPage::save);
    connect(m_editor, &MethodEditor::closed, this, [this] {
        m_editor->startNew(); // what was left behind is gone
        if (m_beforeEditor == m_view)
            showMethod(m_view->shown().contentHash);
        else
            showList();
    });
}

void MethodsPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    if (m_stale)
        refresh();
}

Notice &MethodsPage::noticeOnShow()
{
    return m_pages->currentWidget() == m_view ? m_view->notice() : m_list->notice();
}

bool MethodsPage::readCatalogue()
{
    return guarded(noticeOnShow(), [this] { m_catalogue = m_book.catalogue(); });
}

void MethodsPage::refresh()
{
    m_stale = !isVisible();
    if (m_stale || !readCatalogue())
        return;
    m_methods->setCatalogue(m_catalogue);
    m_list->refresh();
    if (m_pages->currentWidget() == m_view)
        m_view->show(m_catalogue, m_view->shown().contentHash);
}

void MethodsPage::open()
{
    if (!unstored().isEmpty())
        showEditor();
    else
        showList();
}

QString MethodsPage::unstored() const
{
    return m_editor->hasUnsavedChanges() ? tr("A method that is not saved yet") : QString();
}

void MethodsPage::showList()
{
    m_list->notice().clear();
    m_pages->setCurrentWidget(m_list);
    m_list->takeFocus();
}

void MethodsPage::showMethod(const QString &contentHash)
{
    if (!m_view->show(m_catalogue, contentHash))
        return;
    m_pages->setCurrentWidget(m_view);
    m_view->takeFocus();
}

void MethodsPage::showEditor()
{
    m_editor->setCatalogue(m_catalogue);
    if (m_pages->currentWidget() != m_editor)
        m_beforeEditor = m_pages->currentWidget();
    m_pages->setCurrentWidget(m_editor);
    m_editor->takeFocus();
}

bool MethodsPage::personIsKnown(Notice &notice)
{
    if (!m_session.person().isEmpty())
        return true;
    notice.say(State::Info, sayWhoIsThere());
    Q_EMIT personWanted();
    return false;
}

QString MethodsPage::sayWhoIsThere()
{
    return tr("First say who is at the bench: type your name on the left and press Enter, then do it again.");
}

void MethodsPage::dropAnsweredQuestion()
{
    if (m_session.person().isEmpty())
        return;
    for (Notice *notice : {&m_list->notice(), &m_view->notice(), &m_editor->notice()}) {
        if (notice->sentence() == sayWhoIsThere())
            notice->clear();
    }
}

void MethodsPage::chooseFile()
{
    if (!personIsKnown(m_list->notice()))
        return;
    const QString path =
        m_dialogs.fileToOpen(this, tr("Import a method"), tr("Method files (*.json);;All files (*)"));
    if (!path.isEmpty())
        importFile(path);
}

void MethodsPage::takeFile(const QString &path)
{
    if (personIsKnown(m_list->notice()))
        importFile(path);
}

void MethodsPage::importFile(const QString &path)
{
    const MethodFile file = readMethodFile(path);
    if (!file.method) {
        m_list->notice().say(State::Bad, file.fault);
        return;
    }
    notebook::MethodOutcome outcome;
    if (!guarded(m_list->notice(), [&] { outcome = m_book.import(*file.method, path); }) || !readCatalogue())
        return;
    for (const notebook::StoredMethod &method : m_catalogue) {
        if (method.method == outcome.method)
            showMethod(method.contentHash);
    }
    m_view->notice().say(outcome.needsAttention ? State::Attention : State::Good, outcome.sentence);
    if (outcome.stored && outcome.needsAttention)
        m_view->showWhatItIsKeptApartFrom();
}

void MethodsPage::exportShown()
{
    const assay::Method &method = m_view->shown().method;
    const QString path = m_dialogs.fileToSave(this, tr("Export the method"), methodFileName(method),
                                              tr("Method files (*.json)"));
    if (path.isEmpty())
        return;
    const QString fault = writeMethodFile(path, method);
    if (fault.isEmpty())
        m_view->notice().sayDone(tr("The method was written to %1.").arg(path));
    else
        m_view->notice().say(State::Bad, fault);
}

void MethodsPage::changeState()
{
    if (!personIsKnown(m_view->notice()))
        return;
    const notebook::StoredMethod method = m_view->shown();
    const bool done = guarded(m_view->notice(), [&] {
        if (method.retired)
            m_book.reinstate(method.method, m_view->reason());
        else
            m_book.retire(method.method, m_view->reason());
    });
    if (!done) {
        m_view->askForReason();
        return;
    }
    m_view->clearReason();
    m_view->notice().say(State::Good,
                         method.retired
                             ? tr("The method is in use again.")
                             : tr("The method is retired: new runs are not offered it, its runs keep it."));
}

void MethodsPage::save(const assay::Method &method, const QString &note)
{
    if (!personIsKnown(m_editor->notice()))
        return;
    notebook::MethodOutcome outcome;
    try {
        outcome = m_book.save(method, note);
    } catch (const notebook::Failure &failure) {
        m_editor->refuse(failure.sentence());
        return;
    }
    if (!outcome.stored) {
        m_editor->refuse(outcome.sentence);
        return;
    }
    m_editor->markSaved();
    if (!readCatalogue())
        return;
    for (const notebook::StoredMethod &stored : m_catalogue) {
        if (stored.method == outcome.method)
            showMethod(stored.contentHash);
    }
    m_view->notice().say(State::Good, outcome.sentence);
}

} // namespace plateau::ui
