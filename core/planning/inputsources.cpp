// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/inputsources.h"

#include "core/evaluation/format.h"
#include "core/planning/glassfor.h"
#include "core/planning/uncertaintysources.h"
#include "core/run/volumes.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct InputSourcesWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::InputSources)
};

QString listed()
{
    return InputSourcesWording::tr("the laboratory's list of glassware");
}

QString usual(const QString &reason)
{
    const QString habit = InputSourcesWording::tr("common practice, no source");
    return reason.isEmpty() ? habit : InputSourcesWording::tr("%1; %2").arg(habit, reason);
}

QString volumeText(double volume_mL)
{
    return withUnit(plainText(volume_mL), u"mL"_s);
}

QString noPipette(double volume_mL)
{
    return InputSourcesWording::tr("no pipette of the list makes %1").arg(volumeText(volume_mL));
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

/// The check that says so, else the list.
template <class Glass> QString sourceOf(const Glass &glass)
{
    return glass.source.isEmpty() ? listed() : glass.source;
}

/// The one that counts for most of several that are found.
void keepWorst(std::optional<FoundInput> &worst, FoundInput found)
{
    if (!worst || found.value > worst->value)
        worst = std::move(found);
}

} // namespace

InputSources::InputSources(const assay::Method &method, const Laboratory &laboratory, const run::Run &run)
    : m_method(method)
    , m_laboratory(laboratory)
    , m_run(run)
    , m_usual(usualUncertainty())
{
    const auto own = std::ranges::find(laboratory.methodUncertainties, method.id, &MethodUncertainty::method);
    if (own != laboratory.methodUncertainties.end())
        m_own = &*own;
}

FoundInput InputSources::absorbance() const
{
    if (const auto own = ownOf(&MethodUncertainty::absorbance))
        return *own;
    if (m_laboratory.photometer && m_laboratory.photometer->absorbance)
        return {*m_laboratory.photometer->absorbance, photometerName(), photometerSource()};
    return {m_usual.absorbance, photometerName(),
            usual(InputSourcesWording::tr("until its check records say otherwise")), true};
}

FoundInput InputSources::absorptivity() const
{
    if (const auto own = ownOf(&MethodUncertainty::absorptivity_percent))
        return *own;
    return {
        m_usual.absorptivity_percent,
        InputSourcesWording::tr("absorptivity of %1 at %2")
            .arg(m_method.chromophore,
                 withUnit(QString::number(m_run.wavelength_nm.value_or(m_method.wavelength_nm)), u"nm"_s)),
        usual({}), true};
}

FoundInput InputSources::pathLength() const
{
    if (const auto own = ownOf(&MethodUncertainty::pathLength_percent))
        return *own;
    if (m_laboratory.photometer && m_laboratory.photometer->pathLength_percent)
        return {*m_laboratory.photometer->pathLength_percent,
                InputSourcesWording::tr("cuvette of the %1").arg(photometerName()),
                m_laboratory.photometer->pathSource.isEmpty() ? photometerSource()
                                                              : m_laboratory.photometer->pathSource};
    return {m_usual.pathLength_percent, InputSourcesWording::tr("cuvette"), usual({}), true};
}

FoundInput InputSources::totalVolume() const
{
    if (const auto own = ownOf(&MethodUncertainty::totalVolume_percent))
        return *own;
    std::map<const Pipette *, double> off_mL;
    QStringList names;
    QStringList sources;
    double total_mL = 0;
    for (const assay::Component &component : m_method.components) {
        if (!(component.volume_mL > 0))
            continue;
        const Pipette *pipette = pipetteFor(component.volume_mL, m_laboratory.glassware);
        if (!pipette)
            return {m_usual.totalVolume_percent, InputSourcesWording::tr("pipettes"),
                    usual(noPipette(component.volume_mL)), true};
        off_mL[pipette] += component.volume_mL * pipette->uncertainty_percent / 100;
        total_mL += component.volume_mL;
        if (!names.contains(pipette->name))
            names.append(pipette->name);
        if (!sources.contains(sourceOf(*pipette)))
            sources.append(sourceOf(*pipette));
    }
    if (!(total_mL > 0))
        return {m_usual.totalVolume_percent, InputSourcesWording::tr("pipettes"), usual({}), true};
    double variance = 0;
    for (const auto &[pipette, off] : off_mL)
        variance += off * off;
    return {100 * std::sqrt(variance) / total_mL, names.join(u", "_s), sources.join(u", "_s)};
}

