// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodspage.h"

#include "ui/bench/benchsession.h"
#include "ui/books/methodbook.h"
#include "ui/books/methodeditor.h"
#include "ui/books/methodfiles.h"
#include "ui/books/methodsmodel.h"
#include "ui/books/methodview.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/guard.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>

using namespace Qt::StringLiterals;

namespace plateau::ui {

MethodsPage::MethodsPage(const Theme &theme, Dialogs &dialogs, BenchSession &session, MethodBook &book,
                         QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_dialogs(dialogs)
    , m_session(session)
    , m_book(book)
    , m_methods(new MethodsModel(theme, this))
    , m_filter(new MethodsFilter(m_methods, this))
    , m_pages(new QStackedWidget(this))
    , m_view(new MethodView(theme, this))
    , m_editor(new MethodEditor(theme, this))
{
    m_pages->addWidget(buildList());
    m_pages->addWidget(m_view);
    m_pages->addWidget(m_editor);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->addWidget(m_pages);
    connectView();
    connectEditor();
    connect(&book, &MethodBook::changed, this, &MethodsPage::refresh);
    connect(&session, &BenchSession::notebookChanged, this, &MethodsPage::refresh);
    updateEmptyText();
}

QWidget *MethodsPage::buildList()
{
    auto *page = new QWidget(this);
    auto *heading = plainLabel(tr("Methods"), page);
    heading->setFont(m_theme.large());
    auto *fresh = button(m_theme, tr("Ne&w method…"), u"newMethod"_s, page);
    auto *import = button(m_theme, tr("&Import from a file…"), u"importMethod"_s, page);
    m_search = new QLineEdit(page);
    m_search->setObjectName(u"methodsFilter"_s);
    m_search->setMinimumHeight(m_theme.target());
    m_search->setClearButtonEnabled(true);
    auto *caption = new QLabel(tr("Fin&d name, state or where it comes from"), page);
    caption->setBuddy(m_search);
    m_table = new Table(m_theme, m_filter, tr("Methods"), u"methods"_s, page);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setFlexibleColumn(MethodsModel::Name);
    m_table->setLimit(52);
    m_empty = plainLabel({}, page);
    m_empty->setObjectName(u"methodsEmpty"_s);
    m_empty->setFont(m_theme.large());
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_notice = new Notice(m_theme, page);

    auto *headRow = new QHBoxLayout;
    headRow->addWidget(heading, 1);
    headRow->addWidget(fresh);
    headRow->addWidget(import);
    auto *searchRow = new QHBoxLayout;
    searchRow->addWidget(caption);
    searchRow->addWidget(m_search, 1);
    auto *layout = new QVBoxLayout(page);
    setGaps(m_theme, layout);
    layout->addLayout(headRow);
    layout->addLayout(searchRow);
    layout->addWidget(m_notice);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_table, 1);

    connect(fresh, &QPushButton::clicked, this, [this] {
        m_editor->startNew();
        showEditor();
    });
    connect(import, &QPushButton::clicked, this, &MethodsPage::chooseFile);
    connect(m_search, &QLineEdit::textChanged, this, [this](const QString &text) {
        m_filter->setFilter(text);
        updateEmptyText();
    });
    // Enter in the search goes to what it found.
    connect(m_search, &QLineEdit::returnPressed, this, [this] {
        if (m_filter->rowCount() == 0)
            return;
        m_table->setFocus();
        m_table->selectRow(0);
    });
    connect(m_table, &Table::activated, this, [this](const QModelIndex &index) {
        showMethod(m_methods->row(m_filter->mapToSource(index).row()).contentHash);
    });
    return page;
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
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
}

Notice &MethodsPage::noticeOnShow()
{
    return m_pages->currentWidget() == m_view ? m_view->notice() : *m_notice;
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
    m_table->fit();
    updateEmptyText();
    if (m_pages->currentWidget() == m_view)
        m_view->show(m_catalogue, m_view->shown().contentHash);
}

void MethodsPage::updateEmptyText()
{
    const bool nothing = m_filter->rowCount() == 0;
    m_table->setVisible(!nothing);
    m_empty->setVisible(nothing);
    m_empty->setText(m_methods->rowCount() == 0
                         ? tr("There is no method yet. Import one from a file, or write a new one.")
                         : tr("No method has all of these words. Take one away to find more."));
    m_search->setEnabled(m_methods->rowCount() > 0);
}

void MethodsPage::open()
{
    if (hasUnsavedChanges())
        showEditor();
    else
        showList();
}

bool MethodsPage::hasUnsavedChanges() const
{
    return m_editor->hasUnsavedChanges();
}

void MethodsPage::showList()
{
    m_notice->clear();
    m_pages->setCurrentIndex(0);
    if (m_filter->rowCount() == 0) {
        m_search->setFocus();
        return;
    }
    if (!m_table->currentIndex().isValid())
        m_table->selectRow(0);
    m_table->setFocus();
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
    std::vector<assay::Method> others;
    for (const notebook::StoredMethod &method : m_catalogue)
        others.push_back(method.method);
    m_editor->setOtherMethods(std::move(others));
    if (m_pages->currentWidget() != m_editor)
        m_beforeEditor = m_pages->currentWidget();
    m_pages->setCurrentWidget(m_editor);
    m_editor->takeFocus();
}

bool MethodsPage::personIsKnown(Notice &notice)
{
    if (!m_session.person().isEmpty())
        return true;
    notice.say(State::Info, tr("Say who is at the bench first: type your name on the left and press Enter."));
    Q_EMIT personWanted();
    return false;
}

void MethodsPage::chooseFile()
{
    if (!personIsKnown(*m_notice))
        return;
    const QString path =
        m_dialogs.fileToOpen(this, tr("Import a method"), tr("Method files (*.json);;All files (*)"));
    if (!path.isEmpty())
        importFile(path);
}

void MethodsPage::importFile(const QString &path)
{
    const MethodFile file = readMethodFile(path);
    if (!file.method) {
        m_notice->say(State::Bad, file.fault);
        return;
    }
    notebook::MethodOutcome outcome;
    if (!guarded(*m_notice, [&] { outcome = m_book.import(*file.method, path); }) || !readCatalogue())
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
        m_view->notice().say(State::Good, tr("The method was written to %1.").arg(path));
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

void MethodsPage::save(const assay::Method &method)
{
    if (m_session.person().isEmpty()) {
        m_editor->refuse(
            tr("Say who is at the bench first: type your name on the left and press Enter, then save."));
        Q_EMIT personWanted();
        return;
    }
    notebook::MethodOutcome outcome;
    try {
        outcome = m_book.save(method);
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
