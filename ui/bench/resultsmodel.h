// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

#include <map>

namespace plateau::ui {

class Theme;

/// The results of a run: sample, measurand, value with its uncertainty, number of tubes, spread, verdict.
class ResultsModel : public RowsModel<QAbstractTableModel, evaluation::Result>
{
    Q_OBJECT

public:
    enum Column { Sample, Measurand, Value, Coverage, Tubes, Spread, Verdict, ColumnCount };

    explicit ResultsModel(const Theme &theme, QObject *parent = nullptr);
    void show(const assay::Method &method, const evaluation::Evaluation &evaluation);
    /// Whether the results are of more than one quantity, so that each needs its name.
    bool hasSeveralMeasurands() const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString text(const evaluation::Result &result, int column) const;

    const Theme &m_theme;
    /// Measurand names by id.
    std::map<QString, QString> m_names;
};

} // namespace plateau::ui
