// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

/// One standard or spike, in words and figures.
struct RecoveryRow {
    QString what;
    QString measurand;
    QString expected;
    QString found;
    QString recovery;
    bool operator==(const RecoveryRow &) const = default;
};

/// What was found of each standard and spike against what was expected. Whether that is enough is said by the
/// checks.
class RecoveriesModel : public RowsModel<QAbstractTableModel, RecoveryRow>
{
    Q_OBJECT

public:
    enum Column { What, Measurand, Expected, Found, Recovery, ColumnCount };

    explicit RecoveriesModel(QObject *parent = nullptr);
    void show(const assay::Method &method, const evaluation::Evaluation &evaluation);
    bool hasSeveralMeasurands() const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
};

} // namespace plateau::ui
