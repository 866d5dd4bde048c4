// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/equipment/protocol.h"

#include "core/equipment/permissible.h"
#include "core/equipment/photometric.h"
#include "core/equipment/water.h"
#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <set>

namespace plateau::equipment {

using namespace Qt::StringLiterals;

namespace {

struct ProtocolWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::equipment::Protocol)
};

using Row = std::vector<std::optional<double>>;

QString commonPractice()
{
    return ProtocolWording::tr("Common practice, no source.");
}

std::vector<Row> blankRows(int rows, std::size_t columns)
{
    return std::vector<Row>(static_cast<std::size_t>(rows), Row(columns));
}

void addRoom(Protocol &protocol)
{
    protocol.fields.push_back({u"temperature_C"_s, ProtocolWording::tr("Water at"), u"°C"_s, 10, 35,
                               std::nullopt, true, ProtocolWording::tr("Of the water, mean of the series.")});
    protocol.fields.push_back(
        {u"pressure_kPa"_s, ProtocolWording::tr("Air pressure"), u"kPa"_s, 60, 110, std::nullopt, true,
         ProtocolWording::tr("As it is in the room, not reduced to sea level. 1 kPa is 10 "
                             "mbar.")});
    protocol.fields.push_back({u"humidity_percent"_s, ProtocolWording::tr("Humidity of the air"), u"%"_s, 0,
                               100, 50, true,
                               ProtocolWording::tr("Its effect is small; 50 % where nobody measured it.")});
}

/// The volumes that ISO 8655-6 asks for: all, half and a tenth of it, not below what the pipette is used for.
std::vector<double> volumesToCheck_uL(const Item &item)
{
    std::set<double, std::greater<>> volumes_uL;
    for (const double part : {1.0, 0.5, 0.1})
        volumes_uL.insert(std::round(1e6 * std::max(part * item.nominal_mL, item.smallest_mL)) /
                          1000); // to the nanolitre
    return {volumes_uL.begin(), volumes_uL.end()};
}

Protocol ofPiston(const Item &item)
{
    Protocol protocol;
    protocol.how = ProtocolWording::tr(
        "Water, balance and pipette stand in the room for two hours. Ten deliveries of each volume into the "
        "closed vessel, a new tip for each volume, each mass noted in mg.");
    addRoom(protocol);
    const auto limits = pistonLimits(item.nominal_mL);
    protocol.fields.push_back(
        {u"evaporation_mg"_s, ProtocolWording::tr("Evaporation per delivery"), u"mg"_s, 0, 10, 0, true,
         ProtocolWording::tr("Mean loss of one cycle without a delivery; it is added to "
                             "each mass.")});
    const QString about =
        limits ? ProtocolWording::tr("Suggested: ISO 8655-2:2002 for %1, type A, taken from the data of a "
                                     "university's software package and not from the standard. Its edition "
                                     "of 2022 has other limits: enter those that your laboratory works to.")
                     .arg(evaluation::withUnit(evaluation::plainText(limits->nominal_uL), u"µL"_s))
               : ProtocolWording::tr("Enter what your laboratory works to, and say where it comes from.");
    protocol.fields.push_back({u"systematic_limit_uL"_s, ProtocolWording::tr("Systematic error at most"),
                               u"µL"_s, 0, 1000 * item.nominal_mL,
                               limits ? std::optional(limits->systematic_uL) : std::nullopt, true, about});
    protocol.fields.push_back({u"random_limit_uL"_s, ProtocolWording::tr("Random error at most"), u"µL"_s, 0,
                               1000 * item.nominal_mL,
                               limits ? std::optional(limits->random_uL) : std::nullopt, true, about});
    const double most_mg = 2000 * item.nominal_mL;
    protocol.columns = {{ProtocolWording::tr("Volume set"), u"µL"_s, 0, 1000 * item.nominal_mL, true},
                        {ProtocolWording::tr("Mass"), u"mg"_s, 0, most_mg, false}};
    for (const double volume_uL : volumesToCheck_uL(item)) {
        for (int i = 0; i < weighingsOfAVolume; ++i)
            protocol.rows.push_back({volume_uL, std::nullopt});
    }
    return protocol;
}

