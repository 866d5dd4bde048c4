// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratoryplaces.h"

#include "ui/books/laboratorydraft.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct LaboratoryPlacesWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LaboratoryPlaces)
};

struct TableColumn {
    QString key;
    int column;
    QString words;
};

/// A list of the document that stands in a table.
struct TablePlace {
    QString pointer;
    LaboratoryPart part;
    QString objectName;
    QString words;
    /// "Pipette %1"
    QString rowWords;
    std::vector<TableColumn> columns;
};

const std::vector<TablePlace> &tables()
{
    static const std::vector<TablePlace> list{
        {u"/glassware/pipettes"_s,
         LaboratoryPart::Glass,
         u"pipettes"_s,
         LaboratoryPlacesWords::tr("Pipettes"),
         LaboratoryPlacesWords::tr("Pipette %1"),
         {{u"name"_s, pipette::Name, LaboratoryPlacesWords::tr("name")},
          {u"smallest_mL"_s, pipette::Smallest_mL, LaboratoryPlacesWords::tr("smallest volume")},
          {u"largest_mL"_s, pipette::Largest_mL, LaboratoryPlacesWords::tr("largest volume")},
          {u"step_mL"_s, pipette::Step_mL, LaboratoryPlacesWords::tr("step")},
          {u"uncertainty_percent"_s, pipette::Uncertainty_percent,
           LaboratoryPlacesWords::tr("uncertainty")}}},
        {u"/glassware/flasks"_s,
         LaboratoryPart::Glass,
         u"flasks"_s,
         LaboratoryPlacesWords::tr("Flasks"),
         LaboratoryPlacesWords::tr("Flask %1"),
         {{u"name"_s, flask::Name, LaboratoryPlacesWords::tr("name")},
          {u"volume_mL"_s, flask::Volume_mL, LaboratoryPlacesWords::tr("volume")},
          {u"uncertainty_percent"_s, flask::Uncertainty_percent, LaboratoryPlacesWords::tr("uncertainty")}}},
        {u"/methodUncertainties"_s,
         LaboratoryPart::Methods,
         u"methodUncertainties"_s,
         LaboratoryPlacesWords::tr("Uncertainties by method"),
         LaboratoryPlacesWords::tr("Row %1"),
         {{u"method"_s, methodUncertainty::Method, LaboratoryPlacesWords::tr("method")},
          {u"absorbance"_s, methodUncertainty::Absorbance, LaboratoryPlacesWords::tr("reading")},
          {u"absorptivity_percent"_s, methodUncertainty::Absorptivity_percent,
           LaboratoryPlacesWords::tr("absorptivity")},
          {u"pathLength_percent"_s, methodUncertainty::PathLength_percent,
           LaboratoryPlacesWords::tr("path length")},
          {u"totalVolume_percent"_s, methodUncertainty::TotalVolume_percent,
           LaboratoryPlacesWords::tr("total volume")},
          {u"sampleVolume_percent"_s, methodUncertainty::SampleVolume_percent,
           LaboratoryPlacesWords::tr("sample volume")},
          {u"dilution_percent"_s, methodUncertainty::Dilution_percent,
           LaboratoryPlacesWords::tr("dilution step")},
          {u"extract_percent"_s, methodUncertainty::Extract_percent, LaboratoryPlacesWords::tr("extract")},
          {u"source"_s, methodUncertainty::Source, LaboratoryPlacesWords::tr("source")}}},
        {u"/reportUnits"_s,
         LaboratoryPart::Units,
         u"reportUnits"_s,
         LaboratoryPlacesWords::tr("Units of products"),
         LaboratoryPlacesWords::tr("Row %1"),
         {{u"product"_s, reportUnit::Product, LaboratoryPlacesWords::tr("product")},
          {u"measurand"_s, reportUnit::Measurand, LaboratoryPlacesWords::tr("measurand")},
          {u"unit"_s, reportUnit::Unit, LaboratoryPlacesWords::tr("unit")}}},
        {u"/review/rejectionReasons"_s,
         LaboratoryPart::Review,
         u"rejectionReasons"_s,
         LaboratoryPlacesWords::tr("Reasons"),
         LaboratoryPlacesWords::tr("Reason %1"),
         {}},
    };
    return list;
}

