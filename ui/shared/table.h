// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/columnwidths.h"

#include <QTableView>
#include <QTimer>

#include <set>
#include <vector>

namespace plateau::ui {

class Theme;
class WrappedHeader;

/// A table to read and choose from. Columns are as wide as they need up to a limit, and as their headings
/// need; what room is left goes to those that are cut, and then to one of them (columnwidths.h). Words that are wider than
/// their column go on on another line where that is asked for (setWrap). What does not fit ends in an ellipsis and is the
/// tool tip, unless the model has one of its own. Tab leaves the table.
class Table : public QTableView
{
    Q_OBJECT

public:
    /// What becomes of words that are wider than their column.
    enum class Wrap {
        Never,
        TwoLines, ///< in every row, whatever it holds: no row is measured, of lists without an end
        AsNeeded  ///< each row is as high as its words need, up to mostLines; beyond mostMeasured rows as TwoLines
    };
    static constexpr int mostLines = 8;
    /// Of a list that is longer the rows are not measured one by one.
    static constexpr int mostMeasured = 300;

    Table(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
          const QString &objectName, QWidget *parent = nullptr);

    void setFlexibleColumn(int column);
    /// Narrowest that the flexible column may be, in characters; 18 if nothing is said.
    void setFlexibleMinimum(int characters);
    /// Widest that a column may be at the cost of another, in characters.
    void setLimit(int characters);
    /// All columns from that one on are of one width, where there is room for the widest of them.
    void setEqualColumns(int from);
    /// What tells the rows apart: cut only where the others cannot give way any more. It stands in one line, or, of a table
    /// with two in every row, in two.
    void setWholeColumn(int column);
    /// Short names beside a long text: in one line where the room is there, before another column gets more than usual.
    void setNameColumn(int column);
    /// It is scrolled sideways rather than that its first column is as narrow as its longest word.
    void setMayBeWider();
    /// Headings go on on another line where their column is narrower, whatever its cells do; setWrap does so by itself.
    void setHeadingsWrap();
    /// Numbers stay in one line, and so does what is short as long as there is room for all columns. No column is narrower
    /// than its longest word.
    void setWrap(Wrap wrap);
    /// Whether it ends in an ellipsis.
    bool isCut(const QModelIndex &index) const;
    /// Measures the columns anew; to be called when their contents changed for good.
    void fit();
    /// The same where a cell in sight is cut that need not be: of a table whose contents change as somebody
    /// types.
    void fitWhereCut();
    /// Where the row is with the heights that the rows are about to get.
    void scrollTo(const QModelIndex &index, ScrollHint hint = EnsureVisible) override;

protected:
    WrappedHeader &wrappedHeader() { return *m_wrappedHeader; }
    void resizeEvent(QResizeEvent *event) override;
    /// Words have other widths in another font.
    void changeEvent(QEvent *event) override;
    bool viewportEvent(QEvent *event) override;
    /// Alt+Down and Alt+Up sort by the column of the current cell, up or down, where a click on its heading does.
    void keyPressEvent(QKeyEvent *event) override;

private:
    void layOutColumns();
    /// For the columns: of the viewport, as a rule.
    int columnRoom();
    void layOutRows();
    void layOutRowsLater();
    void fitWhereWholeIsCut(int first, int last);
    int rowHeightFor(int row) const;
    int linesHigh(int lines) const;
    /// With as many lines as its words need at the width of the column.
    QSize wrappedSize(const QModelIndex &index) const;
    bool wraps(int column) const;
    /// Widths of a column whose words wrap.
    struct Narrow {
        int word = 0;     ///< the longest one, which cannot wrap
        int twoLines = 0; ///< every cell in two lines
    };
    Narrow narrowOf(int column) const;
    /// A cell may have a font of its own.
    QFontMetrics metricsOf(const QModelIndex &index) const;
    /// One that somebody pulled stays so until the next fit().
    void keepWidth(int column, int before, int now);
    ColumnNeed needOf(int column) const;
    bool isText(int column) const;
    int charactersWide(int count) const;

    WrappedHeader *m_wrappedHeader;
    bool m_doHeadingsWrap = false;
    bool m_mayBeWider = false;
    std::set<int> m_whole;
    int m_names = -1;
    int m_flexible = 0;
    int m_flexibleMinimum = 18;
    /// First of those of one width; none as a rule.
    int m_equalFrom = -1;
    int m_limit = 34;
    std::vector<ColumnNeed> m_needs;
    std::vector<Narrow> m_narrow;
    bool m_isLayingOut = false;
    /// For columnRoom(): how wide the table was, whether it had a scroll bar, and how often that left since.
    int m_laidOutWidth = -1;
    bool m_hadScrollBar = false;
    int m_timesBarLeft = 0;
    /// Something else is in the rows than what they were measured with.
    bool m_areRowsStale = true;
    /// The scroll bar does not know yet how high the rows are.
    bool m_isRangeStale = false;
    Wrap m_wrap = Wrap::Never;
    int m_oneLine;
    int m_aroundLines;
    /// Rows that change in one go are measured once.
    QTimer m_rowsLater;
    QTimer m_fitLater;
    /// Rows that got higher do not push the current one out of sight.
    QTimer m_followLater;
};

} // namespace plateau::ui
