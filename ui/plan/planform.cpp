// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/planform.h"

#include "ui/bench/samplesmodel.h"
#include "ui/bench/standardform.h"
#include "ui/bench/uncertaintyform.h"
#include "ui/plan/samplesection.h"
#include "ui/plan/weighingform.h"
#include "ui/shared/clock.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QTimer>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PlanForm::PlanForm(const Theme &theme, const Clock &clock, QWidget *parent)
    : QScrollArea(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_laboratory(planning::usualLaboratory())
    , m_method(new QComboBox(this))
    , m_title(new QLineEdit(this))
    , m_names(new QPlainTextEdit(this))
    , m_replicates(new QSpinBox(this))
    , m_blanks(new QSpinBox(this))
    , m_form(new QComboBox(this))
    , m_wavelength(new QComboBox(this))
    , m_pathLength(new NumberField(theme, tr("mm"), this))
    , m_calibration(new QComboBox(this))
    , m_standard(new StandardForm(theme, clock, {tr("Run a stan&dard"), u"standard"_s, u"STD"_s, 2}, this))
    , m_weighing(new WeighingForm(theme, clock, this))
    , m_samples(new SampleSection(theme, this))
    , m_control(new StandardForm(
          theme, clock, {tr("Run a control of &known value"), u"control"_s, u"CTRL"_s, 1, true}, this))
    , m_uncertainty(new UncertaintyForm(theme, this))
{
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // The keys bring a field into view, and would shift a form that is wider than its room sideways.
    QScrollBar *sideways = horizontalScrollBar();
    connect(sideways, &QScrollBar::valueChanged, sideways, [sideways] { sideways->setValue(0); });
    dressFields();
    build();
    connectAll();
}

void PlanForm::dressFields()
{
    // Method names may be long; the box must not be as wide as the longest.
    m_method->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_method->setMinimumContentsLength(24);
    m_method->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_form->addItems({tr("Liquid"), tr("Solid, weighed and extracted")});
    m_calibration->addItems(
        {tr("By absorptivity"), tr("By the run's standard"), tr("By a line through its standards")});
    m_replicates->setRange(1, 12);
    m_blanks->setRange(1, 12);
    m_names->setTabChangesFocus(true);
    m_names->setFixedHeight(m_names->fontMetrics().lineSpacing() * 7);
    for (QWidget *field : std::initializer_list<QWidget *>{m_method, m_title, m_form, m_replicates, m_blanks,
                                                           m_wavelength, m_calibration})
        field->setMinimumHeight(m_theme.target());
}

void PlanForm::build()
{
    auto *page = new QWidget(this);
    auto *heading = plainLabel(tr("Plan a run"), page);
    heading->setFont(m_theme.large());
    auto *host = new QWidget(page);
    auto *form = new QFormLayout(host);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->setContentsMargins({});
    addFormRow(form, tr("&Method"), m_method, u"method"_s);
    addFormRow(form, tr("&Title"), m_title, u"title"_s);
    addFormRow(form, tr("&Samples, one per line"), m_names, u"sampleNames"_s);
    addFormRow(form, tr("Tubes for &each sample"), m_replicates, u"replicates"_s);
    addFormRow(form, tr("Blank tubes"), m_blanks, u"blanks"_s);
    addFormRow(form, tr("Samples &are"), m_form, u"form"_s);
    addFormRow(form, tr("&Wavelength"), m_wavelength, u"wavelength"_s);
    addFormRow(form, tr("Path &length"), m_pathLength, u"pathLength"_s);
    addFormRow(form, tr("&Calibration"), m_calibration, u"calibration"_s);
    auto *layout = new QVBoxLayout(page);
    setGaps(m_theme, layout);
    layout->addWidget(heading);
    layout->addWidget(host);
    for (QWidget *part :
         std::initializer_list<QWidget *>{m_standard, m_weighing, m_samples, m_control, m_uncertainty})
        layout->addWidget(part);
    layout->addStretch();
    setWidget(page);
}

void PlanForm::connectAll()
{
    connect(m_method, &QComboBox::currentIndexChanged, this, &PlanForm::onMethod);
    connect(m_title, &QLineEdit::textChanged, this, &PlanForm::changed);
    connect(m_names, &QPlainTextEdit::textChanged, this, [this] {
        QStringList names;
        std::vector<QStringList> rows;
        for (const QString &line : m_names->toPlainText().split(u'\n')) {
            const QStringList cells = line.split(u'\t');
            if (const QString name = cells.front().simplified(); !name.isEmpty()) {
                names << name;
                rows.push_back(cells.mid(1));
            }
        }
        m_samples->setNames(names);
        m_samples->fillIn(rows);
    });
    connect(m_samples, &SampleSection::rowsAdded, this, [this](const QStringList &names) {
        const QSignalBlocker quiet(m_names);
        m_names->setPlainText(names.join(u'\n'));
    });
    connect(m_form, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_samples->setForm(index == 1 ? run::Form::Solid : run::Form::Liquid);
        Q_EMIT changed();
    });
    for (QSpinBox *box : {m_replicates, m_blanks})
        connect(box, &QSpinBox::valueChanged, this, &PlanForm::changed);
    connect(m_wavelength, &QComboBox::currentIndexChanged, this, &PlanForm::tellSamples);
    connect(m_calibration, &QComboBox::currentIndexChanged, this, &PlanForm::changed);
    connect(m_pathLength->entry(), &NumberEntry::judged, this, &PlanForm::tellSamples);
    connect(m_samples, &SampleSection::changed, this, &PlanForm::changed);
    for (StandardForm *standard : {m_standard, m_control}) {
        connect(standard, &StandardForm::changed, this, &PlanForm::changed);
        connect(standard, &StandardForm::taken, this, [this, standard] { showWhole(standard); });
    }
    for (QGroupBox *part : std::initializer_list<QGroupBox *>{m_standard, m_control, m_weighing}) {
        connect(part, &QGroupBox::toggled, this, [this, part](bool on) {
            if (on)
                showWhole(part);
        });
    }
    connect(m_weighing, &WeighingForm::made, m_standard, &StandardForm::take);
    connect(m_uncertainty, &UncertaintyForm::changed, this, &PlanForm::changed);
}

