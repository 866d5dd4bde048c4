// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/uncertaintysources.h"

#include "core/evaluation/format.h"
#include "core/planning/glassfor.h"
#include "core/run/volumes.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using evaluation::plainText;
using evaluation::significantText;
using evaluation::withUnit;

namespace {

struct Wording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::UncertaintySources)
};

/// What is found out of an input before its name is put to it.
struct Found {
    double value = 0;
    QString owner;
    QString source;
    bool isDefault = false;
};

QString listed()
{
    return Wording::tr("the laboratory's list of glassware");
}

QString usual(const QString &reason)
{
    const QString habit = Wording::tr("common practice, no source");
    return reason.isEmpty() ? habit : Wording::tr("%1; %2").arg(habit, reason);
}

QString volumeText(double volume_mL)
{
    return withUnit(plainText(volume_mL), u"mL"_s);
}

QString noPipette(double volume_mL)
{
    return Wording::tr("no pipette of the list makes %1").arg(volumeText(volume_mL));
}

/// The least exact that makes the volume; nullptr if none does.
const Pipette *pipetteFor(double volume_mL, const Glassware &glassware)
{
    const Pipette *found = nullptr;
    for (const Pipette &pipette : glassware.pipettes) {
        if (makes(pipette, volume_mL) && (!found || pipette.uncertainty_percent > found->uncertainty_percent))
            found = &pipette;
    }
    return found;
}

const Flask *flaskFor(double volume_mL, const Glassware &glassware)
{
    const Flask *found = nullptr;
    for (const Flask &flask : glassware.flasks) {
        const bool same = std::abs(flask.volume_mL - volume_mL) <= 1e-9 * volume_mL;
        if (same && (!found || flask.uncertainty_percent > found->uncertainty_percent))
            found = &flask;
    }
    return found;
}

/// The one that counts for most of several that are found.
void keepWorst(std::optional<Found> &worst, Found found)
{
    if (!worst || found.value > worst->value)
        worst = std::move(found);
}

class Sources
{
public:
    Sources(const assay::Method &method, const Laboratory &laboratory, const run::Run &run)
        : m_method(method)
        , m_laboratory(laboratory)
        , m_run(run)
    {
        const auto own =
            std::ranges::find(laboratory.methodUncertainties, method.id, &MethodUncertainty::method);
        if (own != laboratory.methodUncertainties.end())
            m_own = &*own;
    }

    Found absorbance() const
    {
        if (const auto own = ownOf(&MethodUncertainty::absorbance))
            return *own;
        if (m_laboratory.photometer && m_laboratory.photometer->absorbance)
            return {*m_laboratory.photometer->absorbance, photometerName(), photometerSource()};
        return {m_usual.absorbance, photometerName(),
                usual(Wording::tr("until its check records say otherwise")), true};
    }

    Found absorptivity() const
    {
        if (const auto own = ownOf(&MethodUncertainty::absorptivity_percent))
            return *own;
        return {m_usual.absorptivity_percent,
                Wording::tr("absorptivity of %1 at %2")
                    .arg(m_method.chromophore,
                         withUnit(QString::number(m_run.wavelength_nm.value_or(m_method.wavelength_nm)),
                                  u"nm"_s)),
                usual({}), true};
    }

    Found pathLength() const
    {
        if (const auto own = ownOf(&MethodUncertainty::pathLength_percent))
            return *own;
        if (m_laboratory.photometer && m_laboratory.photometer->pathLength_percent)
            return {*m_laboratory.photometer->pathLength_percent,
                    Wording::tr("cuvette of the %1").arg(photometerName()), photometerSource()};
        return {m_usual.pathLength_percent, Wording::tr("cuvette"), usual({}), true};
    }

    Found totalVolume() const
    {
        if (const auto own = ownOf(&MethodUncertainty::totalVolume_percent))
            return *own;
        std::map<const Pipette *, double> off_mL;
        QStringList names;
        double total_mL = 0;
        for (const assay::Component &component : m_method.components) {
            if (!(component.volume_mL > 0))
                continue;
            const Pipette *pipette = pipetteFor(component.volume_mL, m_laboratory.glassware);
            if (!pipette)
                return {m_usual.totalVolume_percent, Wording::tr("pipettes"),
                        usual(noPipette(component.volume_mL)), true};
            off_mL[pipette] += component.volume_mL * pipette->uncertainty_percent / 100;
            total_mL += component.volume_mL;
            if (!names.contains(pipette->name))
                names.append(pipette->name);
        }
        if (!(total_mL > 0))
            return {m_usual.totalVolume_percent, Wording::tr("pipettes"), usual({}), true};
        double variance = 0;
        for (const auto &[pipette, off] : off_mL)
            variance += off * off;
        return {100 * std::sqrt(variance) / total_mL, names.join(u", "_s), listed()};
    }

