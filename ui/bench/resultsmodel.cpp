// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/resultsmodel.h"

#include "core/evaluation/format.h"
#include "ui/bench/verdicts.h"
#include "ui/shared/theme.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ResultsModel::ResultsModel(const Theme &theme, QObject *parent)
    : ColumnsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void ResultsModel::nameMeasurands(const assay::Method &method)
{
    m_names.clear();
    for (const assay::Measurand &measurand : method.measurands)
        m_names[measurand.id] = measurand.name;
    for (const assay::Derived &derived : method.derived)
        m_names[derived.id] = derived.name;
}

void ResultsModel::show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                        const ReviewBasis &basis)
{
    nameMeasurands(stored.method);
    std::vector<ReviewedResult> fresh;
    for (const evaluation::Result &result : evaluation.results)
        fresh.push_back(reviewed(stored, evaluation, result, basis));
    setRows(std::move(fresh));
}

bool ResultsModel::hasSeveralMeasurands() const
{
    return std::any_of(rows().begin(), rows().end(), [this](const auto &row) {
        return row.result.measurand != rows().front().result.measurand;
    });
}

bool ResultsModel::hasLimits() const
{
    return std::ranges::any_of(rows(), [](const ReviewedResult &row) { return !row.limits.empty(); });
}

QString ResultsModel::text(const ReviewedResult &reviewed, int column) const
{
    const evaluation::Result &result = reviewed.result;
    switch (column) {
    case Sample:
        return result.sample;
    case Measurand: {
        const auto name = m_names.find(result.measurand);
        return name == m_names.end() ? result.measurand : name->second;
    }
    case Value:
        return reviewed.value;
    case Coverage:
        return result.value && result.coverageFactor && !result.greaterThan && !result.lessThan
                   ? QString::number(*result.coverageFactor, 'g', 3)
                   : u"–"_s;
    case Tubes:
        return QString::number(result.n);
    case Spread:
        return reviewed.spread;
    case Dilution:
        return reviewed.dilution;
    case Limits:
        return standingOf(reviewed).text;
    case Verdict:
        return reviewed.verdict.text;
    default:
        return {};
    }
}

bool ResultsModel::isNumber(int column) const
{
    return column == Value || column == Coverage || column == Tubes || column == Spread || column == Dilution;
}

QVariant ResultsModel::look(const ReviewedResult &reviewed, int column, int role) const
{
    if (role == Qt::FontRole && column == Value)
        return m_theme.bold();
    // Its unit stands in the column of the value already; who listens is told it.
    if (role == Qt::AccessibleTextRole && column == Spread && reviewed.result.n > 1 && reviewed.result.value &&
        reviewed.result.spread)
        return evaluation::withUnit(reviewed.spread, reviewed.unit
                                                         ? evaluation::reportUnitWord(*reviewed.unit)
                                                         : reviewed.result.unit);
    if (role != Qt::DecorationRole)
        return {};
    if (column == Verdict)
        return m_theme.icon(reviewed.verdict.state);
    return column == Limits && !reviewed.limits.empty() ? QVariant(m_theme.icon(standingOf(reviewed).state))
                                                        : QVariant();
}

QString ResultsModel::heading(int column) const
{
    switch (column) {
    case Sample:
        return tr("Sample");
    case Measurand:
        return tr("Measurand");
    case Value:
        return tr("Result");
    case Coverage:
        return tr("k", "coverage factor of the uncertainty");
    case Tubes:
        return tr("Tubes");
    case Spread:
        return tr("Spread");
    case Verdict:
        return tr("Verdict");
    case Dilution:
        return tr("Dilution");
    case Limits:
        return tr("Limits");
    default:
        return {};
    }
}

} // namespace plateau::ui
