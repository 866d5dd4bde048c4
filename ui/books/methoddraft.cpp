// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methoddraft.h"

#include "ui/shared/keyednumber.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct MethodDraftWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodDraft)
};

QString text(double value)
{
    return keyedText(value);
}

QString text(const std::optional<double> &value)
{
    return value ? text(*value) : QString();
}

/// In lower case, umlauts and ligatures as two letters: Säure is saeure, cœur is coeur. Accents stay.
QString spelledOut(const QString &name)
{
    const QString letters = name.normalized(QString::NormalizationForm_C).toLower();
    QString spelled;
    for (qsizetype at = 0; at < letters.size(); ++at) {
        switch (letters[at].unicode()) {
        case u'ä':
        case u'æ':
            spelled += u"ae"_s;
            break;
        case u'ö':
        case u'œ':
            spelled += u"oe"_s;
            break;
        case u'ü': {
            // Spanish only says by it that the u is spoken: pingüino.
            const bool isSpoken = at > 0 && letters[at - 1] == u'g' && at + 1 < letters.size() &&
                                  u"eiéí"_s.contains(letters[at + 1]);
            spelled += isSpoken ? u"u"_s : u"ue"_s;
            break;
        }
        case u'ß':
            spelled += u"ss"_s;
            break;
        case u'ø':
            spelled += u'o';
            break;
        default:
            spelled += letters[at];
        }
    }
    return spelled;
}

/// To fifteen figures, so that 0.07 becomes 7 and back again.
QString percentText(double fraction)
{
    return text(QString::number(fraction * 100, 'g', 15).toDouble());
}

std::array<QString, 2> texts(const std::optional<assay::Interval> &interval)
{
    if (!interval)
        return {};
    return {text(interval->lower), text(interval->upper)};
}

QString draftPartOf(const assay::Method &method, const QString &id)
{
    if (id == method.sample)
        return part::sample;
    if (id == method.diluent)
        return part::diluent;
    return id == method.starter ? part::starter : part::reagent;
}

CellRow row(const assay::Component &component, const QString &partPlayed)
{
    const auto range = texts(component.range_mL);
    return {component.id,
            {component.name, text(component.volume_mL), partPlayed, range[0], range[1],
             component.suspension ? u"1"_s : QString()}};
}

CellRow row(const assay::Step &step, const QString &key)
{
    CellRow row{key, std::vector<QString>(step::Count)};
    if (const auto *add = std::get_if<assay::AddStep>(&step)) {
        row.cells[step::Kind] = step::add;
        row.cells[step::Component] = add->component;
    } else if (const auto *wait = std::get_if<assay::WaitStep>(&step)) {
        const auto minutes = texts(wait->wait_min);
        const auto degrees = texts(wait->temperature_C);
        row.cells = {step::wait, {}, minutes[0], minutes[1], degrees[0], degrees[1], {}, {}};
    } else if (const auto *read = std::get_if<assay::ReadStep>(&step)) {
        row.cells[step::Kind] = step::read;
        row.cells[step::Reading] = read->reading;
    } else {
        row.cells[step::Kind] = step::mix;
    }
    return row;
}

CellRow row(const assay::Measurand &measurand)
{
    const auto range = texts(measurand.typicalRange_g_per_L);
    const bool coupled = std::holds_alternative<assay::CoupledIndicatorSignal>(measurand.signal);
    const std::vector<QString> readings = assay::readingsOf(measurand.signal);
    return {measurand.id,
            {measurand.name, text(measurand.molarMass_g_per_mol), text(measurand.chromophorePerMolecule),
             range[0], range[1], coupled ? measurand::coupled : measurand::difference, readings.front(),
             coupled ? readings[1] : QString(), readings.back()}};
}

LinesDraft lines(const std::vector<QString> &texts)
{
    return {QStringList(texts.begin(), texts.end()).join(u'\n'), texts};
}

void fillTables(const assay::Method &method, MethodDraft &draft)
{
    for (const auto &[wavelength_nm, value] : method.absorptivity_L_per_mol_cm)
        draft.absorptivities.push_back(
            {QString::number(wavelength_nm), {QString::number(wavelength_nm), text(value)}});
    for (const assay::Component &component : method.components)
        draft.components.push_back(row(component, draftPartOf(method, component.id)));
    for (std::size_t i = 0; i < method.steps.size(); ++i)
        draft.steps.push_back(row(method.steps[i], QString::number(i)));
    for (const assay::Measurand &measurand : method.measurands)
        draft.measurands.push_back(row(measurand));
    for (const assay::Derived &derived : method.derived) {
        for (const assay::DerivedTerm &term : derived.terms)
            draft.derived.push_back(
                {derived.id, {derived.name, term.method, term.measurand, text(term.factor)}});
    }
}

