// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/label.h"
#include "core/exchange/documentformat.h"
#include "core/exchange/methodreader.h"
#include "core/exchange/readers.h"
#include "core/run/soundness.h"

#include <QCoreApplication>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::assay;
using namespace plateau::run;

namespace {

struct RunReaderWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::RunReader)
};

const Consequences &runConsequences()
{
    static const Consequences all = {
        {u"/samples/*/id"_s, u"/tubes/*/sample"_s},
        {u"/samples/*/id"_s, u"/samples/*/repeats"_s},
        {u"/samples/*/form"_s, u"/samples/*/repeats"_s},
        {u"/samples/#/form"_s, u"/samples/#/mass_g"_s},
        {u"/samples/#/form"_s, u"/samples/#/extract_mL"_s},
        {u"/samples/#/dilution/*"_s, u"/samples/#/dilution/$"_s},
        {u"/standards/*/id"_s, u"/tubes/*/standard"_s},
        {u"/standards/*/id"_s, u"/tubes/*/spike/standard"_s},
        {u"/standards/*/id"_s, u"/calibration"_s},
        {u"/standards/*/concentration_g_per_L"_s, u"/calibration"_s},
        {u"/standards/*/measurand"_s, u"/calibration"_s},
        {u"/standards/#/preparedAt"_s, u"/standards/#/usedAt"_s},
        {u"/standards/#/preparedAt"_s, u"/standards/#/lossPerHour"_s},
        {u"/standards/#/usedAt"_s, u"/standards/#/preparedAt"_s},
        {u"/startedAt"_s, u"/standards/*/usedAt"_s},
        {u"/tubes/#/role"_s, u"/tubes/#/sample"_s},
        {u"/tubes/#/role"_s, u"/tubes/#/standard"_s},
        {u"/tubes/#/role"_s, u"/tubes/#/sampleVolume_mL"_s},
        {u"/tubes/#/role"_s, u"/tubes/#/spike"_s},
        {u"/tubes/#/sample"_s, u"/tubes/#/standard"_s},
        {u"/tubes/#/standard"_s, u"/tubes/#/sample"_s},
        {u"/tubes/*/sample"_s, u"/samples/*"_s, true},
        {u"/tubes/*/role"_s, u"/calibration"_s},
        {u"/tubes/*/standard"_s, u"/calibration"_s},
        {u"/tubes/*/sampleVolume_mL"_s, u"/calibration"_s},
    };
    return all;
}

/// An id that may be left out; given, it must be one.
void takeOptionalId(Fields &fields, const QString &key, QString &id)
{
    const auto place = fields.find(key);
    if (place && take(*place, id) && id.trimmed().isEmpty())
        place->findings.broken(place->pointer,
                               RunReaderWording::tr("is blank; give the id, or leave the field out"));
}

void takeUncertainty(const Place &place, std::optional<UncertaintyInputs> &uncertainty)
{
    UncertaintyInputs inputs;
    Fields fields(place);
    fields.optional(u"absorbance"_s, inputs.absorbance);
    fields.optional(u"absorptivity_percent"_s, inputs.absorptivity_percent);
    fields.optional(u"pathLength_percent"_s, inputs.pathLength_percent);
    fields.optional(u"totalVolume_percent"_s, inputs.totalVolume_percent);
    fields.optional(u"sampleVolume_percent"_s, inputs.sampleVolume_percent);
    fields.optional(u"dilution_percent"_s, inputs.dilution_percent);
    fields.optional(u"extract_percent"_s, inputs.extract_percent);
    fields.done();
    uncertainty = inputs;
}

Standard takeStandard(const Place &place)
{
    Standard standard;
    Fields fields(place);
    fields.needed(u"id"_s, standard.id);
    fields.needed(u"concentration_g_per_L"_s, standard.concentration_g_per_L);
    takeOptionalId(fields, u"measurand"_s, standard.measurand);
    fields.optional(u"preparedAt"_s, standard.preparedAt);
    fields.optional(u"usedAt"_s, standard.usedAt);
    fields.optional(u"lossPerHour"_s, standard.lossPerHour);
    fields.optional(u"uncertainty_percent"_s, standard.uncertainty_percent);
    fields.done();
    return standard;
}

DilutionStep takeDilutionStep(const Place &place)
{
    DilutionStep step;
    Fields fields(place);
    fields.needed(u"take_mL"_s, step.take_mL);
    fields.needed(u"makeUpTo_mL"_s, step.makeUpTo_mL);
    fields.optional(u"uncertainty_percent"_s, step.uncertainty_percent);
    fields.done();
    return step;
}

