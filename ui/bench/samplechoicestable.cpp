// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/samplechoicestable.h"

#include "ui/bench/repeathow.h"
#include "ui/bench/samplechoicesmodel.h"
#include "ui/shared/offerfield.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"

#include <QComboBox>
#include <QHeaderView>
#include <QKeyEvent>
#include <QStyledItemDelegate>

#include <algorithm>
#include <optional>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// A list of the choices, or a line that offers the usual reasons.
class ChoiceEditor : public ShownNumbersDelegate
{
public:
    explicit ChoiceEditor(SampleChoicesTable *table)
        : ShownNumbersDelegate(table)
        , m_table(table)
    {
    }

    QWidget *createEditor(QWidget *parent, const QStyleOptionViewItem &,
                          const QModelIndex &index) const override
    {
        QWidget *editor = nullptr;
        if (index.column() == SampleChoicesModel::Choice) {
            auto *box = new QComboBox(parent);
            for (const SampleChoice choice : offeredChoices())
                box->addItem(choiceText(choice), static_cast<int>(choice));
            editor = box;
        } else {
            auto *field = new OfferField(parent);
            if (index.column() == SampleChoicesModel::Reason)
                field->setOffers(m_table->reasons(chosenAt(index)));
            else
                field->setPlaceholderText(SampleChoicesTable::tr("20, 5 to 100, or 0.5 mL"));
            editor = field;
        }
        editor->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal).toString());
        return editor;
    }
    void setEditorData(QWidget *editor, const QModelIndex &index) const override
    {
        if (auto *box = qobject_cast<QComboBox *>(editor))
            box->setCurrentIndex(box->findData(index.data(Qt::EditRole)));
        else
            QStyledItemDelegate::setEditorData(editor, index);
    }
    void setModelData(QWidget *editor, QAbstractItemModel *model, const QModelIndex &index) const override
    {
        const auto *box = qobject_cast<QComboBox *>(editor);
        if (const auto *field = qobject_cast<QLineEdit *>(editor); field && isHow(field->text(), index))
            model->setData(index.siblingAtColumn(SampleChoicesModel::How), field->text(), Qt::EditRole);
        else if (!box)
            QStyledItemDelegate::setModelData(editor, model, index);
        else if (box->currentIndex() >= 0)
            model->setData(index, box->currentData(), Qt::EditRole);
    }

private:
    /// W asks why; a dilution or a volume that is typed there at once, as the hint says, is no reason.
    static bool isHow(const QString &typed, const QModelIndex &index)
    {
        return index.column() == SampleChoicesModel::Reason && chosenAt(index) == SampleChoice::Repeat &&
               repeatHow(typed).advice;
    }
    static SampleChoice chosenAt(const QModelIndex &index)
    {
        return static_cast<SampleChoice>(
            index.siblingAtColumn(SampleChoicesModel::Choice).data(Qt::EditRole).toInt());
    }

    SampleChoicesTable *m_table;
};

std::optional<SampleChoice> choiceOf(const QKeyEvent &event)
{
    if (event.modifiers() != Qt::NoModifier && event.modifiers() != Qt::ShiftModifier)
        return std::nullopt;
    switch (event.key()) {
    case Qt::Key_A:
        return SampleChoice::Accepted;
    case Qt::Key_R:
        return SampleChoice::Rejected;
    case Qt::Key_W:
        return SampleChoice::Repeat;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return SampleChoice::AsRun;
    default:
        return std::nullopt;
    }
}

} // namespace

SampleChoicesTable::SampleChoicesTable(const Theme &theme, SampleChoicesModel *model, QWidget *parent)
    : Table(theme, model, tr("Decisions of single samples"), u"sampleDecisions"_s, parent)
    , m_choices(model)
{
    setItemDelegate(new ChoiceEditor(this));
    setSelectionBehavior(SelectRows);
    setSelectionMode(ExtendedSelection);
    setEditTriggers(DoubleClicked | AnyKeyPressed);
    setFlexibleColumn(SampleChoicesModel::Reason);
    setNameColumn(SampleChoicesModel::Sample);
    setWrap(Wrap::AsNeeded);
    setAccessibleDescription(keysHint() + u' ' + howHint());
}

