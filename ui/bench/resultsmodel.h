// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/reviewedresult.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

#include <map>

namespace plateau::ui {

class Theme;

/// The results of a run: sample, measurand, value with its uncertainty, number of tubes, spread, verdict;
/// where they are reviewed, dilution and limits as well.
class ResultsModel : public RowsModel<QAbstractTableModel, ReviewedResult>
{
    Q_OBJECT

public:
    enum Column { Sample, Measurand, Value, Coverage, Tubes, Spread, Verdict, Dilution, Limits, ColumnCount };

    explicit ResultsModel(const Theme &theme, QObject *parent = nullptr);
    /// In the evaluation's units.
    void show(const assay::Method &method, const evaluation::Evaluation &evaluation);
    /// In the units of the laboratory, against its limits.
    void show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
              const ReviewBasis &basis);
    /// Whether the results are of more than one quantity, so that each needs its name.
    bool hasSeveralMeasurands() const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void nameMeasurands(const assay::Method &method);
    QString text(const ReviewedResult &reviewed, int column) const;

    const Theme &m_theme;
    /// Measurand names by id.
    std::map<QString, QString> m_names;
};

} // namespace plateau::ui
