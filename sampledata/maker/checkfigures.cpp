// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/checkfigures.h"

#include "core/equipment/photometric.h"
#include "core/equipment/protocol.h"
#include "core/equipment/water.h"

#include <cmath>

namespace plateau::sampledata {

using namespace Qt::StringLiterals;
using equipment::Aspect;
using equipment::Check;

namespace {

/// To so many decimals, as a display shows it.
double shown(double value, int decimals)
{
    const double steps = std::pow(10, decimals);
    return std::round(value * steps) / steps;
}

equipment::Surroundings roomOn(Chance &chance)
{
    return {shown(chance.part(20.2, 22.8), 1), shown(chance.part(98.6, 102.1), 2),
            shown(chance.part(38, 61), 0)};
}

void keyRoom(Check &check, const equipment::Surroundings &room)
{
    check.conditions[u"temperature_C"_s] = room.temperature_C;
    check.conditions[u"pressure_kPa"_s] = room.pressure_kPa;
    check.conditions[u"humidity_percent"_s] = room.humidity_percent;
}

/// What the pipette delivers is off by so much of the volume and scatters by so much of it.
void weighDeliveries(Check &check, const equipment::Item &item, double off, double scatter, Chance &chance)
{
    const equipment::Surroundings room = roomOn(chance);
    keyRoom(check, room);
    const double evaporation_mg = 0.02;
    check.conditions[u"evaporation_mg"_s] = evaporation_mg;
    const double uL_per_mg = equipment::zFactor_uL_per_mg(room);
    // Small volumes of a pipette are off by more of themselves.
    const double fixed_uL = 1000 * item.nominal_mL * scatter * 0.3;
    for (auto &row : check.rows) {
        const double set_uL = *row[0];
        const double delivered_uL = set_uL * (1 + off + chance.scatter(scatter)) + chance.scatter(fixed_uL);
        row[1] = shown(delivered_uL / uL_per_mg - evaporation_mg, 2);
    }
}

void fillColumn(Check &check, std::size_t column, std::size_t rows, double around, double scatter,
                int decimals, Chance &chance)
{
    for (std::size_t row = 0; row < rows; ++row)
        check.rows[row][column] = shown(around + chance.scatter(scatter), decimals);
}

void checkWavelength(Check &check, Chance &chance)
{
    const auto &marks = equipment::wavelengthMarks();
    for (std::size_t row = 0; row < marks.size(); ++row) {
        if (marks[row].source == equipment::WavelengthMark::Source::Holmium)
            check.rows[row][1] = shown(marks[row].wavelength_nm + 0.1 + chance.scatter(0.12), 1);
    }
    check.source = u"sealed cuvette H-2, certificate of the supplier (invented)"_s;
}

void checkScale(Check &check, double scale, Chance &chance)
{
    const double weak_mg_per_L = 60.06;
    check.conditions[u"weak_mg_per_L"_s] = weak_mg_per_L;
    const auto &bands = equipment::dichromateBands();
    constexpr double onePercent_mg_per_L = 10000;
    for (std::size_t row = 0; row < bands.size(); ++row) {
        if (!bands[row].strong)
            check.rows[row][1] = shown(bands[row].specificAbsorbance * weak_mg_per_L / onePercent_mg_per_L *
                                           scale * (1 + chance.scatter(0.0012)),
                                       3);
    }
    check.source = u"sealed cuvettes D-60, certificate of the supplier (invented)"_s;
}

void checkBalance(Check &check, Chance &chance)
{
    check.conditions[u"repeat_limit_mg"_s] = 0.15;
    check.conditions[u"deviation_limit_mg"_s] = 0.3;
    fillColumn(check, 0, check.rows.size(), 20, 0.00005, 4, chance);
    const std::array weights_g{0.1, 1.0, 20.0, 100.0};
    for (std::size_t row = 0; row < weights_g.size(); ++row) {
        check.rows[row][1] = weights_g[row];
        check.rows[row][2] = shown(weights_g[row] + chance.scatter(0.00006), 4);
    }
    check.source = u"weights set W-1, procedure LP-06 (invented)"_s;
}

void checkThermometer(Check &check, Chance &chance)
{
    const std::array baths_C{5.0, 20.0, 25.0, 37.0};
    for (std::size_t row = 0; row < baths_C.size(); ++row) {
        check.rows[row][0] = shown(baths_C[row] + chance.scatter(0.05), 1);
        check.rows[row][1] = shown(*check.rows[row][0] + 0.1 + chance.scatter(0.06), 1);
    }
}

void checkVolume(Check &check, const equipment::Item &item, const Story &story, Chance &chance)
{
    const bool worn = item.name == nameOfWornPipette();
    const double scatter = worn ? story.pipetteScatterOn(check.day.addDays(-1)) : 0.0011;
    const bool isFailing = worn && check.day == story.pipetteFails;
    weighDeliveries(check, item, isFailing ? -0.011 : 0.0015, isFailing ? scatter : 0.0011, chance);
    if (isFailing)
        check.note = u"the piston runs unevenly; seal is worn"_s;
    else if (worn && check.day == story.pipetteRepaired)
        check.note = u"new seal, greased"_s;
}

} // namespace

QString nameOfWornPipette()
{
    return u"piston pipette 10 to 100 µL"_s;
}

Check checkOf(const equipment::Item &item, Aspect aspect, const QDate &day, const Story &story,
              Chance &chance)
{
    const equipment::Protocol protocol = equipment::protocolFor(item, aspect);
    Check check;
    check.aspect = aspect;
    check.day = day;
    check.rows = protocol.rows;
    for (const equipment::ProtocolField &field : protocol.fields) {
        if (field.usual)
            check.conditions[field.key] = *field.usual;
    }
    switch (aspect) {
    case Aspect::Volume:
        checkVolume(check, item, story, chance);
        break;
    case Aspect::Wavelength:
        checkWavelength(check, chance);
        break;
    case Aspect::Absorbance:
        checkScale(check, story.scaleOn(day), chance);
        if (day == story.lampChanged)
            check.note = u"after the change of the lamp"_s;
        break;
    case Aspect::Noise:
        fillColumn(check, 0, check.rows.size(), 0.0002, 0.0005, 3, chance);
        fillColumn(check, 1, check.rows.size(), 0.742 * story.scaleOn(day), 0.0009, 3, chance);
        break;
    case Aspect::Weighing:
        checkBalance(check, chance);
        break;
    case Aspect::Temperature:
        checkThermometer(check, chance);
        break;
    case Aspect::Match:
        fillColumn(check, 0, check.rows.size(), 0.012, 0.0012, 3, chance);
        break;
    }
    return check;
}

} // namespace plateau::sampledata