void SampleChoicesTable::setReasons(const QStringList &forAccepting, const QStringList &forRejecting)
{
    m_acceptanceReasons = forAccepting;
    m_rejectionReasons = forRejecting;
}

QStringList SampleChoicesTable::reasons(SampleChoice choice) const
{
    QStringList offered = choice == SampleChoice::Accepted ? m_acceptanceReasons : m_rejectionReasons;
    if (!m_reasonBefore.isEmpty() && !offered.contains(m_reasonBefore))
        offered.prepend(m_reasonBefore);
    return offered;
}

QString SampleChoicesTable::keysHint()
{
    return tr(
        "A accepts, R rejects, W repeats the chosen samples, Delete leaves them to the run; Enter edits, "
        "Ctrl+A chooses all.");
}

QString SampleChoicesTable::howHint()
{
    return tr("For a repeat, type another dilution (20), its steps (5 to 100) or another sample volume (0.5 mL).");
}

std::vector<int> SampleChoicesTable::chosenRows() const
{
    std::vector<int> rows;
    for (const QModelIndex &index : selectionModel()->selectedRows())
        rows.push_back(index.row());
    // Ctrl and a key that moves lead away from what is chosen: a letter never acts on rows out of sight.
    if (currentIndex().isValid() && std::ranges::find(rows, currentIndex().row()) == rows.end())
        return {currentIndex().row()};
    return rows;
}

void SampleChoicesTable::goToUndecided()
{
    const auto &rows = m_choices->rows();
    const auto first = std::ranges::find(rows, SampleChoice::Undecided, &SampleChoiceRow::choice);
    if (first == rows.end())
        return;
    goTo(static_cast<int>(first - rows.begin()), SampleChoicesModel::Choice);
}

void SampleChoicesTable::goTo(int row, int column)
{
    // Whatever else is held down: the row it goes to is the one that is chosen.
    selectionModel()->setCurrentIndex(m_choices->index(row, column),
                                      QItemSelectionModel::ClearAndSelect | QItemSelectionModel::Rows);
    scrollTo(currentIndex());
}

void SampleChoicesTable::goToSample(const QString &sample)
{
    const auto &rows = m_choices->rows();
    const auto found = std::ranges::find(rows, sample, &SampleChoiceRow::sample);
    const int row = static_cast<int>(found - rows.begin());
    // Before the keys were here nothing is chosen, so that they come to what is undecided first; and several that are
    // chosen are kept for the key they are chosen for.
    if (found == rows.end() || !currentIndex().isValid() || row == currentIndex().row() ||
        chosenRows().size() > 1)
        return;
    goTo(row, currentIndex().column());
}

void SampleChoicesTable::setRowsShown(int most)
{
    const int rows = std::clamp(m_choices->rowCount(), 1, most);
    setFixedHeight(horizontalHeader()->sizeHint().height() + rows * verticalHeader()->defaultSectionSize() +
                   2 * frameWidth());
}

void SampleChoicesTable::choose(SampleChoice choice)
{
    const QModelIndex at = currentIndex();
    const QString before = at.isValid() ? m_choices->row(at.row()).reason : QString();
    for (const int row : chosenRows())
        m_choices->choose(row, choice);
    const bool isAsked = choice == SampleChoice::Rejected || choice == SampleChoice::Repeat;
    if (!isAsked || !at.isValid() || !m_choices->row(at.row()).reason.isEmpty())
        return;
    // A rejection needs its reason, and that of a repeat is often typed: its letters must not decide on anything.
    m_reasonBefore = before;
    selectionModel()->setCurrentIndex(at.siblingAtColumn(SampleChoicesModel::Reason),
                                      QItemSelectionModel::NoUpdate);
    edit(currentIndex());
    m_reasonBefore.clear(); // the editor has it
}

