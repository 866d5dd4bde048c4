// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettegrid.h"

#include "ui/bench/pipettecell.h"
#include "ui/bench/pipettemodel.h"
#include "ui/shared/theme.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PipetteGrid::PipetteGrid(const Theme &theme, PipetteModel *model, QWidget *parent)
    : QTableView(parent)
    , m_theme(theme)
    , m_tubes(model)
    , m_cells(new PipetteCell(theme, this))
{
    setModel(model);
    setItemDelegate(m_cells);
    setObjectName(u"pipetteGrid"_s);
    setAccessibleName(tr("Tubes of the rack"));
    setTabKeyNavigation(false);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(SingleSelection);
    setShowGrid(false);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollMode(ScrollPerPixel);
    horizontalHeader()->hide();
    verticalHeader()->hide();
    // Number, two shapes and a volume side by side; a window too narrow for the row scrolls.
    horizontalHeader()->setMinimumSectionSize(fontMetrics().averageCharWidth() * 12);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    connect(model, &QAbstractItemModel::modelReset, this, &PipetteGrid::fitRowsAnew);
    // One key may change what the cells show several times, and every word of them is measured.
    m_refit.setSingleShot(true);
    connect(model, &QAbstractItemModel::dataChanged, &m_refit, qOverload<>(&QTimer::start));
    connect(&m_refit, &QTimer::timeout, this, &PipetteGrid::fitRows);
}

void PipetteGrid::goTo(int tube)
{
    const QModelIndex cell = m_tubes->indexOf(tube);
    if (!cell.isValid())
        return;
    setCurrentIndex(cell);
    scrollTo(cell);
}

int PipetteGrid::currentTube() const
{
    return m_tubes->tubeAt(currentIndex()).value_or(-1);
}

void PipetteGrid::setCalm(bool calm)
{
    if (calm && !m_calm)
        clearSelection();
    else if (!calm && currentIndex().isValid())
        selectionModel()->select(currentIndex(), QItemSelectionModel::ClearAndSelect);
    m_calm = calm;
}

bool PipetteGrid::isMarked() const
{
    return selectionModel()->isSelected(currentIndex());
}

bool PipetteGrid::act(const QString &text)
{
    if (text == " "_L1 || text == "\r"_L1 || text == "\n"_L1)
        Q_EMIT tickWanted();
    else if (text == "+"_L1)
        Q_EMIT rowWanted();
    else if (text == "*"_L1)
        Q_EMIT roundWanted();
    else if (text == "-"_L1 || text == "\b"_L1)
        Q_EMIT undoWanted();
    else if (text == "/"_L1)
        Q_EMIT spoiltWanted();
    else if (text.size() == 1 && u"0123456789.,"_s.contains(text))
        Q_EMIT volumeBegun(text);
    else
        return false;
    return true;
}

void PipetteGrid::keyPressEvent(QKeyEvent *event)
{
    // A key that is held down must not tick tube after tube.
    if (event->isAutoRepeat() && !event->text().isEmpty())
        return;
    const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    if (!plain || !act(event->text()))
        QTableView::keyPressEvent(event);
}

/// What the fullest cell needs. Measured as beside a scroll bar, whether there is one or not: else what fits
/// with one might not without, and it would come and go.
int PipetteGrid::neededRowHeight() const
{
    const int room = maximumViewportSize().width() - verticalScrollBar()->sizeHint().width();
    const int width = std::max(horizontalHeader()->minimumSectionSize(), room / m_tubes->columnCount());
    double needed = 0;
    for (int row = 0; row < m_tubes->rowCount(); ++row) {
        for (int column = 0; column < m_tubes->columnCount(); ++column)
            needed = std::max(needed, m_cells->neededHeight(m_tubes->index(row, column), width, font()));
    }
    return static_cast<int>(std::ceil(needed));
}

/// Rows give way before a tube goes out of sight: first what is empty in them, then the size of their
/// letters. Those stay small then, or they would grow and shrink with every notice above.
void PipetteGrid::fitRows()
{
    if (m_tubes->rowCount() == 0)
        return;
    const int share = viewport()->height() / m_tubes->rowCount();
    int least = neededRowHeight();
    if (least > share && !m_cells->isCompact()) {
        m_cells->setCompact(true);
        if (const int compact = neededRowHeight(); compact <= share)
            least = compact;
        else
            m_cells->setCompact(false); // it scrolls all the same
    }
    // Twice number, name, volume; which of those alike, and two lines more.
    const int most = (QFontMetrics(m_theme.large()).height() * 4 + fontMetrics().height() * 3) * 2;
    verticalHeader()->setDefaultSectionSize(std::clamp(share, least, std::max(least, most)));
}

void PipetteGrid::fitRowsAnew()
{
    m_cells->setCompact(false);
    fitRows();
}

void PipetteGrid::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    if (event->size().width() == event->oldSize().width())
        fitRows();
    else
        fitRowsAnew();
}

void PipetteGrid::currentChanged(const QModelIndex &current, const QModelIndex &previous)
{
    QTableView::currentChanged(current, previous);
    Q_EMIT cursorMoved();
}

} // namespace plateau::ui
