// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/protocol.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/equipment/photometric.h"
#include "core/equipment/series.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::equipment {

using namespace Qt::StringLiterals;
using assay::error;
using assay::pointerTo;

namespace {

struct ChecksoundnessWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::equipment::Protocol)
};

void checkConditions(const Protocol &protocol, const Check &check, assay::Problems &problems)
{
    for (const ProtocolField &field : protocol.fields) {
        const QString pointer = pointerTo(u"/conditions"_s, field.key);
        const auto found = check.conditions.find(field.key);
        if (found != check.conditions.end())
            assay::checkWithin(problems, pointer, found->second, field.lowest, field.highest, field.unit);
        else if (field.needed)
            problems.push_back(error(pointer, ChecksoundnessWording::tr("is missing; key a number")));
    }
    for (const auto &[key, value] : check.conditions) {
        if (std::ranges::find(protocol.fields, key, &ProtocolField::key) == protocol.fields.end())
            problems.push_back(error(pointerTo(u"/conditions"_s, key),
                                     ChecksoundnessWording::tr("is not a number of this check")));
    }
}

/// False where the rows are not those of the protocol at all.
bool checkRows(const Protocol &protocol, const Check &check, assay::Problems &problems)
{
    const auto sameShape = [&](const auto &row) { return row.size() == protocol.columns.size(); };
    if (check.rows.size() != protocol.rows.size() || !std::ranges::all_of(check.rows, sameShape)) {
        problems.push_back(error(u"/rows"_s, ChecksoundnessWording::tr("are not the rows of this check")));
        return false;
    }
    for (std::size_t row = 0; row < check.rows.size(); ++row) {
        for (std::size_t column = 0; column < protocol.columns.size(); ++column) {
            const ProtocolColumn &asked = protocol.columns[column];
            const auto &value = check.rows[row][column];
            const QString pointer = pointerTo(pointerTo(u"/rows"_s, qsizetype(row)), qsizetype(column));
            if (asked.given && value != protocol.rows[row][column])
                problems.push_back(
                    error(pointer, ChecksoundnessWording::tr("is given and cannot be another")));
            else if (value)
                assay::checkWithin(problems, pointer, *value, asked.lowest, asked.highest, asked.unit);
        }
    }
    return true;
}

void wantAtLeast(int found, int wanted, const QString &sentence, assay::Problems &problems)
{
    if (found < wanted)
        problems.push_back(error(u"/rows"_s, sentence.arg(wanted).arg(found)));
}

void checkPiston(const Check &check, assay::Problems &problems)
{
    const std::vector<VolumeSeries> all = volumeSeries(check);
    if (all.empty() || all.front().masses.empty()) {
        problems.push_back(error(
            u"/rows"_s, ChecksoundnessWording::tr("hold no weighing of the largest volume; ten are needed")));
        return;
    }
    for (const VolumeSeries &series : all) {
        if (!series.masses.empty() && int(series.masses.size()) < weighingsOfAVolume)
            problems.push_back(
                error(u"/rows"_s, ChecksoundnessWording::tr("hold %1 of %2 weighings of %3 µL; key the "
                                                            "others, or leave this volume out")
                                      .arg(series.masses.size())
                                      .arg(weighingsOfAVolume)
                                      .arg(assay::shown(series.set))));
    }
}

void checkDichromate(const Check &check, assay::Problems &problems)
{
    bool weak = false;
    bool strong = false;
    for (std::size_t i = 0; i < dichromateBands().size(); ++i) {
        if (check.rows[i][1])
            (dichromateBands()[i].strong ? strong : weak) = true;
    }
    const auto want = [&](bool read, const QString &key) {
        if (read && !check.conditions.contains(key))
            problems.push_back(
                error(pointerTo(u"/conditions"_s, key),
                      ChecksoundnessWording::tr("is missing, though that solution was read; key it")));
    };
    want(weak, u"weak_mg_per_L"_s);
    want(strong, u"strong_mg_per_L"_s);
    wantAtLeast(weak + strong, 1,
                ChecksoundnessWording::tr("hold no absorbance; key at least %1 (found: %2)"), problems);
}

