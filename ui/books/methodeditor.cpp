// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodeditor.h"

#include "core/notebook/methodcatalogue.h"
#include "ui/books/appraisalpanel.h"
#include "ui/books/cellstable.h"
#include "ui/books/draftfields.h"
#include "ui/books/drafttables.h"
#include "ui/books/examplesection.h"
#include "ui/shared/widgets.h"
#include "ui/shared/elidinglabel.h"
#include "ui/shared/notice.h"
#include "ui/shared/problemlist.h"

#include <QApplication>
#include <QFormLayout>
#include <QKeyEvent>
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

namespace {

/// Runs and files know a method by its short name, so that a next version keeps it: shown, not to be keyed.
void fixShortName(QLineEdit &field, bool fixed)
{
    auto *form = static_cast<QFormLayout *>(field.parentWidget()->layout());
    showRow(*form, &field, !fixed);
    auto *shown = field.parentWidget()->findChild<QLabel *>(u"fixedMethodId"_s);
    shown->setText(MethodEditor::tr("%1 (stays: runs and files know the method by it)").arg(field.text()));
    showRow(*form, shown, fixed);
}

QString summaryOf(int errors, bool nothingSaid, const QString &sameAsStored)
{
    if (errors > 0)
        return MethodEditor::tr("Still to be put right (%1), Enter goes there:").arg(errors);
    if (!sameAsStored.isEmpty())
        return nothingSaid ? sameAsStored : MethodEditor::tr("%1 Worth a look:").arg(sameAsStored);
    return nothingSaid ? MethodEditor::tr("Nothing stands in the way of saving.")
                       : MethodEditor::tr("It can be saved. Worth a look:");
}

} // namespace

void MethodEditor::setCatalogue(std::vector<notebook::StoredMethod> catalogue)
{
    m_catalogue = std::move(catalogue);
    std::vector<assay::Method> methods;
    for (const notebook::StoredMethod &stored : m_catalogue)
        methods.push_back(stored.method);
    m_tables->setOtherMethods(std::move(methods));
    onEdited();
}

void MethodEditor::startNew()
{
    start(Opening::New, newMethodDraft());
}

void MethodEditor::startCopy(const assay::Method &method)
{
    MethodDraft draft = draftOf(method);
    draft.id.clear();
    draft.version = 1;
    draft.name = tr("%1, copy").arg(method.name);
    start(Opening::Copy, std::move(draft));
}

void MethodEditor::startVersion(const assay::Method &method)
{
    start(Opening::Version, draftOf(method));
}

void MethodEditor::start(Opening opening, MethodDraft draft)
{
    m_opening = opening;
    {
        const QScopedValueRollback<bool> loading(m_loading, true);
        m_draft = draft;
        m_fields->load(draft);
        m_tables->load(draft);
        m_example->clear();
    }
    const bool isVersion = opening == Opening::Version;
    m_version->setText(isVersion
                           ? tr("will be saved as the next version, after version %1").arg(draft.version)
                           : tr("will be saved as version 1"));
    m_noteRow->setVisible(isVersion);
    m_note->clear();
    fixShortName(*findChild<QLineEdit *>(u"methodId"_s), isVersion);
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
    showNames();
    checkShortName();
    m_appraisal->show(m_outcome.method, m_draft.components); // shows the problems when it is done
    m_tables->steps()->setFacts(step::InTube_mL, filledTexts(m_appraisal->appraisal()));
    m_example->show(m_outcome);
}

void MethodEditor::showNames()
{
    const assay::Method &method = m_outcome.method;
    const bool named = !method.name.isEmpty();
    m_heading->setText(named ? method.name : tr("A method without a name yet"));
    findChild<QLineEdit *>(u"methodId"_s)
        ->setPlaceholderText(named ? tr("made from the name: %1").arg(method.id) : tr("made from the name"));
}

void MethodEditor::checkShortName()
{
    if (m_opening == Opening::Version || m_outcome.method.name.isEmpty())
        return;
    const auto taken =
        std::ranges::find(m_catalogue, m_outcome.method.id,
                          [](const notebook::StoredMethod &stored) { return stored.method.id; });
    if (taken != m_catalogue.end())
        m_outcome.problems.push_back(assay::error(
            u"/id"_s,
            tr("%1 is the id of the method %2; choose another, or open that method and make "
               "its next version")
                .arg(taken->method.id, taken->method.name)));
}

QString MethodEditor::sameAsStored() const
{
    if (m_opening != Opening::Version)
        return {};
    const notebook::StoredMethod *same = notebook::sameAsNewest(m_catalogue, m_outcome.method);
    if (!same)
        return {};
    const QString sentence =
        tr("There is nothing to save: version %1 says exactly this.").arg(same->method.version);
    return same->retired ? tr("%1 It is retired; reinstate it to use it.").arg(sentence) : sentence;
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
    m_summary->setText(summaryOf(errors, m_shown.empty(), sameAsStored()));
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
    if (const QString same = sameAsStored(); !same.isEmpty()) {
        m_notice->say(State::Info, same);
        return;
    }
    const QString note = m_note->text().simplified();
    if (m_opening == Opening::Version && note.isEmpty()) {
        m_notice->say(State::Attention,
                      tr("Say in the line above what was changed and why, then press Enter; "
                         "the method's history keeps it."));
        m_note->setFocus();
        return;
    }
    m_notice->clear();
    Q_EMIT saved(m_outcome.method, note);
}

void MethodEditor::leave()
{
    finishCell();
    if (hasUnsavedChanges() && !m_askedToLeave) {
        m_askedToLeave = true;
        m_notice->say(State::Attention,
                      tr("There are changes that are not saved. Press it once more to drop them, or save first."));
        return;
    }
    m_notice->clear();
    Q_EMIT closed();
}

void MethodEditor::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
