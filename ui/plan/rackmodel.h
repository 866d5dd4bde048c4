// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/run/run.h"

#include <QAbstractTableModel>

#include <optional>

namespace plateau::ui {

/// The places of a rack as they are seen from above: row by row, each with its tube or empty. Where there are
/// more tubes than places the rack is drawn longer; that they do not fit is said elsewhere.
class RackModel : public QAbstractTableModel
{
    Q_OBJECT

public:
    /// The role as run::Role in an int; invalid for an empty place.
    enum Role { TubeRole = Qt::UserRole, NumberRole, NameRole };

    using QAbstractTableModel::QAbstractTableModel;

    void setRack(const run::Run &run, int rows, int columns);
    int tubes() const { return static_cast<int>(m_run.tubes.size()); }
    /// The tube that stands there, counted from 0.
    std::optional<int> tubeAt(const QModelIndex &index) const;
    QModelIndex indexOf(int tube) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    QStringList mimeTypes() const override;
    QMimeData *mimeData(const QModelIndexList &indexes) const override;
    Qt::DropActions supportedDropActions() const override { return Qt::MoveAction; }
    bool dropMimeData(const QMimeData *data, Qt::DropAction action, int row, int column,
                      const QModelIndex &parent) override;

Q_SIGNALS:
    /// A tube was dragged; the rack is still as it was.
    void moveWanted(int from, int to);

private:
    run::Run m_run;
    int m_rows = 0;
    int m_columns = 0;
};

} // namespace plateau::ui
