// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/methodfieldwords.h"

#include <QCoreApplication>
#include <QHash>
#include <QLocale>
#include <QStringList>

#include <algorithm>
#include <array>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using nlohmann::ordered_json;

namespace {

struct Wording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::MethodComparison)
};

const QHash<QString, QString> &fieldTable()
{
    static const QHash<QString, QString> table{
        {u"format"_s, Wording::tr("Format")},
        {u"id"_s, Wording::tr("Id")},
        {u"version"_s, Wording::tr("Version")},
        {u"name"_s, Wording::tr("Name")},
        {u"source"_s, Wording::tr("Source")},
        {u"principle"_s, Wording::tr("Principle")},
        {u"chromophore"_s, Wording::tr("Chromophore")},
        {u"absorptivity_L_per_mol_cm"_s, Wording::tr("Absorptivity")},
        {u"wavelength_nm"_s, Wording::tr("Wavelength")},
        {u"pathLength_mm"_s, Wording::tr("Path length")},
        {u"direction"_s, Wording::tr("Direction")},
        {u"volumeCorrection"_s, Wording::tr("Volume correction")},
        {u"components"_s, Wording::tr("Components")},
        {u"volume_mL"_s, Wording::tr("Volume")},
        {u"range_mL"_s, Wording::tr("Allowed volumes")},
        {u"suspension"_s, Wording::tr("Suspension")},
        {u"sample"_s, Wording::tr("Component that is the sample")},
        {u"diluent"_s, Wording::tr("Component that is the diluent")},
        {u"starter"_s, Wording::tr("Component that is the starter")},
        {u"steps"_s, Wording::tr("Steps")},
        {u"measurands"_s, Wording::tr("Measurands")},
        {u"molarMass_g_per_mol"_s, Wording::tr("Molar mass")},
        {u"chromophorePerMolecule"_s, Wording::tr("Chromophore molecules per molecule")},
        {u"signal"_s, Wording::tr("Signal")},
        {u"kind"_s, Wording::tr("Kind")},
        {u"from"_s, Wording::tr("From")},
        {u"to"_s, Wording::tr("To")},
        {u"base"_s, Wording::tr("Base reading")},
        {u"middle"_s, Wording::tr("Middle reading")},
        {u"final"_s, Wording::tr("Final reading")},
        {u"typicalRange_g_per_L"_s, Wording::tr("Typical range")},
        {u"window"_s, Wording::tr("Measuring window")},
        {u"minSignal"_s, Wording::tr("Smallest net signal")},
        {u"maxSignal"_s, Wording::tr("Largest net signal")},
        {u"maxAbsorbance"_s, Wording::tr("Largest absorbance")},
        {u"reserveAbsorbance"_s, Wording::tr("Absorbance that must remain")},
        {u"acceptance"_s, Wording::tr("Acceptance")},
        {u"maxBlankSignal"_s, Wording::tr("Largest blank signal")},
        {u"standardRecovery_percent"_s, Wording::tr("Recovery of a standard")},
        {u"spikeRecovery_percent"_s, Wording::tr("Recovery of a spike")},
        {u"repeatability"_s, Wording::tr("Repeatability")},
        {u"constant_g_per_L"_s, Wording::tr("Repeatability, constant part")},
        {u"proportional"_s, Wording::tr("Repeatability, proportional part")},
        {u"extrapolate"_s, Wording::tr("Extrapolation")},
        {u"reading"_s, Wording::tr("Reading that is extrapolated")},
        {u"lastReadings"_s, Wording::tr("Readings the line goes through")},
        {u"derived"_s, Wording::tr("Derived results")},
        {u"terms"_s, Wording::tr("Parts")},
        {u"method"_s, Wording::tr("Method")},
        {u"measurand"_s, Wording::tr("Measurand")},
        {u"factor"_s, Wording::tr("Factor")},
        {u"standard"_s, Wording::tr("Usual standard")},
        {u"concentration_g_per_L"_s, Wording::tr("Concentration of the usual standard")},
        {u"lossPerHour"_s, Wording::tr("Loss of the usual standard per hour")},
        {u"tubes"_s, Wording::tr("Usual tubes")},
        {u"blanks"_s, Wording::tr("Blanks of a rack")},
        {u"replicates"_s, Wording::tr("Tubes of each sample")},
        {u"standards"_s, Wording::tr("Tubes of standards of a rack")},
        {u"reactions"_s, Wording::tr("Reactions")},
        {u"interferences"_s, Wording::tr("Interferences")},
        {u"samplePreparation"_s, Wording::tr("Preparation of samples")},
        {u"matrix"_s, Wording::tr("Matrix")},
        {u"text"_s, Wording::tr("Preparation")},
        {u"cautions"_s, Wording::tr("Cautions")},
        {u"add"_s, Wording::tr("add")},
        {u"mix"_s, Wording::tr("mix")},
        {u"wait_min"_s, Wording::tr("wait")},
        {u"temperature_C"_s, Wording::tr("temperature")},
        {u"read"_s, Wording::tr("read")},
    };
    return table;
}

