// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/limitsview.h"

#include "ui/books/limitswords.h"
#include "ui/shared/widgets.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/problemlist.h"

#include <QComboBox>
#include <QFormLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QSignalBlocker>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using namespace evaluation;

namespace {

template <class Value> void choose(QComboBox *box, Value value)
{
    box->setCurrentIndex(box->findData(static_cast<int>(value)));
}

template <class Value> Value chosen(const QComboBox *box)
{
    return static_cast<Value>(box->currentData().toInt());
}

void setNamesOf(QComboBox *box, const QStringList &names)
{
    const QString typed = box->currentText();
    const QSignalBlocker quiet(box);
    box->clear();
    box->addItems(names);
    box->setEditText(typed);
}

} // namespace

void LimitsView::setNames(const QStringList &products, const QStringList &measurands, const MeasurandNames &names)
{
    m_names = names;
    setNamesOf(m_product, products);
    setNamesOf(m_measurand, measurands);
}

void LimitsView::show(const LimitDraft &draft, const std::vector<Specification> &others, bool isNew)
{
    {
        const QScopedValueRollback<bool> loading(m_loading, true);
        m_others = others;
        m_isNew = isNew;
        m_product->setEditText(draft.product);
        m_keptMeasurand = draft.measurand;
        m_shownMeasurand = m_names.nameOf(draft.measurand);
        m_measurand->setEditText(m_shownMeasurand);
        choose(m_kind, draft.kind);
        m_lower->entry()->setText(draft.lower);
        m_upper->entry()->setText(draft.upper);
        choose(m_unit, draft.unit);
        m_source->setPlainText(draft.source);
        m_date->setText(draft.date);
        choose(m_rule, draft.rule);
        choose(m_guard, draft.guard);
        m_guardSize->entry()->setText(draft.guardSize);
        m_reason->clear();
        m_heading->setText(isNew ? tr("A limit of a product") : tr("Change a limit"));
        m_remove->setVisible(!isNew);
        m_notice->clear();
    }
    m_kept = collect();
    onEdited();
}

LimitDraft LimitsView::collect() const
{
    // A limit that names it by id keeps the id, which is the same in every language.
    const QString measurand = m_measurand->currentText();
    return {m_product->currentText(),     measurand == m_shownMeasurand ? m_keptMeasurand : measurand,
            chosen<LimitKind>(m_kind),    m_lower->entry()->text(),
            m_upper->entry()->text(),     chosen<ReportUnit>(m_unit),
            m_source->toPlainText(),      m_date->text(),
            chosen<DecisionRule>(m_rule), chosen<GuardBand::Kind>(m_guard),
            m_guardSize->entry()->text()};
}

void LimitsView::onEdited()
{
    if (m_loading)
        return;
    m_dropAsked = false;
    m_outcome = limitOf(collect(), m_others);
    showFields();
    showProblems();
}

void LimitsView::showFields()
{
    const auto kind = chosen<LimitKind>(m_kind);
    const auto rule = chosen<DecisionRule>(m_rule);
    const bool guarded = rule != DecisionRule::SimpleAcceptance;
    showRow(*m_form, m_lower, kind == LimitKind::Minimum || kind == LimitKind::Range);
    showRow(*m_form, m_upper, kind != LimitKind::Minimum);
    captionOf(*m_form, m_upper)
        ->setText(kind == LimitKind::LabelThreshold ? tr("Thresho&ld") : tr("&Upper limit"));
    m_meaning->setText(decisionRuleMeaning(rule));
    showRow(*m_form, m_guard, guarded);
    showRow(*m_form, m_guardSize,
                          guarded && chosen<GuardBand::Kind>(m_guard) != GuardBand::Kind::OneSided95);
}

void LimitsView::showProblems()
{
    assay::Problems inWords = m_outcome.problems;
    for (assay::Problem &problem : inWords)
        problem.pointer = limitField(problem.pointer, chosen<LimitKind>(m_kind)).words;
    const bool sound = inWords.empty();
    if (!sound)
        m_summary->setText(
            tr("Still to be put right (%1), Enter goes there:").arg(static_cast<int>(inWords.size())));
    else
        m_summary->setText(
            tr("Judged: %1 in %2, %3.")
                .arg(m_names.nameOf(m_outcome.limit.measurand), m_outcome.limit.product, limitText(m_outcome.limit)));
    m_problems->setProblems(inWords);
    m_problems->setVisible(!sound);
}

void LimitsView::goToProblem(int row)
{
    if (row < 0 || row >= static_cast<int>(m_outcome.problems.size()))
        return;
    const QString &pointer = m_outcome.problems[static_cast<std::size_t>(row)].pointer;
    if (auto *field = findChild<QWidget *>(limitField(pointer, chosen<LimitKind>(m_kind)).objectName))
        field->setFocus(Qt::OtherFocusReason);
}

void LimitsView::takeFocus()
{
    m_product->setFocus();
}

std::optional<QString> LimitsView::reason()
{
    const QString typed = m_reason->text().simplified();
    if (!typed.isEmpty())
        return typed;
    m_reason->setFocus();
    m_notice->say(State::Attention,
                  tr("Nothing is saved yet: say why the list changes; the reason stands in the record."));
    return std::nullopt;
}

void LimitsView::save()
{
    if (!m_outcome.problems.empty()) {
        m_notice->say(State::Attention, tr("Nothing is saved yet: first put right what the list names."));
        m_problems->setFocus();
        m_problems->setCurrentIndex(m_problems->model()->index(0, 0));
        return;
    }
    if (const auto why = reason())
        Q_EMIT saveWanted(m_outcome.limit, *why);
}

void LimitsView::remove()
{
    if (const auto why = reason())
        Q_EMIT removeWanted(*why);
}

void LimitsView::leave()
{
    if (hasUnsavedChanges() && !m_dropAsked) {
        m_dropAsked = true;
        m_notice->say(State::Attention,
                      tr("This is not saved: save it, or go back once more to drop what was typed."));
        return;
    }
    Q_EMIT closed();
}

void LimitsView::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        leave();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
