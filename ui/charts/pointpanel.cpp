// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/pointpanel.h"

#include "core/charts/chartwords.h"
#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PointPanel::PointPanel(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_words(plainLabel({}, this))
    , m_open(button(theme, tr("Open the r&un"), u"chartOpenRun"_s, this))
    , m_reason(new QLineEdit(this))
    , m_omit(button(theme, tr("&Leave it out"), u"chartOmit"_s, this))
{
    m_words->setObjectName(u"chartPoint"_s);
    m_words->setWordWrap(true);
    m_reason->setObjectName(u"chartReason"_s);
    m_reason->setAccessibleName(tr("Reason for leaving the point out or taking it back"));
    m_reason->setPlaceholderText(tr("Reason"));
    m_reason->setMinimumHeight(theme.target());
    auto *row = new QHBoxLayout;
    row->setSpacing(theme.gap());
    row->addWidget(m_open);
    row->addWidget(m_reason, 1);
    row->addWidget(m_omit);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_words);
    layout->addLayout(row);
    const auto ask = [this] { Q_EMIT omissionWanted(m_reason->text().trimmed()); };
    connect(m_open, &QPushButton::clicked, this, &PointPanel::openWanted);
    connect(m_omit, &QPushButton::clicked, this, ask);
    connect(m_reason, &QLineEdit::returnPressed, this, ask);
    setPoint({}, {});
}

void PointPanel::setPoint(const charts::ControlChart &chart, std::optional<std::size_t> point)
{
    for (QWidget *widget : std::initializer_list<QWidget *>{m_open, m_reason, m_omit})
        widget->setEnabled(point.has_value());
    if (!point) {
        m_words->setText(chart.series.empty() ? QString()
                                              : tr("Choose a point with the arrow keys or a click; Enter or "
                                                   "a second click opens its run."));
        m_omit->setText(tr("&Leave it out"));
        return;
    }
    m_words->setText(withDecimalSigns(charts::pointSentence(chart, *point)));
    m_omit->setText(chart.series[*point].omission ? tr("&Let it count again") : tr("&Leave it out"));
}

void PointPanel::clearReason()
{
    m_reason->clear();
}

QString PointPanel::reason() const
{
    return m_reason->text().trimmed();
}

} // namespace plateau::ui
