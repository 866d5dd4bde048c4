// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/standardrecipe.h"
#include "ui/bench/standardform.h"

#include <QGroupBox>

#include <optional>

class QComboBox;
class QLabel;
class QPushButton;

namespace plateau::ui {

class Clock;
class NumberField;
class Theme;

/// A fresh working standard: the mass to weigh for a strength, and the strength made from the mass really
/// weighed.
class WeighingForm : public QGroupBox
{
    Q_OBJECT

public:
    WeighingForm(const Theme &theme, const Clock &clock, QWidget *parent = nullptr);
    void startAnew();
    /// Its measurands with their molar masses, and its usual strength.
    void showMethod(const assay::Method &method);

Q_SIGNALS:
    /// Just now.
    void made(const plateau::ui::MadeStandard &standard);

private:
    void build();
    /// Nothing while a field holds no number.
    std::optional<run::Weighing> weighing() const;
    std::optional<planning::StrengthMade> strength() const;
    void answer();
    void takeOver();

    const Theme &m_theme;
    const Clock &m_clock;
    assay::Method m_method;
    QComboBox *m_measurand;
    NumberField *m_wanted;
    NumberField *m_flask;
    NumberField *m_substance;
    NumberField *m_perMolecule;
    NumberField *m_purity;
    NumberField *m_weighed;
    NumberField *m_massUncertainty;
    NumberField *m_purityUncertainty;
    NumberField *m_flaskUncertainty;
    QLabel *m_recipe;
    QLabel *m_result;
    QPushButton *m_take;
};

} // namespace plateau::ui