void checkPairs(const Check &check, std::size_t first, const QString &sentence, assay::Problems &problems)
{
    int pairs = 0;
    for (std::size_t row = 0; row < check.rows.size(); ++row) {
        const auto &cells = check.rows[row];
        if (cells[first].has_value() != cells[first + 1].has_value())
            problems.push_back(error(
                pointerTo(pointerTo(u"/rows"_s, qsizetype(row)), qsizetype(cells[first] ? first + 1 : first)),
                ChecksoundnessWording::tr("is missing; key both numbers of the line, or neither")));
        else if (cells[first])
            ++pairs;
    }
    wantAtLeast(pairs, 1, sentence, problems);
}

void checkEnough(const Item &item, const Check &check, assay::Problems &problems)
{
    switch (check.aspect) {
    case Aspect::Volume:
        if (item.kind == Kind::PistonPipette)
            checkPiston(check, problems);
        else
            wantAtLeast(int(columnOf(check, 0).size()), leastFillings,
                        ChecksoundnessWording::tr("need at least %1 weighings; there are %2"), problems);
        break;
    case Aspect::Wavelength:
        wantAtLeast(int(columnOf(check, 1).size()), 1,
                    ChecksoundnessWording::tr("hold no wavelength found; key at least %1 (found: %2)"),
                    problems);
        break;
    case Aspect::Absorbance:
        checkDichromate(check, problems);
        break;
    case Aspect::Noise: {
        wantAtLeast(int(columnOf(check, 0).size()), leastRepeats,
                    ChecksoundnessWording::tr("need at least %1 readings of the zero; there are %2"),
                    problems);
        const auto coloured = int(columnOf(check, 1).size());
        if (coloured > 0)
            wantAtLeast(coloured, leastRepeats,
                        ChecksoundnessWording::tr(
                            "need at least %1 readings of the coloured cuvette, or none; there are "
                            "%2"),
                        problems);
        break;
    }
    case Aspect::Weighing:
        wantAtLeast(int(columnOf(check, 0).size()), leastRepeats,
                    ChecksoundnessWording::tr("need at least %1 weighings of the one load; there are %2"),
                    problems);
        checkPairs(check, 1,
                   ChecksoundnessWording::tr("need at least %1 weight with what was shown; there are %2"),
                   problems);
        break;
    case Aspect::Temperature:
        checkPairs(
            check, 0,
            ChecksoundnessWording::tr("need at least %1 temperature with what was shown; there are %2"),
            problems);
        break;
    case Aspect::Match:
        wantAtLeast(int(columnOf(check, 0).size()), 2,
                    ChecksoundnessWording::tr("need at least %1 cuvettes; there are %2"), problems);
        break;
    }
}

} // namespace

assay::Problems problemsOf(const Item &item, const Check &check, const QDate &today)
{
    assay::Problems problems;
    const std::vector<Aspect> possible = aspectsOf(item.kind);
    if (std::ranges::find(possible, check.aspect) == possible.end()) {
        problems.push_back(
            error(u"/aspect"_s,
                  ChecksoundnessWording::tr("is not something checked on a %1").arg(kindName(item.kind))));
        return problems;
    }
    if (!check.day.isValid() || check.day > today || check.day.year() < 1900)
        problems.push_back(
            error(u"/day"_s, ChecksoundnessWording::tr("must be a real date that is not in the future")));
    const Protocol protocol = protocolFor(item, check.aspect);
    checkConditions(protocol, check, problems);
    if (checkRows(protocol, check, problems))
        checkEnough(item, check, problems);
    assay::checkProse(problems, u"/source"_s, check.source, ChecksoundnessWording::tr("the source"));
    assay::checkProse(problems, u"/note"_s, check.note, ChecksoundnessWording::tr("the note"));
    return problems;
}

} // namespace plateau::equipment
