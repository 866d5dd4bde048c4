// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/methodcatalogue.h"
#include "ui/shared/syncrows.h"
#include "ui/shared/theme.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// One content of a method as the list shows it.
struct MethodRow {
    /// Tells it from every other one.
    QString contentHash;
    QString name;
    QString version;
    /// Shape and word of how it stands.
    State shape = State::Info;
    QString state;
    QString origin;
    int runs = 0;
    QString id;
    /// What was changed and why, where somebody saved it with that.
    QString note;
    bool operator==(const MethodRow &) const = default;
};

/// With its standing in the catalogue in a word or two: in use, retired, an earlier version or only kept for
/// its runs.
MethodRow methodRow(const std::vector<notebook::StoredMethod> &catalogue,
                    const notebook::StoredMethod &method);

/// Methods in the order they are given, which is by id, newest first.
class MethodsModel : public RowsModel<QAbstractTableModel, MethodRow>
{
    Q_OBJECT

public:
    enum Column { Name, Version, Standing, Origin, Runs, Id, Note, ColumnCount };

    explicit MethodsModel(const Theme &theme, QObject *parent = nullptr);
    /// id: of one id only; empty for all.
    void setCatalogue(const std::vector<notebook::StoredMethod> &catalogue, const QString &id = {});
    /// -1 if there is none of that content.
    int rowOf(const QString &contentHash) const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
