// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/jsonparts.h"
#include "core/exchange/jsontext.h"
#include "core/exchange/writers.h"

namespace plateau::exchange {

using namespace plateau::evaluation;
using nlohmann::ordered_json;

namespace {

ordered_json guardJson(const GuardBand &guard)
{
    ordered_json object{{"kind", utf8(guardBandWord(guard.kind))}};
    if (guard.kind != GuardBand::Kind::OneSided95)
        object["size"] = guard.size;
    return object;
}

ordered_json specificationJson(const Specification &specification)
{
    ordered_json object{{"product", utf8(specification.product)},
                        {"measurand", utf8(specification.measurand)},
                        {"kind", utf8(limitKindWord(specification.kind))}};
    writeOptional(object, "lower", specification.lower);
    writeOptional(object, "upper", specification.upper);
    object["unit"] = utf8(reportUnitWord(specification.unit));
    object["source"] = utf8(specification.source);
    object["date"] = utf8(specification.date.toString(Qt::ISODate));
    object["rule"] = utf8(decisionRuleWord(specification.rule));
    if (specification.guard)
        object["guard"] = guardJson(*specification.guard);
    return object;
}

} // namespace

QByteArray writeSpecifications(const std::vector<Specification> &specifications)
{
    return jsonText(ordered_json{{"format", "plateau-specifications/1"},
                                 {"specifications", listOf(specifications, specificationJson)}});
}

} // namespace plateau::exchange
