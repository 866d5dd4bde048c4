// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodplaces.h"

#include <QStringList>

#include <algorithm>
#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using Section = MethodSection;

bool isUpperEnd(const QStringList &tokens)
{
    return tokens.last() == "1"_L1;
}

int componentColumn(const QStringList &tokens)
{
    const QString field = tokens.value(2);
    if (field == "volume_mL"_L1)
        return component::Volume_mL;
    if (field == "range_mL"_L1)
        return isUpperEnd(tokens) ? component::To_mL : component::From_mL;
    return component::Name;
}

int stepColumn(const QStringList &tokens)
{
    const QString field = tokens.value(2);
    if (field == "add"_L1)
        return step::Component;
    if (field == "wait_min"_L1)
        return isUpperEnd(tokens) ? step::To_min : step::From_min;
    if (field == "temperature_C"_L1)
        return isUpperEnd(tokens) ? step::To_C : step::From_C;
    return field == "read"_L1 ? step::Reading : step::Kind;
}

MethodField measurandField(const QStringList &tokens, int row)
{
    const QString field = tokens.value(2);
    if (field == "signal"_L1) {
        static const std::map<QString, int> readings{{u"from"_s, measurand::First},
                                                     {u"base"_s, measurand::First},
                                                     {u"middle"_s, measurand::Middle},
                                                     {u"to"_s, measurand::Last},
                                                     {u"final"_s, measurand::Last}};
        const auto column = readings.find(tokens.value(3));
        return {Section::Signal, u"signals"_s, row,
                column == readings.end() ? static_cast<int>(measurand::Signal) : column->second};
    }
    int column = measurand::Name;
    if (field == "molarMass_g_per_mol"_L1)
        column = measurand::MolarMass;
    else if (field == "chromophorePerMolecule"_L1)
        column = measurand::PerMolecule;
    else if (field == "typicalRange_g_per_L"_L1)
        column = isUpperEnd(tokens) ? measurand::To_g_per_L : measurand::From_g_per_L;
    return {Section::Measures, u"measurands"_s, row, column};
}

/// The row of that quantity's term: rows below each other of one name are one quantity.
MethodField derivedField(const QStringList &tokens, const MethodDraft &draft)
{
    const int wanted = tokens.value(1).toInt();
    const int term = tokens.value(2) == "terms"_L1 ? tokens.value(3).toInt() : 0;
    int quantity = -1;
    int within = 0;
    QString name;
    for (std::size_t row = 0; row < draft.derived.size(); ++row) {
        const QString own = draft.derived[row].cells[derived::Name].trimmed();
        const bool more = quantity >= 0 && (own.isEmpty() || own == name);
        within = more ? within + 1 : 0;
        quantity += more ? 0 : 1;
        name = more ? name : own;
        if (quantity != wanted || within != term)
            continue;
        const QString field = tokens.value(4);
        const int column = field == "factor"_L1      ? derived::Factor
                           : field == "measurand"_L1 ? derived::Measurand
                           : field == "method"_L1    ? derived::Method
                                                     : derived::Name;
        return {Section::Measures, u"derived"_s, static_cast<int>(row), column};
    }
    return {Section::Measures, u"derived"_s, 0, derived::Name};
}

MethodField absorptivityField(const QStringList &tokens, const MethodDraft &draft)
{
    const auto row = std::ranges::find(draft.absorptivities, tokens.value(1), [](const CellRow &each) {
        return each.cells[absorptivity::Wavelength_nm].trimmed();
    });
    const bool found = row != draft.absorptivities.end();
    return {Section::Signal, u"absorptivities"_s,
            found ? static_cast<int>(row - draft.absorptivities.begin()) : 0,
            found && !tokens.value(1).isEmpty() ? absorptivity::Value : absorptivity::Wavelength_nm};
}

MethodField partField(const QString &played, const MethodDraft &draft)
{
    const auto row = std::ranges::find(draft.components, played,
                                       [](const CellRow &each) { return each.cells[component::Part]; });
    const bool found = row != draft.components.end();
    return {Section::Recipe, u"components"_s, found ? static_cast<int>(row - draft.components.begin()) : 0,
            component::Part};
}

