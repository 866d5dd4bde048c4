// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/newrunpage.h"

#include "core/evaluation/format.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/methodtext.h"
#include "ui/bench/placewords.h"
#include "ui/bench/samplesmodel.h"
#include "ui/bench/standardform.h"
#include "ui/bench/uncertaintyform.h"
#include "ui/shared/clock.h"
#include "ui/shared/guard.h"
#include "ui/shared/numberdelegate.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/problemlist.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/table.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSpinBox>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

NewRunPage::NewRunPage(const Theme &theme, const Clock &clock, BenchSession &session, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_clock(clock)
    , m_session(session)
    , m_method(new QComboBox(this))
    , m_title(new QLineEdit(this))
    , m_names(new QPlainTextEdit(this))
    , m_replicates(new QSpinBox(this))
    , m_blanks(new QSpinBox(this))
    , m_form(new QComboBox(this))
    , m_wavelength(new QComboBox(this))
    , m_pathLength(new NumberField(theme, tr("mm"), this))
    , m_calibration(new QComboBox(this))
    , m_samples(new SamplesModel(theme, this))
    , m_scroll(new QScrollArea(this))
{
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setWidget(buildForm());
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(m_scroll, 3);
    layout->addWidget(buildSide(), 2);
    connectAll();
    startAnew();
}

QWidget *NewRunPage::buildForm()
{
    auto *page = new QWidget(this);
    auto *heading = plainLabel(tr("New run"), page);
    heading->setFont(m_theme.large());
    // Method names may be long; the box must not be as wide as the longest.
    m_method->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_method->setMinimumContentsLength(24);
    m_method->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_form->addItems({tr("Liquid"), tr("Solid, weighed and extracted")});
    m_calibration->addItems({tr("By absorptivity"), tr("By the run's standard")});
    m_replicates->setRange(1, 12);
    m_blanks->setRange(1, 12);
    m_names->setTabChangesFocus(true);
    m_names->setFixedHeight(m_names->fontMetrics().lineSpacing() * 7);
    for (QWidget *field : std::initializer_list<QWidget *>{m_method, m_title, m_form, m_replicates, m_blanks,
                                                           m_wavelength, m_calibration})
        field->setMinimumHeight(m_theme.target());

    auto *form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    auto *formHost = new QWidget(page);
    formHost->setLayout(form);
    form->setContentsMargins({});
    addFormRow(form, tr("&Method"), m_method, u"method"_s);
    addFormRow(form, tr("&Title"), m_title, u"title"_s);
    addFormRow(form, tr("&Samples, one a line"), m_names, u"sampleNames"_s);
    addFormRow(form, tr("Tubes for &each sample"), m_replicates, u"replicates"_s);
    addFormRow(form, tr("&Blank tubes"), m_blanks, u"blanks"_s);
    addFormRow(form, tr("Samples &are"), m_form, u"form"_s);
    addFormRow(form, tr("&Wavelength"), m_wavelength, u"wavelength"_s);
    addFormRow(form, tr("Path &length"), m_pathLength, u"pathLength"_s);
    addFormRow(form, tr("&Calibration"), m_calibration, u"calibration"_s);

    auto *layout = new QVBoxLayout(page);
    setGaps(m_theme, layout);
    layout->addWidget(heading);
    layout->addWidget(formHost);
    layout->addWidget(buildSamples());
    m_standard = new StandardForm(m_theme, m_clock, page);
    m_uncertainty = new UncertaintyForm(m_theme, page);
    layout->addWidget(m_standard);
    layout->addWidget(m_uncertainty);
    layout->addStretch();
    return page;
}

QWidget *NewRunPage::buildSamples()
{
    auto *group = new QGroupBox(tr("Dilution and volumes of the samples"), this);
    m_samplesTable =
        new Table(m_theme, m_samples, tr("Dilution and volumes of the samples"), u"samples"_s, group);
    m_samplesTable->setItemDelegate(new NumberDelegate(m_theme, m_samplesTable));
    m_samplesTable->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::EditKeyPressed |
                                    QAbstractItemView::DoubleClicked);
    m_samplesTable->setMinimumHeight(m_theme.target() * 6);
    auto *more = button(m_theme, tr("Add a d&ilution step"), u"addDilutionStep"_s, group);
    m_fewerSteps = button(m_theme, tr("Ta&ke the last step away"), u"removeDilutionStep"_s, group);
    m_fewerSteps->setEnabled(false);
    auto *hint =
        plainLabel(tr("Leave take and make up to empty for an undiluted sample, and the volume in the tube "
                      "for the method's own."),
                   group);
    hint->setWordWrap(true);
    auto *layout = new QVBoxLayout(group);
    layout->addWidget(hint);
    layout->addWidget(m_samplesTable);
    auto *steps = new QHBoxLayout;
    steps->addWidget(more);
    steps->addWidget(m_fewerSteps);
    steps->addStretch();
    layout->addLayout(steps);
    connect(more, &QPushButton::clicked, this, [this] { changeDilutionSteps(1); });
    connect(m_fewerSteps, &QPushButton::clicked, this, [this] { changeDilutionSteps(-1); });
    return group;
}

