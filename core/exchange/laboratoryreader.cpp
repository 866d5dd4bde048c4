// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/documentformat.h"
#include "core/exchange/measuringparts.h"
#include "core/exchange/methodreader.h"
#include "core/exchange/readers.h"
#include "core/exchange/reportingparts.h"

#include <QCoreApplication>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::planning;

namespace {

struct LaboratoryReaderWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::LaboratoryReader)
};

const Consequences &laboratoryConsequences()
{
    static const Consequences all = {
        {u"/rackRows"_s, u"/rackColumns"_s},
        {u"/glassware/pipettes/*/name"_s, u"/glassware/pipettes/*/name"_s},
        {u"/glassware/flasks/*/name"_s, u"/glassware/flasks/*/name"_s},
        {u"/review/rejectionReasons/*"_s, u"/review/rejectionReasons/*"_s},
        {u"/reportHead/logo/type"_s, u"/reportHead/logo/base64"_s},
        {u"/reportUnits/*/product"_s, u"/reportUnits/*/product"_s},
        {u"/reportUnits/*/measurand"_s, u"/reportUnits/*/product"_s},
        {u"/glassware/pipettes/#/smallest_mL"_s, u"/glassware/pipettes/#/largest_mL"_s},
        {u"/glassware/pipettes/#/smallest_mL"_s, u"/glassware/pipettes/#/step_mL"_s},
        {u"/glassware/pipettes/#/largest_mL"_s, u"/glassware/pipettes/#/smallest_mL"_s},
        {u"/glassware/pipettes/#/largest_mL"_s, u"/glassware/pipettes/#/step_mL"_s},
        {u"/glassware/pipettes/#/step_mL"_s, u"/glassware/pipettes/#/largest_mL"_s},
        {u"/methodUncertainties/*/method"_s, u"/methodUncertainties/*/method"_s},
        {u"/methodUncertainties/#/*"_s, u"/methodUncertainties/#/$"_s},
        {u"/photometer/absorbance"_s, u"/photometer/source"_s},
        {u"/photometer/pathLength_percent"_s, u"/photometer/source"_s},
    };
    return all;
}

void takeHandling(const Place &place, HandlingTimes &handling)
{
    Fields fields(place);
    fields.needed(u"addition_s"_s, handling.addition_s);
    fields.needed(u"mix_s"_s, handling.mix_s);
    fields.needed(u"reading_s"_s, handling.reading_s);
    fields.done();
}

Pipette takePipette(const Place &place)
{
    Pipette pipette;
    Fields fields(place);
    fields.needed(u"name"_s, pipette.name);
    fields.needed(u"smallest_mL"_s, pipette.smallest_mL);
    fields.needed(u"largest_mL"_s, pipette.largest_mL);
    fields.needed(u"step_mL"_s, pipette.step_mL);
    fields.needed(u"uncertainty_percent"_s, pipette.uncertainty_percent);
    fields.done();
    return pipette;
}

Flask takeFlask(const Place &place)
{
    Flask flask;
    Fields fields(place);
    fields.needed(u"name"_s, flask.name);
    fields.needed(u"volume_mL"_s, flask.volume_mL);
    fields.needed(u"uncertainty_percent"_s, flask.uncertainty_percent);
    fields.done();
    return flask;
}

void takeGlassware(const Place &place, Glassware &glassware)
{
    Fields fields(place);
    if (const auto pipettes = fields.need(u"pipettes"_s))
        forEach(*pipettes, [&](const Place &element) { glassware.pipettes.push_back(takePipette(element)); });
    if (const auto flasks = fields.need(u"flasks"_s))
        forEach(*flasks, [&](const Place &element) { glassware.flasks.push_back(takeFlask(element)); });
    fields.done();
}

/// A name may be left out; given, it must be one.
void takeName(Fields &fields, QString &name)
{
    const auto place = fields.find(u"name"_s);
    if (place && take(*place, name) && name.isEmpty())
        place->findings.broken(
            place->pointer,
            LaboratoryReaderWording::tr("is blank; give the laboratory's name, or leave the field out"));
}

void takeLaboratory(const Place &place, Laboratory &laboratory)
{
    Fields fields(place);
    if (!fields.usable() || !takeFormat(fields, QString::fromUtf16(laboratoryFormat)))
        return;
    takeName(fields, laboratory.name);
    fields.needed(u"rackRows"_s, laboratory.rackRows);
    fields.needed(u"rackColumns"_s, laboratory.rackColumns);
    if (const auto handling = fields.need(u"handling"_s))
        takeHandling(*handling, laboratory.handling);
    fields.needed(u"overage_percent"_s, laboratory.overage_percent);
    if (const auto glassware = fields.need(u"glassware"_s))
        takeGlassware(*glassware, laboratory.glassware);
    takeReporting(fields, laboratory);
    takeMeasuring(fields, laboratory);
    fields.done();
    place.findings.meaning(problemsOf(laboratory), place.pointer, laboratoryConsequences());
}

} // namespace

Read<Laboratory> readLaboratory(const QByteArray &json)
{
    const json::Document document = json::parse(json);
    Findings findings;
    for (const assay::Problem &problem : document.problems)
        findings.remark(problem);
    Laboratory laboratory;
    if (document.root)
        takeLaboratory({*document.root, {}, findings}, laboratory);
    if (findings.hasErrors())
        return {std::nullopt, findings.problems()};
    return {std::move(laboratory), findings.problems()};
}

} // namespace plateau::exchange
