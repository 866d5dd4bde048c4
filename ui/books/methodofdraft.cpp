// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methoddraft.h"

#include "core/assay/soundness.h"
#include "ui/books/draftreader.h"

#include <algorithm>
#include <limits>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using assay::pointerTo;

QString at(const QString &list, std::size_t index)
{
    return pointerTo(u'/' + list, static_cast<qsizetype>(index));
}

const CellRow *findRow(const std::vector<CellRow> &rows, const QString &key)
{
    const auto found = std::ranges::find(rows, key, &CellRow::key);
    return found == rows.end() ? nullptr : &*found;
}

void readComponents(const MethodDraft &draft, const std::vector<QString> &ids, const DraftReader &reader,
                    assay::Method &method)
{
    for (std::size_t i = 0; i < draft.components.size(); ++i) {
        const std::vector<QString> &cells = draft.components[i].cells;
        const QString pointer = at(u"components"_s, i);
        assay::Component component;
        component.id = ids[i];
        component.name = cells[component::Name].trimmed();
        component.volume_mL = reader.number(cells[component::Volume_mL], pointerTo(pointer, u"volume_mL"_s));
        component.range_mL = reader.interval(cells[component::From_mL], cells[component::To_mL],
                                             pointerTo(pointer, u"range_mL"_s));
        component.suspension = !cells[component::Suspension].isEmpty();
        const QString &played = cells[component::Part];
        if (played == part::sample)
            method.sample = component.id;
        else if (played == part::diluent)
            method.diluent = component.id;
        else if (played == part::starter)
            method.starter = component.id;
        method.components.push_back(std::move(component));
    }
}

assay::Step stepOf(const MethodDraft &draft, const std::vector<QString> &componentIds, std::size_t index,
                   const DraftReader &reader)
{
    const std::vector<QString> &cells = draft.steps[index].cells;
    const QString pointer = at(u"steps"_s, index);
    const QString &kind = cells[step::Kind];
    if (kind == step::add) {
        const CellRow *added = findRow(draft.components, cells[step::Component]);
        if (!added) {
            reader.complain(pointerTo(pointer, u"add"_s), DraftReader::nothingAdded());
            return assay::AddStep{};
        }
        return assay::AddStep{componentIds[static_cast<std::size_t>(added - draft.components.data())]};
    }
    if (kind == step::wait)
        return assay::WaitStep{
            reader.neededInterval(cells[step::From_min], cells[step::To_min],
                                  pointerTo(pointer, u"wait_min"_s)),
            reader.interval(cells[step::From_C], cells[step::To_C], pointerTo(pointer, u"temperature_C"_s))};
    if (kind == step::read)
        return assay::ReadStep{cells[step::Reading].trimmed()};
    return assay::MixStep{};
}

assay::Signal signalOf(const std::vector<QString> &cells)
{
    const QString first = cells[measurand::First].trimmed();
    const QString last = cells[measurand::Last].trimmed();
    if (cells[measurand::Signal] == measurand::coupled)
        return assay::CoupledIndicatorSignal{first, cells[measurand::Middle].trimmed(), last};
    return assay::DifferenceSignal{first, last};
}

void readMeasurands(const MethodDraft &draft, const std::vector<QString> &ids, const DraftReader &reader,
                    assay::Method &method)
{
    for (std::size_t i = 0; i < draft.measurands.size(); ++i) {
        const std::vector<QString> &cells = draft.measurands[i].cells;
        const QString pointer = at(u"measurands"_s, i);
        assay::Measurand measurand;
        measurand.id = ids[i];
        measurand.name = cells[measurand::Name].trimmed();
        measurand.molarMass_g_per_mol =
            reader.number(cells[measurand::MolarMass], pointerTo(pointer, u"molarMass_g_per_mol"_s));
        measurand.chromophorePerMolecule =
            reader.number(cells[measurand::PerMolecule], pointerTo(pointer, u"chromophorePerMolecule"_s));
        measurand.typicalRange_g_per_L =
            reader.interval(cells[measurand::From_g_per_L], cells[measurand::To_g_per_L],
                            pointerTo(pointer, u"typicalRange_g_per_L"_s));
        measurand.signal = signalOf(cells);
        method.measurands.push_back(std::move(measurand));
    }
}

