// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/methodreader.h"

#include "core/assay/label.h"
#include "core/assay/soundness.h"
#include "core/exchange/backgroundreader.h"
#include "core/exchange/readers.h"

#include <QCoreApplication>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct Wording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::MethodReader)
};

const Consequences &consequences()
{
    static const Consequences all = {
        {u"/components/*/id"_s, u"/steps/*/add"_s},
        {u"/components/*/id"_s, u"/sample"_s},
        {u"/components/*/id"_s, u"/diluent"_s},
        {u"/components/*/id"_s, u"/starter"_s},
        {u"/components/#/id"_s, u"/components/#"_s, true},
        {u"/components/#/volume_mL"_s, u"/components/#/range_mL"_s},
        {u"/components/*/volume_mL"_s, u"/steps/$"_s},
        {u"/steps/*/add"_s, u"/sample"_s},
        {u"/steps/*/add"_s, u"/starter"_s},
        {u"/steps/*/add"_s, u"/components/*"_s, true},
        {u"/steps/*/add"_s, u"/steps/*/read"_s},
        {u"/steps/*/add"_s, u"/diluent"_s, true},
        {u"/steps/*"_s, u"/steps/*"_s, true},
        {u"/steps/*"_s, u"/measurands/*/signal"_s, true},
        {u"/steps/*/read"_s, u"/steps/$"_s},
        {u"/steps/*/read"_s, u"/measurands/*/signal"_s},
        {u"/steps/*/read"_s, u"/extrapolate/reading"_s},
        {u"/measurands/#/signal/kind"_s, u"/measurands/#/signal"_s},
        {u"/sample"_s, u"/diluent"_s},
        {u"/sample"_s, u"/starter"_s},
        {u"/diluent"_s, u"/starter"_s},
        {u"/chromophore"_s, u"/wavelength_nm"_s},
        {u"/absorptivity_L_per_mol_cm/*"_s, u"/wavelength_nm"_s},
        {u"/window/maxSignal"_s, u"/window/minSignal"_s},
        {u"/window/maxAbsorbance"_s, u"/window/reserveAbsorbance"_s},
        {u"/acceptance/repeatability/*"_s, u"/acceptance/repeatability/$"_s},
        {u"/measurands/*/id"_s, u"/derived/*/terms/*/measurand"_s},
        {u"/id"_s, u"/derived/*/terms/*/measurand"_s},
        {u"/derived/#/terms/*"_s, u"/derived/#/terms/$"_s},
        {u"/derived/*/terms/*/method"_s, u"/derived/*/terms/*/measurand"_s},
        {u"/samplePreparation/*/matrix"_s, u"/samplePreparation/*/matrix"_s},
    };
    return all;
}

void takeAbsorptivities(const Place &place, std::map<int, double> &table)
{
    const auto *object = std::get_if<json::Object>(&place.node.value);
    if (!object) {
        place.findings.broken(place.pointer,
                              Wording::tr("expected an object of wavelengths in nm, as {\"340\": 6300}"));
        return;
    }
    for (const auto &[key, node] : *object) {
        const Place entry{node, pointerTo(place.pointer, key), place.findings};
        const int wavelength_nm = key.toInt();
        double value = 0;
        if (QString::number(wavelength_nm) != key)
            entry.findings.broken(entry.pointer,
                                  Wording::tr("expected a wavelength in whole nm as the field's "
                                              "name, as \"340\", found %1")
                                      .arg(quoted(key)));
        else if (take(entry, value))
            table[wavelength_nm] = value;
    }
}

Component takeComponent(const Place &place)
{
    Component component;
    Fields fields(place);
    fields.needed(u"id"_s, component.id);
    fields.needed(u"name"_s, component.name);
    fields.needed(u"volume_mL"_s, component.volume_mL);
    fields.optional(u"range_mL"_s, component.range_mL);
    fields.optional(u"suspension"_s, component.suspension);
    fields.done();
    return component;
}