const QHash<QString, QString> &elementTable()
{
    static const QHash<QString, QString> table{
        {u"components"_s, Wording::tr("Component")},
        {u"steps"_s, Wording::tr("Step")},
        {u"measurands"_s, Wording::tr("Measurand")},
        {u"derived"_s, Wording::tr("Derived result")},
        {u"terms"_s, Wording::tr("Part")},
        {u"reactions"_s, Wording::tr("Reaction")},
        {u"interferences"_s, Wording::tr("Interference")},
        {u"samplePreparation"_s, Wording::tr("Preparation of")},
        {u"cautions"_s, Wording::tr("Caution")},
    };
    return table;
}

struct Unit {
    QLatin1StringView ending;
    QStringView unit;
};
constexpr std::array units{
    Unit{"_L_per_mol_cm"_L1, u"L/(mol cm)"},
    Unit{"_g_per_mol"_L1, u"g/mol"},
    Unit{"_g_per_L"_L1, u"g/L"},
    Unit{"_percent"_L1, u"%"},
    Unit{"_mL"_L1, u"mL"},
    Unit{"_nm"_L1, u"nm"},
    Unit{"_mm"_L1, u"mm"},
    Unit{"_min"_L1, u"min"},
    Unit{"_C"_L1, u"°C"},
};

QString textOf(const ordered_json &value)
{
    return QString::fromStdString(value.get_ref<const std::string &>());
}

QString wordOf(const QString &word)
{
    static const QHash<QString, QString> table{
        {u"toFinalVolume"_s, Wording::tr("to the final volume")},
        {u"coupledIndicator"_s, Wording::tr("coupled indicator")},
        {u"proteinRich"_s, Wording::tr("protein-rich")},
    };
    return table.value(word, word);
}

QString withUnit(const QString &number, const QString &key)
{
    const QString unit = unitOf(key);
    return unit.isEmpty() ? number : number + u' ' + unit;
}

QString numberText(const ordered_json &value)
{
    return QString::number(value.get<double>(), 'g', QLocale::FloatingPointShortest);
}

/// Shown in per cent, as everywhere else on the screen.
bool isFraction(const QString &key)
{
    return key == "proportional"_L1 || key == "lossPerHour"_L1;
}

bool isNumbers(const ordered_json &value)
{
    return value.is_array() && !value.empty() &&
           std::all_of(value.begin(), value.end(), [](const ordered_json &item) { return item.is_number(); });
}

QString nameOfComponent(const ordered_json &method, const QString &id)
{
    const auto components = method.find("components");
    if (components != method.end()) {
        for (const ordered_json &component : *components) {
            if (component.contains("id") && textOf(component["id"]) == id)
                return textOf(component["name"]);
        }
    }
    return id;
}

/// "wait 3 to 10 min, temperature 20 to 25 °C"
QString membersText(const ordered_json &value, const ordered_json &method)
{
    QStringList parts;
    for (const auto &[member, content] : value.items()) {
        const QString key = QString::fromStdString(member);
        if (key == "mix"_L1 || key == "kind"_L1)
            parts.append(key == "mix"_L1 ? fieldWords(key) : valueText(key, content, method));
        else
            parts.append(fieldWords(key) + u' ' + valueText(key, content, method));
    }
    return parts.join(u", "_s);
}

} // namespace

QString fieldWords(const QString &key)
{
    return fieldTable().value(key, key);
}

QString elementWords(const QString &key)
{
    return elementTable().value(key, key);
}

QString unitOf(const QString &key)
{
    const auto found =
        std::ranges::find_if(units, [&](const Unit &unit) { return key.endsWith(unit.ending); });
    return found == units.end() ? QString() : found->unit.toString();
}

QString elementLabel(const ordered_json &element)
{
    if (!element.is_object())
        return {};
    if (element.contains("matrix"))
        return Wording::tr("%1 samples").arg(wordOf(textOf(element["matrix"])));
    if (element.contains("measurand"))
        return textOf(element["measurand"]);
    for (const char *const key : {"name", "id"}) {
        if (element.contains(key) && !textOf(element[key]).isEmpty())
            return textOf(element[key]);
    }
    return {};
}

QString valueText(const QString &key, const ordered_json &value, const ordered_json &method)
{
    if (value.is_boolean())
        return value.get<bool>() ? Wording::tr("yes") : Wording::tr("no");
    if (value.is_number() && isFraction(key))
        return Wording::tr("%1 %").arg(QString::number(value.get<double>() * 100, 'g', 15));
    if (value.is_number())
        return withUnit(numberText(value), key);
    if (value.is_string()) {
        const bool component =
            key == "add"_L1 || key == "sample"_L1 || key == "diluent"_L1 || key == "starter"_L1;
        return component ? nameOfComponent(method, textOf(value)) : wordOf(textOf(value));
    }
    if (isNumbers(value)) {
        QStringList numbers;
        for (const ordered_json &number : value)
            numbers.append(numberText(number));
        return withUnit(numbers.join(Wording::tr(" to ")), key);
    }
    if (value.is_object())
        return membersText(value, method);
    QStringList parts;
    for (const ordered_json &item : value)
        parts.append(valueText(key, item, method));
    return parts.join(u"; "_s);
}

} // namespace plateau::exchange
