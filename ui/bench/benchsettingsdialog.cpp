// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchsettingsdialog.h"

#include "ui/shared/helpcall.h"
#include "ui/shared/notice.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/scrolledpage.h"
#include "ui/shared/sounder.h"
#include "ui/shared/widgets.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSlider>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

BenchSettingsDialog::BenchSettingsDialog(const Theme &theme, const BenchChoice &choice, Sounder &sounder,
                                         QWidget *parent)
    : QDialog(parent)
    , m_theme(theme)
    , m_sounder(sounder)
    , m_audible(new QCheckBox(tr("&Sound when something is due"), this))
    , m_volume(new QSlider(Qt::Horizontal, this))
    , m_lead(new NumberField(theme, tr("s"), this))
    , m_thousandths(new QCheckBox(tr("&Digits alone are thousandths: 512 is 0.512"), this))
    , m_fault(new Notice(theme, this))
    , m_keep(button(theme, tr("S&ave"), u"keepBenchSettings"_s, this))
{
    setWindowTitle(tr("Sound, lead time and keying"));
    setHelp(*this, {u"today"_s, {}});
    m_audible->setObjectName(u"benchAudible"_s);
    m_audible->setChecked(!choice.muted);
    m_volume->setRange(0, 100);
    m_volume->setPageStep(10);
    m_volume->setSingleStep(5);
    m_volume->setValue(choice.volume_percent);
    m_lead->entry()->setText(QString::number(choice.lead_s));
    m_thousandths->setObjectName(u"keysThousandths"_s);
    m_thousandths->setChecked(choice.keysThousandths);

    auto *trial = new QHBoxLayout;
    trial->addWidget(listen(tr("S&oon"), u"hearSoon"_s, Sound::Soon));
    trial->addWidget(listen(tr("&Now"), u"hearNow"_s, Sound::Now));
    trial->addWidget(listen(tr("La&te"), u"hearLate"_s, Sound::Late));
    trial->addStretch();
    auto *form = new QFormLayout;
    form->addRow(m_audible);
    addFormRow(form, tr("&Volume"), m_volume, u"benchVolume"_s);
    form->addRow(tr("Listen"), trial);
    addFormRow(form, tr("Lead ti&me, before it is due"), m_lead, u"benchLead"_s);
    form->addRow(m_thousandths);
    auto *leave = button(theme, tr("Cance&l"), u"leaveBenchSettings"_s, this);
    auto *buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(m_keep);
    buttons->addWidget(leave);
    m_keep->setDefault(true);
    auto *layout = new QVBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(scrolled(form, this), 1);
    layout->addWidget(plainLabel(tr("Soon: one low tone. Now: two tones. Late: three high tones."), this));
    layout->addWidget(m_fault);
    layout->addLayout(buttons);
    connect(m_keep, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_lead->entry(), &NumberEntry::judged, this, &BenchSettingsDialog::judge);
    judge();
    resizeOnScreen(*this, sizeHint());
}

QPushButton *BenchSettingsDialog::listen(const QString &text, const QString &name, Sound sound)
{
    QPushButton *push = button(m_theme, text, name, this);
    push->setAutoDefault(false);
    connect(push, &QPushButton::clicked, this, [this, sound] { m_sounder.play(sound, m_volume->value()); });
    return push;
}

void BenchSettingsDialog::judge()
{
    const auto lead_s = m_lead->entry()->value();
    const bool sound = lead_s && *lead_s >= 0 && *lead_s <= longestLead_s && std::round(*lead_s) == *lead_s;
    if (sound)
        m_fault->clear();
    else
        m_fault->say(
            State::Attention,
            tr("The lead time has to be a whole number of seconds from 0 to %1.").arg(longestLead_s));
    m_keep->setEnabled(sound);
}

BenchChoice BenchSettingsDialog::choice() const
{
    return {!m_audible->isChecked(), m_volume->value(),
            static_cast<int>(m_lead->entry()->value().value_or(0)), m_thousandths->isChecked()};
}

void BenchSettingsDialog::accept()
{
    if (m_keep->isEnabled())
        QDialog::accept();
}

} // namespace plateau::ui
