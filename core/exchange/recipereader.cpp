// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/recipereader.h"

#include <QCoreApplication>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct RecipeReaderWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::RecipeReader)
};

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
        place.findings.broken(
            place.pointer, RecipeReaderWording::tr("a step has exactly one of \"add\", \"mix\", \"wait_min\" "
                                                   "and \"read\""));
        return step;
    }
    if (temperature && !wait)
        place.findings.broken(temperature->pointer,
                              RecipeReaderWording::tr("a temperature goes with \"wait_min\" only"));
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
        place.findings.broken(
            mix->pointer, RecipeReaderWording::tr("must be true; leave the step out where nothing is mixed"));
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

} // namespace

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

} // namespace plateau::exchange
