// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/measuringparts.h"

#include "core/exchange/jsonparts.h"

#include <QCoreApplication>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::planning;
using nlohmann::ordered_json;

namespace {

struct MeasuringPartsWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::MeasuringParts)
};

Photometer takePhotometer(const Place &place)
{
    Photometer photometer;
    Fields fields(place);
    fields.needed(u"name"_s, photometer.name);
    fields.optional(u"absorbance"_s, photometer.absorbance);
    fields.optional(u"pathLength_percent"_s, photometer.pathLength_percent);
    if (const auto source = fields.find(u"source"_s);
        source && take(*source, photometer.source) && photometer.source.trimmed().isEmpty())
        source->findings.broken(
            source->pointer,
            MeasuringPartsWording::tr("is blank; say which record the numbers come from, or leave the "
                                      "field out"));
    fields.optional(u"checkedOn"_s, photometer.checkedOn);
    fields.done();
    return photometer;
}

MethodUncertainty takeMethodUncertainty(const Place &place)
{
    MethodUncertainty own;
    Fields fields(place);
    fields.needed(u"method"_s, own.method);
    fields.needed(u"source"_s, own.source);
    fields.optional(u"absorbance"_s, own.absorbance);
    fields.optional(u"absorptivity_percent"_s, own.absorptivity_percent);
    fields.optional(u"pathLength_percent"_s, own.pathLength_percent);
    fields.optional(u"totalVolume_percent"_s, own.totalVolume_percent);
    fields.optional(u"sampleVolume_percent"_s, own.sampleVolume_percent);
    fields.optional(u"dilution_percent"_s, own.dilution_percent);
    fields.optional(u"extract_percent"_s, own.extract_percent);
    fields.done();
    return own;
}

ordered_json photometerJson(const Photometer &photometer)
{
    ordered_json object{{"name", utf8(photometer.name)}};
    writeOptional(object, "absorbance", photometer.absorbance);
    writeOptional(object, "pathLength_percent", photometer.pathLength_percent);
    if (!photometer.source.isEmpty())
        object["source"] = utf8(photometer.source);
    if (photometer.checkedOn)
        object["checkedOn"] = utf8(photometer.checkedOn->toString(Qt::ISODate));
    return object;
}

ordered_json methodUncertaintyJson(const MethodUncertainty &own)
{
    ordered_json object{{"method", utf8(own.method)}, {"source", utf8(own.source)}};
    writeOptional(object, "absorbance", own.absorbance);
    writeOptional(object, "absorptivity_percent", own.absorptivity_percent);
    writeOptional(object, "pathLength_percent", own.pathLength_percent);
    writeOptional(object, "totalVolume_percent", own.totalVolume_percent);
    writeOptional(object, "sampleVolume_percent", own.sampleVolume_percent);
    writeOptional(object, "dilution_percent", own.dilution_percent);
    writeOptional(object, "extract_percent", own.extract_percent);
    return object;
}

} // namespace

void takeMeasuring(Fields &fields, Laboratory &laboratory)
{
    if (const auto photometer = fields.find(u"photometer"_s))
        laboratory.photometer = takePhotometer(*photometer);
    if (const auto list = fields.find(u"methodUncertainties"_s))
        forEach(*list, [&](const Place &element) {
            laboratory.methodUncertainties.push_back(takeMethodUncertainty(element));
        });
}

void writeMeasuring(ordered_json &object, const Laboratory &laboratory)
{
    if (laboratory.photometer)
        object["photometer"] = photometerJson(*laboratory.photometer);
    if (!laboratory.methodUncertainties.empty())
        object["methodUncertainties"] = listOf(laboratory.methodUncertainties, methodUncertaintyJson);
}

} // namespace plateau::exchange
