// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratorydraft.h"

#include "core/evaluation/format.h"
#include "core/exchange/decimal.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LaboratoryDraft)
};

using assay::pointerTo;
using evaluation::plainText;

/// Uncertainties come from divisions: three figures tell all there is to know of them.
QString percentText(double percent)
{
    const double magnitude = percent > 0 ? std::pow(10, 2 - std::floor(std::log10(percent))) : 1;
    return plainText(std::round(percent * magnitude) / magnitude);
}

class Reader
{
public:
    explicit Reader(assay::Problems &problems)
        : m_problems(problems)
    {
    }

    double number(const QString &text, const QString &pointer) const
    {
        const auto parsed = exchange::parseDecimal(text);
        if (const double *value = std::get_if<double>(&parsed))
            return *value;
        m_problems.push_back(assay::error(
            pointer,
            text.trimmed().isEmpty()
                ? Words::tr("a number is needed here")
                : Words::tr("\"%1\" is no number. %2")
                      .arg(text, exchange::faultSentence(std::get<exchange::DecimalFault>(parsed)))));
        return std::numeric_limits<double>::quiet_NaN();
    }

    int whole(const QString &text, const QString &pointer) const
    {
        const double value = number(text, pointer);
        constexpr double most = 1e6;
        if (std::isnan(value))
            return 0;
        if (value == std::floor(value) && std::abs(value) <= most)
            return static_cast<int>(value);
        m_problems.push_back(assay::error(pointer, Words::tr("must be a whole number, not %1").arg(text)));
        return 0;
    }

private:
    assay::Problems &m_problems;
};

bool isAt(const QString &pointer, const assay::Problem &problem)
{
    return problem.pointer == pointer || problem.pointer.startsWith(pointer + u'/');
}

/// Of a place that cannot be read, what its stand-in would say is left out.
void addMeaning(const planning::Laboratory &laboratory, assay::Problems &problems)
{
    const assay::Problems typed = problems;
    for (const assay::Problem &problem : planning::problemsOf(laboratory)) {
        const bool unread = std::any_of(typed.begin(), typed.end(), [&](const assay::Problem &other) {
            const qsizetype row = other.pointer.lastIndexOf(u'/');
            // In the tables a row's columns are judged together.
            const bool sameRow = other.pointer.startsWith(u"/glassware/"_s) &&
                                 problem.pointer.startsWith(other.pointer.left(row) + u'/') &&
                                 !problem.pointer.endsWith(u"/name"_s);
            return isAt(other.pointer, problem) || sameRow;
        });
        if (!unread)
            problems.push_back(problem);
    }
}

/// The piece of that name when the draft was made; rows keep that as their key.
template <class Piece> const Piece *findKept(const std::vector<Piece> &pieces, const QString &key)
{
    const auto found =
        std::find_if(pieces.begin(), pieces.end(), [&key](const Piece &piece) { return piece.name == key; });
    return found == pieces.end() ? nullptr : &*found;
}

template <class Piece>
double uncertaintyOf(const QString &text, const Piece *kept, const QString &pointer, const Reader &reader)
{
    if (kept && text == percentText(kept->uncertainty_percent))
        return kept->uncertainty_percent;
    return reader.number(text, pointerTo(pointer, u"uncertainty_percent"_s));
}

planning::Pipette pipetteOf(const std::vector<QString> &cells, const planning::Pipette *kept,
                            const QString &pointer, const Reader &reader)
{
    planning::Pipette read;
    read.name = cells[pipette::Name].trimmed();
    read.smallest_mL = reader.number(cells[pipette::Smallest_mL], pointerTo(pointer, u"smallest_mL"_s));
    read.largest_mL = reader.number(cells[pipette::Largest_mL], pointerTo(pointer, u"largest_mL"_s));
    read.step_mL = cells[pipette::Step_mL].trimmed().isEmpty()
                       ? 0
                       : reader.number(cells[pipette::Step_mL], pointerTo(pointer, u"step_mL"_s));
    read.uncertainty_percent = uncertaintyOf(cells[pipette::Uncertainty_percent], kept, pointer, reader);
    return read;
}

planning::Flask flaskOf(const std::vector<QString> &cells, const planning::Flask *kept,
                        const QString &pointer, const Reader &reader)
{
    return {cells[flask::Name].trimmed(),
            reader.number(cells[flask::Volume_mL], pointerTo(pointer, u"volume_mL"_s)),
            uncertaintyOf(cells[flask::Uncertainty_percent], kept, pointer, reader)};
}

