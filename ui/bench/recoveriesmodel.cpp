// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/recoveriesmodel.h"

#include "core/evaluation/format.h"
#include "core/run/controls.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

const QString noFigure = QStringLiteral("–");

std::optional<evaluation::ReportUnit> unitOfAll(const std::vector<RecoveryRow> &rows)
{
    std::optional<evaluation::ReportUnit> common;
    for (const RecoveryRow &row : rows) {
        if (row.expected.isEmpty())
            continue; // of a spike there is the percentage alone
        if (common && *common != row.unit)
            return std::nullopt;
        common = row.unit;
    }
    return common.value_or(evaluation::ReportUnit::GramPerLitre);
}

/// As the record and the checks say it.
QString percentText(const std::optional<double> &percent)
{
    return percent ? QString::number(*percent, 'f', 1) : noFigure;
}

/// With the decimals of what was expected, to be compared at sight.
QString strengthFound(const evaluation::StandardRecovery &standard, double factor)
{
    return standard.found_g_per_L
               ? evaluation::comparedTexts(*standard.found_g_per_L * factor, {},
                                           evaluation::decimalsFor(standard.expected_g_per_L * factor, 4))
                     .front()
               : noFigure;
}

QString nameOf(const assay::Method &method, const QString &measurand)
{
    const assay::Measurand *found = assay::findMeasurand(method, measurand);
    return found ? found->name : measurand;
}

/// "Standard STD"; the name alone where it says so itself, as "Control malic" does.
QString named(const QString &kind, const QString &name)
{
    const QString word = kind.left(kind.indexOf(u" %1"_s));
    return name.startsWith(word, Qt::CaseInsensitive) ? name : kind.arg(name);
}

} // namespace

RecoveriesModel::RecoveriesModel(QObject *parent)
    : ColumnsModel(parent)
{
}

void RecoveriesModel::show(const assay::Method &method, const run::Run &run,
                           const evaluation::Evaluation &evaluation, const UnitsOfRun &units)
{
    std::vector<RecoveryRow> fresh;
    for (const evaluation::StandardRecovery &standard : evaluation.standards) {
        const ShownUnit shown = shownUnit(units, standard.measurand);
        fresh.push_back({named(run::isControl(run, standard.standard) ? tr("Control %1") : tr("Standard %1"),
                               standard.standard),
                         nameOf(method, standard.measurand),
                         evaluation::significantText(standard.expected_g_per_L * shown.factor, 4),
                         strengthFound(standard, shown.factor), percentText(standard.recovery_percent), shown.unit});
    }
    for (const evaluation::SpikeRecovery &spike : evaluation.spikes)
        fresh.push_back({tr("Spike on %1").arg(spike.sample),
                         nameOf(method, spike.measurand),
                         {},
                         {},
                         percentText(spike.recovery_percent)});
    if (const auto common = unitOfAll(fresh); common != m_unit) {
        m_unit = common;
        Q_EMIT headerDataChanged(Qt::Horizontal, Expected, Found);
    }
    setRows(std::move(fresh));
}

bool RecoveriesModel::hasSeveralMeasurands() const
{
    return std::any_of(rows().begin(), rows().end(),
                       [this](const auto &row) { return row.measurand != rows().front().measurand; });
}

QString RecoveriesModel::amount(const RecoveryRow &row, const QString &number) const
{
    const bool isBare = m_unit || number.isEmpty() || number == noFigure;
    return isBare ? number : evaluation::withUnit(number, evaluation::reportUnitWord(row.unit));
}

QString RecoveriesModel::text(const RecoveryRow &recovery, int column) const
{
    switch (column) {
    case What:
        return recovery.what;
    case Measurand:
        return recovery.measurand;
    case Expected:
        return amount(recovery, recovery.expected);
    case Found:
        return amount(recovery, recovery.found);
    case Recovery:
        return recovery.recovery;
    default:
        return {};
    }
}

QString RecoveriesModel::heading(int column) const
{
    switch (column) {
    case What:
        return tr("Standard, control or spike");
    case Measurand:
        return tr("Measurand");
    case Expected:
        return m_unit ? tr("Expected (%1)").arg(evaluation::reportUnitWord(*m_unit)) : tr("Expected");
    case Found:
        return m_unit ? tr("Found (%1)").arg(evaluation::reportUnitWord(*m_unit)) : tr("Found");
    case Recovery:
        return tr("Recovery (%)");
    default:
        return {};
    }
}

} // namespace plateau::ui