void SampleChoicesTable::commitData(QWidget *editor)
{
    const QModelIndex at = currentIndex();
    const QString howBefore = at.isValid() ? m_choices->row(at.row()).how : QString();
    Table::commitData(editor);
    if (!at.isValid())
        return;
    const SampleChoiceRow current = m_choices->row(at.row());
    const bool isHow = at.column() == SampleChoicesModel::How || current.how != howBefore;
    for (const int row : chosenRows()) {
        const SampleChoiceRow other = m_choices->row(row);
        if (at.column() == SampleChoicesModel::Choice)
            m_choices->choose(row, current.choice);
        else if (isHow && other.choice == SampleChoice::Repeat && other.how.isEmpty())
            m_choices->sayHow(row, current.how);
        else if (isHow)
            continue;
        else if (other.choice == current.choice && other.reason.isEmpty())
            m_choices->giveReason(row, current.reason); // rejected together, for one reason
    }
}

void SampleChoicesTable::closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint)
{
    Table::closeEditor(editor, hint == QAbstractItemDelegate::SubmitModelCache ? QAbstractItemDelegate::NoHint
                                                                               : hint);
    // Back to where letters decide.
    if (isText(currentIndex()))
        selectionModel()->setCurrentIndex(currentIndex().siblingAtColumn(SampleChoicesModel::Choice),
                                          QItemSelectionModel::NoUpdate);
}

bool SampleChoicesTable::isText(const QModelIndex &index) const
{
    return index.isValid() &&
           (index.column() == SampleChoicesModel::Reason || index.column() == SampleChoicesModel::How);
}

bool SampleChoicesTable::beginsHow(const QKeyEvent &event) const
{
    const QModelIndex at = currentIndex();
    return at.isValid() && event.text().size() == 1 && event.text().front().isDigit() &&
           m_choices->row(at.row()).choice == SampleChoice::Repeat;
}

void SampleChoicesTable::keyPressEvent(QKeyEvent *event)
{
    const QModelIndex at = currentIndex();
    const bool inText = isText(at);
    const bool canEdit = at.isValid() && (at.flags() & Qt::ItemIsEditable);
    const bool isLetter = !event->text().isEmpty() && event->text().front().isPrint() &&
                          !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_F2) {
        if (at.isValid() && state() != EditingState) // else the editor has taken it
            edit(canEdit ? at : at.siblingAtColumn(SampleChoicesModel::Choice));
    } else if (inText && canEdit && event->key() == Qt::Key_Delete) {
        model()->setData(at, QString(), Qt::EditRole);
    } else if (inText && canEdit && isLetter) {
        edit(at, AnyKeyPressed, event);
    } else if (isLetter && beginsHow(*event)) {
        selectionModel()->setCurrentIndex(at.siblingAtColumn(SampleChoicesModel::How),
                                          QItemSelectionModel::NoUpdate);
        edit(currentIndex(), AnyKeyPressed, event);
    } else if (const auto choice = inText && canEdit ? std::nullopt : choiceOf(*event)) {
        choose(*choice);
    } else if (isLetter) {
        event->ignore();
    } else if ((event->key() == Qt::Key_Home || event->key() == Qt::Key_End) && m_choices->rowCount() > 0) {
        goTo(event->key() == Qt::Key_Home ? 0 : m_choices->rowCount() - 1, std::max(at.column(), 0));
    } else {
        Table::keyPressEvent(event);
    }
}

void SampleChoicesTable::focusInEvent(QFocusEvent *event)
{
    Table::focusInEvent(event);
    if (currentIndex().isValid() || m_choices->rowCount() == 0)
        return;
    setCurrentIndex(m_choices->index(0, SampleChoicesModel::Choice));
    goToUndecided();
}

} // namespace plateau::ui
