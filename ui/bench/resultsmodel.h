// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/reviewedresult.h"
#include "ui/shared/columnsmodel.h"

#include <map>

namespace plateau::ui {

class Theme;

/// The results of a run: sample, measurand, value with its uncertainty, number of tubes, spread, verdict;
/// where they are reviewed, dilution and limits as well.
class ResultsModel : public ColumnsModel<ReviewedResult>
{
    Q_OBJECT

public:
    enum Column { Sample, Measurand, Value, Coverage, Tubes, Spread, Verdict, Dilution, Limits, ColumnCount };

    explicit ResultsModel(const Theme &theme, QObject *parent = nullptr);
    /// In the units of the laboratory, against its limits.
    void show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
              const ReviewBasis &basis);
    /// Whether the results are of more than one quantity, so that each needs its name.
    bool hasSeveralMeasurands() const;
    /// Whether any result is held against a limit.
    bool hasLimits() const;

protected:
    int columns() const override { return ColumnCount; }
    QString text(const ReviewedResult &row, int column) const override;
    QString heading(int column) const override;
    bool isNumber(int column) const override;
    QVariant look(const ReviewedResult &row, int column, int role) const override;

private:
    void nameMeasurands(const assay::Method &method);

    const Theme &m_theme;
    /// Measurand names by id.
    std::map<QString, QString> m_names;
};

} // namespace plateau::ui
