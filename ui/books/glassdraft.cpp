// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratoryparts.h"
#include "ui/shared/keyednumber.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

using assay::pointerTo;
using planning::Flask;
using planning::Pipette;

namespace {

template <class Piece> std::optional<double> uncertaintyOf(const Piece *kept)
{
    return kept ? std::optional(kept->uncertainty_percent) : std::nullopt;
}

Pipette pipetteOf(const CellRow &row, const Pipette *kept, const QString &pointer,
                  const LaboratoryReader &reader)
{
    const auto number = [&](int column, const QString &key) {
        return reader.number(cell(row, column), pointerTo(pointer, key));
    };
    Pipette read;
    read.name = cell(row, pipette::Name).trimmed();
    read.smallest_mL = number(pipette::Smallest_mL, u"smallest_mL"_s);
    read.largest_mL = number(pipette::Largest_mL, u"largest_mL"_s);
    read.step_mL =
        cell(row, pipette::Step_mL).trimmed().isEmpty() ? 0 : number(pipette::Step_mL, u"step_mL"_s);
    read.uncertainty_percent = reader.keptNumber(cell(row, pipette::Uncertainty_percent), uncertaintyOf(kept),
                                                 pointerTo(pointer, u"uncertainty_percent"_s));
    return read;
}

Flask flaskOf(const CellRow &row, const Flask *kept, const QString &pointer, const LaboratoryReader &reader)
{
    return {cell(row, flask::Name).trimmed(),
            reader.number(cell(row, flask::Volume_mL), pointerTo(pointer, u"volume_mL"_s)),
            reader.keptNumber(cell(row, flask::Uncertainty_percent), uncertaintyOf(kept),
                              pointerTo(pointer, u"uncertainty_percent"_s))};
}

QString place(const QString &list, std::size_t index)
{
    return pointerTo(u"/glassware/"_s + list, static_cast<qsizetype>(index));
}

} // namespace

void draftGlass(const planning::Laboratory &laboratory, LaboratoryDraft &draft)
{
    for (const Pipette &each : laboratory.glassware.pipettes)
        draft.pipettes.push_back({each.name,
                                  {each.name, keyedText(each.smallest_mL), keyedText(each.largest_mL),
                                   each.step_mL == 0 ? QString() : keyedText(each.step_mL),
                                   keyedText(threeFigures(each.uncertainty_percent))}});
    for (const Flask &each : laboratory.glassware.flasks)
        draft.flasks.push_back(
            {each.name, {each.name, keyedText(each.volume_mL), keyedText(threeFigures(each.uncertainty_percent))}});
}

void readGlass(const LaboratoryDraft &draft, const planning::Laboratory &kept, const LaboratoryReader &reader,
               planning::Laboratory &laboratory)
{
    laboratory.glassware = {};
    for (std::size_t i = 0; i < draft.pipettes.size(); ++i) {
        const CellRow &row = draft.pipettes[i];
        laboratory.glassware.pipettes.push_back(
            pipetteOf(row, findKept(kept.glassware.pipettes, &Pipette::name, row.key),
                      place(u"pipettes"_s, i), reader));
    }
    for (std::size_t i = 0; i < draft.flasks.size(); ++i) {
        const CellRow &row = draft.flasks[i];
        laboratory.glassware.flasks.push_back(flaskOf(
            row, findKept(kept.glassware.flasks, &Flask::name, row.key), place(u"flasks"_s, i), reader));
    }
}

} // namespace plateau::ui