/// Pointers of single fields, without what stands behind.
const std::map<QString, MethodField> &singleFields()
{
    static const std::map<QString, MethodField> fields{
        {u"id"_s, {Section::Measures, u"methodId"_s}},
        {u"name"_s, {Section::Measures, u"methodName"_s}},
        {u"source"_s, {Section::Measures, u"methodSource"_s}},
        {u"measurands"_s, {Section::Measures, u"measurands"_s, 0, measurand::Name}},
        {u"derived"_s, {Section::Measures, u"derived"_s, 0, derived::Name}},
        {u"components"_s, {Section::Recipe, u"components"_s, 0, component::Name}},
        {u"steps"_s, {Section::Recipe, u"steps"_s, 0, step::Kind}},
        {u"chromophore"_s, {Section::Signal, u"chromophore"_s}},
        {u"wavelength_nm"_s, {Section::Signal, u"methodWavelength"_s}},
        {u"pathLength_mm"_s, {Section::Signal, u"methodPathLength"_s}},
        {u"extrapolate/reading"_s, {Section::Signal, u"extrapolatedReading"_s}},
        {u"extrapolate/lastReadings"_s, {Section::Signal, u"lastReadings"_s}},
        {u"window/minSignal"_s, {Section::Limits, u"minSignal"_s}},
        {u"window/maxSignal"_s, {Section::Limits, u"maxSignal"_s}},
        {u"window/maxAbsorbance"_s, {Section::Limits, u"maxAbsorbance"_s}},
        {u"window/reserveAbsorbance"_s, {Section::Limits, u"reserveAbsorbance"_s}},
        {u"acceptance/maxBlankSignal"_s, {Section::Limits, u"maxBlankSignal"_s}},
        {u"acceptance/standardRecovery_percent"_s, {Section::Limits, u"standardRecoveryFrom"_s}},
        {u"acceptance/standardRecovery_percent/0"_s, {Section::Limits, u"standardRecoveryFrom"_s}},
        {u"acceptance/standardRecovery_percent/1"_s, {Section::Limits, u"standardRecoveryTo"_s}},
        {u"acceptance/spikeRecovery_percent"_s, {Section::Limits, u"spikeRecoveryFrom"_s}},
        {u"acceptance/spikeRecovery_percent/0"_s, {Section::Limits, u"spikeRecoveryFrom"_s}},
        {u"acceptance/spikeRecovery_percent/1"_s, {Section::Limits, u"spikeRecoveryTo"_s}},
        {u"acceptance/repeatability"_s, {Section::Limits, u"repeatabilityConstant"_s}},
        {u"acceptance/repeatability/constant_g_per_L"_s, {Section::Limits, u"repeatabilityConstant"_s}},
        {u"acceptance/repeatability/proportional"_s, {Section::Limits, u"repeatabilityProportional"_s}},
        {u"standard"_s, {Section::Limits, u"usualStandard"_s}},
        {u"standard/concentration_g_per_L"_s, {Section::Limits, u"usualStandard"_s}},
        {u"standard/lossPerHour"_s, {Section::Limits, u"usualStandardLoss"_s}},
        {u"tubes/blanks"_s, {Section::Limits, u"usualBlanks"_s}},
        {u"tubes/replicates"_s, {Section::Limits, u"usualReplicates"_s}},
        {u"tubes/standards"_s, {Section::Limits, u"usualStandards"_s}},
    };
    return fields;
}

} // namespace

MethodField fieldOf(const QString &pointer, const MethodDraft &draft)
{
    const QStringList tokens = pointer.split(u'/').mid(1);
    const auto single = singleFields().find(tokens.join(u'/'));
    if (single != singleFields().end())
        return single->second;
    const QString head = tokens.value(0);
    const int row = tokens.value(1).toInt();
    if (head == "components"_L1)
        return {Section::Recipe, u"components"_s, row, componentColumn(tokens)};
    if (head == "steps"_L1)
        return {Section::Recipe, u"steps"_s, row, stepColumn(tokens)};
    if (head == "measurands"_L1)
        return measurandField(tokens, row);
    if (head == "derived"_L1)
        return derivedField(tokens, draft);
    if (head == "absorptivity_L_per_mol_cm"_L1)
        return absorptivityField(tokens, draft);
    if (head == part::sample || head == part::diluent || head == part::starter)
        return partField(head, draft);
    if (head == "samplePreparation"_L1) {
        // Only what is written is in the document.
        int written = -1;
        for (std::size_t i = 0; i < draft.preparation.size(); ++i) {
            written += draft.preparation[i].trimmed().isEmpty() ? 0 : 1;
            if (written == row)
                return {Section::Text, u"preparation%1"_s.arg(i)};
        }
    }
    if (QStringList{u"principle"_s, u"reactions"_s, u"interferences"_s, u"cautions"_s}.contains(head))
        return {Section::Text, head};
    return {Section::Measures, u"methodName"_s};
}

} // namespace plateau::ui