Sample takeSample(const Place &place)
{
    Sample sample;
    Fields fields(place);
    fields.needed(u"id"_s, sample.id);
    if (const auto form = fields.find(u"form"_s))
        takeWord<Form>(*form, {{u"liquid"_s, Form::Liquid}, {u"solid"_s, Form::Solid}}, sample.form);
    fields.optional(u"mass_g"_s, sample.mass_g);
    fields.optional(u"extract_mL"_s, sample.extract_mL);
    if (const auto dilution = fields.find(u"dilution"_s))
        forEach(*dilution, [&](const Place &step) { sample.dilution.push_back(takeDilutionStep(step)); });
    takeOptionalId(fields, u"repeats"_s, sample.repeats);
    fields.done();
    return sample;
}

TimedAbsorbance takeTimedAbsorbance(const Place &place)
{
    TimedAbsorbance timed;
    Fields fields(place);
    fields.needed(u"at_min"_s, timed.at_min);
    fields.needed(u"absorbance"_s, timed.absorbance);
    fields.done();
    return timed;
}

std::optional<Reading> takeReading(const Place &place)
{
    if (const auto *number = std::get_if<double>(&place.node.value))
        return *number;
    if (!std::holds_alternative<json::List>(place.node.value)) {
        place.findings.broken(place.pointer,
                              RunReaderWording::tr("expected a number or a list of timed readings, found %1; "
                                                   "leave out a reading that has not been taken yet")
                                  .arg(kindWord(place.node)));
        return std::nullopt;
    }
    ReadingSeries series;
    forEach(place, [&](const Place &element) { series.push_back(takeTimedAbsorbance(element)); });
    return series;
}

void takeReadings(const Place &place, std::map<QString, Reading> &readings)
{
    const auto *object = std::get_if<json::Object>(&place.node.value);
    if (!object) {
        place.findings.broken(place.pointer,
                              RunReaderWording::tr("expected an object of readings, as {\"A1\": 0.102}, "
                                                   "found %1")
                                  .arg(kindWord(place.node)));
        return;
    }
    for (const auto &[name, node] : *object) {
        if (const auto reading = takeReading({node, pointerTo(place.pointer, name), place.findings}))
            readings[name] = *reading;
    }
}

void takeSpike(const Place &place, std::optional<Spike> &spike)
{
    Spike added;
    Fields fields(place);
    fields.needed(u"standard"_s, added.standard);
    fields.needed(u"volume_mL"_s, added.volume_mL);
    fields.done();
    spike = added;
}

/// At least one number by its name; expected says so otherwise.
void takeNumbers(const Place &place, const QString &expected, std::map<QString, double> &numbers)
{
    const auto *object = std::get_if<json::Object>(&place.node.value);
    if (!object || object->empty()) {
        place.findings.broken(place.pointer, expected);
        return;
    }
    for (const auto &[name, node] : *object) {
        double number = 0;
        if (take({node, pointerTo(place.pointer, name), place.findings}, number))
            numbers[name] = number;
    }
}

void takeDone(Fields &fields, Tube &tube)
{
    if (const auto pipetted = fields.find(u"pipetted_mL"_s))
        takeNumbers(*pipetted,
                    RunReaderWording::tr("expected an object of volumes in mL by component, as "
                                         "{\"nadh\": 0.1}; leave it out where the tube was "
                                         "pipetted as planned"),
                    tube.pipetted_mL);
    if (const auto added = fields.find(u"addedAt_min"_s))
        takeNumbers(
            *added,
            RunReaderWording::tr("expected an object of minutes by component, as {\"starter\": 12.5}; "
                                 "leave it out where nobody marked the time"),
            tube.addedAt_min);
    if (const auto read = fields.find(u"readAt_min"_s))
        takeNumbers(
            *read,
            RunReaderWording::tr("expected an object of minutes by reading, as {\"A1\": 5}; leave it out "
                                 "where nobody marked the time"),
            tube.readAt_min);
}

Tube takeTube(const Place &place)
{
    Tube tube;
    Fields fields(place);
    if (const auto role = fields.need(u"role"_s)) {
        std::vector<std::pair<QString, Role>> words;
        for (const Role known :
             {Role::Blank, Role::SampleBlank, Role::Standard, Role::Control, Role::Sample, Role::Spiked})
            words.emplace_back(roleWord(known), known);
        takeWord(*role, words, tube.role);
    }
    takeOptionalId(fields, u"sample"_s, tube.sample);
    takeOptionalId(fields, u"standard"_s, tube.standard);
    fields.optional(u"sampleVolume_mL"_s, tube.sampleVolume_mL);
    if (const auto spike = fields.find(u"spike"_s))
        takeSpike(*spike, tube.spike);
    takeDone(fields, tube);
    if (const auto spoilt = fields.find(u"spoilt"_s);
        spoilt && take(*spoilt, tube.spoilt) && tube.spoilt.trimmed().isEmpty())
        spoilt->findings.broken(
            spoilt->pointer,
            RunReaderWording::tr("is blank; say what spoilt the tube, or leave the field out"));
    if (const auto readings = fields.find(u"readings"_s))
        takeReadings(*readings, tube.readings);
    fields.done();
    return tube;
}

