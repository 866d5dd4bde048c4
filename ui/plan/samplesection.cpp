// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/samplesection.h"

#include "core/evaluation/format.h"
#include "ui/bench/samplesignals.h"
#include "ui/bench/samplesmodel.h"
#include "ui/plan/samplestable.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTimer>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

SampleSection::SampleSection(const Theme &theme, QWidget *parent)
    : QGroupBox(tr("What is planned for each sample"), parent)
    , m_theme(theme)
    , m_model(new SamplesModel(theme, this))
    , m_table(new SamplesTable(theme, m_model, this))
    , m_notice(new Notice(theme, this))
    , m_glassware(planning::usualLaboratory().glassware)
{
    build();
    connect(m_model, &QAbstractItemModel::dataChanged, this, &SampleSection::changed);
    // A volume that is taken out again is the method's, with a word behind it; a signal comes with what is typed. Once for
    // all rows that a proposal changes.
    auto *fitting = new QTimer(this);
    fitting->setSingleShot(true);
    connect(m_model, &QAbstractItemModel::dataChanged, fitting, qOverload<>(&QTimer::start));
    connect(fitting, &QTimer::timeout, m_table, &Table::fitWhereCut);
}

void SampleSection::build()
{
    auto *fromShelf = button(m_theme, tr("Take from the &queue…"), u"takeFromShelf"_s, this);
    auto *proposal = button(m_theme, tr("P&ropose dilutions"), u"proposeDilutions"_s, this);
    auto *more = button(m_theme, tr("Add a d&ilution step"), u"addDilutionStep"_s, this);
    m_fewerSteps = button(m_theme, tr("Remove the last step"), u"removeDilutionStep"_s, this);
    m_fewerSteps->setEnabled(false);
    auto *hint = plainLabel(tr("Type what is expected, Enter goes down, and let the dilutions be proposed, "
                               "or type them. Left empty: "
                               "undiluted, and the method's own volume in the tube."),
                            this);
    auto *product = plainLabel(tr("A product gives the unit of the results and their limits: type it, or choose it with ↓."), this);
    product->setWordWrap(true);
    hint->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->addWidget(hint);
    layout->addWidget(product);
    layout->addWidget(m_table);
    layout->addWidget(m_notice);
    auto *first = new QHBoxLayout;
    first->addWidget(fromShelf);
    first->addWidget(proposal);
    first->addStretch();
    auto *second = new QHBoxLayout;
    second->addWidget(more);
    second->addWidget(m_fewerSteps);
    second->addStretch();
    layout->addLayout(first);
    layout->addLayout(second);
    connect(fromShelf, &QPushButton::clicked, this, &SampleSection::shelfWanted);
    connect(proposal, &QPushButton::clicked, this, &SampleSection::propose);
    connect(more, &QPushButton::clicked, this, [this] { changeDilutionSteps(1); });
    connect(m_fewerSteps, &QPushButton::clicked, this, [this] { changeDilutionSteps(-1); });
}

void SampleSection::setSteps(int steps)
{
    m_model->setDilutionSteps(steps);
    m_fewerSteps->setEnabled(m_model->dilutionSteps() > 1);
    m_table->fit();
}

void SampleSection::changeDilutionSteps(int by)
{
    const int row = std::max(m_table->currentIndex().row(), 0);
    setSteps(m_model->dilutionSteps() + by);
    m_table->setFocus();
    const QModelIndex next = m_model->index(row, m_model->lastTakeColumn());
    m_table->setCurrentIndex(next);
    m_table->scrollTo(next);
    Q_EMIT changed();
}

