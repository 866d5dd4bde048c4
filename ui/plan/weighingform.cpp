// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/weighingform.h"

#include "core/evaluation/format.h"
#include "ui/shared/clock.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/numberreader.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::withUnit;

WeighingForm::WeighingForm(const Theme &theme, const Clock &clock, QWidget *parent)
    : QGroupBox(tr("Weigh a fresh standard e&xactly"), parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_measurand(new QComboBox(this))
    , m_wanted(new NumberField(theme, tr("g/L"), this))
    , m_flask(new NumberField(theme, tr("mL"), this))
    , m_substance(new NumberField(theme, tr("g/mol"), this))
    , m_perMolecule(new NumberField(theme, {}, this))
    , m_purity(new NumberField(theme, tr("%"), this))
    , m_weighed(new NumberField(theme, tr("mg"), this))
    , m_massUncertainty(new NumberField(theme, tr("mg"), this))
    , m_purityUncertainty(new NumberField(theme, tr("%"), this))
    , m_flaskUncertainty(new NumberField(theme, tr("mL"), this))
    , m_recipe(plainLabel({}, this))
    , m_result(plainLabel({}, this))
    , m_take(button(theme, tr("Take it as the run's standard"), u"takeWeighed"_s, this))
{
    setObjectName(u"weighing"_s);
    setCheckable(true);
    m_measurand->setMinimumHeight(theme.target());
    build();
    connect(m_measurand, &QComboBox::currentIndexChanged, this, &WeighingForm::answer);
    for (NumberField *field : {m_wanted, m_flask, m_substance, m_perMolecule, m_purity, m_weighed,
                               m_massUncertainty, m_purityUncertainty, m_flaskUncertainty})
        connect(field->entry(), &NumberEntry::judged, this, &WeighingForm::answer);
    connect(m_take, &QPushButton::clicked, this, &WeighingForm::takeOver);
}

void WeighingForm::build()
{
    QFormLayout *form = foldingForm(this);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    addFormRow(form, tr("Standard of"), m_measurand, u"weighingMeasurand"_s);
    addFormRow(form, tr("Strength wanted"), m_wanted, u"weighingWanted"_s);
    addFormRow(form, tr("Flask"), m_flask, u"weighingFlask"_s);
    addFormRow(form, tr("Molar mass of the substance"), m_substance, u"weighingSubstance"_s);
    addFormRow(form, tr("Analyte molecules per molecule"), m_perMolecule, u"weighingPerMolecule"_s);
    addFormRow(form, tr("Purity"), m_purity, u"weighingPurity"_s);
    m_recipe->setObjectName(u"weighingRecipe"_s);
    m_result->setObjectName(u"weighingResult"_s);
    for (QLabel *label : {m_recipe, m_result}) {
        label->setWordWrap(true);
        label->setFont(m_theme.bold());
    }
    form->addRow(m_recipe);
    addFormRow(form, tr("Actually weighed"), m_weighed, u"weighingMass"_s);
    addFormRow(form, tr("u of the mass"), m_massUncertainty, u"weighingMassU"_s);
    addFormRow(form, tr("u of the purity"), m_purityUncertainty, u"weighingPurityU"_s);
    addFormRow(form, tr("u of flask and filling"), m_flaskUncertainty, u"weighingFlaskU"_s);
    form->addRow(m_result);
    auto *meaning = plainLabel(tr("Molar mass as weighed: a monohydrate with its water. u: standard "
                                  "uncertainty (k = 1)."),
                               this);
    meaning->setWordWrap(true);
    form->addRow(meaning);
    auto *caution = plainLabel(
        tr("Wear what your local safety rules and the supplier's sheet ask for; they come first."), this);
    caution->setWordWrap(true);
    form->addRow(caution);
    auto *kept = plainLabel(tr("For this run only; prepare it under Standards to keep it for other runs."), this);
    kept->setObjectName(u"weighingKept"_s);
    kept->setWordWrap(true);
    form->addRow(kept);
    form->addRow(m_take);
}

void WeighingForm::startAnew()
{
    setChecked(false);
    m_weighed->entry()->clear();
    m_substance->entry()->clear();
    m_perMolecule->entry()->setText(u"1"_s);
    m_purity->entry()->setText(u"100"_s);
    m_flask->entry()->setText(u"100"_s);
    // A four-figure balance, and a class A flask filled at room temperature: common practice, no source.
    m_massUncertainty->entry()->setValue(0.1);
    m_purityUncertainty->entry()->setValue(0.5);
    m_flaskUncertainty->entry()->setValue(0.1);
    answer();
}

void WeighingForm::showMethod(const assay::Method &method)
{
    if (method == m_method)
        return;
    m_method = method;
    m_measurand->clear();
    for (const assay::Measurand &measurand : method.measurands)
        m_measurand->addItem(measurand.name);
    if (method.standard && method.standard->concentration_g_per_L)
        m_wanted->entry()->setValue(*method.standard->concentration_g_per_L);
    else
        m_wanted->entry()->clear();
    m_substance->entry()->clear(); // of another substance
    answer();
}

std::optional<run::Weighing> WeighingForm::weighing() const
{
    const int measurand = m_measurand->currentIndex();
    const auto positive = [](const NumberField *field) {
        const std::optional<double> value = field->entry()->value();
        return value && *value > 0 ? value : std::nullopt;
    };
    const auto flask = positive(m_flask);
    const auto substance = positive(m_substance);
    const auto perMolecule = positive(m_perMolecule);
    const auto purity = positive(m_purity);
    if (measurand < 0 || !flask || !substance || !perMolecule || !purity || *purity > 100)
        return std::nullopt;
    run::Weighing weighing;
    weighing.purity = *purity / 100;
    weighing.substanceMolarMass_g_per_mol = *substance;
    weighing.analyteMolarMass_g_per_mol =
        m_method.measurands[static_cast<std::size_t>(measurand)].molarMass_g_per_mol;
    weighing.analytePerMolecule = *perMolecule;
    weighing.flask_mL = *flask;
    weighing.mass_mg = m_weighed->entry()->value().value_or(0);
    return weighing;
}

std::optional<planning::StrengthMade> WeighingForm::strength() const
{
    const std::optional<run::Weighing> done = weighing();
    if (!done || done->mass_mg <= 0)
        return std::nullopt;
    planning::WeighingUncertainty uncertainty;
    uncertainty.mass_mg = std::max(m_massUncertainty->entry()->value().value_or(0), 0.0);
    uncertainty.purity = std::max(m_purityUncertainty->entry()->value().value_or(0), 0.0) / 100;
    uncertainty.flask_mL = std::max(m_flaskUncertainty->entry()->value().value_or(0), 0.0);
    return planning::strengthMade(*done, uncertainty);
}

void WeighingForm::answer()
{
    const std::optional<run::Weighing> recipe = weighing();
    const std::optional<double> wanted = m_wanted->entry()->value();
    if (!recipe || wanted.value_or(0) <= 0) {
        m_recipe->setText(tr("Enter the strength wanted, the flask, the substance's molar mass, and a purity "
                             "of more than 0 and at most 100 %: then the mass to weigh stands here."));
    } else {
        const double mass_mg = planning::massToWeigh_mg(*wanted, *recipe);
        m_recipe->setText(withDecimalSigns(
            tr("Weigh %1 and make up to %2.")
                .arg(withUnit(QString::number(mass_mg, 'f', evaluation::decimalsFor(mass_mg, 4)), u"mg"_s),
                     withUnit(evaluation::plainText(recipe->flask_mL), u"mL"_s))));
    }
    const std::optional<planning::StrengthMade> made = strength();
    m_take->setEnabled(made.has_value());
    if (!made) {
        m_result->setText(tr("Type the mass actually weighed: then the strength actually made stands here."));
        return;
    }
    const double expanded = 2 * made->standardUncertainty_g_per_L;
    const int decimals = expanded > 0 ? evaluation::decimalsFor(expanded, 2) : 4;
    QString text =
        tr("Made: %1 ± %2 (k = 2), a standard uncertainty of %3.")
            .arg(QString::number(made->concentration_g_per_L, 'f', decimals),
                 withUnit(QString::number(expanded, 'f', decimals), u"g/L"_s),
                 withUnit(threeFigures(100 * made->standardUncertainty_g_per_L / made->concentration_g_per_L),
                          u"%"_s));
    if (!made->budget.empty() && expanded > 0)
        text += u' ' + tr("Largest contribution to it: %1, %2 of the variance.")
                           .arg(made->budget.front().term,
                                withUnit(QString::number(100 * made->budget.front().share, 'f', 0), u"%"_s));
    m_result->setText(withDecimalSigns(text));
}

void WeighingForm::takeOver()
{
    const std::optional<planning::StrengthMade> strengthNow = strength();
    if (!strengthNow)
        return;
    const std::optional<run::Weighing> done = weighing();
    MadeStandard standard;
    standard.concentration_g_per_L = strengthNow->concentration_g_per_L;
    if (strengthNow->standardUncertainty_g_per_L > 0)
        standard.uncertainty_percent =
            100 * strengthNow->standardUncertainty_g_per_L / strengthNow->concentration_g_per_L;
    standard.madeAt = momentText(m_clock.now());
    // When is said by the standard itself, which may have been made before its mass was keyed.
    standard.source = tr("weighed: %1 made up to %2")
                          .arg(withUnit(evaluation::plainText(done->mass_mg), u"mg"_s),
                               withUnit(evaluation::plainText(done->flask_mL), u"mL"_s));
    Q_EMIT made(standard);
}

} // namespace plateau::ui
