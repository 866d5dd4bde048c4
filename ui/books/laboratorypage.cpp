// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratorypage.h"

#include "core/evaluation/format.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/stores.h"
#include "ui/books/cellstable.h"
#include "ui/books/laboratoryplaces.h"
#include "ui/books/laboratorytables.h"
#include "ui/books/methodbook.h"
#include "ui/shared/guard.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/widgets.h"

#include <QApplication>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QScrollArea>
#include <QStackedWidget>

#include <algorithm>
#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString whoIsAskedLaboratory()
{
    return LaboratoryPage::tr(
        "First say who is at the bench: type your name on the left and press Enter, then do it again.");
}

} // namespace

void LaboratoryPage::showEvent(QShowEvent *event)
{
    BookPage::showEvent(event);
    if (!m_loaded)
        reload();
}

void LaboratoryPage::open()
{
    goToSection(m_list->currentRow());
}

void LaboratoryPage::offerMethods()
{
    guarded(*m_notice, [this] {
        const MethodChoices choices = methodChoices(m_methodBook.catalogue());
        m_methods->setChoices(choices);
        m_units->setChoices(choices);
    });
}

void LaboratoryPage::reload()
{
    offerMethods();
    m_loaded = guarded(*m_notice, [this] {
        m_keptLaboratory = m_stores.laboratory();
        load(draftOf(m_keptLaboratory));
        sayWhereItComesFrom();
    });
}

void LaboratoryPage::load(const LaboratoryDraft &draft)
{
    {
        const QScopedValueRollback<bool> loading(m_loading, true);
        for (LaboratorySection *section : m_sections)
            section->load(draft);
    }
    m_kept = collect();
    onEdited();
}

LaboratoryDraft LaboratoryPage::collect() const
{
    LaboratoryDraft draft;
    for (const LaboratorySection *section : m_sections)
        section->store(draft);
    return draft;
}

bool LaboratoryPage::isChanged() const
{
    return m_loaded && collect() != m_kept;
}

bool LaboratoryPage::isChanged(const LaboratorySection &section) const
{
    LaboratoryDraft with = m_kept;
    section.store(with);
    return with != m_kept;
}

void LaboratoryPage::takeOver()
{
    if (!m_loaded)
        return;
    guarded(*m_notice, [this] {
        const planning::Laboratory saved = m_stores.laboratory();
        if (saved == m_keptLaboratory)
            return;
        const LaboratoryDraft draft = draftOf(saved);
        const bool typed = isChanged();
        {
            const QScopedValueRollback<bool> loading(m_loading, true);
            for (LaboratorySection *section : m_sections) {
                if (!isChanged(*section))
                    section->load(draft);
            }
        }
        m_keptLaboratory = saved;
        m_kept = typed ? draft : collect();
        onEdited();
        sayWhereItComesFrom();
    });
}

QString LaboratoryPage::unstored() const
{
    return isChanged() ? tr("Changes to the laboratory that are not saved yet") : QString();
}

void LaboratoryPage::onEdited()
{
    if (m_loading)
        return;
    const LaboratoryDraft draft = collect();
    m_outcome = laboratoryOf(draft, m_keptLaboratory);
    m_dropChanges->setEnabled(draft != m_kept);
    if (m_saysStored && draft != m_kept)
        guarded(*m_notice, [this] { sayWhereItComesFrom(); }); // what was stored is history now
    showProblems();
}

void LaboratoryPage::sayWhereItComesFrom(const QStringList &stored)
{
    m_saysStored = !stored.isEmpty();
    const auto saving = m_stores.laboratorySaving();
    if (!saving) {
        m_origin->say(State::Attention,
                      tr("Common practice, no source: replace it with your own. Nobody has saved this "
                         "laboratory yet; until then plans go by what stands here."));
        return;
    }
    const QString by = tr("Version %1, saved by %2, %3.")
                           .arg(QString::number(saving->version), saving->person, momentText(saving->at));
    const QString holds = tr("Plans made from now on go by it; racks on the bench keep theirs.");
    m_origin->say(State::Good, stored.isEmpty()
                                   ? u"%1 %2"_s.arg(by, holds)
                                   : tr("%1 Stored: %2. %3").arg(by, stored.join(u", "_s), holds));
}