FoundInput InputSources::sampleVolume() const
{
    if (const auto own = ownOf(&MethodUncertainty::sampleVolume_percent))
        return *own;
    std::optional<FoundInput> worst;
    for (const double volume_mL : sampleVolumes_mL()) {
        const Pipette *pipette = pipetteFor(volume_mL, m_laboratory.glassware);
        if (!pipette)
            return {m_usual.sampleVolume_percent, InputSourcesWording::tr("pipette of the sample"),
                    usual(noPipette(volume_mL)), true};
        keepWorst(worst, {pipette->uncertainty_percent, pipette->name, sourceOf(*pipette)});
    }
    return worst.value_or(FoundInput{m_usual.sampleVolume_percent,
                                     InputSourcesWording::tr("pipette of the sample"), usual({}), true});
}

FoundInput InputSources::dilution() const
{
    if (const auto own = ownOf(&MethodUncertainty::dilution_percent))
        return *own;
    const QString owner = InputSourcesWording::tr("pipette and flask of a dilution step");
    std::optional<FoundInput> worst;
    for (const run::Sample &sample : m_run.samples) {
        for (const run::DilutionStep &step : sample.dilution) {
            if (step.uncertainty_percent || step.take_mL == step.makeUpTo_mL)
                continue;
            const auto glass = glassFor(step, m_laboratory.glassware);
            if (!glass)
                return {m_usual.dilution_percent, owner,
                        usual(InputSourcesWording::tr("no glass of the list makes %1 up to %2")
                                  .arg(volumeText(step.take_mL), volumeText(step.makeUpTo_mL))),
                        true};
            keepWorst(worst, {glass->uncertainty_percent,
                              InputSourcesWording::tr("%1 with %2").arg(glass->pipette, glass->flask),
                              glass->source.isEmpty() ? listed() : glass->source});
        }
    }
    return worst.value_or(FoundInput{m_usual.dilution_percent, owner,
                                     usual(InputSourcesWording::tr("no step of this run rests on it")),
                                     true});
}

FoundInput InputSources::extract() const
{
    if (const auto own = ownOf(&MethodUncertainty::extract_percent))
        return *own;
    std::optional<FoundInput> worst;
    for (const run::Sample &sample : m_run.samples) {
        if (sample.form != run::Form::Solid || !sample.extract_mL)
            continue;
        const Flask *flask = flaskFor(*sample.extract_mL, m_laboratory.glassware);
        if (!flask)
            return {m_usual.extract_percent, InputSourcesWording::tr("flask of the extract"),
                    usual(InputSourcesWording::tr("no flask of the list holds %1")
                              .arg(volumeText(*sample.extract_mL))),
                    true};
        keepWorst(worst, {flask->uncertainty_percent, flask->name, sourceOf(*flask)});
    }
    return worst.value_or(FoundInput{m_usual.extract_percent, InputSourcesWording::tr("flask of the extract"),
                                     usual(InputSourcesWording::tr("no sample of this run rests on it")),
                                     true});
}

std::optional<FoundInput> InputSources::ownOf(std::optional<double> MethodUncertainty::*member) const
{
    if (!m_own || !(m_own->*member))
        return std::nullopt;
    return FoundInput{*(m_own->*member), InputSourcesWording::tr("laboratory, for %1").arg(m_method.name),
                      m_own->source};
}

QString InputSources::photometerName() const
{
    return m_laboratory.photometer
               ? InputSourcesWording::tr("photometer %1").arg(m_laboratory.photometer->name)
               : InputSourcesWording::tr("photometer");
}

QString InputSources::photometerSource() const
{
    const Photometer &photometer = *m_laboratory.photometer;
    // Kept with the run, so it says the same day at every desk.
    return photometer.checkedOn ? InputSourcesWording::tr("%1, %2").arg(
                                      photometer.source, photometer.checkedOn->toString(Qt::ISODate))
                                : photometer.source;
}

std::set<double> InputSources::sampleVolumes_mL() const
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

} // namespace plateau::planning