void fillLimits(const assay::Method &method, MethodDraft &draft)
{
    draft.minSignal = text(method.window.minSignal);
    draft.maxSignal = text(method.window.maxSignal);
    draft.maxAbsorbance = text(method.window.maxAbsorbance);
    draft.reserveAbsorbance = text(method.window.reserveAbsorbance);
    const assay::Acceptance &acceptance = method.acceptance;
    draft.maxBlankSignal = text(acceptance.maxBlankSignal);
    draft.standardRecovery_percent = texts(acceptance.standardRecovery_percent);
    draft.spikeRecovery_percent = texts(acceptance.spikeRecovery_percent);
    if (acceptance.repeatability) {
        draft.repeatabilityConstant_g_per_L = text(acceptance.repeatability->constant_g_per_L);
        draft.repeatabilityProportional_percent = percentText(acceptance.repeatability->proportional);
    }
    if (method.standard) {
        draft.standard_g_per_L = text(method.standard->concentration_g_per_L);
        if (method.standard->lossPerHour)
            draft.standardLoss_percent_per_h = percentText(*method.standard->lossPerHour);
    }
    if (method.extrapolate) {
        draft.extrapolatedReading = method.extrapolate->reading;
        draft.lastReadings = QString::number(method.extrapolate->lastReadings);
    }
}

CellRow newRow(int number, std::vector<QString> cells)
{
    return {u"\u0001start%1"_s.arg(number), std::move(cells)};
}

} // namespace

MethodDraft draftOf(const assay::Method &method)
{
    MethodDraft draft;
    draft.id = method.id;
    draft.version = method.version;
    draft.name = method.name;
    draft.source = method.source;
    draft.principle = method.principle;
    draft.chromophore = method.chromophore;
    draft.wavelength_nm = QString::number(method.wavelength_nm);
    draft.pathLength_mm = text(method.pathLength_mm);
    draft.direction = method.direction == assay::Direction::Rising ? u"rising"_s : u"falling"_s;
    draft.volumeCorrection =
        method.volumeCorrection == assay::VolumeCorrection::None ? u"none"_s : u"toFinalVolume"_s;
    fillTables(method, draft);
    fillLimits(method, draft);
    draft.reactions = lines(method.reactions);
    draft.interferences = lines(method.interferences);
    draft.cautions = lines(method.cautions);
    if (method.tubes)
        draft.usualTubes = {QString::number(method.tubes->blanks), QString::number(method.tubes->replicates),
                            QString::number(method.tubes->standards)};
    for (const assay::Preparation &preparation : method.samplePreparation)
        draft.preparation[static_cast<std::size_t>(preparation.matrix)] = preparation.text;
    return draft;
}

MethodDraft newMethodDraft()
{
    MethodDraft draft;
    draft.chromophore = u"NADH"_s;
    draft.wavelength_nm = u"340"_s;
    draft.pathLength_mm = u"10"_s;
    draft.direction = u"rising"_s;
    draft.volumeCorrection = u"none"_s;
    assay::Method coenzyme;
    coenzyme.chromophore = draft.chromophore;
    draft.absorptivities = {newRow(1, {u"340"_s, text(assay::absorptivity(coenzyme, 340))})};
    draft.components = {newRow(1, {MethodDraftWords::tr("Water"), {}, part::diluent, {}, {}, {}}),
                        newRow(2, {MethodDraftWords::tr("Sample"), {}, part::sample, {}, {}, {}}),
                        newRow(3, {MethodDraftWords::tr("Starter"), {}, part::starter, {}, {}, {}})};
    draft.measurands = {newRow(1, {{}, {}, u"1"_s, {}, {}, measurand::difference, u"A1"_s, {}, u"A2"_s})};
    return draft;
}

QString idFrom(const QString &name)
{
    QString id;
    for (const QChar character : spelledOut(name).normalized(QString::NormalizationForm_KD).toLower()) {
        if (character.isLetterOrNumber())
            id += character;
        else if (!character.isMark() && !id.isEmpty() && !id.endsWith(u'-'))
            id += u'-';
    }
    id.truncate(60);
    while (id.endsWith(u'-'))
        id.chop(1);
    return id;
}

} // namespace plateau::ui