/// Ticked by its key, or filled from the book, it may lie below the edge; its rows have their places a moment later.
void PlanForm::showWhole(QWidget *part)
{
    ensureWidgetVisible(part);
    QTimer::singleShot(0, part, [part] { bringIntoView(*part, part->rect()); });
}

void PlanForm::setMethods(std::vector<MethodOffer> offers, const QString &usualId)
{
    if (offers == m_offers)
        return;
    const assay::Method *chosen = method();
    const QString id = chosen ? chosen->id : usualId;
    const int version = chosen ? chosen->version : 0;
    const QSignalBlocker quiet(m_method);
    m_offers = std::move(offers);
    m_method->clear();
    int kept = -1;
    for (const auto &[each, label] : m_offers) {
        m_method->addItem(label);
        if (each.id == id && (kept < 0 || each.version == version))
            kept = m_method->count() - 1;
    }
    m_method->setCurrentIndex(std::max(kept, 0));
    onMethod();
}

void PlanForm::setStandards(const std::vector<run::Standard> &alive)
{
    m_standard->setBook(alive);
    m_control->setBook(alive);
}

void PlanForm::setLaboratory(const planning::Laboratory &laboratory)
{
    if (laboratory == m_laboratory)
        return;
    m_laboratory = laboratory;
    m_samples->setGlassware(laboratory.glassware);
    Q_EMIT changed();
}

void PlanForm::startAnew()
{
    m_title->clear();
    m_names->clear();
    m_samples->startAnew();
    m_form->setCurrentIndex(0);
    m_calibration->setCurrentIndex(0);
    m_standard->startAnew();
    m_weighing->startAnew();
    m_control->startAnew();
    m_uncertainty->startAnew();
    onMethod();
}

QSize PlanForm::minimumSizeHint() const
{
    QSize least = QScrollArea::minimumSizeHint();
    if (widget())
        least.setWidth(widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width());
    return least;
}

void PlanForm::takeFocus()
{
    verticalScrollBar()->setValue(0);
    m_method->setFocus();
}

bool PlanForm::isBegun() const
{
    return !m_title->text().trimmed().isEmpty() || m_samples->model().rowCount() > 0 ||
           m_standard->isChecked() || m_control->isChecked();
}

const assay::Method *PlanForm::method() const
{
    const int index = m_method->currentIndex();
    return index < 0 ? nullptr : &m_offers[static_cast<std::size_t>(index)].method;
}

void PlanForm::onMethod()
{
    const assay::Method *chosen = method();
    if (chosen) {
        const QSignalBlocker quiet(m_wavelength);
        m_wavelength->clear();
        for (const auto &[wavelength_nm, absorptivity] : chosen->absorptivity_L_per_mol_cm)
            m_wavelength->addItem(tr("%1 nm").arg(wavelength_nm), wavelength_nm);
        if (m_wavelength->findData(chosen->wavelength_nm) < 0)
            m_wavelength->addItem(tr("%1 nm").arg(chosen->wavelength_nm), chosen->wavelength_nm);
        m_wavelength->setCurrentIndex(m_wavelength->findData(chosen->wavelength_nm));
        m_pathLength->entry()->setValue(chosen->pathLength_mm);
        // The method's rule of how many, or what is usual.
        const assay::UsualTubes usual = chosen->tubes.value_or(assay::UsualTubes{2, 2, 2});
        m_blanks->setValue(usual.blanks);
        m_replicates->setValue(usual.replicates);
        m_standard->setUsualTubes(std::max(usual.standards, 1));
        m_standard->showMethod(*chosen);
        m_control->showMethod(*chosen);
        m_weighing->showMethod(*chosen);
    }
    tellSamples();
    Q_EMIT methodChanged();
}

void PlanForm::tellSamples()
{
    m_samples->setAssay(method(), m_wavelength->currentData().toInt(),
                        m_pathLength->entry()->value().value_or(0));
    Q_EMIT changed();
}

void PlanForm::setUncertainty(const std::vector<planning::OwnedInput> &owned)
{
    m_uncertainty->show(owned);
}

void PlanForm::setWorth(const QString &sentence)
{
    m_standard->setWorth(sentence);
}

RunDraft PlanForm::draft() const
{
    RunDraft draft;
    draft.title = m_title->text();
    draft.form = m_form->currentIndex() == 1 ? run::Form::Solid : run::Form::Liquid;
    draft.samples = m_samples->model().rows();
    draft.replicates = m_replicates->value();
    draft.blanks = m_blanks->value();
    draft.standard = m_standard->draft();
    draft.control = m_control->draft();
    constexpr run::Calibration calibrations[] = {run::Calibration::Absorptivity, run::Calibration::Standard,
                                                 run::Calibration::Line};
    draft.calibration = calibrations[std::max(m_calibration->currentIndex(), 0)];
    draft.wavelength_nm = m_wavelength->currentData().toInt();
    draft.pathLength_mm = m_pathLength->entry()->text();
    draft.uncertainty = m_uncertainty->draft();
    draft.startedAt = m_clock.now();
    draft.laboratory = m_laboratory;
    return draft;
}

} // namespace plateau::ui
