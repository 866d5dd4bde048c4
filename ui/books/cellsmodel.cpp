// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/cellsmodel.h"

#include "core/exchange/decimal.h"
#include "ui/shared/theme.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// No id can begin with it: control characters are refused in ids.
const QChar newKeyMark = u'\u0001';

bool isNoNumber(const QString &text)
{
    return !text.trimmed().isEmpty() && !std::holds_alternative<double>(exchange::parseDecimal(text));
}

} // namespace

bool isNewKey(const QString &key)
{
    return key.startsWith(newKeyMark);
}

CellsModel::CellsModel(const Theme &theme, std::vector<CellColumn> columns, bool grows, QObject *parent)
    : QAbstractTableModel(parent)
    , m_theme(theme)
    , m_columns(std::move(columns))
    , m_grows(grows)
{
    connect(&theme, &Theme::changed, this, &CellsModel::touch);
}

void CellsModel::reset(std::vector<CellRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    m_facts.clear();
    endResetModel();
}

void CellsModel::setRows(std::vector<CellRow> rows, bool grows)
{
    m_before.clear();
    beginResetModel();
    m_grows = grows;
    m_rows = std::move(rows);
    m_facts.clear();
    endResetModel();
}

void CellsModel::replaceRows(std::vector<CellRow> rows)
{
    remember();
    reset(std::move(rows));
    Q_EMIT edited();
}

void CellsModel::remember()
{
    constexpr std::size_t most = 100;
    if (m_before.size() == most)
        m_before.erase(m_before.begin());
    m_before.push_back(m_rows);
}

bool CellsModel::undo()
{
    if (m_before.empty())
        return false;
    std::vector<CellRow> rows = std::move(m_before.back());
    m_before.pop_back();
    reset(std::move(rows));
    Q_EMIT edited();
    return true;
}

CellRow CellsModel::blankRow() const
{
    return {newKeyMark + QString::number(++m_madeKeys), std::vector<QString>(m_columns.size())};
}

void CellsModel::insertRowAt(int row, CellRow content)
{
    const int at = std::clamp(row, 0, static_cast<int>(m_rows.size()));
    remember();
    beginInsertRows({}, at, at);
    m_rows.insert(m_rows.begin() + at, std::move(content));
    endInsertRows();
    Q_EMIT edited();
}

void CellsModel::removeRowAt(int row)
{
    if (row < 0 || isOpenRow(row))
        return;
    remember();
    beginRemoveRows({}, row, row);
    m_rows.erase(m_rows.begin() + row);
    endRemoveRows();
    Q_EMIT edited();
}

bool CellsModel::moveRowTo(int from, int to)
{
    const int last = static_cast<int>(m_rows.size()) - 1;
    if (from == to || from < 0 || to < 0 || from > last || to > last)
        return false;
    remember();
    beginMoveRows({}, from, from, {}, to > from ? to + 1 : to);
    const auto first = m_rows.begin();
    if (from < to)
        std::rotate(first + from, first + from + 1, first + to + 1);
    else
        std::rotate(first + to, first + from, first + from + 1);
    endMoveRows();
    Q_EMIT edited();
    return true;
}

void CellsModel::setConsequence(std::function<void(std::vector<CellRow> &, int, int)> follow)
{
    m_follow = std::move(follow);
}

void CellsModel::setFacts(int column, std::vector<QString> facts)
{
    if (m_facts[column] == facts)
        return;
    m_facts[column] = std::move(facts);
    if (!m_rows.empty())
        Q_EMIT dataChanged(index(0, column), index(static_cast<int>(m_rows.size()) - 1, column),
                           {Qt::DisplayRole});
}

void CellsModel::touch()
{
    if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

int CellsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size()) + (m_grows ? 1 : 0);
}

int CellsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

bool CellsModel::applies(int row, const CellColumn &column) const
{
    if (column.kind == CellColumn::Kind::Fact)
        return false;
    return isOpenRow(row) || !column.applies || column.applies(m_rows[static_cast<std::size_t>(row)]);
}

