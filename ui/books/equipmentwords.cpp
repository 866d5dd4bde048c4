// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/equipmentwords.h"

#include "core/equipment/protocol.h"
#include "core/evaluation/format.h"
#include "ui/print/volumeunit.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::significantText;
using evaluation::withUnit;

namespace {

struct EquipmentWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Equipment)
};

QString fieldName(const equipment::Item &item, const equipment::Check &check, const QString &key)
{
    const auto fields = equipment::protocolFor(item, check.aspect).fields;
    const auto field = std::ranges::find(fields, key, &equipment::ProtocolField::key);
    return field == fields.end() ? key : field->name;
}

QString placeOf(const equipment::Item &item, const equipment::Check &check, const QString &pointer)
{
    const QStringList parts = pointer.split(u'/', Qt::SkipEmptyParts);
    if (parts.isEmpty())
        return {};
    if (parts[0] == "day"_L1)
        return EquipmentWords::tr("Day");
    if (parts[0] == "conditions"_L1 && parts.size() == 2)
        return fieldName(item, check, parts[1]);
    if (parts[0] == "rows"_L1 && parts.size() == 3)
        return EquipmentWords::tr("Line %1").arg(parts[1].toInt() + 1);
    if (parts[0] == "rows"_L1)
        return EquipmentWords::tr("The lines");
    if (parts[0] == "source"_L1)
        return EquipmentWords::tr("Source");
    return parts[0] == "note"_L1 ? EquipmentWords::tr("Note") : QString();
}

QString joined(const QString &place, const QString &message)
{
    return place.isEmpty() ? evaluation::capitalised(message) + u'.' : u"%1 %2."_s.arg(place, message);
}

} // namespace

State stateOf(equipment::Standing standing)
{
    switch (standing) {
    case equipment::Standing::InDate:
        return State::Good;
    case equipment::Standing::DueSoon:
        return State::Attention;
    case equipment::Standing::Unchecked:
        return State::Pending;
    case equipment::Standing::Overdue:
        return State::Attention;
    case equipment::Standing::Failed:
        return State::Bad;
    default:
        return State::Info;
    }
}

QString sizeText(const equipment::Item &item)
{
    if (!equipment::holdsVolume(item.kind))
        return {};
    if (item.kind != equipment::Kind::PistonPipette || item.smallest_mL >= item.nominal_mL)
        return volumeWords(item.nominal_mL);
    // One unit for both ends, that of the smaller: "100 to 1000 µL", as such a pipette is called.
    const double largest = volumeInUnitOf(item.nominal_mL, item.smallest_mL);
    return EquipmentWords::tr("%1 to %2")
        .arg(plainText(volumeInUnitOf(item.smallest_mL, item.smallest_mL)),
             withUnit(plainText(largest), volumeUnit(item.smallest_mL)));
}

QString dutiesText(const equipment::Item &item)
{
    QStringList duties;
    for (const auto &[aspect, days] : item.every_days)
        duties << EquipmentWords::tr("%1 every %2 days").arg(equipment::aspectName(aspect)).arg(days);
    return duties.join(EquipmentWords::tr("; "));
}

QString figuresText(const equipment::Figures &figures)
{
    QStringList parts;
    const auto add = [&parts](const QString &what, const std::optional<double> &value, const QString &unit) {
        if (value)
            parts << u"%1 %2"_s.arg(what, unit.isEmpty() ? significantText(*value, 2)
                                                         : withUnit(significantText(*value, 2), unit));
    };
    add(EquipmentWords::tr("one reading:"), figures.absorbance, {});
    add(EquipmentWords::tr("absorbance scale:"), figures.scale_percent, u"%"_s);
    add(EquipmentWords::tr("path length:"), figures.pathLength_percent, u"%"_s);
    add(EquipmentWords::tr("a volume:"), figures.volume_percent, u"%"_s);
    add(EquipmentWords::tr("one weighing:"), figures.weighing_mg, u"mg"_s);
    add(EquipmentWords::tr("temperature:"), figures.temperature_C, u"°C"_s);
    return parts.join(EquipmentWords::tr("; "));
}

QString placedSentence(const equipment::Item &item, const equipment::Check &check,
                       const assay::Problem &problem)
{
    return joined(placeOf(item, check, problem.pointer), problem.message);
}

QString placedSentence(const assay::Problem &problem)
{
    const QString first = problem.pointer.section(u'/', 1, 1);
    const QString place = first == "name"_L1          ? EquipmentWords::tr("The name")
                          : first == "number"_L1      ? EquipmentWords::tr("The serial number")
                          : first == "nominal_mL"_L1  ? EquipmentWords::tr("The volume")
                          : first == "smallest_mL"_L1 ? EquipmentWords::tr("The smallest volume")
                                                      : EquipmentWords::tr("What is checked");
    return joined(place, problem.message);
}

} // namespace plateau::ui