void readDerived(const MethodDraft &draft, const DraftReader &reader, assay::Method &method)
{
    std::vector<CellRow> heads;
    for (const CellRow &row : draft.derived) {
        const QString name = row.cells[derived::Name].trimmed();
        const bool more = !heads.empty() && (name.isEmpty() || name == heads.back().cells[0].trimmed());
        if (!more)
            heads.push_back(row);
    }
    const std::vector<QString> ids = idsOf(heads);
    for (const CellRow &row : draft.derived) {
        const QString name = row.cells[derived::Name].trimmed();
        if (method.derived.empty() || !(name.isEmpty() || name == method.derived.back().name))
            method.derived.push_back({ids[method.derived.size()], name, {}});
        assay::Derived &quantity = method.derived.back();
        const QString pointer = pointerTo(pointerTo(at(u"derived"_s, method.derived.size() - 1), u"terms"_s),
                                          quantity.terms.size());
        assay::DerivedTerm term;
        term.method = row.cells[derived::Method].trimmed();
        term.measurand = row.cells[derived::Measurand].trimmed();
        const CellRow *own = findRow(draft.measurands, term.measurand);
        if (term.method.isEmpty() && own)
            term.measurand = method.measurands[static_cast<std::size_t>(own - draft.measurands.data())].id;
        term.factor = reader.number(row.cells[derived::Factor], pointerTo(pointer, u"factor"_s));
        quantity.terms.push_back(std::move(term));
    }
}

void readAbsorptivities(const MethodDraft &draft, const DraftReader &reader, assay::Method &method)
{
    for (const CellRow &row : draft.absorptivities) {
        const QString wavelength = row.cells[absorptivity::Wavelength_nm].trimmed();
        const QString pointer = pointerTo(u"/absorptivity_L_per_mol_cm"_s, wavelength);
        const int wavelength_nm = reader.whole(wavelength, pointer);
        const double value = reader.number(row.cells[absorptivity::Value], pointer);
        if (!method.absorptivity_L_per_mol_cm.emplace(wavelength_nm, value).second)
            reader.complain(pointer, DraftReader::wavelengthTwice());
    }
}

void readLimits(const MethodDraft &draft, const DraftReader &reader, assay::Method &method)
{
    method.window = {reader.number(draft.minSignal, u"/window/minSignal"_s),
                     reader.number(draft.maxSignal, u"/window/maxSignal"_s),
                     reader.optionalNumber(draft.maxAbsorbance, u"/window/maxAbsorbance"_s),
                     reader.optionalNumber(draft.reserveAbsorbance, u"/window/reserveAbsorbance"_s)};
    assay::Acceptance &acceptance = method.acceptance;
    acceptance.maxBlankSignal = reader.optionalNumber(draft.maxBlankSignal, u"/acceptance/maxBlankSignal"_s);
    acceptance.standardRecovery_percent =
        reader.interval(draft.standardRecovery_percent[0], draft.standardRecovery_percent[1],
                        u"/acceptance/standardRecovery_percent"_s);
    acceptance.spikeRecovery_percent =
        reader.interval(draft.spikeRecovery_percent[0], draft.spikeRecovery_percent[1],
                        u"/acceptance/spikeRecovery_percent"_s);
    const auto constant = reader.optionalNumber(draft.repeatabilityConstant_g_per_L,
                                                u"/acceptance/repeatability/constant_g_per_L"_s);
    const auto proportional = reader.optionalFraction(draft.repeatabilityProportional_percent,
                                                      u"/acceptance/repeatability/proportional"_s);
    if (constant || proportional)
        acceptance.repeatability = assay::Repeatability{constant.value_or(0), proportional.value_or(0)};
    const auto concentration =
        reader.optionalNumber(draft.standard_g_per_L, u"/standard/concentration_g_per_L"_s);
    const auto loss = reader.optionalFraction(draft.standardLoss_percent_per_h, u"/standard/lossPerHour"_s);
    if (concentration || loss)
        method.standard = assay::UsualStandard{concentration, loss};
    if (!draft.extrapolatedReading.isEmpty())
        method.extrapolate = assay::Extrapolation{
            draft.extrapolatedReading, reader.whole(draft.lastReadings, u"/extrapolate/lastReadings"_s)};
}

