// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QAbstractTableModel>
#include <QString>

#include <functional>
#include <map>
#include <vector>

namespace plateau::ui {

class Theme;

/// One row of a table that is filled in: texts as typed, so that nothing typed is lost. A choice is its
/// value, a tick "1" or empty.
struct CellRow {
    /// Stays with the row while it is renamed or moved; what other tables refer to.
    QString key;
    std::vector<QString> cells;
    bool operator==(const CellRow &) const = default;
};

struct CellChoice {
    QString value;
    QString words;
};

struct CellColumn {
    /// Fact: not keyed but said (see CellsModel::setFacts).
    enum class Kind { Text, Number, Choice, Tick, Fact };
    QString title;
    Kind kind = Kind::Text;
    std::function<std::vector<CellChoice>(const CellRow &)> choices = {};
    /// Absent: the cell means something in every row.
    std::function<bool(const CellRow &)> applies = {};
    /// The title in full, where it is cut short.
    QString fullTitle = {};
    /// How wide the open row asks it to be, in characters: what is going to be keyed needs more than the heading.
    int keyedCharacters = 0;
};

/// A table of texts whose rows are added, removed and moved. A growing one ends in an open row: what is keyed
/// there makes a row of it.
class CellsModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    CellsModel(const Theme &theme, std::vector<CellColumn> columns, bool grows, QObject *parent = nullptr);

    /// Another set of rows altogether, with nothing to go back to; no edited().
    void setRows(std::vector<CellRow> rows) { setRows(std::move(rows), m_grows); }
    /// From then on with an open row at its end, or without.
    void setRows(std::vector<CellRow> rows, bool grows);
    const std::vector<CellRow> &rows() const { return m_rows; }
    const CellColumn &column(int column) const { return m_columns[static_cast<std::size_t>(column)]; }
    bool isOpenRow(int row) const { return row >= static_cast<int>(m_rows.size()); }

    /// A blank row with a key of its own.
    CellRow blankRow() const;
    /// What a new row holds; blank otherwise.
    void setTemplate(std::function<CellRow()> make) { m_make = std::move(make); }
    CellRow newRow() const { return m_make ? m_make() : blankRow(); }
    /// Other rows in place of those there are; undo() brings them back.
    void replaceRows(std::vector<CellRow> rows);
    /// The rows as they were before the last change; false if there was none.
    bool undo();
    void insertRowAt(int row, CellRow content);
    void removeRowAt(int row);
    /// The row comes to stand at that index; false if it cannot.
    bool moveRowTo(int from, int to);
    /// Called after a cell was keyed, before anyone is told: other rows may follow.
    void setConsequence(std::function<void(std::vector<CellRow> &, int, int)> follow);
    /// What a Fact column says, row by row.
    void setFacts(int column, std::vector<QString> facts);
    /// The cells' words may have changed: what a choice stands for comes from elsewhere.
    void touch();

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::DropActions supportedDropActions() const override { return Qt::MoveAction; }

Q_SIGNALS:
    /// Something was keyed, added, removed or moved.
    void edited();

private:
    /// They stand to the right, and so does their heading.
    bool isFigures(int at) const;
    void remember();
    void reset(std::vector<CellRow> rows);
    bool applies(int row, const CellColumn &column) const;
    QString shown(int row, int column) const;

    const Theme &m_theme;
    std::vector<CellColumn> m_columns;
    bool m_grows;
    std::vector<CellRow> m_rows;
    std::vector<std::vector<CellRow>> m_before;
    std::map<int, std::vector<QString>> m_facts;
    std::function<CellRow()> m_make;
    std::function<void(std::vector<CellRow> &, int, int)> m_follow;
    mutable int m_madeKeys = 0;
};

/// Whether the key is of a row that was made here and has no id yet.
bool isNewKey(const QString &key);

} // namespace plateau::ui
