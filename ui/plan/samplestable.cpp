// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/samplestable.h"

#include "ui/bench/samplesmodel.h"
#include "ui/plan/samplecelldelegate.h"
#include "ui/shared/scrolledpage.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

SamplesTable::SamplesTable(const Theme &theme, SamplesModel *model, QWidget *parent)
    : SidewaysTable(theme, model, tr("What is planned for each sample"), u"samples"_s, parent)
{
    setItemDelegate(new SampleCellDelegate(theme, this));
    setWrap(Wrap::AsNeeded);
    m_heightLater.setSingleShot(true);
    m_heightLater.setInterval(0);
    connect(&m_heightLater, &QTimer::timeout, this, &SamplesTable::fitHeight);
    const auto later = qOverload<>(&QTimer::start);
    connect(verticalHeader(), &QHeaderView::sectionCountChanged, &m_heightLater, later);
    connect(verticalHeader(), &QHeaderView::sectionResized, &m_heightLater, later);
    connect(horizontalHeader(), &QHeaderView::geometriesChanged, &m_heightLater, later);
    connect(horizontalHeader(), &QHeaderView::sectionResized, &m_heightLater, later); // headings take other lines
    fitHeight();
    setEditTriggers(AnyKeyPressed | EditKeyPressed | DoubleClicked);
}

void SamplesTable::fitHeight()
{
    constexpr int fewest = 3;
    constexpr int most = 12;
    int height = horizontalHeader()->sizeHint().height() + horizontalScrollBar()->sizeHint().height() + 2 * frameWidth();
    for (int row = 0; row < std::min(model()->rowCount(), most); ++row)
        height += rowHeight(row);
    height += std::max(fewest - model()->rowCount(), 0) * verticalHeader()->defaultSectionSize();
    if (height != minimumHeight() || height != maximumHeight())
        setFixedHeight(height);
}

void SamplesTable::keyPressEvent(QKeyEvent *event)
{
    if (event->matches(QKeySequence::Paste))
        paste();
    else
        SidewaysTable::keyPressEvent(event);
}

void SamplesTable::paste()
{
    const QModelIndex from = currentIndex();
    if (!from.isValid())
        return;
    QString text = QApplication::clipboard()->text();
    while (text.endsWith(u'\n'))
        text.chop(1);
    int row = from.row();
    for (const QString &line : text.split(u'\n')) {
        int column = from.column();
        for (const QString &cell : line.split(u'\t')) {
            const QModelIndex at = model()->index(row, column++);
            const auto editor = static_cast<SamplesModel::Editor>(at.data(SamplesModel::EditorRole).toInt());
            // Names come from the list above, and a matrix is chosen.
            if (at.isValid() &&
                (editor == SamplesModel::Editor::Number || editor == SamplesModel::Editor::Text ||
                 editor == SamplesModel::Editor::Product))
                model()->setData(at, cell.trimmed(), Qt::EditRole);
        }
        ++row;
    }
}

bool SamplesTable::isKeyed(int column) const
{
    using Editor = SamplesModel::Editor;
    const auto editor =
        static_cast<Editor>(model()->index(0, column).data(SamplesModel::EditorRole).toInt());
    return editor == Editor::Number && !isColumnHidden(column);
}

/// From one number to be keyed to the next, row after row: what is not a number is typed far less often, and the keys
/// lead there.
QModelIndex SamplesTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers)
{
    if ((action != MoveNext && action != MovePrevious) || !currentIndex().isValid())
        return SidewaysTable::moveCursor(action, modifiers);
    const int by = action == MoveNext ? 1 : -1;
    const int columns = model()->columnCount();
    int place = currentIndex().row() * columns + currentIndex().column() + by;
    for (; place >= 0 && place < model()->rowCount() * columns; place += by) {
        if (isKeyed(place % columns))
            return model()->index(place / columns, place % columns);
    }
    return {};
}

void SamplesTable::focusInEvent(QFocusEvent *event)
{
    SidewaysTable::focusInEvent(event);
    // After the form has brought the table into view as a whole.
    QMetaObject::invokeMethod(this, &SamplesTable::showCurrent, Qt::QueuedConnection);
    // Nothing is keyed in the column of the names.
    if (model()->rowCount() == 0 || currentIndex().column() > 0)
        return;
    const int row = std::max(0, currentIndex().row());
    for (int column = 1; column < model()->columnCount(); ++column) {
        if (isKeyed(column)) {
            setCurrentIndex(model()->index(row, column));
            return;
        }
    }
}

/// The table scrolls its rows, but may itself lie half below the edge of the form. What is clicked on is seen, and must not
/// move away below the pointer.
void SamplesTable::currentChanged(const QModelIndex &current, const QModelIndex &previous)
{
    SidewaysTable::currentChanged(current, previous);
    const QWidget *focus = QApplication::focusWidget();
    if (focus && (focus == this || isAncestorOf(focus)))
        showCurrent();
}

void SamplesTable::showCurrent()
{
    if (!currentIndex().isValid() || QApplication::mouseButtons() != Qt::NoButton)
        return;
    scrollTo(currentIndex());
    bringIntoView(*viewport(), visualRect(currentIndex()));
}

void SamplesTable::closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint)
{
    const bool on = hint == QAbstractItemDelegate::SubmitModelCache;
    SidewaysTable::closeEditor(editor, on ? QAbstractItemDelegate::NoHint : hint);
    if (on)
        goDown();
}

void SamplesTable::goDown()
{
    const QModelIndex below = model()->index(currentIndex().row() + 1, currentIndex().column());
    if (below.isValid())
        setCurrentIndex(below);
}

} // namespace plateau::ui
