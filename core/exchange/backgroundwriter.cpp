// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/backgroundwriter.h"

#include "core/assay/matrix.h"
#include "core/exchange/jsonparts.h"

namespace plateau::exchange {

using namespace plateau::assay;
using nlohmann::ordered_json;

namespace {

ordered_json derivedTermJson(const DerivedTerm &term)
{
    ordered_json object = ordered_json::object();
    if (!term.method.isEmpty())
        object["method"] = utf8(term.method);
    object["measurand"] = utf8(term.measurand);
    object["factor"] = term.factor;
    return object;
}

ordered_json derivedJson(const Derived &derived)
{
    return {
        {"id", utf8(derived.id)}, {"name", utf8(derived.name)}, {"terms", listOf(derived.terms, derivedTermJson)}};
}

ordered_json usualStandardJson(const UsualStandard &standard)
{
    ordered_json object = ordered_json::object();
    writeOptional(object, "concentration_g_per_L", standard.concentration_g_per_L);
    writeOptional(object, "lossPerHour", standard.lossPerHour);
    return object;
}

ordered_json preparationJson(const Preparation &preparation)
{
    return {{"matrix", utf8(matrixWord(preparation.matrix))}, {"text", utf8(preparation.text)}};
}

template <class Items, class Write>
void writeList(ordered_json &object, const char *key, const Items &items, Write write)
{
    if (!items.empty())
        object[key] = listOf(items, write);
}

} // namespace

void writeBackground(ordered_json &object, const Method &method)
{
    writeList(object, "derived", method.derived, derivedJson);
    if (method.standard)
        object["standard"] = usualStandardJson(*method.standard);
    if (method.tubes)
        object["tubes"] = {{"blanks", method.tubes->blanks},
                           {"replicates", method.tubes->replicates},
                           {"standards", method.tubes->standards}};
    writeList(object, "reactions", method.reactions, utf8);
    writeList(object, "interferences", method.interferences, utf8);
    writeList(object, "samplePreparation", method.samplePreparation, preparationJson);
    writeList(object, "cautions", method.cautions, utf8);
}

} // namespace plateau::exchange
