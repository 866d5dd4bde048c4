// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/pipettestepsmodel.h"

#include "ui/bench/volumewords.h"
#include "ui/shared/theme.h"

#include <QPixmap>

namespace plateau::ui {

PipetteStepsModel::PipetteStepsModel(const Theme &theme, QObject *parent)
    : ShownCells(parent)
    , m_theme(theme)
{
    QPixmap empty(96, 96);
    empty.fill(Qt::transparent);
    m_noShape = QIcon(empty);
    connect(&theme, &Theme::changed, this, &PipetteStepsModel::touch);
}

void PipetteStepsModel::show(const PipetteSheet &sheet, int shown, int dilution)
{
    const bool same = sheet.steps() == m_sheet.steps();
    if (!same)
        beginResetModel();
    m_sheet = sheet;
    m_shown = shown;
    m_dilution = dilution;
    if (same)
        touch();
    else
        endResetModel();
}

void PipetteStepsModel::touch()
{
    if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

int PipetteStepsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_sheet.steps().size());
}

int PipetteStepsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : columns;
}

QString PipetteStepsModel::text(int row, int column) const
{
    const SheetStep &own = step(row);
    switch (column) {
    case Step:
        return own.words;
    case Volume:
        return own.round < 0 ? QString() : volumeWords(m_sheet.round(own.round).usualVolume_mL);
    case Tubes:
        if (const StepCount count = m_sheet.countOf(row);
            own.kind == SheetStep::Kind::Add || own.kind == SheetStep::Kind::Read)
            return tr("%1 of %2").arg(count.done).arg(count.planned);
        return {};
    default:
        return {};
    }
}

QVariant PipetteStepsModel::shape(int row) const
{
    const SheetStep &own = step(row);
    if (own.kind == SheetStep::Kind::Mix || own.kind == SheetStep::Kind::Wait)
        return m_noShape;
    const StepCount count = m_sheet.countOf(row);
    return m_theme.icon(count.done == count.planned ? State::Good : State::Pending);
}

QVariant PipetteStepsModel::spoken(int row) const
{
    const SheetStep &own = step(row);
    if (own.kind != SheetStep::Kind::Dilute)
        return {};
    switch (m_sheet.dilutionState(own.dilution)) {
    case PipetteSheet::State::Ticked:
        return tr("%1, ticked", "a dilution").arg(own.words);
    case PipetteSheet::State::Passed:
        return tr("%1, not ticked, but pipetted since", "a dilution").arg(own.words);
    default:
        return tr("%1, not ticked", "a dilution").arg(own.words);
    }
}

QVariant PipetteStepsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const bool onShow = index.row() == m_dilution || (m_shown >= 0 && step(index.row()).round == m_shown);
    switch (role) {
    case Qt::DisplayRole:
        return text(index.row(), index.column());
    case Qt::AccessibleTextRole:
        return index.column() == Step ? spoken(index.row()) : QVariant();
    case Qt::DecorationRole:
        return index.column() == Step ? shape(index.row()) : QVariant();
    case Qt::FontRole:
        return onShow ? QVariant(m_theme.bold()) : QVariant();
    case Qt::BackgroundRole:
        return onShow ? QVariant(m_theme.tint(State::Info)) : QVariant();
    case Qt::TextAlignmentRole:
        return index.column() == Step ? QVariant::fromValue(Qt::AlignLeft | Qt::AlignVCenter)
                                      : QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant PipetteStepsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columns)
        return {};
    if (role == Qt::TextAlignmentRole && section != Step)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    return section == Step ? tr("Step") : section == Volume ? tr("Volume") : tr("Tubes");
}

} // namespace plateau::ui