Protocol ofGlass(const Item &item)
{
    Protocol protocol;
    const bool flask = item.kind == Kind::Flask;
    protocol.how =
        flask
            ? ProtocolWording::tr(
                  "The dry flask is weighed empty and filled to the mark with water; the mass of "
                  "the water is noted in g, at least three times.")
            : ProtocolWording::tr("The pipette is drained against the wall of the weighed vessel, with its "
                                  "waiting time; the mass of the water is noted in g, at least three times.");
    addRoom(protocol);
    const auto limit = flask ? flaskLimit_mL(item.nominal_mL) : bulbPipetteLimit_mL(item.nominal_mL);
    protocol.fields.push_back(
        {u"limit_mL"_s, ProtocolWording::tr("Permissible error"), u"mL"_s, 0, item.nominal_mL, limit, true,
         limit ? ProtocolWording::tr("Suggested: class A of %1, taken from the data of a university's "
                                     "software package and not from the standard.")
                     .arg(flask ? u"ISO 1042:1998"_s : u"ISO 648:2008"_s)
               : ProtocolWording::tr("Enter what is marked on the glass or stated in its certificate.")});
    protocol.fields.push_back(
        {u"expansion_per_C"_s, ProtocolWording::tr("Cubic expansion of the glass"), u"1/°C"_s, 0, 0.001,
         borosilicate_per_C, true,
         ProtocolWording::tr(
             "Suggested: borosilicate glass 3.3, as it is usually taken; not looked up in ISO 4787.")});
    protocol.columns = {{ProtocolWording::tr("Mass of the water"), u"g"_s, 0, 2 * item.nominal_mL, false}};
    protocol.rows = blankRows(weighingsOfAVolume, 1);
    return protocol;
}

QString nameOf(WavelengthMark::Source source)
{
    switch (source) {
    case WavelengthMark::Source::Holmium:
        return ProtocolWording::tr("holmium perchlorate");
    case WavelengthMark::Source::Deuterium:
        return ProtocolWording::tr("deuterium lamp");
    default:
        return ProtocolWording::tr("mercury lamp");
    }
}

Protocol ofWavelength()
{
    Protocol protocol;
    protocol.how = ProtocolWording::tr(
        "The maxima of a holmium perchlorate solution, or the lines of a lamp: where the photometer shows "
        "them. Those that lie near the wavelengths you work at; the others may be left out.");
    protocol.cautions = {ProtocolWording::tr(
        "Follow your local rules and the supplier's instructions first. Holmium perchlorate solution is made "
        "with perchloric acid: it is oxidising and burns the skin, and dried out with anything organic it "
        "can explode. A sealed cuvette spares you from handling it. The light of a mercury lamp contains "
        "ultraviolet: do not look into it.")};
    protocol.columns = {{ProtocolWording::tr("Expected"), u"nm"_s, 190, 1100, true},
                        {ProtocolWording::tr("Found"), u"nm"_s, 190, 1100, false}};
    for (const WavelengthMark &mark : wavelengthMarks()) {
        protocol.rows.push_back({mark.wavelength_nm, std::nullopt});
        protocol.rowNames << nameOf(mark.source);
    }
    return protocol;
}

Protocol ofAbsorbance()
{
    Protocol protocol;
    protocol.how = ProtocolWording::tr(
        "Potassium dichromate, dried, in 0.005 mol/L sulphuric acid, against the same acid at 25 °C. Weigh "
        "57.0 to 63.0 mg for 1000 mL; for 430 nm 57.0 to 63.0 mg for 100 mL. Wavelengths your photometer "
        "does not have are left out.");
    protocol.cautions = {ProtocolWording::tr(
        "Follow your local rules and the supplier's instructions first. Potassium dichromate is toxic, may "
        "cause cancer and allergy, may damage fertility, is very toxic to aquatic life, and intensifies "
        "fire: do not breathe the dust, wear gloves, weigh in a fume hood, and dispose of the solution as "
        "hazardous waste. Sealed cuvettes with a certificate spare you from weighing it; then key the "
        "concentration that the certificate states.")};
    protocol.fields = {
        {u"weak_mg_per_L"_s, ProtocolWording::tr("Dichromate, weak"), u"mg/L"_s, 57, 63, std::nullopt, false,
         ProtocolWording::tr("In the solution for 235 to 350 nm: the mass weighed for one litre.")},
        {u"strong_mg_per_L"_s, ProtocolWording::tr("Dichromate, strong"), u"mg/L"_s, 570, 630, std::nullopt,
         false, ProtocolWording::tr("In the solution for 430 nm: ten times the mass weighed for 100 mL.")},
        {u"pathLength_mm"_s, ProtocolWording::tr("Path of the cuvette"), u"mm"_s, 1, 100, 10, true, {}},
    };
    protocol.columns = {{ProtocolWording::tr("Wavelength"), u"nm"_s, 190, 1100, true},
                        {ProtocolWording::tr("Absorbance less the acid's"), {}, -0.1, 4, false}};
    for (const DichromateBand &band : dichromateBands()) {
        protocol.rows.push_back({band.wavelength_nm, std::nullopt});
        protocol.rowNames << (band.strong ? ProtocolWording::tr("strong solution")
                                          : ProtocolWording::tr("weak solution"));
    }
    return protocol;
}

