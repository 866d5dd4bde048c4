// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/losspanel.h"

#include "ui/shared/losspicture.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QLabel>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

LossPanel::LossPanel(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_picture(new LossPicture(theme, this))
    , m_words(plainLabel({}, this))
{
    m_words->setObjectName(u"lossWords"_s);
    m_words->setWordWrap(true);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_words);
    layout->addWidget(m_picture, 1);
    setRecoveries({}, {});
}

void LossPanel::setRecoveries(std::vector<charts::AgedRecovery> recoveries,
                              std::optional<double> statedPerHour)
{
    m_loss = charts::standardLoss(recoveries, statedPerHour);
    m_words->setText(unbroken(shownNumbers(m_loss.sentence)));
    m_picture->setVisible(!recoveries.empty());
    m_picture->setLoss(m_loss, recoveries);
}

} // namespace plateau::ui