void NewRunPage::changeDilutionSteps(int by)
{
    const int row = std::max(m_samplesTable->currentIndex().row(), 0);
    m_samples->setDilutionSteps(m_samples->dilutionSteps() + by);
    m_fewerSteps->setEnabled(m_samples->dilutionSteps() > 1);
    m_samplesTable->fit();
    m_samplesTable->setFocus();
    const QModelIndex next = m_samples->index(row, m_samples->lastTakeColumn());
    m_samplesTable->setCurrentIndex(next);
    m_samplesTable->scrollTo(next);
    check();
}

QWidget *NewRunPage::buildSide()
{
    auto *side = new QWidget(this);
    m_summary = plainLabel({}, side);
    m_summary->setObjectName(u"runSummary"_s);
    m_summary->setWordWrap(true);
    m_problems = new ProblemList(m_theme, u"newRunProblems"_s, side);
    m_methodText = new SentenceList(m_theme, tr("Method and cautions"), u"newRunMethod"_s, side);
    m_notice = new Notice(m_theme, side);
    auto *put = button(m_theme, tr("P&ut on the bench"), u"putOnBench"_s, side);
    auto *layout = new QVBoxLayout(side);
    setGaps(m_theme, layout);
    layout->addWidget(m_summary);
    layout->addWidget(m_problems, 1);
    layout->addWidget(m_methodText, 1);
    layout->addWidget(m_notice);
    layout->addWidget(put);
    connect(put, &QPushButton::clicked, this, &NewRunPage::putOnBench);
    return side;
}

void NewRunPage::connectAll()
{
    connect(m_method, &QComboBox::currentIndexChanged, this, &NewRunPage::onMethod);
    connect(m_title, &QLineEdit::textChanged, this, &NewRunPage::check);
    connectNames();
    connect(m_form, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_samples->setForm(index == 1 ? run::Form::Solid : run::Form::Liquid);
        m_samplesTable->fit();
        check();
    });
    for (QSpinBox *box : {m_replicates, m_blanks})
        connect(box, &QSpinBox::valueChanged, this, &NewRunPage::check);
    for (QComboBox *box : {m_wavelength, m_calibration})
        connect(box, &QComboBox::currentIndexChanged, this, &NewRunPage::check);
    connect(m_pathLength->entry(), &NumberEntry::judged, this, &NewRunPage::check);
    connect(m_samples, &QAbstractItemModel::dataChanged, this, &NewRunPage::check);
    connect(m_standard, &StandardForm::changed, this, &NewRunPage::check);
    // Ticked by its key, it may lie below the edge.
    connect(m_standard, &QGroupBox::toggled, this, [this](bool on) {
        if (on)
            m_scroll->ensureWidgetVisible(m_standard);
    });
    connect(m_uncertainty, &UncertaintyForm::changed, this, &NewRunPage::check);
}

void NewRunPage::connectNames()
{
    connect(m_names, &QPlainTextEdit::textChanged, this, [this] {
        QStringList names;
        for (const QString &line : m_names->toPlainText().split(u'\n')) {
            if (const QString name = line.simplified(); !name.isEmpty())
                names << name;
        }
        m_samples->setNames(names);
        m_samplesTable->fit();
        check();
    });
}

QString NewRunPage::methodOfLatestRun()
{
    QString id;
    guarded(*m_notice, [&] {
        if (const auto runs = m_session.allRuns(); !runs.empty())
            id = runs.front().methodId;
    });
    return id;
}

