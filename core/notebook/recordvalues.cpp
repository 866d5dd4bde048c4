// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/recordvalues.h"

#include "core/assay/listed.h"
#include "core/charts/chartwords.h"
#include "core/equipment/protocol.h"
#include "core/evaluation/specification.h"
#include "core/notebook/recordwords.h"
#include "core/notebook/sentence.h"

#include <QStringList>

#include <map>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

using ValueWords = std::map<QString, QString>;

const ValueWords &yesAndNo()
{
    static const ValueWords words{{u"0"_s, Sentence::tr("no")},
                                  {u"1"_s, Sentence::tr("yes")},
                                  {u"false"_s, Sentence::tr("no")},
                                  {u"true"_s, Sentence::tr("yes")}};
    return words;
}

bool isYesOrNo(const QString &field)
{
    static const QStringList fields{u"acceptable"_s, u"in_use"_s, u"is_left_out"_s,     u"is_usual"_s,
                                    u"passed"_s,     u"spike"_s,  u"reviewerDecides"_s, u"secondPersonReviews"_s};
    return fields.contains(field);
}

const std::map<QString, ValueWords> &wordsByField()
{
    static const std::map<QString, ValueWords> words{
        {u"kind"_s,
         {
             {u"absolute"_s, Sentence::tr("fixed, in the unit of the limit")},
             {u"accepted"_s, Sentence::tr("accepted")},
             {u"added"_s, Sentence::tr("added")},
             {u"corrected"_s, Sentence::tr("corrected")},
             {u"discarded"_s, Sentence::tr("discarded")},
             {u"done"_s, Sentence::tr("done")},
             {u"expandedUncertainty"_s, Sentence::tr("a multiple of the expanded uncertainty")},
             {u"file"_s, Sentence::tr("from a file")},
             {u"imported"_s, Sentence::tr("imported")},
             {u"labelThreshold"_s, Sentence::tr("label threshold")},
             {u"maximum"_s, Sentence::tr("maximum")},
             {u"minimum"_s, Sentence::tr("minimum")},
             {u"network"_s, Sentence::tr("from the network")},
             {u"oneSided95"_s, Sentence::tr("one-sided 95 %")},
             {u"pasted"_s, Sentence::tr("pasted")},
             {u"range"_s, Sentence::tr("range")},
             {u"read"_s, Sentence::tr("read")},
             {u"received"_s, Sentence::tr("received")},
             {u"reinstated"_s, Sentence::tr("in use again")},
             {u"rejected"_s, Sentence::tr("rejected")},
             {u"repeat"_s, Sentence::tr("to be repeated")},
             {u"retired"_s, Sentence::tr("out of use")},
             {u"saved"_s, Sentence::tr("saved")},
             {u"serial"_s, Sentence::tr("from the serial line")},
             {u"spoilt"_s, Sentence::tr("spoilt")},
             {u"undone"_s, Sentence::tr("taken back")},
             {u"unspoilt"_s, Sentence::tr("counts again")},
             {u"used"_s, Sentence::tr("used")},
         }},
        {u"role"_s,
         {
             {u"analyst"_s, Sentence::tr("analyst")},
             {u"blank"_s, Sentence::tr("blank")},
             {u"control"_s, Sentence::tr("control")},
             {u"head"_s, Sentence::tr("head of the laboratory")},
             {u"reviewer"_s, Sentence::tr("reviewer")},
             {u"sample"_s, Sentence::tr("sample")},
             {u"sampleBlank"_s, Sentence::tr("sample blank")},
             {u"spiked"_s, Sentence::tr("spiked sample")},
             {u"standard"_s, Sentence::tr("standard")},
         }},
        {u"calibration"_s,
         {
             {u"absorptivity"_s, Sentence::tr("by the absorptivity")},
             {u"line"_s, Sentence::tr("by a line through the standards")},
             {u"standard"_s, Sentence::tr("by the run's own standard")},
         }},
        {u"form"_s, {{u"liquid"_s, Sentence::tr("liquid")}, {u"solid"_s, Sentence::tr("solid")}}},
        {u"rule"_s,
         {
             {u"lastAccepted"_s, Sentence::tr("the last accepted result")},
             {u"meanOfAccepted"_s, Sentence::tr("the mean of the accepted results")},
             {u"named"_s, Sentence::tr("a result that was named")},
         }},
        {u"spread"_s,
         {
             {u"movingRange"_s, Sentence::tr("the moving range")},
             {u"standardDeviation"_s, Sentence::tr("the standard deviation")},
         }},
        {u"constants"_s,
         {
             {u"computed"_s, Sentence::tr("computed")},
             {u"printedTable"_s, Sentence::tr("from the printed table")},
         }},
        {u"input"_s,
         {
             {u"absorbance"_s, Sentence::tr("absorbance")},
             {u"absorptivity"_s, Sentence::tr("absorptivity")},
             {u"dilution"_s, Sentence::tr("dilution step")},
             {u"extract"_s, Sentence::tr("extract")},
             {u"pathLength"_s, Sentence::tr("path length")},
             {u"sampleVolume"_s, Sentence::tr("sample volume")},
             {u"standard"_s, Sentence::tr("standard")},
             {u"totalVolume"_s, Sentence::tr("total volume")},
         }},
        {u"matrix"_s,
         {
             {u"carbonated"_s, Sentence::tr("carbonated")},
             {u"clear"_s, Sentence::tr("clear and colourless")},
             {u"coloured"_s, Sentence::tr("coloured")},
             {u"fatty"_s, Sentence::tr("fatty")},
             {u"proteinRich"_s, Sentence::tr("rich in protein")},
             {u"solid"_s, Sentence::tr("solid")},
             {u"turbid"_s, Sentence::tr("turbid")},
         }},
    };
    return words;
}