/// A step is told by its first field; one that cannot be read keeps its place as a step that does nothing.
Step takeStep(const Place &place)
{
    Fields fields(place);
    Step step = MixStep{};
    if (!fields.usable())
        return step;
    const auto add = fields.find(u"add"_s);
    const auto mix = fields.find(u"mix"_s);
    const auto wait = fields.find(u"wait_min"_s);
    const auto temperature = fields.find(u"temperature_C"_s);
    const auto read = fields.find(u"read"_s);
    const bool clean = fields.done();
    const int kinds = (add ? 1 : 0) + (mix ? 1 : 0) + (wait ? 1 : 0) + (read ? 1 : 0);
    if (kinds == 0 && !clean) {
        place.findings.unreadable(place.pointer);
        return step;
    }
    if (kinds != 1) {
        place.findings.broken(place.pointer,
                              Wording::tr("a step has exactly one of \"add\", \"mix\", \"wait_min\" "
                                          "and \"read\""));
        return step;
    }
    if (temperature && !wait)
        place.findings.broken(temperature->pointer, Wording::tr("a temperature goes with \"wait_min\" only"));
    if (AddStep adding; add && take(*add, adding.component))
        step = adding;
    if (ReadStep reading; read && take(*read, reading.reading))
        step = reading;
    if (wait) {
        WaitStep waiting;
        take(*wait, waiting.wait_min);
        if (temperature)
            take(*temperature, waiting.temperature_C);
        step = waiting;
    }
    if (bool mixed = false; mix && take(*mix, mixed) && !mixed)
        place.findings.broken(mix->pointer,
                              Wording::tr("must be true; leave the step out where nothing is mixed"));
    return step;
}

void takeSignal(const Place &place, Signal &signal)
{
    Fields fields(place);
    if (!fields.usable())
        return;
    bool coupled = false;
    const auto kind = fields.need(u"kind"_s);
    const bool known =
        kind && takeWord<bool>(*kind, {{u"difference"_s, false}, {u"coupledIndicator"_s, true}}, coupled);
    if (known && coupled) {
        CoupledIndicatorSignal readings;
        fields.needed(u"base"_s, readings.base);
        fields.needed(u"middle"_s, readings.middle);
        fields.needed(u"final"_s, readings.final);
        signal = readings;
    } else if (known) {
        DifferenceSignal readings;
        fields.needed(u"from"_s, readings.from);
        fields.needed(u"to"_s, readings.to);
        signal = readings;
    }
    // Without its kind nobody knows which of them belong there.
    for (const QString &key : {u"from"_s, u"to"_s, u"base"_s, u"middle"_s, u"final"_s}) {
        if (!known)
            fields.find(key);
    }
    fields.done();
}

Measurand takeMeasurand(const Place &place)
{
    Measurand measurand;
    Fields fields(place);
    fields.needed(u"id"_s, measurand.id);
    fields.needed(u"name"_s, measurand.name);
    fields.needed(u"molarMass_g_per_mol"_s, measurand.molarMass_g_per_mol);
    fields.needed(u"chromophorePerMolecule"_s, measurand.chromophorePerMolecule);
    if (const auto signal = fields.need(u"signal"_s))
        takeSignal(*signal, measurand.signal);
    fields.optional(u"typicalRange_g_per_L"_s, measurand.typicalRange_g_per_L);
    fields.done();
    return measurand;
}

void takeWindow(const Place &place, Window &window)
{
    Fields fields(place);
    fields.needed(u"minSignal"_s, window.minSignal);
    fields.needed(u"maxSignal"_s, window.maxSignal);
    fields.optional(u"maxAbsorbance"_s, window.maxAbsorbance);
    fields.optional(u"reserveAbsorbance"_s, window.reserveAbsorbance);
    fields.done();
}

void takeAcceptance(const Place &place, Acceptance &acceptance)
{
    Fields fields(place);
    fields.optional(u"maxBlankSignal"_s, acceptance.maxBlankSignal);
    fields.optional(u"standardRecovery_percent"_s, acceptance.standardRecovery_percent);
    fields.optional(u"spikeRecovery_percent"_s, acceptance.spikeRecovery_percent);
    if (const auto given = fields.find(u"repeatability"_s)) {
        Repeatability limits;
        Fields inner(*given);
        inner.needed(u"constant_g_per_L"_s, limits.constant_g_per_L);
        inner.needed(u"proportional"_s, limits.proportional);
        inner.done();
        acceptance.repeatability = limits;
    }
    fields.done();
}

