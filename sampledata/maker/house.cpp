// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/house.h"

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

QString nameOfHead()
{
    return u"Corin Dast"_s;
}

QString nameOfReviewer()
{
    return u"Ansa Velmer"_s;
}

const std::vector<QString> &analysts()
{
    static const std::vector<QString> names{nameOfReviewer(), u"Ilka Brodovin"_s, u"Pell Orvane"_s};
    return names;
}

double pipettingScatterOf(const QString &analyst)
{
    return analyst == analysts()[0] ? 0.004 : analyst == analysts()[1] ? 0.006 : 0.008;
}

const std::vector<ProductLine> &productLines()
{
    using enum assay::Matrix;
    static const std::vector<ProductLine> lines{
        {u"cider"_s,
         u"Cider, tank %1"_s,
         u"tank hall"_s,
         Clear,
         run::Form::Liquid,
         14,
         {{u"sulphite"_s, 0.11},
          {u"l-malic-acid"_s, 2.8},
          {u"acetic-acid"_s, 0.45},
          {u"glucose"_s, 4},
          {u"fructose"_s, 9},
          {u"glycerol"_s, 5.2},
          {u"ethanol"_s, 48}}},
        {u"perry"_s,
         u"Perry, tank %1"_s,
         u"tank hall"_s,
         Clear,
         run::Form::Liquid,
         8,
         {{u"sulphite"_s, 0.12},
          {u"l-malic-acid"_s, 3.4},
          {u"acetic-acid"_s, 0.6},
          {u"glucose"_s, 7},
          {u"fructose"_s, 14},
          {u"glycerol"_s, 5.8},
          {u"ethanol"_s, 45}}},
        {u"cider"_s,
         u"Dry cider, bottling %1"_s,
         u"bottling line"_s,
         Clear,
         run::Form::Liquid,
         0,
         {{u"sulphite"_s, 0.13},
          {u"l-malic-acid"_s, 2.2},
          {u"acetic-acid"_s, 0.5},
          {u"glucose"_s, 1.5},
          {u"fructose"_s, 3.5},
          {u"glycerol"_s, 5.4},
          {u"ethanol"_s, 54}}},
        {u"ice cider"_s,
         u"Ice cider, cask %1"_s,
         u"cask cellar"_s,
         Clear,
         run::Form::Liquid,
         12,
         {{u"sulphite"_s, 0.17},
          {u"l-malic-acid"_s, 4.6},
          {u"acetic-acid"_s, 0.7},
          {u"glucose"_s, 55},
          {u"fructose"_s, 85},
          {u"glycerol"_s, 7},
          {u"ethanol"_s, 82}}},
        {u"blackcurrant cider"_s,
         u"Blackcurrant cider, tank %1"_s,
         u"tank hall"_s,
         Coloured,
         run::Form::Liquid,
         4,
         {{u"sulphite"_s, 0.12}, {u"l-malic-acid"_s, 1.7}, {u"acetic-acid"_s, 0.5}}},
        {u"must"_s,
         u"Must, pressing %1"_s,
         u"press room"_s,
         Turbid,
         run::Form::Liquid,
         0,
         {{u"l-malic-acid"_s, 6.4}, {u"acetic-acid"_s, 0.1}, {u"glucose"_s, 28}, {u"fructose"_s, 66}}},
        {u"dried fruit"_s,
         u"Dried apricots, lot %1"_s,
         u"packing line 2"_s,
         Solid,
         run::Form::Solid,
         0,
         {{u"sulphite"_s, 0.145}}},
        {u"dried fruit"_s,
         u"Sultanas, bleached, lot %1"_s,
         u"packing line 2"_s,
         Solid,
         run::Form::Solid,
         0,
         {{u"sulphite"_s, 0.12}}},
        {u"cider without alcohol"_s,
         u"Cider without alcohol, bottling %1"_s,
         u"bottling line"_s,
         Clear,
         run::Form::Liquid,
         0,
         {{u"sulphite"_s, 0.1}, {u"acetic-acid"_s, 0.3}, {u"ethanol"_s, 3.2}}},
    };
    return lines;
}

const std::vector<MethodInUse> &methodsInUse()
{
    // Substances, suppliers and their certificates are invented; molar masses are those of the formulas.
    static const std::vector<MethodInUse> methods{
        {u"total-sulphite"_s,
         0.36,
         {{u"sulphite"_s, u"SO2"_s, u"potassium metabisulphite"_s, u"Hallowmere Reagents"_s, 222.32, 0.975,
           0.01, 2, 0.15, 250, 0.02, 0.013, 0}},
         1.55,
         0.009,
         {{u"sulphite"_s, 0.125}}},
        {u"l-malic-acid"_s,
         0.16,
         {{u"l-malic-acid"_s, u"MAL"_s, u"L-malic acid"_s, u"Hallowmere Reagents"_s, 134.09, 0.995, 0.003, 1,
           0.2, 250, 0, 0.00001, 14}},
         0.21,
         0.006,
         {{u"l-malic-acid"_s, 0.18}}},
        {u"acetic-acid"_s,
         0.14,
         {{u"acetic-acid"_s, u"ACE"_s, u"sodium acetate trihydrate"_s, u"Orrin and Pike"_s, 136.08, 0.995,
           0.005, 1, 0.15, 250, 0, 0.00002, 14}},
         0.24,
         0.011,
         {{u"acetic-acid"_s, 0.16}}},
        {u"glucose-fructose"_s,
         0.14,
         {{u"glucose"_s, u"GLU"_s, u"D-glucose"_s, u"Orrin and Pike"_s, 180.16, 0.995, 0.003, 1, 0.4, 250, 0,
           0.00002, 14},
          {u"fructose"_s, u"FRU"_s, u"D-fructose"_s, u"Orrin and Pike"_s, 180.16, 0.995, 0.004, 1, 0.4, 250,
           0, 0.00002, 14}},
         0.18,
         0.005,
         {{u"glucose"_s, 0.3}, {u"fructose"_s, 0.35}}},
        {u"glycerol"_s,
         0.08,
         {{u"glycerol"_s, u"GLY"_s, u"glycerol"_s, u"Hallowmere Reagents"_s, 92.09, 0.995, 0.003, 1, 0.2, 250,
           0, 0.00001, 28}},
         1.48,
         0.012,
         {{u"glycerol"_s, 0.22}}},
        {u"ethanol"_s,
         0.12,
         {{u"ethanol"_s, u"ETH"_s, u"ethanol"_s, u"Orrin and Pike"_s, 46.07, 0.998, 0.001, 1, 0.05, 1000, 0,
           0.0001, 7}},
         0.16,
         0.014,
         {{u"ethanol"_s, 0.045}}},
    };
    return methods;
}

} // namespace plateau::sampledata
