// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/linesmodel.h"

#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"

#include <QLocale>

namespace plateau::ui {

LinesModel::LinesModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

int LinesModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant LinesModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == FigureRole)
        return index.column() == Result;
    const ReceivedLine &line = row(index.row());
    if (role == Qt::DecorationRole && index.column() == Result)
        return m_theme.icon(line.absorbance             ? State::Good
                            : line.refusal.isPassedOver ? State::Pending
                                                        : State::Bad);
    if (role != Qt::DisplayRole)
        return {};
    if (index.column() == Line)
        return line.raw;
    return line.absorbance ? absorbanceText(*line.absorbance) : line.refusal.sentence;
}

QVariant LinesModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return section == Line ? tr("Line") : tr("Absorbance");
}

QString absorbanceText(double absorbance)
{
    return QString::number(absorbance, 'g', QLocale::FloatingPointShortest);
}

} // namespace plateau::ui