void NewRunPage::setMethods(std::vector<MethodOffer> offers)
{
    if (offers == m_offers)
        return;
    const assay::Method *chosen = method();
    const QString id = chosen ? chosen->id : methodOfLatestRun();
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

void NewRunPage::startAnew()
{
    m_title->clear();
    m_names->clear();
    m_samples->setDilutionSteps(1);
    m_fewerSteps->setEnabled(false);
    m_samplesTable->fit();
    m_form->setCurrentIndex(0);
    m_calibration->setCurrentIndex(0);
    m_replicates->setValue(2);
    m_blanks->setValue(2);
    m_standard->startAnew();
    m_uncertainty->startAnew();
    m_notice->clear();
    onMethod();
}

void NewRunPage::takeFocus()
{
    m_method->setFocus();
}

bool NewRunPage::isBegun() const
{
    return !m_title->text().trimmed().isEmpty() || m_samples->rowCount() > 0 || m_standard->isChecked();
}

const assay::Method *NewRunPage::method() const
{
    const int index = m_method->currentIndex();
    return index < 0 ? nullptr : &m_offers[static_cast<std::size_t>(index)].method;
}

void NewRunPage::onMethod()
{
    if (const assay::Method *chosen = method()) {
        m_wavelength->clear();
        for (const auto &[wavelength_nm, absorptivity] : chosen->absorptivity_L_per_mol_cm)
            m_wavelength->addItem(tr("%1 nm").arg(wavelength_nm), wavelength_nm);
        if (m_wavelength->findData(chosen->wavelength_nm) < 0)
            m_wavelength->addItem(tr("%1 nm").arg(chosen->wavelength_nm), chosen->wavelength_nm);
        m_wavelength->setCurrentIndex(m_wavelength->findData(chosen->wavelength_nm));
        m_pathLength->entry()->setValue(chosen->pathLength_mm);
        m_methodText->setSentences(methodSentences(*chosen));
        m_standard->showMethod(*chosen);
    }
    check();
}

RunDraft NewRunPage::draft() const
{
    RunDraft draft;
    draft.title = m_title->text();
    draft.form = m_form->currentIndex() == 1 ? run::Form::Solid : run::Form::Liquid;
    draft.samples = m_samples->rows();
    draft.replicates = m_replicates->value();
    draft.blanks = m_blanks->value();
    draft.standard = m_standard->draft();
    draft.calibration =
        m_calibration->currentIndex() == 1 ? run::Calibration::Standard : run::Calibration::Absorptivity;
    draft.wavelength_nm = m_wavelength->currentData().toInt();
    draft.pathLength_mm = m_pathLength->entry()->text();
    draft.uncertainty = m_uncertainty->draft();
    draft.startedAt = m_clock.now();
    return draft;
}

void NewRunPage::check()
{
    m_notice->clear();
    if (!method()) {
        m_summary->setText(tr("No method is installed, so no run can be put together here."));
        return;
    }
    const DraftOutcome outcome = runOf(draft(), *method());
    m_problems->setProblems(inWordsOfTheForm(outcome.problems, outcome.run));
    const QString tubes = tr("Tubes: %1").arg(outcome.run.tubes.size());
    if (assay::hasErrors(outcome.problems))
        m_summary->setText(tr("%1. Still to be put right:").arg(tubes));
    else if (!outcome.problems.empty())
        m_summary->setText(tr("%1. Nothing stands in the way, but look at this:").arg(tubes));
    else
        m_summary->setText(tr("%1. Nothing stands in the way.").arg(tubes));
}

void NewRunPage::putOnBench()
{
    if (!method())
        return;
    const DraftOutcome outcome = runOf(draft(), *method());
    if (assay::hasErrors(outcome.problems)) {
        m_notice->say(State::Attention,
                      tr("The run is not on the bench yet: first put right what the list names."));
        m_problems->setFocus();
        return;
    }
    if (m_session.person().isEmpty()) {
        m_notice->say(State::Info,
                      tr("Say who is at the bench first: type your name on the left and press Enter."));
        Q_EMIT personWanted();
        return;
    }
    notebook::RunId id;
    if (!guarded(*m_notice, [&] { id = m_session.addRun(outcome.run, *method()); }))
        return;
    startAnew();
    Q_EMIT opened(id);
}

} // namespace plateau::ui
