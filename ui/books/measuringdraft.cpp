// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratoryparts.h"
#include "ui/books/lotwords.h"

#include <array>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using assay::pointerTo;
using planning::MethodUncertainty;
using planning::Photometer;

namespace {

struct Number {
    int column;
    std::optional<double> MethodUncertainty::*member;
    QString key;
};

const std::array<Number, 7> &numbers()
{
    using namespace methodUncertainty;
    static const std::array<Number, 7> list{{
        {Absorbance, &MethodUncertainty::absorbance, u"absorbance"_s},
        {Absorptivity_percent, &MethodUncertainty::absorptivity_percent, u"absorptivity_percent"_s},
        {PathLength_percent, &MethodUncertainty::pathLength_percent, u"pathLength_percent"_s},
        {TotalVolume_percent, &MethodUncertainty::totalVolume_percent, u"totalVolume_percent"_s},
        {SampleVolume_percent, &MethodUncertainty::sampleVolume_percent, u"sampleVolume_percent"_s},
        {Dilution_percent, &MethodUncertainty::dilution_percent, u"dilution_percent"_s},
        {Extract_percent, &MethodUncertainty::extract_percent, u"extract_percent"_s},
    }};
    return list;
}

bool isBlank(const PhotometerDraft &draft)
{
    for (const QString *text :
         {&draft.name, &draft.absorbance, &draft.pathLength_percent, &draft.source, &draft.checkedOn}) {
        if (!text->trimmed().isEmpty())
            return false;
    }
    return true;
}

Photometer photometerOf(const PhotometerDraft &draft, const std::optional<Photometer> &kept,
                        const LaboratoryReader &reader)
{
    const QString pointer = u"/photometer"_s;
    const Photometer before = kept.value_or(Photometer{});
    Photometer read;
    read.name = draft.name.trimmed();
    read.absorbance =
        reader.keptOptional(draft.absorbance, before.absorbance, pointerTo(pointer, u"absorbance"_s));
    read.pathLength_percent = reader.keptOptional(draft.pathLength_percent, before.pathLength_percent,
                                                  pointerTo(pointer, u"pathLength_percent"_s));
    read.source = draft.source.trimmed();
    if (draft.checkedOn.trimmed().isEmpty())
        return read;
    const auto day = parseDay(draft.checkedOn);
    if (const DayFault *fault = std::get_if<DayFault>(&day))
        reader.complain(pointerTo(pointer, u"checkedOn"_s), dayFaultSentence(*fault));
    else
        read.checkedOn = std::get<QDate>(day);
    return read;
}

MethodUncertainty uncertaintyOf(const CellRow &row, const MethodUncertainty *kept, const QString &pointer,
                                const LaboratoryReader &reader)
{
    MethodUncertainty read;
    read.method = cell(row, methodUncertainty::Method);
    read.source = cell(row, methodUncertainty::Source).trimmed();
    for (const Number &number : numbers())
        read.*number.member =
            reader.keptOptional(cell(row, number.column), kept ? kept->*number.member : std::nullopt,
                                pointerTo(pointer, number.key));
    return read;
}

} // namespace

void draftMeasuring(const planning::Laboratory &laboratory, LaboratoryDraft &draft)
{
    if (const std::optional<Photometer> &photometer = laboratory.photometer)
        draft.photometer = {photometer->name, optionalText(photometer->absorbance),
                            optionalText(photometer->pathLength_percent), photometer->source,
                            dayText(photometer->checkedOn)};
    for (const MethodUncertainty &each : laboratory.methodUncertainties) {
        CellRow row{each.method, std::vector<QString>(methodUncertainty::ColumnCount)};
        row.cells[methodUncertainty::Method] = each.method;
        row.cells[methodUncertainty::Source] = each.source;
        for (const Number &number : numbers())
            row.cells[static_cast<std::size_t>(number.column)] = optionalText(each.*number.member);
        draft.methodUncertainties.push_back(std::move(row));
    }
}

void readMeasuring(const LaboratoryDraft &draft, const planning::Laboratory &kept,
                   const LaboratoryReader &reader, planning::Laboratory &laboratory)
{
    laboratory.photometer.reset();
    if (!isBlank(draft.photometer))
        laboratory.photometer = photometerOf(draft.photometer, kept.photometer, reader);
    laboratory.methodUncertainties.clear();
    for (std::size_t i = 0; i < draft.methodUncertainties.size(); ++i) {
        const CellRow &row = draft.methodUncertainties[i];
        laboratory.methodUncertainties.push_back(
            uncertaintyOf(row, findKept(kept.methodUncertainties, &MethodUncertainty::method, row.key),
                          pointerTo(u"/methodUncertainties"_s, static_cast<qsizetype>(i)), reader));
    }
}

} // namespace plateau::ui