    Found sampleVolume() const
    {
        if (const auto own = ownOf(&MethodUncertainty::sampleVolume_percent))
            return *own;
        std::optional<Found> worst;
        for (const double volume_mL : sampleVolumes_mL()) {
            const Pipette *pipette = pipetteFor(volume_mL, m_laboratory.glassware);
            if (!pipette)
                return {m_usual.sampleVolume_percent, Wording::tr("pipette of the sample"),
                        usual(noPipette(volume_mL)), true};
            keepWorst(worst, {pipette->uncertainty_percent, pipette->name, listed()});
        }
        return worst.value_or(
            Found{m_usual.sampleVolume_percent, Wording::tr("pipette of the sample"), usual({}), true});
    }

    Found dilution() const
    {
        if (const auto own = ownOf(&MethodUncertainty::dilution_percent))
            return *own;
        const QString owner = Wording::tr("pipette and flask of a dilution step");
        std::optional<Found> worst;
        for (const run::Sample &sample : m_run.samples) {
            for (const run::DilutionStep &step : sample.dilution) {
                if (step.uncertainty_percent || step.take_mL == step.makeUpTo_mL)
                    continue;
                const auto glass = glassFor(step, m_laboratory.glassware);
                if (!glass)
                    return {m_usual.dilution_percent, owner,
                            usual(Wording::tr("no glass of the list makes %1 up to %2")
                                      .arg(volumeText(step.take_mL), volumeText(step.makeUpTo_mL))),
                            true};
                keepWorst(worst, {glass->uncertainty_percent,
                                  Wording::tr("%1 with %2").arg(glass->pipette, glass->flask), listed()});
            }
        }
        return worst.value_or(Found{m_usual.dilution_percent, owner,
                                    usual(Wording::tr("no step of this run rests on it")), true});
    }

    Found extract() const
    {
        if (const auto own = ownOf(&MethodUncertainty::extract_percent))
            return *own;
        std::optional<Found> worst;
        for (const run::Sample &sample : m_run.samples) {
            if (sample.form != run::Form::Solid || !sample.extract_mL)
                continue;
            const Flask *flask = flaskFor(*sample.extract_mL, m_laboratory.glassware);
            if (!flask)
                return {
                    m_usual.extract_percent, Wording::tr("flask of the extract"),
                    usual(Wording::tr("no flask of the list holds %1").arg(volumeText(*sample.extract_mL))),
                    true};
            keepWorst(worst, {flask->uncertainty_percent, flask->name, listed()});
        }
        return worst.value_or(Found{m_usual.extract_percent, Wording::tr("flask of the extract"),
                                    usual(Wording::tr("no sample of this run rests on it")), true});
    }

private:
    std::optional<Found> ownOf(std::optional<double> MethodUncertainty::*member) const
    {
        if (!m_own || !(m_own->*member))
            return std::nullopt;
        return Found{*(m_own->*member), Wording::tr("laboratory, for %1").arg(m_method.name), m_own->source};
    }

    QString photometerName() const
    {
        return m_laboratory.photometer ? Wording::tr("photometer %1").arg(m_laboratory.photometer->name)
                                       : Wording::tr("photometer");
    }

    QString photometerSource() const
    {
        const Photometer &photometer = *m_laboratory.photometer;
        return photometer.checkedOn
                   ? Wording::tr("%1, %2").arg(photometer.source, photometer.checkedOn->toString(Qt::ISODate))
                   : photometer.source;
    }

    std::set<double> sampleVolumes_mL() const
    {
        std::set<double> volumes_mL;
        for (const run::Tube &tube : m_run.tubes) {
            if (tube.role != run::Role::Blank)
                volumes_mL.insert(run::sampleVolume_mL(m_method, tube));
        }
        if (volumes_mL.empty()) {
            if (const assay::Component *sample = assay::findComponent(m_method, m_method.sample))
                volumes_mL.insert(sample->volume_mL);
        }
        return volumes_mL;
    }

    const assay::Method &m_method;
    const Laboratory &m_laboratory;
    const run::Run &m_run;
    const MethodUncertainty *m_own = nullptr;
    const run::UncertaintyInputs m_usual = usualUncertainty();
};

OwnedInput owned(UncertaintyInput input, const QString &name, Found found)
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
    const Sources sources(method, laboratory, run);
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