LaboratoryField glassField(const QStringList &tokens)
{
    const bool isPipette = tokens.value(1) == u"pipettes"_s;
    LaboratoryField field{isPipette ? u"pipettes"_s : u"flasks"_s, -1, 0, {}};
    if (tokens.size() < 3) {
        field.words = isPipette ? Words::tr("Pipettes") : Words::tr("Flasks");
        return field;
    }
    field.row = tokens[2].toInt();
    const QStringList keys = isPipette ? QStringList{u"name"_s, u"smallest_mL"_s, u"largest_mL"_s,
                                                     u"step_mL"_s, u"uncertainty_percent"_s}
                                       : QStringList{u"name"_s, u"volume_mL"_s, u"uncertainty_percent"_s};
    const QStringList names =
        isPipette ? QStringList{Words::tr("name"), Words::tr("smallest volume"), Words::tr("largest volume"),
                                Words::tr("step"), Words::tr("uncertainty")}
                  : QStringList{Words::tr("name"), Words::tr("volume"), Words::tr("uncertainty")};
    const qsizetype column = std::max<qsizetype>(0, keys.indexOf(tokens.value(3)));
    field.column = static_cast<int>(column);
    field.words = (isPipette ? Words::tr("Pipette %1, %2") : Words::tr("Flask %1, %2"))
                      .arg(QString::number(field.row + 1), names[column]);
    return field;
}

} // namespace

LaboratoryDraft draftOf(const planning::Laboratory &laboratory)
{
    LaboratoryDraft draft{laboratory.name,
                          QString::number(laboratory.rackRows),
                          QString::number(laboratory.rackColumns),
                          plainText(laboratory.handling.addition_s),
                          plainText(laboratory.handling.mix_s),
                          plainText(laboratory.handling.reading_s),
                          plainText(laboratory.overage_percent),
                          {},
                          {}};
    for (const planning::Pipette &each : laboratory.glassware.pipettes)
        draft.pipettes.push_back({each.name,
                                  {each.name, plainText(each.smallest_mL), plainText(each.largest_mL),
                                   each.step_mL == 0 ? QString() : plainText(each.step_mL),
                                   percentText(each.uncertainty_percent)}});
    for (const planning::Flask &each : laboratory.glassware.flasks)
        draft.flasks.push_back(
            {each.name, {each.name, plainText(each.volume_mL), percentText(each.uncertainty_percent)}});
    return draft;
}

LaboratoryOutcome laboratoryOf(const LaboratoryDraft &draft, const planning::Laboratory &kept)
{
    LaboratoryOutcome outcome;
    const Reader reader(outcome.problems);
    planning::Laboratory &laboratory = outcome.laboratory;
    laboratory = kept; // what the form does not show stays as it was
    laboratory.name = draft.name.trimmed();
    laboratory.rackRows = reader.whole(draft.rackRows, u"/rackRows"_s);
    laboratory.rackColumns = reader.whole(draft.rackColumns, u"/rackColumns"_s);
    laboratory.handling.addition_s = reader.number(draft.addition_s, u"/handling/addition_s"_s);
    laboratory.handling.mix_s = reader.number(draft.mix_s, u"/handling/mix_s"_s);
    laboratory.handling.reading_s = reader.number(draft.reading_s, u"/handling/reading_s"_s);
    laboratory.overage_percent = reader.number(draft.overage_percent, u"/overage_percent"_s);
    laboratory.glassware = {};
    const auto place = [](const QString &list, std::size_t index) {
        return pointerTo(u"/glassware/"_s + list, static_cast<qsizetype>(index));
    };
    for (std::size_t i = 0; i < draft.pipettes.size(); ++i) {
        const CellRow &row = draft.pipettes[i];
        laboratory.glassware.pipettes.push_back(pipetteOf(
            row.cells, findKept(kept.glassware.pipettes, row.key), place(u"pipettes"_s, i), reader));
    }
    for (std::size_t i = 0; i < draft.flasks.size(); ++i) {
        const CellRow &row = draft.flasks[i];
        laboratory.glassware.flasks.push_back(
            flaskOf(row.cells, findKept(kept.glassware.flasks, row.key), place(u"flasks"_s, i), reader));
    }
    addMeaning(laboratory, outcome.problems);
    return outcome;
}

LaboratoryField laboratoryField(const QString &pointer)
{
    const QStringList tokens = pointer.split(u'/', Qt::SkipEmptyParts);
    const QString first = tokens.value(0);
    if (first == u"glassware"_s)
        return glassField(tokens);
    if (first == u"rackRows"_s)
        return {u"rackRows"_s, -1, 0, Words::tr("Rows of a rack")};
    if (first == u"rackColumns"_s)
        return {u"rackColumns"_s, -1, 0, Words::tr("Columns of a rack")};
    if (first == u"overage_percent"_s)
        return {u"overage"_s, -1, 0, Words::tr("Reagent beyond the need")};
    if (tokens.value(1) == u"addition_s"_s)
        return {u"additionTime"_s, -1, 0, Words::tr("Time for an addition")};
    if (tokens.value(1) == u"mix_s"_s)
        return {u"mixTime"_s, -1, 0, Words::tr("Time to mix")};
    if (tokens.value(1) == u"reading_s"_s)
        return {u"readingTime"_s, -1, 0, Words::tr("Time for a reading")};
    return {u"laboratoryName"_s, -1, 0, Words::tr("Name")};
}

} // namespace plateau::ui