QString CellsModel::shown(int row, int column) const
{
    const CellColumn &own = m_columns[static_cast<std::size_t>(column)];
    if (own.kind == CellColumn::Kind::Fact) {
        const auto facts = m_facts.find(column);
        const auto at = static_cast<std::size_t>(row);
        return facts != m_facts.end() && at < facts->second.size() ? facts->second[at] : QString();
    }
    const CellRow &content = m_rows[static_cast<std::size_t>(row)];
    const QString &value = content.cells[static_cast<std::size_t>(column)];
    if (own.kind == CellColumn::Kind::Choice) {
        for (const CellChoice &choice : own.choices(content)) {
            if (choice.value == value)
                return choice.words;
        }
        return isNewKey(value) ? QString() : value;
    }
    return value;
}

bool CellsModel::isFigures(int at) const
{
    const CellColumn::Kind kind = column(at).kind;
    return kind == CellColumn::Kind::Number || (kind == CellColumn::Kind::Fact && at > 0);
}

QVariant CellsModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const CellColumn &own = column(index.column());
    if (isOpenRow(index.row())) {
        if (role == Qt::DisplayRole || role == Qt::EditRole)
            return QString();
        return role == Qt::AccessibleTextRole ? QVariant(tr("new row")) : QVariant();
    }
    if (role == Qt::TextAlignmentRole && isFigures(index.column()))
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    const QString &value =
        m_rows[static_cast<std::size_t>(index.row())].cells[static_cast<std::size_t>(index.column())];
    if (role == Qt::CheckStateRole && own.kind == CellColumn::Kind::Tick)
        return value.isEmpty() ? Qt::Unchecked : Qt::Checked;
    if (own.kind == CellColumn::Kind::Tick)
        return role == Qt::DisplayRole ? QVariant(value.isEmpty() ? tr("no") : tr("yes")) : QVariant();
    if (role == Qt::DisplayRole)
        return shown(index.row(), index.column());
    if (role == Qt::EditRole)
        return value;
    if (role == Qt::DecorationRole && own.kind == CellColumn::Kind::Number && isNoNumber(value))
        return m_theme.icon(State::Bad);
    // What names the row is not one fact more about it.
    if (role == Qt::ForegroundRole && own.kind == CellColumn::Kind::Fact && index.column() > 0)
        return m_theme.mutedText();
    return {};
}

bool CellsModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid() || !applies(index.row(), column(index.column())))
        return false;
    const bool tick = column(index.column()).kind == CellColumn::Kind::Tick;
    if (role != (tick ? Qt::CheckStateRole : Qt::EditRole))
        return false;
    const QString text = tick ? (value.toInt() == Qt::Checked ? u"1"_s : QString()) : value.toString();
    const bool opened = isOpenRow(index.row());
    if (opened) {
        if (text.trimmed().isEmpty())
            return false;
        remember();
        // The open row becomes a row and another one opens below, so that the cursor stays where it is.
        beginInsertRows({}, index.row() + 1, index.row() + 1);
        m_rows.push_back(newRow());
        endInsertRows();
    }
    const auto row = static_cast<std::size_t>(index.row());
    const auto column = static_cast<std::size_t>(index.column());
    if (m_rows[row].cells[column] == text)
        return true;
    if (!opened)
        remember();
    m_rows[row].cells[column] = text;
    if (m_follow)
        m_follow(m_rows, index.row(), index.column());
    touch();
    Q_EMIT edited();
    return true;
}

Qt::ItemFlags CellsModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::ItemIsDropEnabled; // between the rows
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (!isOpenRow(index.row()))
        flags |= Qt::ItemIsDragEnabled;
    const CellColumn &own = column(index.column());
    if (!applies(index.row(), own))
        return flags;
    if (own.kind != CellColumn::Kind::Tick)
        return flags | Qt::ItemIsEditable;
    return isOpenRow(index.row()) ? flags : flags | Qt::ItemIsUserCheckable;
}

QVariant CellsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    const CellColumn &own = column(section);
    if (role == Qt::DisplayRole)
        return own.title;
    if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole)
        return own.fullTitle.isEmpty() ? own.title : own.fullTitle;
    if (role == Qt::TextAlignmentRole && isFigures(section))
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

} // namespace plateau::ui
