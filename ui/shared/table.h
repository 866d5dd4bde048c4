// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QTableView>

namespace plateau::ui {

class Theme;

/// A table to read and choose from. Columns are as wide as they need up to a limit, and as their headings
/// need; one of them takes what room is left. What does not fit ends in an ellipsis and is the tool tip. Tab
/// leaves the table.
class Table : public QTableView
{
    Q_OBJECT

public:
    Table(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
          const QString &objectName, QWidget *parent = nullptr);

    void setFlexibleColumn(int column);
    /// Narrowest that the flexible column may be, in characters; 18 if nothing is said.
    void setFlexibleMinimum(int characters);
    /// Widest that another column may be, in characters.
    void setLimit(int characters);
    /// Measures the columns anew; to be called when their contents changed for good.
    void fit();
    /// The same where a cell in sight is cut that need not be: of a table whose contents change as somebody
    /// types.
    void fitWhereCut();

protected:
    void resizeEvent(QResizeEvent *event) override;
    bool viewportEvent(QEvent *event) override;

private:
    void flex();
    int charactersWide(int count) const;

    int m_flexible = 0;
    int m_flexibleMinimum = 18;
    int m_limit = 34;
};

} // namespace plateau::ui