Protocol ofNoise()
{
    Protocol protocol;
    protocol.how = ProtocolWording::tr(
        "At the wavelength you work at: the zero, with a cuvette of water set to zero once, read repeatedly; "
        "and one coloured cuvette (absorbance 0.5 to 1) taken out and put back each time.");
    protocol.fields = {
        {u"noise_limit"_s,
         ProtocolWording::tr("Standard deviation at most"),
         {},
         0,
         1,
         0.002,
         true,
         commonPractice()},
        {u"zero_limit"_s,
         ProtocolWording::tr("Mean of the zero, deviation at most"),
         {},
         0,
         1,
         0.005,
         true,
         commonPractice()},
        {u"digit"_s,
         ProtocolWording::tr("Resolution of the display"),
         {},
         0,
         0.1,
         0.001,
         true,
         ProtocolWording::tr("The step of the display.")},
    };
    protocol.columns = {{ProtocolWording::tr("Zero"), {}, -1, 1, false},
                        {ProtocolWording::tr("Coloured cuvette"), {}, 0, 4, false}};
    protocol.rows = blankRows(weighingsOfAVolume, 2);
    return protocol;
}

Protocol ofWeighing()
{
    Protocol protocol;
    protocol.how = ProtocolWording::tr("One load, near what you weigh most, put on and taken off repeatedly; "
                                       "and weights with a certificate, each once.");
    const QString own =
        ProtocolWording::tr("Enter what your laboratory works to, and say where it comes from.");
    protocol.fields = {
        {u"repeat_limit_mg"_s, ProtocolWording::tr("Standard deviation at most"), u"mg"_s, 0, 10000,
         std::nullopt, true, own},
        {u"deviation_limit_mg"_s, ProtocolWording::tr("Deviation from a weight at most"), u"mg"_s, 0, 10000,
         std::nullopt, true, own},
    };
    protocol.columns = {{ProtocolWording::tr("One load, indication"), u"g"_s, 0, 100000, false},
                        {ProtocolWording::tr("Weight"), u"g"_s, 0, 100000, false},
                        {ProtocolWording::tr("Indication"), u"g"_s, 0, 100000, false}};
    protocol.rows = blankRows(weighingsOfAVolume, 3);
    return protocol;
}

Protocol ofTemperature()
{
    Protocol protocol;
    protocol.how = ProtocolWording::tr("Beside a thermometer with a certificate, in a stirred bath, at the "
                                       "temperatures you work at.");
    protocol.fields = {{u"limit_C"_s, ProtocolWording::tr("Deviation at most"), u"°C"_s, 0, 10, 0.5, true,
                        commonPractice()}};
    protocol.columns = {{ProtocolWording::tr("Reference"), u"°C"_s, -100, 300, false},
                        {ProtocolWording::tr("Indication"), u"°C"_s, -100, 300, false}};
    protocol.rows = blankRows(5, 2);
    return protocol;
}

Protocol ofMatch()
{
    Protocol protocol;
    protocol.how = ProtocolWording::tr("Every cuvette of the set, clean and filled with water, read at the "
                                       "wavelength you work at, marks facing the same way.");
    protocol.fields = {
        {u"limit"_s,
         ProtocolWording::tr("Largest minus smallest at most"),
         {},
         0,
         1,
         0.01,
         true,
         commonPractice()},
        {u"path_percent"_s, ProtocolWording::tr("Path length tolerance"), u"%"_s, 0, 10, 0.1, true,
         ProtocolWording::tr("From the certificate of the cuvettes: half the width. Suggested: 10.00 ± 0.01 "
                             "mm (common practice, no source).")},
    };
    protocol.columns = {{ProtocolWording::tr("Absorbance with water"), {}, -1, 2, false}};
    protocol.rows = blankRows(24, 1);
    for (int cuvette = 1; cuvette <= 24; ++cuvette)
        protocol.rowNames << ProtocolWording::tr("cuvette %1").arg(cuvette);
    return protocol;
}

} // namespace

Protocol protocolFor(const Item &item, Aspect aspect)
{
    switch (aspect) {
    case Aspect::Volume:
        return item.kind == Kind::PistonPipette ? ofPiston(item)
               : holdsVolume(item.kind)         ? ofGlass(item)
                                                : Protocol();
    case Aspect::Wavelength:
        return ofWavelength();
    case Aspect::Absorbance:
        return ofAbsorbance();
    case Aspect::Noise:
        return ofNoise();
    case Aspect::Weighing:
        return ofWeighing();
    case Aspect::Temperature:
        return ofTemperature();
    default:
        return ofMatch();
    }
}

} // namespace plateau::equipment