void readUsualTubes(const MethodDraft &draft, const DraftReader &reader, assay::Method &method)
{
    const auto &texts = draft.usualTubes;
    const bool none =
        std::all_of(texts.begin(), texts.end(), [](const QString &text) { return text.trimmed().isEmpty(); });
    if (!none)
        method.tubes = assay::UsualTubes{reader.whole(texts[0], u"/tubes/blanks"_s),
                                         reader.whole(texts[1], u"/tubes/replicates"_s),
                                         reader.whole(texts[2], u"/tubes/standards"_s)};
}

void readTexts(const MethodDraft &draft, assay::Method &method)
{
    method.reactions = linesOf(draft.reactions);
    method.interferences = linesOf(draft.interferences);
    method.cautions = linesOf(draft.cautions);
    for (std::size_t i = 0; i < draft.preparation.size(); ++i) {
        if (!draft.preparation[i].trimmed().isEmpty())
            method.samplePreparation.push_back({static_cast<assay::Matrix>(i), draft.preparation[i]});
    }
}

/// Of the window's ends, the smallest would be blamed for being larger than one that is not there.
assay::Problems problemsOf(assay::Method method, const DraftReader &reader)
{
    if (reader.hasComplainedOf(u"/window/maxSignal"_s))
        method.window.maxSignal = std::numeric_limits<double>::infinity();
    return assay::problemsOf(method);
}

} // namespace

MethodOutcome methodOf(const MethodDraft &draft)
{
    MethodOutcome outcome;
    const DraftReader reader(outcome.problems);
    assay::Method &method = outcome.method;
    method.id = draft.id.trimmed().isEmpty() ? idFrom(draft.name) : draft.id.trimmed();
    if (draft.id.trimmed().isEmpty() && draft.name.trimmed().isEmpty())
        method.id = u"unnamed"_s; // that the name is missing is said once
    method.version = draft.version;
    method.name = draft.name.trimmed();
    method.source = draft.source;
    method.principle = draft.principle;
    method.chromophore = draft.chromophore.trimmed();
    method.direction = draft.direction == "falling"_L1 ? assay::Direction::Falling : assay::Direction::Rising;
    method.volumeCorrection = draft.volumeCorrection == "toFinalVolume"_L1
                                  ? assay::VolumeCorrection::ToFinalVolume
                                  : assay::VolumeCorrection::None;
    method.wavelength_nm = reader.whole(draft.wavelength_nm, u"/wavelength_nm"_s);
    method.pathLength_mm = reader.number(draft.pathLength_mm, u"/pathLength_mm"_s);
    readAbsorptivities(draft, reader, method);
    const std::vector<QString> componentIds = idsOf(draft.components);
    readComponents(draft, componentIds, reader, method);
    for (std::size_t i = 0; i < draft.steps.size(); ++i)
        method.steps.push_back(stepOf(draft, componentIds, i, reader));
    readMeasurands(draft, idsOf(draft.measurands), reader, method);
    readDerived(draft, reader, method);
    readLimits(draft, reader, method);
    readUsualTubes(draft, reader, method);
    readTexts(draft, method);
    reader.addUnsaid(problemsOf(method, reader));
    return outcome;
}

} // namespace plateau::ui