void takeExtrapolation(const Place &place, std::optional<Extrapolation> &extrapolate)
{
    Extrapolation rule;
    Fields fields(place);
    fields.needed(u"reading"_s, rule.reading);
    fields.needed(u"lastReadings"_s, rule.lastReadings);
    fields.done();
    extrapolate = rule;
}

void takeDescription(Fields &fields, Method &method)
{
    fields.needed(u"id"_s, method.id);
    fields.needed(u"version"_s, method.version);
    fields.needed(u"name"_s, method.name);
    fields.needed(u"source"_s, method.source);
    fields.optional(u"principle"_s, method.principle);
}

void takePhotometry(Fields &fields, Method &method)
{
    fields.needed(u"chromophore"_s, method.chromophore);
    if (const auto place = fields.find(u"absorptivity_L_per_mol_cm"_s))
        takeAbsorptivities(*place, method.absorptivity_L_per_mol_cm);
    fields.needed(u"wavelength_nm"_s, method.wavelength_nm);
    fields.needed(u"pathLength_mm"_s, method.pathLength_mm);
    if (const auto place = fields.need(u"direction"_s))
        takeWord<Direction>(*place, {{u"rising"_s, Direction::Rising}, {u"falling"_s, Direction::Falling}},
                            method.direction);
    if (const auto place = fields.find(u"volumeCorrection"_s))
        takeWord<VolumeCorrection>(
            *place,
            {{u"none"_s, VolumeCorrection::None}, {u"toFinalVolume"_s, VolumeCorrection::ToFinalVolume}},
            method.volumeCorrection);
}

void takeRecipe(Fields &fields, Method &method)
{
    if (const auto place = fields.need(u"components"_s))
        forEach(*place, [&](const Place &element) { method.components.push_back(takeComponent(element)); });
    fields.needed(u"sample"_s, method.sample);
    fields.needed(u"diluent"_s, method.diluent);
    fields.needed(u"starter"_s, method.starter);
    if (const auto place = fields.need(u"steps"_s))
        forEach(*place, [&](const Place &element) { method.steps.push_back(takeStep(element)); });
    if (const auto place = fields.need(u"measurands"_s))
        forEach(*place, [&](const Place &element) { method.measurands.push_back(takeMeasurand(element)); });
}

void takeLimits(Fields &fields, Method &method)
{
    if (const auto place = fields.need(u"window"_s))
        takeWindow(*place, method.window);
    if (const auto place = fields.need(u"acceptance"_s))
        takeAcceptance(*place, method.acceptance);
    if (const auto place = fields.find(u"extrapolate"_s))
        takeExtrapolation(*place, method.extrapolate);
}

} // namespace

bool takeFormat(Fields &fields, const QString &format)
{
    const auto place = fields.need(u"format"_s);
    QString found;
    if (!place || !take(*place, found) || found == format)
        return true;
    place->findings.broken(place->pointer,
                           Wording::tr("expected the format %1, found %2; this file is of another "
                                       "kind or for another version of the program")
                               .arg(quoted(format), quoted(found)));
    return false;
}

bool takeMethod(const Place &place, Method &method)
{
    Fields fields(place);
    if (!fields.usable() || !takeFormat(fields, u"plateau-method/1"_s))
        return false;
    takeDescription(fields, method);
    takePhotometry(fields, method);
    takeRecipe(fields, method);
    takeLimits(fields, method);
    takeBackground(fields, method);
    fields.done();
    place.findings.meaning(problemsOf(method), place.pointer, consequences());
    return true;
}

Read<Method> readMethod(const QByteArray &json)
{
    const json::Document document = json::parse(json);
    Findings findings;
    for (const Problem &problem : document.problems)
        findings.remark(problem);
    Method method;
    if (document.root)
        takeMethod({*document.root, {}, findings}, method);
    if (findings.hasErrors())
        return {std::nullopt, findings.problems()};
    return {std::move(method), findings.problems()};
}

} // namespace plateau::exchange