/// Of what other rooms have the words.
std::optional<QString> wordElsewhere(const QString &field, const QString &value)
{
    if (field == "aspect"_L1) {
        if (const auto aspect = equipment::aspectFromWord(value))
            return equipment::aspectName(*aspect);
    } else if (field == "quantity"_L1) {
        if (const auto quantity = charts::quantityFromWord(value))
            return charts::quantityName(*quantity);
    } else if (field == "rule"_L1) {
        if (const auto rule = evaluation::decisionRuleFromWord(value))
            return evaluation::decisionRuleName(*rule);
    } else if (field == "kind"_L1) {
        if (const auto item = equipment::kindFromWord(value))
            return equipment::kindName(*item);
        if (const auto chart = charts::kindFromWord(value))
            return charts::kindName(*chart);
    }
    return std::nullopt;
}

std::optional<QString> namesOfChartRules(const QString &value)
{
    QStringList names;
    for (const QString &word : value.split(u' ', Qt::SkipEmptyParts)) {
        const auto rule = charts::ruleFromWord(word);
        if (!rule)
            return std::nullopt;
        names << charts::ruleName(*rule);
    }
    return assay::listed(names);
}

/// One of a list, from 1.
QString memberWord(const QString &list, int number)
{
    if (list == "pipettes"_L1)
        return Sentence::tr("pipette %1").arg(number);
    if (list == "flasks"_L1)
        return Sentence::tr("flask %1").arg(number);
    if (list == "methodUncertainties"_L1)
        return Sentence::tr("uncertainties of a method, row %1").arg(number);
    if (list == "reportUnits"_L1)
        return Sentence::tr("unit of a product, row %1").arg(number);
    if (list == "rejectionReasons"_L1)
        return Sentence::tr("reason to reject %1").arg(number);
    if (list == "address"_L1)
        return Sentence::tr("address, line %1").arg(number);
    if (list == "specifications"_L1)
        return Sentence::tr("limit %1").arg(number);
    return Sentence::tr("%1 %2").arg(fieldWord(list)).arg(number);
}

} // namespace

std::optional<QString> valueWord(const QString &field, const QString &value)
{
    if (field == "rules"_L1)
        return namesOfChartRules(value);
    const auto &byField = wordsByField();
    const auto own = byField.find(field);
    const ValueWords none;
    const ValueWords &words = isYesOrNo(field) ? yesAndNo() : own == byField.end() ? none : own->second;
    const auto found = words.find(value);
    return found == words.end() ? wordElsewhere(field, value) : std::optional(found->second);
}

QString placeWord(const QString &pointer)
{
    // Whose fields say by themselves what they are of.
    static const QStringList groups{u"glassware"_s, u"handling"_s, u"review"_s, u"reportHead"_s};
    QStringList parts;
    QString list;
    for (const QString &token : pointer.split(u'/', Qt::SkipEmptyParts)) {
        bool isNumber = false;
        const int place = token.toInt(&isNumber);
        if (isNumber && !list.isEmpty()) {
            parts.last() = memberWord(list, place + 1);
            list.clear();
        } else if (!groups.contains(token)) {
            parts << fieldWord(token);
            list = token;
        }
    }
    return parts.join(u", "_s);
}

QString conditionWord(const QString &key)
{
    // The keys are the same whatever the size of what is checked.
    equipment::Item item;
    item.nominal_mL = 1;
    item.smallest_mL = 0.1;
    for (const equipment::Kind kind : equipment::allKinds()) {
        item.kind = kind;
        for (const equipment::Aspect aspect : equipment::aspectsOf(kind)) {
            for (const equipment::ProtocolField &field : equipment::protocolFor(item, aspect).fields) {
                if (field.key == key)
                    return field.unit.isEmpty() ? field.name : Sentence::tr("%1 (%2)").arg(field.name, field.unit);
            }
        }
    }
    return fieldWord(key);
}

} // namespace plateau::notebook
