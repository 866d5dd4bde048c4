// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/columnwidths.h"

#include <QTableView>

#include <set>
#include <vector>

namespace plateau::ui {

class Theme;

/// A table to read and choose from. Columns are as wide as they need up to a limit, and as their headings
/// need; what room is left goes to those that are cut, and then to one of them (columnwidths.h). What does not fit ends in
/// an ellipsis and is the tool tip, unless the model has one of its own. Tab leaves the table.
class Table : public QTableView
{
    Q_OBJECT

public:
    Table(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
          const QString &objectName, QWidget *parent = nullptr);

    void setFlexibleColumn(int column);
    /// Narrowest that the flexible column may be, in characters; 18 if nothing is said.
    void setFlexibleMinimum(int characters);
    /// Widest that a column may be at the cost of another, in characters.
    void setLimit(int characters);
    /// What tells the rows apart: cut only where the others cannot give way any more.
    void setWholeColumn(int column);
    /// Words go on on another line, and every row is as high as its words need; then a column of text may be as narrow as
    /// its longest word.
    void setWrapped();
    /// Measures the columns anew; to be called when their contents changed for good.
    void fit();
    /// The same where a cell in sight is cut that need not be: of a table whose contents change as somebody
    /// types.
    void fitWhereCut();

protected:
    void resizeEvent(QResizeEvent *event) override;
    bool viewportEvent(QEvent *event) override;
    /// Alt+Down and Alt+Up sort by the column of the current cell, up or down, where a click on its heading does.
    void keyPressEvent(QKeyEvent *event) override;

private:
    void layOutColumns();
    /// One that somebody pulled stays so until the next fit().
    void keepWidth(int column, int before, int now);
    ColumnNeed needOf(int column) const;
    bool isText(int column) const;
    int longestWord(int column) const;
    void fitRows();
    int charactersWide(int count) const;

    std::set<int> m_whole;
    int m_flexible = 0;
    int m_flexibleMinimum = 18;
    int m_limit = 34;
    bool m_isWrapped = false;
    std::vector<ColumnNeed> m_needs;
    bool m_isLayingOut = false;
};

} // namespace plateau::ui
