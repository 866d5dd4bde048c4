// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/run/run.h"

#include <QString>

#include <map>
#include <vector>

namespace plateau::sampledata {

/// Who works there. The two that review are not reviewed by themselves.
QString nameOfHead();
QString nameOfReviewer();
/// Those at the bench; the reviewer is one of them.
const std::vector<QString> &analysts();
/// Of a volume, relative (k = 1).
double pipettingScatterOf(const QString &analyst);

/// What stands in tanks, bottles and bags, and what is in it: g/L, of a solid g/100 g.
struct ProductLine {
    QString product;
    /// With a place for the number.
    QString sampleName;
    QString from;
    assay::Matrix matrix = assay::Matrix::Clear;
    run::Form form = run::Form::Liquid;
    /// Tanks have the same few numbers over the years; bottlings and bags are counted on.
    int tanks = 0;
    std::map<QString, double> content;
};
const std::vector<ProductLine> &productLines();

/// What a standard is made of, and how.
struct StandardRecipe {
    QString measurand;
    QString shortName;
    QString substance;
    QString supplier;
    double substanceMolarMass_g_per_mol = 0;
    double purity = 1;
    double purityHalfWidth = 0;
    double analytePerMolecule = 1;
    double wanted_g_per_L = 0;
    double flask_mL = 250;
    /// As the method states it, and as it really is.
    double lossPerHour = 0;
    double trueLossPerHour = 0;
    /// Days that it is kept; 0: for the day.
    int keeps_days = 0;
};

/// One of the six, and how often it is run.
struct MethodInUse {
    QString id;
    double share = 0;
    std::vector<StandardRecipe> standards;
    /// Of the first reading of a tube.
    double background = 0.2;
    /// Signal of a blank.
    double blankSignal = 0.006;
    /// The control material of the house: g/L of each measurand.
    std::map<QString, double> control;
};
const std::vector<MethodInUse> &methodsInUse();

} // namespace plateau::sampledata
