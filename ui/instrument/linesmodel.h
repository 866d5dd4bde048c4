// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/listener.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

class Theme;

/// Lines of a photometer, each with the absorbance it gives or the sentence why it gives none.
class LinesModel : public RowsModel<QAbstractTableModel, ReceivedLine>
{
    Q_OBJECT

public:
    enum Column { Line, Result, ColumnCount };

    explicit LinesModel(const Theme &theme, QObject *parent = nullptr);
    void setLines(std::vector<ReceivedLine> lines) { setRows(std::move(lines)); }

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
};

/// An absorbance as the tables show it: what was understood, digit for digit.
QString absorbanceText(double absorbance);

} // namespace plateau::ui
