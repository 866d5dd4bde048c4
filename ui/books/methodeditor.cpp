// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodeditor.h"

#include "ui/books/appraisalpanel.h"
#include "ui/books/cellstable.h"
#include "ui/books/draftfields.h"
#include "ui/books/drafttables.h"
#include "ui/books/examplesection.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/problemlist.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScopedValueRollback>
#include <QScrollArea>
#include <QStackedWidget>

#include <algorithm>
#include <tuple>

using namespace Qt::StringLiterals;

namespace plateau::ui {

void MethodEditor::setOtherMethods(std::vector<assay::Method> methods)
{
    m_others = methods;
    m_tables->setOtherMethods(std::move(methods));
    onEdited();
}

void MethodEditor::startNew()
{
    start(Opening::New, tr("New method"), newMethodDraft());
}

void MethodEditor::startCopy(const assay::Method &method)
{
    MethodDraft draft = draftOf(method);
    draft.id.clear();
    draft.version = 1;
    draft.name = tr("%1, copy").arg(method.name);
    start(Opening::Copy, tr("Copy of %1").arg(method.name), std::move(draft));
}

void MethodEditor::startVersion(const assay::Method &method)
{
    start(Opening::Version, method.name, draftOf(method));
}

void MethodEditor::start(Opening opening, const QString &heading, MethodDraft draft)
{
    m_opening = opening;
    {
        const QScopedValueRollback<bool> loading(m_loading, true);
        m_draft = draft;
        m_fields->load(draft);
        m_tables->load(draft);
        m_example->clear();
    }
    m_heading->setText(heading);
    m_version->setText(opening == Opening::Version
                           ? tr("will be saved as the next version, after version %1").arg(draft.version)
                           : tr("will be saved as version 1"));
    auto *shortName = findChild<QLineEdit *>(u"methodId"_s);
    shortName->setReadOnly(opening == Opening::Version);
    m_notice->clear();
    m_draft = collect();
    m_kept = m_draft;
    showSection(MethodSection::Measures);
    onEdited();
}

MethodDraft MethodEditor::collect() const
{
    MethodDraft draft = m_draft; // keeps what has no field
    m_fields->store(draft);
    m_tables->store(draft);
    return draft;
}

void MethodEditor::onEdited()
{
    if (m_loading)
        return;
    m_askedToLeave = false;
    m_draft = collect();
    m_outcome = methodOf(m_draft);
    checkShortName();
    m_appraisal->show(m_outcome.method, m_draft.components); // shows the problems when it is done
    m_tables->steps()->setFacts(step::InTube_mL, filledTexts(m_appraisal->appraisal()));
    m_example->show(m_outcome);
}

void MethodEditor::checkShortName()
{
    findChild<QLineEdit *>(u"methodId"_s)
        ->setPlaceholderText(m_outcome.method.name.isEmpty()
                                 ? tr("made from the name")
                                 : tr("made from the name: %1").arg(m_outcome.method.id));
    if (m_opening == Opening::Version || m_outcome.method.name.isEmpty())
        return;
    const auto taken = std::ranges::find(m_others, m_outcome.method.id, &assay::Method::id);
    if (taken != m_others.end())
        m_outcome.problems.push_back(assay::error(
            u"/id"_s,
            tr("%1 is the short name of the method %2; choose another, or open that method and make "
               "its next version")
                .arg(taken->id, taken->name)));
}

void MethodEditor::showProblems()
{
    m_shown = m_outcome.problems;
    const assay::Problems &remarks = m_appraisal->appraisal().remarks;
    m_shown.insert(m_shown.end(), remarks.begin(), remarks.end());
    const auto isError = [](const assay::Problem &problem) {
        return problem.severity == assay::Problem::Severity::Error;
    };
    // In the order of the sections, errors first.
    std::ranges::stable_sort(m_shown, {}, [&](const assay::Problem &problem) {
        const MethodField field = fieldOf(problem.pointer, m_draft);
        return std::tuple(!isError(problem), field.section, field.row, field.column);
    });
    const auto errors = static_cast<int>(std::ranges::count_if(m_shown, isError));
    if (m_shown.empty())
        m_summary->setText(tr("Nothing stands in the way of saving."));
    else if (errors == 0)
        m_summary->setText(tr("It can be saved. Worth a look:"));
    else
        m_summary->setText(tr("Still to be put right (%1), Enter goes there:").arg(errors));
    assay::Problems inWords = m_shown;
    for (assay::Problem &problem : inWords) {
        problem.pointer = methodPlaceWords(problem.pointer, m_draft);
        problem.message = methodSentenceWords(problem.message);
    }
    m_problems->setProblems(inWords);
    m_problems->setVisible(!inWords.empty());
}

void MethodEditor::showSection(MethodSection section)
{
    m_sections->setCurrentRow(static_cast<int>(section));
}

void MethodEditor::goToProblem(int row)
{
    if (row < 0 || row >= static_cast<int>(m_shown.size()))
        return;
    const MethodField field = fieldOf(m_shown[static_cast<std::size_t>(row)].pointer, m_draft);
    showSection(field.section);
    auto *page = static_cast<QScrollArea *>(m_pages->currentWidget());
    auto *widget = page->findChild<QWidget *>(field.objectName);
    if (!widget)
        return;
    widget->setFocus(Qt::OtherFocusReason);
    if (auto *table = qobject_cast<CellsTable *>(widget))
        table->goTo(std::max(0, field.row), field.column);
    page->ensureWidgetVisible(widget);
}

void MethodEditor::takeFocus()
{
    findChild<QLineEdit *>(u"methodName"_s)->setFocus();
}

bool MethodEditor::hasUnsavedChanges() const
{
    return m_draft != m_kept;
}

void MethodEditor::markSaved()
{
    m_kept = m_draft;
    m_notice->clear();
}

void MethodEditor::refuse(const QString &sentence)
{
    m_notice->say(State::Bad, sentence);
}

void MethodEditor::finishCell() const
{
    // The editor of a cell keeps its text to itself until it is left.
    for (auto *table : findChildren<CellsTable *>()) {
        if (table->isAncestorOf(QApplication::focusWidget()))
            table->setFocus();
    }
}

void MethodEditor::save()
{
    finishCell();
    if (assay::hasErrors(m_outcome.problems)) {
        m_notice->say(State::Attention,
                      tr("The method is not saved yet: first put right what the list names."));
        m_problems->setFocus();
        m_problems->setCurrentIndex(m_problems->model()->index(0, 0));
        return;
    }
    m_notice->clear();
    Q_EMIT saved(m_outcome.method);
}

void MethodEditor::leave()
{
    finishCell();
    if (hasUnsavedChanges() && !m_askedToLeave) {
        m_askedToLeave = true;
        m_notice->say(State::Attention,
                      tr("There are changes that are not saved. Leave again to drop them, or save first."));
        return;
    }
    m_notice->clear();
    Q_EMIT closed();
}

} // namespace plateau::ui
