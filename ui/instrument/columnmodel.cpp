// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/columnmodel.h"

#include "ui/instrument/linesmodel.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"

namespace plateau::ui {

using exchange::ColumnRow;

namespace {

State stateOf(ColumnRow::Kind kind)
{
    return kind == ColumnRow::Kind::Reading ? State::Good
           : kind == ColumnRow::Kind::Fault ? State::Bad
                                            : State::Pending;
}

} // namespace

ColumnModel::ColumnModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

int ColumnModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant ColumnModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    if (role == FigureRole)
        return index.column() == Result;
    if (role == Qt::DecorationRole && index.column() == Result)
        return m_theme.icon(stateOf(row(index.row()).kind));
    const ColumnRow &line = row(index.row());
    if (role == Qt::ToolTipRole && index.column() == Result && line.kind == ColumnRow::Kind::Fault)
        return line.sentence;
    if (role == Qt::DisplayRole)
        return text(row(index.row()), index.column());
    return {};
}

QString ColumnModel::text(const ColumnRow &row, int column) const
{
    switch (column) {
    case Line:
        return QString::number(row.line);
    case Raw:
        return exchange::onOneLine(QString(row.raw).replace(u'\t', u' '));
    case Tube:
        return row.tube ? exchange::onOneLine(*row.tube) : QString();
    default:
        break;
    }
    switch (row.kind) {
    case ColumnRow::Kind::Reading:
        return absorbanceText(row.absorbance);
    case ColumnRow::Kind::Fault:
        return tr("not a reading"); // why is a sentence that no column holds; the dialog says it below
    default:
        return row.sentence;
    }
}

QVariant ColumnModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Line:
        return tr("Line");
    case Raw:
        return tr("Text");
    case Tube:
        return tr("Tube");
    default:
        return tr("Absorbance");
    }
}

} // namespace plateau::ui
