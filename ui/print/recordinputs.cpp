// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/format.h"
#include "ui/print/recordparts.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using planning::OwnedInput;
using planning::UncertaintyInput;

namespace {

struct RecordinputsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RunRecord)
};

using Fit = TableColumn::Fit;

/// One uncertainty as the run states it.
struct Stated {
    UncertaintyInput input;
    QString name;
    double value = 0;
    QString unit;
};

std::vector<Stated> statedIn(const run::Run &run)
{
    using enum UncertaintyInput;
    const run::UncertaintyInputs &inputs = *run.uncertainty;
    const QString percent = RecordinputsWords::tr("% of it");
    return {{Absorbance, RecordinputsWords::tr("each absorbance"), inputs.absorbance,
             RecordinputsWords::tr("absorbance")},
            {Absorptivity, RecordinputsWords::tr("absorptivity"), inputs.absorptivity_percent, percent},
            {PathLength, RecordinputsWords::tr("path length"), inputs.pathLength_percent, percent},
            {TotalVolume, RecordinputsWords::tr("total volume"), inputs.totalVolume_percent, percent},
            {SampleVolume, RecordinputsWords::tr("sample volume"), inputs.sampleVolume_percent, percent},
            {Dilution, RecordinputsWords::tr("each dilution step, unless it has its own"),
             inputs.dilution_percent, percent},
            {Extract, RecordinputsWords::tr("extract"), inputs.extract_percent, percent}};
}

/// What the laboratory has on record counts as the source only where the run states exactly that: its records
/// may be younger than the run.
QStringList ownerCells(const RecordPart &part, const Stated &stated)
{
    const auto owned = std::ranges::find(part.inputs, stated.input, &OwnedInput::input);
    if (owned == part.inputs.end() || !owned->isKnown)
        return {RecordinputsWords::tr("the run"),
                RecordinputsWords::tr("its file does not say where it comes from")};
    if (owned->value == stated.value)
        return {owned->owner, owned->source};
    return {RecordinputsWords::tr("the run"),
            owned->value ? RecordinputsWords::tr("stated with it; the laboratory has %1 now, from %2 (%3)")
                               .arg(part.local(evaluation::roundedText(*owned->value, 4)), owned->owner, owned->source)
                         : RecordinputsWords::tr("stated with it")};
}

void addStandards(PrintedTable &table, const RecordPart &part)
{
    if (part.run.calibration == run::Calibration::Absorptivity)
        return;
    for (const run::Standard &standard : part.run.standards) {
        const auto owned = std::ranges::find_if(part.inputs, [&](const OwnedInput &input) {
            return input.input == UncertaintyInput::Standard && input.standard == standard.id;
        });
        const bool isOwned = standard.uncertainty_percent && owned != part.inputs.end();
        table.rows.push_back({RecordinputsWords::tr("concentration of the standard %1").arg(standard.id),
                              part.local(evaluation::roundedText(standard.uncertainty_percent.value_or(0), 4)),
                              RecordinputsWords::tr("% of it"), RecordinputsWords::tr("the standard"),
                              isOwned ? owned->source
                              : standard.uncertainty_percent
                                  ? RecordinputsWords::tr("stated with it")
                                  : RecordinputsWords::tr("not stated, so it counts as exactly known")});
    }
}

} // namespace

void writeUncertainties(PageFlow &flow, const RecordPart &part)
{
    if (!part.run.uncertainty) {
        flow.paragraph(RecordinputsWords::tr("The run states no uncertainties of its inputs."));
        return;
    }
    PrintedTable table;
    table.columns = {
        {RecordinputsWords::tr("standard uncertainty (k = 1) of"), Fit::Wrap, false, false, 0.26},
        {RecordinputsWords::tr("value"), Fit::Natural, true, false, 0.08},
        {RecordinputsWords::tr("unit"), Fit::Natural, false, false, 0.1},
        {RecordinputsWords::tr("who answers for it"), Fit::Wrap, false, false, 0.22},
        {RecordinputsWords::tr("where it comes from"), Fit::Wrap, false, false, 0.34}};
    for (const Stated &stated : statedIn(part.run))
        table.rows.push_back(QStringList{stated.name, part.local(evaluation::roundedText(stated.value, 4)), stated.unit} +
                             ownerCells(part, stated));
    addStandards(table, part);
    flow.table(table);
}

} // namespace plateau::ui
