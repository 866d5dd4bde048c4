// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/timepanel.h"

#include "ui/plan/schedulepicture.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/timechart.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QSpinBox>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Half a working day. Common practice, no source.
constexpr int usualMost_min = 240;

} // namespace

TimePanel::TimePanel(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_most(new NumberField(theme, tr("min"), this))
    , m_withSecond(new QCheckBox(tr("&Judge whether a second rack fits in between"), this))
    , m_secondMethod(new QComboBox(this))
    , m_secondTubes(new QSpinBox(this))
    , m_sentences(new SentenceList(theme, tr("Time at the bench"), u"planTimes"_s, this))
    , m_chart(new TimeChart(theme, tr("Tubes against time"), this))
{
    m_most->entry()->setText(QString::number(usualMost_min));
    m_withSecond->setObjectName(u"withSecondRack"_s);
    m_withSecond->setMinimumHeight(theme.target());
    m_secondMethod->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_secondMethod->setMinimumContentsLength(16);
    m_secondMethod->setMinimumHeight(theme.target());
    m_secondTubes->setRange(1, 96);
    m_secondTubes->setValue(12);
    m_secondTubes->setMinimumHeight(theme.target());
    auto *form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    addFormRow(form, tr("Max. time at the bench"), m_most, u"planMost"_s);
    form->addRow(m_withSecond);
    addFormRow(form, tr("Its method"), m_secondMethod, u"secondMethod"_s);
    addFormRow(form, tr("Its tubes"), m_secondTubes, u"secondTubes"_s);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    m_sentences->fitSentences(m_sentences->fontMetrics().lineSpacing() * 16);
    layout->addWidget(m_sentences);
    layout->addWidget(m_chart, 1);
    layout->addLayout(form);
    const auto showSecond = [this, form](bool on) {
        for (QWidget *field : std::initializer_list<QWidget *>{m_secondMethod, m_secondTubes}) {
            field->setVisible(on);
            form->labelForField(field)->setVisible(on);
        }
    };
    showSecond(false);
    connect(m_withSecond, &QCheckBox::toggled, this, showSecond);
    connect(m_withSecond, &QCheckBox::toggled, this, &TimePanel::changed);
    connect(m_secondMethod, &QComboBox::currentIndexChanged, this, &TimePanel::changed);
    connect(m_secondTubes, &QSpinBox::valueChanged, this, &TimePanel::changed);
    connect(m_most->entry(), &NumberEntry::judged, this, &TimePanel::changed);
}

void TimePanel::setMethods(const std::vector<MethodOffer> &offers)
{
    if (offers == m_offers)
        return;
    m_offers = offers;
    const QString before = m_secondMethod->currentText();
    m_secondMethod->clear();
    for (const MethodOffer &offer : m_offers)
        m_secondMethod->addItem(offer.label);
    m_secondMethod->setCurrentIndex(std::max(m_secondMethod->findText(before), 0));
}

std::optional<TimedRack> TimePanel::secondRack() const
{
    const int index = m_secondMethod->currentIndex();
    if (!m_withSecond->isChecked() || index < 0)
        return std::nullopt;
    TimedRack rack;
    rack.method = m_offers[static_cast<std::size_t>(index)].method;
    rack.tubes = m_secondTubes->value();
    return rack;
}

void TimePanel::show(const TimedRack &rack, const QStringList &names, const planning::HandlingTimes &handling)
{
    BenchTime time;
    time.handling = handling;
    if (const std::optional<double> most_min = m_most->entry()->value(); most_min && *most_min > 0)
        time.most_s = static_cast<int>(std::lround(std::min(*most_min, 24.0 * 60) * 60));
    const std::optional<TimedRack> second = secondRack();
    m_feasibility = feasibilityOf(rack, time, second);
    m_sentences->setSentences(m_feasibility.sentences);
    m_chart->setData(pictureOf(m_feasibility, rack.method, names, second ? &second->method : nullptr));
}

} // namespace plateau::ui
