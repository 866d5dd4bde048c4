// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/rackgrid.h"

#include "ui/bench/pipettecell.h"
#include "ui/plan/rackmodel.h"
#include "ui/shared/theme.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// A tube from above with its number in it and its name below. Each role has its own outline and filling.
class PlaceDelegate : public QStyledItemDelegate
{
public:
    PlaceDelegate(const Theme &theme, QObject *parent)
        : QStyledItemDelegate(parent)
        , m_theme(theme)
    {
    }

    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override
    {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRectF cell = option.rect;
        if (option.state & QStyle::State_Selected)
            painter->fillRect(cell, m_theme.tint(State::Info));
        const double line = option.fontMetrics.height();
        const bool named = cell.height() >= 2.6 * line && cell.width() >= 3 * line;
        const int lines = cell.height() >= 5 * line ? 2 : 1; // the same of all, for circles of one size
        const double side = std::min(cell.height() - (named ? (lines + 0.3) * line : 6), cell.width() - 6);
        const QRectF ring(cell.center().x() - side / 2, cell.top() + 3, side, side);
        const QVariant role = index.data(RackModel::TubeRole);
        if (role.isValid()) {
            paintTube(*painter, ring, static_cast<run::Role>(role.toInt()));
            painter->setPen(m_theme.text());
            painter->drawText(ring, Qt::AlignCenter, index.data(RackModel::NumberRole).toString());
            if (named) {
                const QRectF below(cell.left() + 2, ring.bottom(), cell.width() - 4,
                                   cell.bottom() - ring.bottom());
                const QString name = index.data(RackModel::NameRole).toString();
                painter->drawText(below, Qt::AlignHCenter | (lines == 2 ? Qt::AlignTop : Qt::AlignVCenter),
                                  lines == 2 ? inTwoLines(name, option.fontMetrics, below.width()).lines.join(u'\n')
                                             : option.fontMetrics.elidedText(name, Qt::ElideMiddle,
                                                                             static_cast<int>(below.width())));
            }
        } else {
            QPen pen(m_theme.mutedText(), 1, Qt::DotLine);
            painter->setPen(pen);
            painter->drawEllipse(ring.adjusted(side / 5, side / 5, -side / 5, -side / 5));
        }
        if (option.state & QStyle::State_HasFocus) {
            painter->setPen(QPen(m_theme.colour(State::Info), 2));
            painter->setBrush(Qt::NoBrush);
            painter->drawRect(cell.adjusted(1, 1, -1, -1));
        }
        painter->restore();
    }

private:
    void paintTube(QPainter &painter, const QRectF &ring, run::Role role) const
    {
        painter.setPen(QPen(m_theme.text(), 1.5));
        painter.setBrush(m_theme.base());
        switch (role) {
        case run::Role::Blank:
            painter.drawEllipse(ring);
            break;
        case run::Role::SampleBlank:
            painter.drawEllipse(ring);
            painter.setBrush(m_theme.part(2));
            painter.drawChord(ring, 180 * 16, 180 * 16);
            break;
        case run::Role::Standard:
            painter.setBrush(m_theme.part(3));
            painter.drawRect(ring.adjusted(2, 2, -2, -2));
            break;
        case run::Role::Control:
            painter.setBrush(m_theme.part(3));
            painter.drawPolygon(QPolygonF(
                {QPointF(ring.center().x(), ring.top()), QPointF(ring.right(), ring.center().y()),
                 QPointF(ring.center().x(), ring.bottom()), QPointF(ring.left(), ring.center().y())}));
            break;
        case run::Role::Sample:
            painter.setBrush(m_theme.part(2));
            painter.drawEllipse(ring);
            break;
        case run::Role::Spiked:
            painter.setBrush(m_theme.part(2));
            painter.drawEllipse(ring);
            painter.setBrush(m_theme.part(3));
            painter.drawPie(ring, 45 * 16, 90 * 16);
            break;
        }
    }

    const Theme &m_theme;
};

} // namespace

RackGrid::RackGrid(const Theme &theme, RackModel *model, QWidget *parent)
    : QTableView(parent)
    , m_theme(theme)
    , m_model(model)
{
    setModel(model);
    setObjectName(u"rackGrid"_s);
    setAccessibleName(tr("Rack from above"));
    setItemDelegate(new PlaceDelegate(theme, this));
    horizontalHeader()->hide();
    verticalHeader()->hide();
    setShowGrid(false);
    setTabKeyNavigation(false);
    setEditTriggers(NoEditTriggers);
    setSelectionMode(SingleSelection);
    setDragDropMode(InternalMove);
    setDragDropOverwriteMode(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    horizontalHeader()->setMinimumSectionSize(8);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    connect(model, &RackModel::moveWanted, this, &RackGrid::moveWanted);
    connect(model, &QAbstractItemModel::modelReset, this, &RackGrid::layOutPlaces);
}

void RackGrid::layOutPlaces()
{
    const int rows = std::max(m_model->rowCount(), 1);
    const int least = fontMetrics().height() + 12;
    const int most = fontMetrics().height() * 6;
    verticalHeader()->setDefaultSectionSize(std::clamp(viewport()->height() / rows, least, most));
}

void RackGrid::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    layOutPlaces();
}

QSize RackGrid::sizeHint() const
{
    return {fontMetrics().averageCharWidth() * 50, fontMetrics().height() * 16};
}

QSize RackGrid::minimumSizeHint() const
{
    return {fontMetrics().averageCharWidth() * 24, fontMetrics().height() * 5};
}

void RackGrid::keyPressEvent(QKeyEvent *event)
{
    const std::optional<int> from = m_model->tubeAt(currentIndex());
    int step = 0;
    if (event->modifiers() == Qt::ControlModifier) {
        if (event->key() == Qt::Key_Left)
            step = -1;
        else if (event->key() == Qt::Key_Right)
            step = 1;
        else if (event->key() == Qt::Key_Up)
            step = -m_model->columnCount();
        else if (event->key() == Qt::Key_Down)
            step = m_model->columnCount();
    }
    if (step == 0) {
        QTableView::keyPressEvent(event);
        return;
    }
    if (!from)
        return;
    const int to = std::clamp(*from + step, 0, m_model->tubes() - 1);
    if (to == *from)
        return;
    Q_EMIT moveWanted(*from, to);
    setCurrentIndex(m_model->indexOf(to));
}

} // namespace plateau::ui
