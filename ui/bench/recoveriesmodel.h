// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "ui/bench/unitsofrun.h"
#include "ui/shared/columnsmodel.h"

#include <optional>

namespace plateau::ui {

/// One standard or spike, in words and figures.
struct RecoveryRow {
    QString what;
    QString measurand;
    QString expected;
    QString found;
    QString recovery;
    /// Of what was expected and found.
    evaluation::ReportUnit unit = evaluation::ReportUnit::GramPerLitre;
    bool operator==(const RecoveryRow &) const = default;
};

/// What was found of each standard and spike against what was expected. Whether that is enough is said by the
/// checks.
class RecoveriesModel : public ColumnsModel<RecoveryRow>
{
    Q_OBJECT

public:
    enum Column { What, Measurand, Expected, Found, Recovery, ColumnCount };

    explicit RecoveriesModel(QObject *parent = nullptr);
    void show(const assay::Method &method, const run::Run &run, const evaluation::Evaluation &evaluation,
              const UnitsOfRun &units = {});
    bool hasSeveralMeasurands() const;

protected:
    int columns() const override { return ColumnCount; }
    QString text(const RecoveryRow &row, int column) const override;
    QString heading(int column) const override;
    bool isNumber(int column) const override { return column >= Expected; }

private:
    QString amount(const RecoveryRow &row, const QString &number) const;

    /// Nothing where the rows differ, so that each number says its own.
    std::optional<evaluation::ReportUnit> m_unit = evaluation::ReportUnit::GramPerLitre;
};

} // namespace plateau::ui
