// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/methodfieldwords.h"

#include "core/assay/listed.h"

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

struct MethodfieldWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::MethodComparison)
};

const QHash<QString, QString> &fieldTable()
{
    static const QHash<QString, QString> table{
        {u"format"_s, MethodfieldWording::tr("Format")},
        {u"id"_s, MethodfieldWording::tr("ID")},
        {u"version"_s, MethodfieldWording::tr("Version")},
        {u"name"_s, MethodfieldWording::tr("Name")},
        {u"source"_s, MethodfieldWording::tr("Source")},
        {u"principle"_s, MethodfieldWording::tr("Principle")},
        {u"chromophore"_s, MethodfieldWording::tr("Chromophore")},
        {u"absorptivity_L_per_mol_cm"_s, MethodfieldWording::tr("Absorptivity")},
        {u"wavelength_nm"_s, MethodfieldWording::tr("Wavelength")},
        {u"pathLength_mm"_s, MethodfieldWording::tr("Path length")},
        {u"direction"_s, MethodfieldWording::tr("Direction")},
        {u"volumeCorrection"_s, MethodfieldWording::tr("Volume correction")},
        {u"components"_s, MethodfieldWording::tr("Components")},
        {u"volume_mL"_s, MethodfieldWording::tr("Volume")},
        {u"range_mL"_s, MethodfieldWording::tr("Allowed volumes")},
        {u"suspension"_s, MethodfieldWording::tr("Suspension")},
        {u"sample"_s, MethodfieldWording::tr("Component that is the sample")},
        {u"diluent"_s, MethodfieldWording::tr("Component that is the diluent")},
        {u"starter"_s, MethodfieldWording::tr("Component that is the starter")},
        {u"steps"_s, MethodfieldWording::tr("Steps")},
        {u"measurands"_s, MethodfieldWording::tr("Measurands")},
        {u"molarMass_g_per_mol"_s, MethodfieldWording::tr("Molar mass")},
        {u"chromophorePerMolecule"_s, MethodfieldWording::tr("Chromophore molecules per molecule")},
        {u"signal"_s, MethodfieldWording::tr("Signal")},
        {u"kind"_s, MethodfieldWording::tr("Kind")},
        {u"from"_s, MethodfieldWording::tr("From")},
        {u"to"_s, MethodfieldWording::tr("To")},
        {u"base"_s, MethodfieldWording::tr("Base reading")},
        {u"middle"_s, MethodfieldWording::tr("Middle reading")},
        {u"final"_s, MethodfieldWording::tr("Final reading")},
        {u"typicalRange_g_per_L"_s, MethodfieldWording::tr("Typical range")},
        {u"window"_s, MethodfieldWording::tr("Measuring window")},
        {u"minSignal"_s, MethodfieldWording::tr("Smallest net signal")},
        {u"maxSignal"_s, MethodfieldWording::tr("Largest net signal")},
        {u"maxAbsorbance"_s, MethodfieldWording::tr("Largest absorbance")},
        {u"reserveAbsorbance"_s, MethodfieldWording::tr("Absorbance that must remain")},
        {u"acceptance"_s, MethodfieldWording::tr("Acceptance")},
        {u"maxBlankSignal"_s, MethodfieldWording::tr("Largest blank signal")},
        {u"standardRecovery_percent"_s, MethodfieldWording::tr("Recovery of a standard")},
        {u"spikeRecovery_percent"_s, MethodfieldWording::tr("Recovery of a spike")},
        {u"repeatability"_s, MethodfieldWording::tr("Repeatability")},
        {u"constant_g_per_L"_s, MethodfieldWording::tr("Repeatability, constant part")},
        {u"proportional"_s, MethodfieldWording::tr("Repeatability, proportional part")},
        {u"extrapolate"_s, MethodfieldWording::tr("Extrapolation")},
        {u"reading"_s, MethodfieldWording::tr("Reading that is extrapolated")},
        {u"lastReadings"_s, MethodfieldWording::tr("Readings the line goes through")},
        {u"derived"_s, MethodfieldWording::tr("Derived results")},
        {u"terms"_s, MethodfieldWording::tr("Parts")},
        {u"method"_s, MethodfieldWording::tr("Method")},
        {u"measurand"_s, MethodfieldWording::tr("Measurand")},
        {u"factor"_s, MethodfieldWording::tr("Factor")},
        {u"standard"_s, MethodfieldWording::tr("Usual standard")},
        {u"concentration_g_per_L"_s, MethodfieldWording::tr("Concentration of the usual standard")},
        {u"lossPerHour"_s, MethodfieldWording::tr("Loss of the usual standard per hour")},
        {u"tubes"_s, MethodfieldWording::tr("Usual tubes")},
        {u"blanks"_s, MethodfieldWording::tr("Blanks of a rack")},
        {u"replicates"_s, MethodfieldWording::tr("Tubes of each sample")},
        {u"standards"_s, MethodfieldWording::tr("Tubes of standards of a rack")},
        {u"reactions"_s, MethodfieldWording::tr("Reactions")},
        {u"interferences"_s, MethodfieldWording::tr("Interferences")},
        {u"samplePreparation"_s, MethodfieldWording::tr("Preparation of samples")},
        {u"matrix"_s, MethodfieldWording::tr("Matrix")},
        {u"text"_s, MethodfieldWording::tr("Preparation")},
        {u"cautions"_s, MethodfieldWording::tr("Cautions")},
        {u"add"_s, MethodfieldWording::tr("add")},
        {u"mix"_s, MethodfieldWording::tr("mix")},
        {u"wait_min"_s, MethodfieldWording::tr("wait")},
        {u"temperature_C"_s, MethodfieldWording::tr("temperature")},
        {u"read"_s, MethodfieldWording::tr("read")},
    };
    return table;
}

const QHash<QString, QString> &elementTable()
{
    static const QHash<QString, QString> table{
        {u"components"_s, MethodfieldWording::tr("Component")},
        {u"steps"_s, MethodfieldWording::tr("Step")},
        {u"measurands"_s, MethodfieldWording::tr("Measurand")},
        {u"derived"_s, MethodfieldWording::tr("Derived result")},
        {u"terms"_s, MethodfieldWording::tr("Part")},
        {u"reactions"_s, MethodfieldWording::tr("Reaction")},
        {u"interferences"_s, MethodfieldWording::tr("Interference")},
        {u"samplePreparation"_s, MethodfieldWording::tr("Preparation of")},
        {u"cautions"_s, MethodfieldWording::tr("Caution")},
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
        {u"toFinalVolume"_s, MethodfieldWording::tr("to the final volume")},
        {u"coupledIndicator"_s, MethodfieldWording::tr("coupled indicator")},
        {u"proteinRich"_s, MethodfieldWording::tr("protein-rich")},
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
        return MethodfieldWording::tr("%1 samples").arg(wordOf(textOf(element["matrix"])));
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
        return value.get<bool>() ? MethodfieldWording::tr("yes") : MethodfieldWording::tr("no");
    if (value.is_number() && isFraction(key))
        return MethodfieldWording::tr("%1 %").arg(QString::number(value.get<double>() * 100, 'g', 15));
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
        return withUnit(numbers.join(MethodfieldWording::tr(" to ")), key);
    }
    if (value.is_object())
        return membersText(value, method);
    QStringList parts;
    for (const ordered_json &item : value)
        parts.append(valueText(key, item, method));
    return assay::listed(parts);
}

} // namespace plateau::exchange