LaboratoryField fieldIn(const TablePlace &table, const QString &pointer)
{
    LaboratoryField field{table.part, table.objectName, -1, 0, table.words};
    const QStringList rest = pointer.mid(table.pointer.size()).split(u'/', Qt::SkipEmptyParts);
    if (rest.isEmpty())
        return field;
    field.row = rest[0].toInt();
    field.words = table.rowWords.arg(QString::number(field.row + 1));
    const auto column = std::ranges::find(table.columns, rest.value(1), &TableColumn::key);
    if (column == table.columns.end())
        return field;
    field.column = column->column;
    field.words = LaboratoryPlacesWords::tr("%1, %2").arg(field.words, column->words);
    return field;
}

struct SinglePlace {
    QString pointer;
    LaboratoryPart part;
    QString objectName;
    QString words;
};

const std::vector<SinglePlace> &singles()
{
    static const std::vector<SinglePlace> list{
        {u"/name"_s, LaboratoryPart::Head, u"laboratoryName"_s, LaboratoryPlacesWords::tr("Name")},
        {u"/reportHead/address"_s, LaboratoryPart::Head, u"laboratoryAddress"_s, LaboratoryPlacesWords::tr("Address")},
        {u"/reportHead/contact"_s, LaboratoryPart::Head, u"laboratoryContact"_s, LaboratoryPlacesWords::tr("Contact")},
        {u"/reportHead/logo"_s, LaboratoryPart::Head, u"loadLogo"_s, LaboratoryPlacesWords::tr("Logo")},
        {u"/rackRows"_s, LaboratoryPart::Rack, u"rackRows"_s, LaboratoryPlacesWords::tr("Rows of a rack")},
        {u"/rackColumns"_s, LaboratoryPart::Rack, u"rackColumns"_s, LaboratoryPlacesWords::tr("Columns of a rack")},
        {u"/handling/addition_s"_s, LaboratoryPart::Rack, u"additionTime"_s,
         LaboratoryPlacesWords::tr("Time for an addition")},
        {u"/handling/mix_s"_s, LaboratoryPart::Rack, u"mixTime"_s, LaboratoryPlacesWords::tr("Time to mix")},
        {u"/handling/reading_s"_s, LaboratoryPart::Rack, u"readingTime"_s, LaboratoryPlacesWords::tr("Time for a reading")},
        {u"/overage_percent"_s, LaboratoryPart::Rack, u"overage"_s, LaboratoryPlacesWords::tr("Reagent beyond the need")},
        {u"/photometer/name"_s, LaboratoryPart::Photometer, u"photometerName"_s,
         LaboratoryPlacesWords::tr("Photometer, name")},
        {u"/photometer/absorbance"_s, LaboratoryPart::Photometer, u"photometerAbsorbance"_s,
         LaboratoryPlacesWords::tr("Photometer, uncertainty of a reading")},
        {u"/photometer/pathLength_percent"_s, LaboratoryPart::Photometer, u"photometerPathLength"_s,
         LaboratoryPlacesWords::tr("Photometer, uncertainty of the path length")},
        {u"/photometer/source"_s, LaboratoryPart::Photometer, u"photometerSource"_s,
         LaboratoryPlacesWords::tr("Photometer, check record")},
        {u"/photometer/checkedOn"_s, LaboratoryPart::Photometer, u"photometerCheckedOn"_s,
         LaboratoryPlacesWords::tr("Photometer, checked on")},
    };
    return list;
}

} // namespace

bool isAtOrBelow(const QString &pointer, const QString &place)
{
    return pointer == place || pointer.startsWith(place + u'/');
}

LaboratoryField laboratoryField(const QString &pointer)
{
    for (const TablePlace &table : tables()) {
        if (isAtOrBelow(pointer, table.pointer))
            return fieldIn(table, pointer);
    }
    for (const SinglePlace &single : singles()) {
        if (isAtOrBelow(pointer, single.pointer))
            return {single.part, single.objectName, -1, 0, single.words};
    }
    return {LaboratoryPart::Head, u"laboratoryName"_s, -1, 0, LaboratoryPlacesWords::tr("Name")};
}

} // namespace plateau::ui
