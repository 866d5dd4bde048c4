// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/methodreader.h"

#include "core/assay/label.h"
#include "core/assay/soundness.h"
#include "core/exchange/backgroundreader.h"
#include "core/exchange/documentformat.h"
#include "core/exchange/readers.h"
#include "core/exchange/recipereader.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct MethodReaderWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::MethodReader)
};

const Consequences &methodConsequences()
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
        place.findings.broken(
            place.pointer,
            MethodReaderWording::tr("expected an object of wavelengths in nm, as {\"340\": 6300}"));
        return;
    }
    for (const auto &[key, node] : *object) {
        const Place entry{node, pointerTo(place.pointer, key), place.findings};
        const int wavelength_nm = key.toInt();
        double value = 0;
        if (QString::number(wavelength_nm) != key)
            entry.findings.broken(entry.pointer,
                                  MethodReaderWording::tr("expected a wavelength in whole nm as the field's "
                                                          "name, as \"340\", found %1")
                                      .arg(quoted(key)));
        else if (take(entry, value))
            table[wavelength_nm] = value;
    }
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

bool isMarked(const Place &place, const QString &format, const QString &unmarked)
{
    const auto *object = std::get_if<json::Object>(&place.node.value);
    if (!object || std::ranges::any_of(*object, [](const json::Member &member) { return member.key == "format"_L1; }))
        return true;
    place.findings.broken(pointerTo(place.pointer, u"format"_s), unmarked.arg(quoted(format)));
    return false;
}

bool takeFormat(Fields &fields, const QString &format)
{
    const auto place = fields.need(u"format"_s);
    if (!place)
        return true;
    const auto *named = std::get_if<QString>(&place->node.value);
    if (named && *named == format)
        return true;
    const QString found = named ? quoted(*named) : kindWord(place->node);
    place->findings.broken(
        place->pointer, MethodReaderWording::tr("expected the format %1, found %2; this file is of another "
                                                "kind or for another version of the program")
                            .arg(quoted(format), found));
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
    place.findings.meaning(problemsOf(method), place.pointer, methodConsequences());
    return true;
}

Read<Method> readMethod(const QByteArray &json)
{
    const json::Document document = json::parse(json);
    Findings findings;
    for (const Problem &problem : document.problems)
        findings.remark(problem);
    Method method;
    if (document.root) {
        const Place whole{*document.root, {}, findings};
        if (isMarked(whole, QString::fromUtf16(methodFormat),
                     MethodReaderWording::tr("is missing: this is no method file of Plateau, which names the format %1 here")))
            takeMethod(whole, method);
    }
    if (findings.hasErrors())
        return {std::nullopt, findings.problems()};
    return {std::move(method), findings.problems()};
}

} // namespace plateau::exchange