void LaboratoryPage::showProblems()
{
    assay::Problems inWords = m_outcome.problems;
    std::map<QString, QStringList> byField;
    for (assay::Problem &problem : inWords) {
        const LaboratoryField field = laboratoryField(problem.pointer);
        byField[field.objectName] << (field.row < 0 ? evaluation::capitalised(problem.message)
                                                    : u"%1: %2"_s.arg(field.words, problem.message));
        problem.pointer = field.words;
    }
    for (LaboratorySection *section : m_sections)
        section->showProblems(byField);
    const auto errors = static_cast<int>(inWords.size());
    m_summary->setText(errors > 0 ? tr("Still to be put right (%1), Enter goes there:").arg(errors)
                                  : tr("Changed, and not saved yet."));
    m_summary->setVisible(errors > 0 || isChanged());
    m_problems->setProblems(inWords);
    m_problems->setVisible(errors > 0);
    markSections();
}

void LaboratoryPage::markSections()
{
    std::vector<int> counts(m_sections.size());
    for (const assay::Problem &problem : m_outcome.problems)
        ++counts[static_cast<std::size_t>(laboratoryField(problem.pointer).part)];
    for (std::size_t i = 0; i < counts.size(); ++i) {
        QListWidgetItem *item = m_list->item(static_cast<int>(i));
        item->setIcon(counts[i] > 0 ? m_theme.icon(State::Bad) : QIcon());
        item->setData(Qt::AccessibleTextRole,
                      counts[i] > 0 ? tr("%1, to be put right: %2").arg(item->text()).arg(counts[i])
                                    : item->text());
    }
}

void LaboratoryPage::goToSection(int row)
{
    m_list->setCurrentRow(row);
    // Into the form: what was typed last is behind.
    m_sections[static_cast<std::size_t>(std::max(0, row))]->setFocus();
    focusNextChild();
}

void LaboratoryPage::goToProblem(int row)
{
    if (row < 0 || row >= static_cast<int>(m_outcome.problems.size()))
        return;
    const LaboratoryField field = laboratoryField(m_outcome.problems[static_cast<std::size_t>(row)].pointer);
    m_list->setCurrentRow(static_cast<int>(field.part));
    auto *scroll = static_cast<QScrollArea *>(m_pages->currentWidget());
    auto *widget = scroll->findChild<QWidget *>(field.objectName);
    if (!widget)
        return;
    widget->setFocus(Qt::OtherFocusReason);
    if (auto *table = qobject_cast<CellsTable *>(widget))
        table->goTo(std::max(0, field.row), field.column);
    scroll->ensureWidgetVisible(widget);
}

void LaboratoryPage::finishCell() const
{
    // The editor of a cell keeps its text to itself until it is left.
    for (auto *table : findChildren<CellsTable *>()) {
        if (table->isAncestorOf(QApplication::focusWidget()))
            table->setFocus();
    }
}

void LaboratoryPage::save()
{
    finishCell();
    m_notice->clear();
    if (!m_outcome.problems.empty()) {
        m_notice->say(State::Attention, tr("Nothing is saved yet: first put right what the list names."));
        m_problems->setFocus();
        m_problems->setCurrentIndex(m_problems->model()->index(0, 0));
        return;
    }
    if (m_session.person().isEmpty()) {
        m_notice->say(State::Info, whoIsAskedLaboratory());
        Q_EMIT personWanted();
        return;
    }
    guarded(*m_notice, [this] { store(); });
}

void LaboratoryPage::store()
{
    QStringList parts = changedParts(m_keptLaboratory, m_outcome.laboratory);
    if (!m_stores.saveLaboratory(m_outcome.laboratory)) {
        m_origin->say(State::Info, tr("There is nothing to save: version %1 says exactly this.")
                                       .arg(m_stores.laboratorySaving()->version));
        return;
    }
    m_keptLaboratory = m_stores.laboratory();
    load(draftOf(m_keptLaboratory));
    if (parts.isEmpty())
        parts << tr("everything as it stood here");
    sayWhereItComesFrom(parts);
}

void LaboratoryPage::dropAnsweredQuestion()
{
    if (!m_session.person().isEmpty() && m_notice->sentence() == whoIsAskedLaboratory())
        m_notice->clear();
}

} // namespace plateau::ui
