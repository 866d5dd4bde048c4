// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/preparationform.h"

#include "core/assay/localday.h"
#include "core/equipment/standing.h"
#include "core/evaluation/format.h"
#include "core/exchange/keyedmoment.h"
#include "core/planning/glassware.h"
#include "ui/books/standardwords.h"
#include "ui/shared/clock.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/momentfield.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/numberreader.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

/// A four-figure balance, until a check says better. Common practice, no source.
constexpr double usualWeighing_mg = 0.1;

/// What a pipette of the laboratory is set to for about so much: it is weighed afterwards.
QString liquidText_uL(double volume_uL, const planning::Glassware &glassware)
{
    constexpr double uL_per_mL = 1000;
    const auto settable_mL = planning::nearestSettable_mL(volume_uL / uL_per_mL, glassware);
    return settable_mL ? evaluation::roundedText(*settable_mL * uL_per_mL, 6)
                       : evaluation::significantText(volume_uL, 3);
}

} // namespace

PreparationForm::PreparationForm(const Theme &theme, const Clock &clock, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_notice(new Notice(theme, this))
{
    auto *heading = plainLabel(tr("Prepare a standard"), this);
    heading->setFont(theme.large());
    auto *back = button(theme, tr("Back to the list  Esc"), u"backFromPreparation"_s, this);
    auto *head = new QHBoxLayout;
    head->addWidget(heading, 1);
    head->addWidget(back);
    auto *area = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(buildForm());
    m_answer = new SentenceList(theme, tr("What it gives"), u"preparationAnswer"_s, this);
    auto *keep = button(theme, tr("&Store it in the book"), u"storePreparation"_s, this);
    auto *right = new QVBoxLayout;
    right->addWidget(m_answer, 1);
    right->addWidget(keep);
    auto *body = new QHBoxLayout;
    body->setSpacing(theme.wideGap());
    body->addWidget(area, 3);
    body->addLayout(right, 2);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addLayout(head);
    layout->addWidget(m_notice);
    layout->addLayout(body, 1);
    connect(back, &QPushButton::clicked, this, &PreparationForm::closed);
    connect(keep, &QPushButton::clicked, this, &PreparationForm::store);
}

QLineEdit *PreparationForm::addLine(QFormLayout *form, const QString &caption, const QString &name)
{
    auto *line = new QLineEdit(form->parentWidget());
    line->setMinimumHeight(m_theme.target());
    addFormRow(form, caption, line, name);
    connect(line, &QLineEdit::textChanged, this, &PreparationForm::answer);
    return line;
}

NumberField *PreparationForm::addNumber(QFormLayout *form, const QString &caption, const QString &unit,
                                        const QString &name)
{
    auto *field = new NumberField(m_theme, unit, form->parentWidget());
    addFormRow(form, caption, field, name);
    connect(field->entry(), &NumberEntry::judged, this, &PreparationForm::answer);
    return field;
}

QWidget *PreparationForm::buildForm()
{
    auto *host = new QWidget(this);
    auto *form = new QFormLayout(host);
    form->setContentsMargins({});
    m_substance = new QComboBox(host);
    m_substance->setMinimumHeight(m_theme.target());
    addFormRow(form, tr("S&ubstance"), m_substance, u"preparationSubstance"_s);
    auto *row = new QHBoxLayout;
    auto *fresh = button(m_theme, tr("&Add a substance…"), u"addSubstance"_s, host);
    auto *change = button(m_theme, tr("&Change it…"), u"changeSubstance"_s, host);
    row->addWidget(fresh);
    row->addWidget(change);
    row->addStretch(1);
    form->addRow(QString(), row);
    m_use = new QComboBox(host);
    m_use->setMinimumHeight(m_theme.target());
    addFormRow(form, tr("Fo&r"), m_use, u"preparationUse"_s);
    m_perMolecule =
        addNumber(form, tr("Analyte &molecules per molecule"), {}, u"preparationPerMolecule"_s);
    m_perMolecule->entry()->setText(u"1"_s);
    m_wanted = addNumber(form, tr("Strength &wanted"), u"g/L"_s, u"preparationWanted"_s);
    m_flask = new QComboBox(host);
    m_flask->setMinimumHeight(m_theme.target());
    addFormRow(form, tr("F&lask"), m_flask, u"preparationFlask"_s);
    m_flask_mL = addNumber(form, tr("&Its volume"), u"mL"_s, u"preparationVolume"_s);
    m_flask_u = addNumber(form, tr("u of flask and filling"), u"mL"_s, u"preparationFlaskU"_s);
    m_masses = addLine(form, tr("W&eighed (mg)"), u"preparationMasses"_s);
    m_masses->setPlaceholderText(tr("several portions, e.g. 50.3; 49.8"));
    m_mass_u = addNumber(form, tr("u of one weighing"), u"mg"_s, u"preparationMassU"_s);
    m_name = addLine(form, tr("Name on the flas&k"), u"preparationName"_s);
    m_madeAt = new MomentField(m_theme, m_clock, host);
    addFormRow(form, tr("Ma&de"), m_madeAt, u"preparationMadeAt"_s);
    m_loss = addNumber(form, tr("Loss of strength"), tr("% per hour"), u"preparationLoss"_s);
    m_keeps_h = addNumber(form, tr("Keeps by &your own rule"), u"h"_s, u"preparationKeeps"_s);
    m_keeps_h->entry()->setToolTip(tr("Empty where there is no rule beside the loss."));
    m_note = addLine(form, tr("No&te (may be empty)"), u"preparationNote"_s);
    connect(fresh, &QPushButton::clicked, this, &PreparationForm::substanceWanted);
    connect(change, &QPushButton::clicked, this, [this] {
        if (const auto id = substance())
            Q_EMIT substanceChangeWanted(*id);
    });
    connect(m_substance, &QComboBox::currentIndexChanged, this, [this] {
        takeLast();
        answer();
    });
    connect(m_use, &QComboBox::currentIndexChanged, this, &PreparationForm::takeUse);
    connect(m_flask, &QComboBox::currentIndexChanged, this, &PreparationForm::takeFlask);
    connect(m_madeAt, &MomentField::changed, this, &PreparationForm::answer);
    return host;
}

void PreparationForm::setStock(const std::vector<planning::HeldSubstance> &substances,
                               const std::vector<assay::Method> &methods,
                               const planning::Laboratory &laboratory,
                               const std::vector<equipment::HeldItem> &equipment,
                               std::vector<planning::HeldPreparation> made)
{
    m_made = std::move(made);
    const auto before = substance();
    const QString use = m_use->currentText();
    const QString flask = m_flask->currentText();
    m_substances = substances;
    m_laboratory = laboratory;
    {
        const QSignalBlocker quietSubstance(m_substance);
        const QSignalBlocker quietUse(m_use);
        const QSignalBlocker quietFlask(m_flask);
        m_substance->clear();
        for (const planning::HeldSubstance &held : substances)
            m_substance->addItem(held.substance.lot.isEmpty()
                                     ? held.substance.name
                                     : tr("%1, lot %2").arg(held.substance.name, held.substance.lot),
                                 held.id);
        if (before)
            chooseSubstance(*before);
        m_uses.clear();
        m_use->clear();
        for (const assay::Method &method : methods) {
            for (const assay::Measurand &measurand : method.measurands) {
                m_uses.push_back({method, measurand});
                m_use->addItem(measurand.name == method.name
                                   ? method.name
                                   : tr("%1 (%2)").arg(measurand.name, method.name));
            }
        }
        m_use->setCurrentIndex(std::max(0, m_use->findText(use)));
        m_flask->clear();
        m_flask->addItem(tr("another flask"));
        for (const planning::Flask &known : laboratory.glassware.flasks)
            m_flask->addItem(known.name);
        m_flask->setCurrentIndex(std::max(0, m_flask->findText(flask)));
    }
    m_weighingFrom = tr("common practice, no source");
    double weighing_mg = usualWeighing_mg;
    for (const equipment::HeldItem &held : equipment) {
        const auto *check =
            held.item.inUse ? equipment::validCheck(held, equipment::Aspect::Weighing, m_clock.now().date())
                            : nullptr;
        const auto outcome = check ? equipment::outcomeOf(check->of, check->check) : std::nullopt;
        if (outcome && outcome->figures.weighing_mg) {
            weighing_mg = *outcome->figures.weighing_mg;
            m_weighingFrom = tr("%1, %2").arg(equipment::titleOf(held.item), equipment::checkName(*check));
        }
    }
    if (m_mass_u->entry()->isBlank())
        m_mass_u->entry()->setText(keyedText(evaluation::significantText(weighing_mg, 2)));
    if (m_use->currentText() != use)
        takeUse();
    if (substance() != before)
        takeLast();
    answer();
}

std::optional<qint64> PreparationForm::substance() const
{
    return m_substance->currentIndex() < 0 ? std::nullopt
                                           : std::optional(m_substance->currentData().toLongLong());
}

void PreparationForm::chooseSubstance(qint64 id)
{
    m_substance->setCurrentIndex(std::max(0, m_substance->findData(id)));
}

const planning::Substance *PreparationForm::chosenSubstance() const
{
    const auto found = std::ranges::find(m_substances, substance().value_or(0), &planning::HeldSubstance::id);
    return found == m_substances.end() ? nullptr : &found->substance;
}

const PreparationForm::Use *PreparationForm::use() const
{
    const int index = m_use->currentIndex();
    return index < 0 ? nullptr : &m_uses[static_cast<std::size_t>(index)];
}

void PreparationForm::takeUse()
{
    const Use *chosen = use();
    const assay::UsualStandard usual =
        chosen ? chosen->method.standard.value_or(assay::UsualStandard{}) : assay::UsualStandard{};
    m_wanted->entry()->clear();
    if (usual.concentration_g_per_L)
        m_wanted->entry()->setValue(*usual.concentration_g_per_L);
    m_loss->entry()->clear();
    if (usual.lossPerHour)
        m_loss->entry()->setValue(100 * *usual.lossPerHour);
    answer();
}

void PreparationForm::takeLast()
{
    const planning::Substance *of = chosenSubstance();
    const auto last = std::ranges::find_if(m_made, [of](const planning::HeldPreparation &made) {
        return of && made.of.name.compare(of->name, Qt::CaseInsensitive) == 0;
    });
    if (last == m_made.end())
        return;
    const auto used = std::ranges::find_if(
        m_uses, [&](const Use &use) { return use.measurand.id == last->preparation.measurand; });
    if (used != m_uses.end())
        m_use->setCurrentIndex(static_cast<int>(used - m_uses.begin()));
    m_perMolecule->entry()->setValue(last->preparation.analytePerMolecule);
}

std::vector<Sentence> PreparationForm::doubtsAbout(const planning::Substance &of, const planning::Preparation &made,
                                                   double strength_g_per_L) const
{
    std::vector<Sentence> doubts;
    // A substance twice as heavy as the analyte may hold two of it, as a metabisulphite holds two of sulphur dioxide.
    const double room = of.molarMass_g_per_mol / made.analyteMolarMass_g_per_mol;
    if (made.analytePerMolecule == 1 && room >= 2)
        doubts.push_back({State::Attention,
                          tr("One molecule of %1 is %2 times as heavy as one of the analyte: make sure that it holds "
                             "just one of it.")
                              .arg(of.name, evaluation::significantText(room, 2))});
    constexpr double usualAim = 0.2; // common practice, no source
    const double wanted = m_wanted->entry()->value().value_or(0);
    if (wanted > 0 && std::abs(strength_g_per_L / wanted - 1) > usualAim)
        doubts.push_back({State::Attention,
                          tr("That is %1 of the strength wanted: look at the mass, the flask and the number of "
                             "molecules.")
                              .arg(withUnit(QString::number(100 * strength_g_per_L / wanted, 'f', 0), u"%"_s))});
    return doubts;
}

void PreparationForm::takeFlask()
{
    const int index = m_flask->currentIndex() - 1;
    if (index >= 0 && index < static_cast<int>(m_laboratory.glassware.flasks.size())) {
        const planning::Flask &flask = m_laboratory.glassware.flasks[static_cast<std::size_t>(index)];
        m_flask_mL->entry()->setValue(flask.volume_mL);
        m_flask_u->entry()->setText(
            keyedText(evaluation::significantText(flask.volume_mL * flask.uncertainty_percent / 100, 2)));
    }
    answer();
}

planning::Preparation PreparationForm::keyed(assay::Problems &problems) const
{
    const NumberReader reader(problems);
    planning::Preparation made;
    made.name = m_name->text().simplified();
    if (const Use *chosen = use()) {
        made.measurand = chosen->measurand.id;
        made.analyteMolarMass_g_per_mol = chosen->measurand.molarMass_g_per_mol;
    }
    made.analytePerMolecule = reader.number(m_perMolecule->entry()->text(), u"/analytePerMolecule"_s);
    static const QRegularExpression apart(u"[;\\s]+"_s, QRegularExpression::UseUnicodePropertiesOption);
    for (const QString &mass : m_masses->text().split(apart, Qt::SkipEmptyParts))
        made.masses_mg.push_back(reader.number(mass, u"/masses_mg"_s));
    made.mass_u_mg = reader.number(m_mass_u->entry()->text(), u"/mass_u_mg"_s);
    made.flask_mL = reader.number(m_flask_mL->entry()->text(), u"/flask_mL"_s);
    made.flask = m_flask->currentIndex() > 0 ? m_flask->currentText() : QString();
    made.flask_u_mL = reader.number(m_flask_u->entry()->text(), u"/flask_u_mL"_s);
    const auto moment = exchange::parseKeyedMoment(m_madeAt->text(), m_clock.now());
    if (const QDateTime *read = std::get_if<QDateTime>(&moment))
        made.madeAt = *read;
    else
        reader.complain(u"/madeAt"_s,
                        tr("is missing or not a time: %1")
                            .arg(exchange::faultSentence(std::get<exchange::MomentFault>(moment))));
    made.lossPerHour = reader.optionalNumber(m_loss->entry()->text(), u"/lossPerHour"_s).value_or(0) / 100;
    if (const auto hours = reader.optionalNumber(m_keeps_h->entry()->text(), u"/useBy"_s);
        hours && made.madeAt.isValid()) {
        constexpr double seconds_per_h = 3600;
        made.useBy = made.madeAt.addSecs(qint64(std::clamp(*hours, -1.0, 1e5) * seconds_per_h));
    }
    made.note = m_note->text().simplified();
    return made;
}

void PreparationForm::answer()
{
    if (!m_answer || !m_note)
        return; // still being built
    std::vector<Sentence> sentences;
    const planning::Substance *of = chosenSubstance();
    if (!of) {
        m_answer->setSentences({{State::Pending, tr("Add the substance first: its purity and its molar mass "
                                                    "make the strength.")}});
        return;
    }
    assay::Problems problems;
    const planning::Preparation made = keyed(problems);
    const double wanted = m_wanted->entry()->value().value_or(0);
    if (wanted > 0 && made.flask_mL > 0 && made.analyteMolarMass_g_per_mol > 0 &&
        made.analytePerMolecule > 0) {
        const double mass_mg = planning::massToWeigh_mg(wanted, planning::weighingOf(*of, made));
        QString text =
            tr("Weigh %1 and make up to %2.")
                .arg(withUnit(QString::number(mass_mg, 'f', evaluation::decimalsFor(mass_mg, 4)), u"mg"_s),
                     withUnit(plainText(made.flask_mL), u"mL"_s));
        if (of->density_g_per_mL)
            text += u' ' + tr("That is about %1 of the liquid.")
                               .arg(withUnit(liquidText_uL(mass_mg / *of->density_g_per_mL, m_laboratory.glassware),
                                             u"µL"_s));
        sentences.push_back({State::Info, text});
    }
    const assay::Problems more = planning::problemsOf(made, m_clock.now());
    if (problems.empty())
        problems = more;
    const auto matters = std::ranges::find_if(problems, [](const assay::Problem &problem) {
        return problem.pointer != "/name"_L1 && problem.pointer != "/madeAt"_L1;
    });
    if (matters != problems.end()) {
        sentences.push_back({State::Pending, standardSentence(*matters)});
    } else if (!made.masses_mg.empty()) {
        const planning::StrengthMade strength = planning::strengthOf(*of, made);
        const std::vector<Sentence> doubts = doubtsAbout(*of, made, strength.concentration_g_per_L);
        sentences.push_back({doubts.empty() ? State::Good : State::Info,
                             tr("Made: %1 (k = 2).").arg(strengthText(strength))});
        sentences.insert(sentences.end(), doubts.begin(), doubts.end());
        if (!strength.budget.empty())
            sentences.push_back(
                {State::Info,
                 tr("Largest contribution to its uncertainty: %1, %2 of the variance.")
                     .arg(strength.budget.front().term,
                          withUnit(QString::number(100 * strength.budget.front().share, 'f', 0), u"%"_s))});
        if (made.madeAt.isValid()) {
            if (const auto last = planning::goodUntil(made))
                sentences.push_back({State::Info, u"%1 %2"_s.arg(tr("Use by %1.").arg(momentText(*last)), whyGoodUntil(made))});
        }
    }
    sentences.push_back(
        {State::Info, tr("A weighing: %1. u is a standard uncertainty (k = 1).").arg(m_weighingFrom)});
    if (of->expires && *of->expires < m_clock.now().date())
        sentences.push_back(
            {State::Attention,
             tr("The use-by date of %1, %2, is past.").arg(of->name, assay::shownDay(*of->expires))});
    sentences.push_back(
        {State::Attention, tr("Wear what your local safety rules and the supplier's sheet ask "
                              "for; they come first.")});
    m_answer->setSentences(std::move(sentences));
}

bool PreparationForm::hasUnsavedChanges() const
{
    return !m_masses->text().trimmed().isEmpty();
}

void PreparationForm::markStored()
{
    m_masses->clear();
    m_name->clear();
    m_madeAt->clear();
    m_note->clear();
    m_keeps_h->entry()->clear();
    m_notice->clear();
}

void PreparationForm::takeFocus()
{
    m_substance->setFocus();
}

void PreparationForm::store()
{
    const auto of = substance();
    if (!of) {
        m_notice->say(State::Attention, tr("Add the substance first: it says purity and molar mass."));
        return;
    }
    assay::Problems problems;
    const planning::Preparation made = keyed(problems);
    const assay::Problems more = planning::problemsOf(made, m_clock.now());
    if (problems.empty())
        problems = more;
    if (!problems.empty()) {
        m_notice->say(State::Attention, standardSentence(problems.front()));
        if (problems.front().pointer == "/name"_L1)
            m_name->setFocus();
        else if (problems.front().pointer == "/madeAt"_L1)
            m_madeAt->setFocus();
        else if (problems.front().pointer == "/masses_mg"_L1)
            m_masses->setFocus();
        return;
    }
    m_notice->clear();
    Q_EMIT wanted(*of, made);
}

void PreparationForm::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closed();
    else
        QWidget::keyPressEvent(event);
}

} // namespace plateau::ui
