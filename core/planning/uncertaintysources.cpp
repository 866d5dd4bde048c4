// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/uncertaintysources.h"

#include "core/evaluation/format.h"
#include "core/planning/inputsources.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using evaluation::significantText;
using evaluation::withUnit;

namespace {

struct Wording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::UncertaintySources)
};

OwnedInput owned(UncertaintyInput input, const QString &name, FoundInput found)
{
    return {
        input,       name,         found.value,    input == UncertaintyInput::Absorbance ? QString() : u"%"_s,
        found.owner, found.source, found.isDefault};
}

OwnedInput ofStandard(const run::Standard &standard)
{
    return owned(
        UncertaintyInput::Standard, Wording::tr("concentration"),
        {standard.uncertainty_percent.value_or(0), Wording::tr("standard %1").arg(standard.id),
         standard.uncertainty_percent
             ? Wording::tr("stated with the standard")
             : Wording::tr("not stated, so it counts as exactly known; put in what its recipe or its "
                           "certificate says"),
         !standard.uncertainty_percent});
}

double valueOf(const std::vector<OwnedInput> &sources, UncertaintyInput input)
{
    return std::ranges::find(sources, input, &OwnedInput::input)->value.value_or(0);
}

} // namespace

QString ownedText(const OwnedInput &owned)
{
    if (!owned.value)
        return Wording::tr("%1: %2 (%3)").arg(owned.owner, owned.name, owned.source);
    const QString number = *owned.value == 0 ? u"0"_s : significantText(*owned.value, 2);
    return Wording::tr("%1: %2 %3 (%4)")
        .arg(owned.owner, owned.name, owned.unit.isEmpty() ? number : withUnit(number, owned.unit),
             owned.source);
}

run::UncertaintyInputs usualUncertainty()
{
    run::UncertaintyInputs usual;
    usual.absorbance = 0.002;
    usual.absorptivity_percent = 0.5;
    usual.pathLength_percent = 0.2;
    usual.totalVolume_percent = 0.5;
    usual.sampleVolume_percent = 0.8;
    usual.dilution_percent = 0.4;
    usual.extract_percent = 0.2;
    return usual;
}

std::vector<OwnedInput> uncertaintySources(const assay::Method &method, const Laboratory &laboratory,
                                           const run::Run &run)
{
    using enum UncertaintyInput;
    const InputSources sources(method, laboratory, run);
    std::vector<OwnedInput> all{
        owned(Absorbance, Wording::tr("absorbance of a reading"), sources.absorbance()),
        owned(Absorptivity, Wording::tr("absorptivity"), sources.absorptivity()),
        owned(PathLength, Wording::tr("path length"), sources.pathLength()),
        owned(TotalVolume, Wording::tr("total volume"), sources.totalVolume()),
        owned(SampleVolume, Wording::tr("sample volume"), sources.sampleVolume()),
        owned(Dilution, Wording::tr("dilution step"), sources.dilution()),
        owned(Extract, Wording::tr("extract"), sources.extract()),
    };
    if (run.calibration != run::Calibration::Absorptivity) {
        for (const run::Standard &standard : run.standards)
            all.push_back(ofStandard(standard));
    }
    all.push_back(
        {Replicates,
         Wording::tr("repeatability"),
         std::nullopt,
         {},
         Wording::tr("replicates"),
         Wording::tr("the run's own tubes: their scatter, or the readings' uncertainty where that is "
                     "larger"),
         false});
    return all;
}

run::UncertaintyInputs inputsFor(const assay::Method &method, const Laboratory &laboratory,
                                 const run::Run &run)
{
    using enum UncertaintyInput;
    const std::vector<OwnedInput> sources = uncertaintySources(method, laboratory, run);
    run::UncertaintyInputs inputs;
    inputs.absorbance = valueOf(sources, Absorbance);
    inputs.absorptivity_percent = valueOf(sources, Absorptivity);
    inputs.pathLength_percent = valueOf(sources, PathLength);
    inputs.totalVolume_percent = valueOf(sources, TotalVolume);
    inputs.sampleVolume_percent = valueOf(sources, SampleVolume);
    inputs.dilution_percent = valueOf(sources, Dilution);
    inputs.extract_percent = valueOf(sources, Extract);
    return inputs;
}

} // namespace plateau::planning
