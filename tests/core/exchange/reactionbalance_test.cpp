// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// The reactions of the shipped methods: atoms and charges are the same on both sides. Acids count as the ions that
// prevail at pH 7 to 8 (ATP 4-, ADP 3-, phosphate esters 2-), written without a sign where a name says it; a coenzyme
// or dye as itself, apart from the hydride it takes. Formulas: general chemistry, no source.

#include "core/exchange/library.h"
#include "core/exchange/readers.h"
#include "tests/support/print.h"

#include <QDir>
#include <QRegularExpression>

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

/// Of one molecule: how often each element, and "charge".
using Atoms = std::map<QString, int>;

/// "C6H12O6", "[NAD]H", "C2H3O2 -1"
Atoms atomsOf(const QString &formula)
{
    static const QRegularExpression element(u"(\\[\\w+\\]|[A-Z])(\\d*)"_s);
    Atoms atoms;
    for (auto found = element.globalMatch(formula.section(u' ', 0, 0)); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        atoms[match.captured(1)] += match.captured(2).isEmpty() ? 1 : match.captured(2).toInt();
    }
    atoms[u"charge"_s] = formula.section(u' ', 1, 1).toInt();
    return atoms;
}

const std::map<QString, QString> &formulas()
{
    static const std::map<QString, QString> known{
        {u"H⁺"_s, u"H 1"_s},
        {u"H2O"_s, u"H2O"_s},
        {u"H2O2"_s, u"H2O2"_s},
        {u"O2"_s, u"O2"_s},
        {u"CO2"_s, u"CO2"_s},
        {u"NH3"_s, u"NH3"_s},
        {u"NH4⁺"_s, u"NH4 1"_s},
        {u"NO3⁻"_s, u"NO3 -1"_s},
        {u"NO2⁻"_s, u"NO2 -1"_s},
        {u"sulphite"_s, u"SO3 -2"_s},
        {u"sulphate"_s, u"SO4 -2"_s},
        {u"diphosphate"_s, u"HO7P2 -3"_s},
        {u"NAD⁺"_s, u"[NAD] 1"_s},
        {u"NADH"_s, u"[NAD]H"_s},
        {u"NADP⁺"_s, u"[NADP] 1"_s},
        {u"NADPH"_s, u"[NADP]H"_s},
        {u"INT⁺"_s, u"[INT] 1"_s},
        {u"formazan"_s, u"[INT]H"_s},
        {u"ATP"_s, u"C10H12N5O13P3 -4"_s},
        {u"ADP"_s, u"C10H12N5O10P2 -3"_s},
        {u"AMP"_s, u"C10H12N5O7P -2"_s},
        {u"CoA"_s, u"C21H32N7O16P3S -4"_s},
        {u"acetyl-CoA"_s, u"C23H34N7O17P3S -4"_s},
        {u"acetaldehyde"_s, u"C2H4O"_s},
        {u"ethanol"_s, u"C2H6O"_s},
        {u"glycerol"_s, u"C3H8O3"_s},
        {u"urea"_s, u"CH4N2O"_s},
        {u"acetate"_s, u"C2H3O2 -1"_s},
        {u"pyruvate"_s, u"C3H3O3 -1"_s},
        {u"D-lactate"_s, u"C3H5O3 -1"_s},
        {u"L-lactate"_s, u"C3H5O3 -1"_s},
        {u"phosphoenolpyruvate"_s, u"C3H2O6P -3"_s},
        {u"oxaloacetate"_s, u"C4H2O5 -2"_s},
        {u"D-malate"_s, u"C4H4O5 -2"_s},
        {u"L-malate"_s, u"C4H4O5 -2"_s},
        {u"citrate"_s, u"C6H5O7 -3"_s},
        {u"2-oxoglutarate"_s, u"C5H4O5 -2"_s},
        {u"L-glutamate"_s, u"C5H8NO4 -1"_s},
        {u"L-aspartate"_s, u"C4H6NO4 -1"_s},
        {u"L-alanine"_s, u"C3H7NO2"_s},
        {u"L-ascorbic acid"_s, u"C6H8O6"_s},
        {u"dehydroascorbic acid"_s, u"C6H6O6"_s},
        {u"starch"_s, u"C6H10O5"_s}, // of each unit
        {u"D-glucose"_s, u"C6H12O6"_s},
        {u"D-fructose"_s, u"C6H12O6"_s},
        {u"D-galactose"_s, u"C6H12O6"_s},
        {u"D-sorbitol"_s, u"C6H14O6"_s},
        {u"lactose"_s, u"C12H22O11"_s},
        {u"sucrose"_s, u"C12H22O11"_s},
        {u"D-gluconate"_s, u"C6H11O7 -1"_s},
        {u"6-phosphogluconate"_s, u"C6H10O10P -3"_s},
        {u"ribulose-5-phosphate"_s, u"C5H9O8P -2"_s},
        {u"glucose-6-phosphate"_s, u"C6H11O9P -2"_s},
        {u"fructose-6-phosphate"_s, u"C6H11O9P -2"_s},
        {u"glycerol-3-phosphate"_s, u"C3H7O6P -2"_s},
    };
    return known;
}

/// Of one side, "2 H2O + NAD⁺". What is not known is a failure.
Atoms sumOf(const QString &side)
{
    static const QRegularExpression counted(u"^(?:(\\d+|n) )?(.+)$"_s);
    Atoms sum;
    for (const QString &part : side.split(u" + "_s)) {
        const QRegularExpressionMatch match = counted.match(part.trimmed());
        const QString name = match.captured(2);
        // Names begin a line with a capital.
        const auto formula = std::ranges::find_if(formulas(), [&](const auto &known) {
            return known.first.compare(name, Qt::CaseInsensitive) == 0;
        });
        if (formula == formulas().end()) {
            ADD_FAILURE() << "no formula of " << name.toStdString();
            continue;
        }
        const int times = std::max(1, match.captured(1).toInt()); // n of starch: for each unit
        for (const auto &[element, count] : atomsOf(formula->second))
            sum[element] += times * count;
    }
    std::erase_if(sum, [](const auto &element) { return element.second == 0; });
    return sum;
}

} // namespace

TEST(Reactions, OfShippedMethodsKeepAtomsAndCharge)
{
    static const QRegularExpression arrow(u" [→⇌] "_s);
    const QDir folder(QStringLiteral(PLATEAU_SOURCE_DIR) + u"/resources/methods"_s);
    int balanced = 0;
    for (const QString &name : folder.entryList({u"*.json"_s}, QDir::Files, QDir::Name)) {
        const auto file = readFile(folder.filePath(name));
        ASSERT_TRUE(file.value) << name.toStdString();
        const auto read = readMethod(*file.value);
        ASSERT_TRUE(read.value) << name.toStdString();
        for (const QString &line : read.value->reactions) {
            for (const QString &reaction : line.split(u"; "_s)) {
                const QStringList sides = reaction.section(u" ("_s, 0, 0).split(arrow);
                if (sides.size() != 2)
                    continue; // the count of chromophore molecules
                SCOPED_TRACE(name.toStdString() + ": " + reaction.toStdString());
                EXPECT_EQ(sumOf(sides[0]), sumOf(sides[1]));
                ++balanced;
            }
        }
    }
    EXPECT_GT(balanced, 50);
}

} // namespace plateau::exchange
