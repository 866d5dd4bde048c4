// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/repeatoffer.h"

#include "core/evaluation/format.h"
#include "ui/bench/benchsession.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct RepeatOfferWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RepeatOffer)
};

QString howText(const planning::RackRepeat &repeat)
{
    QStringList steps;
    for (const run::DilutionStep &step : repeat.sample.dilution)
        steps << RepeatOfferWords::tr("%1 mL to %2 mL")
                     .arg(evaluation::plainText(step.take_mL), evaluation::plainText(step.makeUpTo_mL));
    const QString dilution =
        steps.isEmpty() ? RepeatOfferWords::tr("undiluted") : steps.join(RepeatOfferWords::tr(", then "));
    if (repeat.tubes.empty() || !repeat.tubes.front().sampleVolume_mL)
        return dilution;
    return RepeatOfferWords::tr("%1, %2 mL in the tube")
        .arg(dilution, evaluation::plainText(*repeat.tubes.front().sampleVolume_mL));
}

} // namespace

RepeatOffer::RepeatOffer(const Theme &theme, QWidget *parent)
    : QFrame(parent)
    , m_theme(theme)
    , m_sentence(plainLabel({}, this))
    , m_add(button(theme, tr("A&dd it to this rack"), u"addRepeat"_s, this))
{
    setAutoFillBackground(true);
    m_sentence->setObjectName(u"repeatAdvice"_s);
    m_sentence->setWordWrap(true);
    auto *layout = new QHBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(m_sentence, 1);
    layout->addWidget(m_add);
    connect(m_add, &QPushButton::clicked, this, [this] {
        if (m_repeat)
            Q_EMIT repeatWanted(*m_repeat);
    });
    connect(&theme, &Theme::changed, this, &RepeatOffer::dress);
    dress();
    hide();
}

void RepeatOffer::dress()
{
    QPalette own;
    own.setColor(QPalette::Window, m_theme.tint(State::Info));
    setPalette(own);
}

void RepeatOffer::show(const Rack &rack, const planning::Laboratory &laboratory)
{
    m_repeat.reset();
    const int places = rack.stored.plan ? rack.stored.plan->rackRows * rack.stored.plan->rackColumns
                                        : laboratory.rackRows * laboratory.rackColumns;
    for (const run::Sample &sample : rack.stored.run.samples) {
        const auto advice = planning::openAdvice(rack.stored.run, rack.evaluation, sample.id);
        if (!advice)
            continue;
        m_repeat = planning::repeatInRack(rack.stored.method, rack.stored.run, sample.id, *advice,
                                          laboratory.glassware, rack.stored.plan ? &*rack.stored.plan : nullptr);
        if (m_repeat && m_repeat->tubes.empty())
            m_repeat.reset();
        if (m_repeat)
            break;
    }
    setVisible(m_repeat.has_value());
    if (!m_repeat)
        return;
    const int tubes = static_cast<int>(m_repeat->tubes.size());
    const int after = static_cast<int>(rack.stored.run.tubes.size()) + tubes;
    const QString sentence = tr("%1 has to be repeated: %2. The rack still stands here; tubes to add: %3.")
                                 .arg(m_repeat->sample.repeats, howText(*m_repeat))
                                 .arg(tubes);
    m_sentence->setText(
        after > places
            ? tr("%1 The rack has %2 places, so they need another stand.").arg(sentence).arg(places)
            : sentence);
    m_add->setAccessibleDescription(sentence);
}

} // namespace plateau::ui
