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

struct UncertaintySourcesWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::UncertaintySources)
};

double run::UncertaintyInputs::*memberOf(UncertaintyInput input)
{
    using enum UncertaintyInput;
    switch (input) {
    case Absorptivity:
        return &run::UncertaintyInputs::absorptivity_percent;
    case PathLength:
        return &run::UncertaintyInputs::pathLength_percent;
    case TotalVolume:
        return &run::UncertaintyInputs::totalVolume_percent;
    case SampleVolume:
        return &run::UncertaintyInputs::sampleVolume_percent;
    case Dilution:
        return &run::UncertaintyInputs::dilution_percent;
    case Extract:
        return &run::UncertaintyInputs::extract_percent;
    case Absorbance:
    case Standard:
    case Replicates:
        break;
    }
    return &run::UncertaintyInputs::absorbance;
}

OwnedInput owned(UncertaintyInput input, FoundInput found)
{
    return {input,          inputName(input),
            found.value,    input == UncertaintyInput::Absorbance ? QString() : u"%"_s,
            found.owner,    found.source,
            found.isDefault};
}

} // namespace

QString ownedText(const OwnedInput &owned)
{
    if (!owned.value)
        return UncertaintySourcesWording::tr("%1: %2 (%3)").arg(owned.owner, owned.name, owned.source);
    const QString number = *owned.value == 0 ? u"0"_s : significantText(*owned.value, 2);
    return UncertaintySourcesWording::tr("%1: %2 %3 (%4)")
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

double numberOf(const run::UncertaintyInputs &inputs, UncertaintyInput input)
{
    return inputs.*memberOf(input);
}

void setNumber(run::UncertaintyInputs &inputs, UncertaintyInput input, double value)
{
    inputs.*memberOf(input) = value;
}

OwnedInput sourceOfStandard(const run::Standard &standard)
{
    const bool isStated = standard.uncertainty_percent.has_value();
    return {
        UncertaintyInput::Standard,
        inputName(UncertaintyInput::Standard),
        standard.uncertainty_percent.value_or(0),
        u"%"_s,
        UncertaintySourcesWording::tr("standard %1").arg(standard.id),
        isStated
            ? UncertaintySourcesWording::tr("stated with the standard")
            : UncertaintySourcesWording::tr(
                  "not stated, so it counts as exactly known; enter what its recipe or its certificate says"),
        !isStated,
        true,
        standard.id};
}

bool calibrates(const run::Run &run, const run::Standard &standard)
{
    return std::ranges::any_of(run.tubes, [&](const run::Tube &tube) {
        return tube.role == run::Role::Standard && tube.standard == standard.id;
    });
}

OwnedInput replicates()
{
    return {UncertaintyInput::Replicates,
            inputName(UncertaintyInput::Replicates),
            std::nullopt,
            {},
            UncertaintySourcesWording::tr("replicates"),
            UncertaintySourcesWording::tr(
                "the run's own tubes: their scatter, or the readings' uncertainty where that is "
                "larger")};
}

std::vector<OwnedInput> uncertaintySources(const assay::Method &method, const Laboratory &laboratory,
                                           const run::Run &run)
{
    using enum UncertaintyInput;
    const InputSources sources(method, laboratory, run);
    std::vector<OwnedInput> all{
        owned(Absorbance, sources.absorbance()),     owned(Absorptivity, sources.absorptivity()),
        owned(PathLength, sources.pathLength()),     owned(TotalVolume, sources.totalVolume()),
        owned(SampleVolume, sources.sampleVolume()), owned(Dilution, sources.dilution()),
        owned(Extract, sources.extract()),
    };
    if (run.calibration != run::Calibration::Absorptivity) {
        for (const run::Standard &standard : run.standards) {
            if (calibrates(run, standard))
                all.push_back(sourceOfStandard(standard));
        }
    }
    all.push_back(replicates());
    return all;
}

run::UncertaintyInputs inputsFor(const assay::Method &method, const Laboratory &laboratory,
                                 const run::Run &run)
{
    run::UncertaintyInputs inputs;
    for (const OwnedInput &source : uncertaintySources(method, laboratory, run)) {
        if (std::ranges::find(statedInputs(), source.input) != statedInputs().end())
            setNumber(inputs, source.input, source.value.value_or(0));
    }
    return inputs;
}

} // namespace plateau::planning