void SampleSection::propose()
{
    m_notice->clear();
    if (!m_method)
        return;
    const int fromPast = fillExpectations();
    QStringList without;
    int proposed = 0;
    int undiluted = 0;
    int expected = 0;
    QStringList volumes;
    for (int row = 0; row < m_model->rowCount(); ++row) {
        QString why;
        const auto planned = withProposedDilution(m_model->row(row), m_form, *m_method, m_wavelength_nm,
                                                  m_pathLength_mm, m_glassware, why);
        expected += planned || !why.isEmpty() ? 1 : 0;
        if (planned) {
            if (planned->sampleVolume_mL != m_model->row(row).sampleVolume_mL)
                volumes << volumeSet(*planned);
            m_model->replaceRow(row, *planned);
            const bool diluted =
                std::any_of(planned->dilution.begin(), planned->dilution.end(),
                            [](const DilutionDraft &step) { return !step.take_mL.isEmpty(); });
            (diluted ? proposed : undiluted) += 1;
        } else if (!why.isEmpty()) {
            without << why;
        }
    }
    setSteps(m_model->dilutionSteps());
    if (expected == 0)
        m_notice->say(State::Info, tr("First type what is expected of at least one sample, or a product that "
                                      "was run before: the dilution follows from it."));
    else if (!without.isEmpty())
        m_notice->say(State::Attention, without.join(u' '));
    else
        m_notice->say(State::Good,
                      tr("Dilutions proposed: %1, to be run undiluted: %2. They can be overwritten.")
                          .arg(proposed)
                          .arg(undiluted));
    if (!volumes.isEmpty())
        m_notice->say(without.isEmpty() ? State::Good : State::Attention,
                      tr("%1 Volume of sample in the tube set as well: %2.")
                          .arg(m_notice->sentence(), volumes.join(tr("; "))));
    if (fromPast > 0)
        m_notice->say(without.isEmpty() ? State::Good : State::Attention,
                      tr("%1 Expected from the last results of the same product: %2.")
                          .arg(m_notice->sentence())
                          .arg(fromPast));
    Q_EMIT changed();
}

QString SampleSection::volumeSet(const SampleDraft &planned) const
{
    const assay::Component *component = assay::findComponent(*m_method, m_method->sample);
    if (!planned.sampleVolume_mL.isEmpty())
        return tr("%1 %2 mL").arg(planned.id, planned.sampleVolume_mL);
    return tr("%1 %2 mL, the method's")
        .arg(planned.id, component ? evaluation::plainText(component->volume_mL) : QString());
}

int SampleSection::fillExpectations()
{
    int filled = 0;
    for (int row = 0; m_pastResult && row < m_model->rowCount(); ++row) {
        SampleDraft sample = m_model->row(row);
        sample.expected.resize(m_method->measurands.size());
        const QString product = sample.product.simplified();
        for (std::size_t measurand = 0; measurand < sample.expected.size() && !product.isEmpty();
             ++measurand) {
            if (!sample.expected[measurand].trimmed().isEmpty())
                continue;
            if (const auto past = m_pastResult(product, m_method->measurands[measurand].id)) {
                sample.expected[measurand] = keyedText(evaluation::roundedText(*past, 3));
                ++filled;
            }
        }
        m_model->replaceRow(row, sample);
    }
    return filled;
}

void SampleSection::setNames(const QStringList &names)
{
    m_model->setNames(names);
    m_table->fit();
    Q_EMIT changed();
}

void SampleSection::fillIn(const std::vector<QStringList> &rows)
{
    for (int row = 0; row < std::min(static_cast<int>(rows.size()), m_model->rowCount()); ++row) {
        SampleDraft sample = m_model->row(row);
        if (m_method)
            sample.expected.resize(std::max<std::size_t>(sample.expected.size(), 1));
        for (const QString &cell : rows[static_cast<std::size_t>(row)]) {
            QString *place = !numberIn(cell)            ? &sample.product
                             : !sample.expected.empty() ? &sample.expected.front()
                                                        : nullptr;
            if (place && place->trimmed().isEmpty())
                *place = cell.trimmed();
        }
        if (sample != m_model->row(row))
            m_model->replaceRow(row, sample);
    }
}

void SampleSection::setProducts(const QStringList &products)
{
    m_model->setProducts(products);
}

void SampleSection::addRows(const std::vector<SampleDraft> &rows)
{
    m_model->addRows(rows);
    setSteps(m_model->dilutionSteps());
    QStringList names;
    for (const SampleDraft &sample : m_model->rows())
        names << sample.id;
    Q_EMIT rowsAdded(names);
    Q_EMIT changed();
}

void SampleSection::setForm(run::Form form)
{
    m_form = form;
    m_model->setForm(form);
    m_table->fit();
}

void SampleSection::setAssay(const assay::Method *method, int wavelength_nm, double pathLength_mm)
{
    m_method = method ? std::optional(*method) : std::nullopt;
    m_wavelength_nm = wavelength_nm;
    m_pathLength_mm = pathLength_mm;
    m_model->setAssay(method, wavelength_nm, pathLength_mm);
    m_table->fit();
}

void SampleSection::startAnew()
{
    m_model->setNames({});
    setSteps(1);
    m_notice->clear();
}

} // namespace plateau::ui