LotUse takeLot(const Place &place)
{
    LotUse use;
    Fields fields(place);
    fields.needed(u"component"_s, use.component);
    fields.needed(u"lot"_s, use.lot);
    fields.optional(u"expires"_s, use.expires);
    fields.done();
    return use;
}

void takeConditions(Fields &fields, Run &run)
{
    fields.optional(u"title"_s, run.title);
    fields.optional(u"wavelength_nm"_s, run.wavelength_nm);
    fields.optional(u"pathLength_mm"_s, run.pathLength_mm);
    if (const auto place = fields.find(u"calibration"_s))
        takeWord<Calibration>(*place,
                              {{u"absorptivity"_s, Calibration::Absorptivity},
                               {u"standard"_s, Calibration::Standard},
                               {u"line"_s, Calibration::Line}},
                              run.calibration);
    fields.optional(u"startedAt"_s, run.startedAt);
    if (const auto place = fields.find(u"uncertainty"_s))
        takeUncertainty(*place, run.uncertainty);
}

void takeRack(Fields &fields, Run &run)
{
    if (const auto place = fields.find(u"standards"_s))
        forEach(*place, [&](const Place &element) { run.standards.push_back(takeStandard(element)); });
    if (const auto place = fields.need(u"samples"_s))
        forEach(*place, [&](const Place &element) { run.samples.push_back(takeSample(element)); });
    if (const auto place = fields.need(u"tubes"_s))
        forEach(*place, [&](const Place &element) { run.tubes.push_back(takeTube(element)); });
    if (const auto place = fields.find(u"lots"_s))
        forEach(*place, [&](const Place &element) { run.lots.push_back(takeLot(element)); });
}

/// Nothing, and a problem, if the method is not to be had or not sound.
std::optional<Method> takeRunMethod(const Place &place, const MethodLookup &installedMethod,
                                    RunDocument &document)
{
    if (std::holds_alternative<json::Object>(place.node.value)) {
        const auto before = static_cast<std::ptrdiff_t>(place.findings.problems().size());
        Method method;
        document.methodEmbedded = true;
        const bool read = takeMethod(place, method);
        document.run.method = method.id;
        const Problems &problems = place.findings.problems();
        if (!read || hasErrors({problems.begin() + before, problems.end()}))
            return std::nullopt;
        return method;
    }
    const auto *id = std::get_if<QString>(&place.node.value);
    if (!id) {
        place.findings.broken(
            place.pointer, RunReaderWording::tr("expected the id of an installed method or a whole method, "
                                                "found %1")
                               .arg(kindWord(place.node)));
        return std::nullopt;
    }
    document.run.method = *id;
    NamedMethod named = installedMethod ? installedMethod(*id) : std::nullopt;
    if (!named.method)
        place.findings.broken(place.pointer,
                              named.obstacle.isEmpty()
                                  ? RunReaderWording::tr("no method %1 is installed; correct the id, "
                                                         "or put the whole method here")
                                        .arg(quoted(*id))
                                  : named.obstacle);
    return std::move(named.method);
}

void takeRun(const Place &place, const MethodLookup &installedMethod, RunDocument &document)
{
    Fields fields(place);
    if (!fields.usable() || !takeFormat(fields, u"plateau-run/1"_s))
        return;
    std::optional<Method> method;
    const auto methodPlace = fields.need(u"method"_s);
    if (methodPlace)
        method = takeRunMethod(*methodPlace, installedMethod, document);
    takeConditions(fields, document.run);
    takeRack(fields, document.run);
    fields.done();
    place.findings.meaning(method ? problemsOf(document.run, *method) : problemsOf(document.run),
                           place.pointer, runConsequences());
    if (method)
        document.method = std::move(*method);
}

} // namespace

Read<RunDocument> readRun(const QByteArray &json, const MethodLookup &installedMethod)
{
    const json::Document text = json::parse(json);
    Findings findings;
    for (const Problem &problem : text.problems)
        findings.remark(problem);
    RunDocument document;
    if (text.root) {
        const Place whole{*text.root, {}, findings};
        if (isMarked(whole, QString::fromUtf16(runFormat),
                     RunReaderWording::tr("is missing: this is no run file of Plateau, which names the format %1 here")))
            takeRun(whole, installedMethod, document);
    }
    if (findings.hasErrors())
        return {std::nullopt, findings.problems()};
    return {std::move(document), findings.problems()};
}

} // namespace plateau::exchange
