// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/resultoverview.h"

#include "ui/shared/shownnumbers.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

ResultOverview::ResultOverview(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_sentences(new SentenceList(theme, tr("About the chosen result"), u"aboutResult"_s, this))
    , m_caption(plainLabel({}, this))
    , m_chart(new PointChart(theme, tr("Recovery and its history"), this))
{
    m_caption->setObjectName(u"recoveryCaption"_s);
    m_caption->setFont(theme.bold());
    m_caption->setWordWrap(true);
    m_chart->setObjectName(u"recoveryHistory"_s);
    m_sentences->setFrameShape(QFrame::NoFrame);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(m_sentences, 3); // up to what shareRoom() lets it have
    layout->addWidget(m_caption);
    layout->addWidget(m_chart, 1);
    m_caption->setContentsMargins(theme.gap(), 0, theme.gap(), 0);
    m_chart->setContentsMargins(theme.gap(), 0, theme.gap(), theme.gap());
    connect(&theme, &Theme::changed, this, [this, &theme] { m_caption->setFont(theme.bold()); });
}

void ResultOverview::setSentences(std::vector<Sentence> sentences)
{
    m_sentences->setSentences(std::move(sentences));
    shareRoom();
}

/// The sentences have what they need, in whole lines: they can be scrolled, but a chart that is too low cannot be read.
void ResultOverview::shareRoom()
{
    if (m_chart->isHidden()) {
        m_sentences->setMaximumHeight(QWIDGETSIZE_MAX);
        return;
    }
    const int room = height() - m_caption->heightForWidth(width()) - 2 * layout()->spacing();
    const int ofChart = std::min(12 * fontMetrics().height(), room * 3 / 5);
    m_sentences->setMaximumHeight(m_sentences->wholeLinesWithin(std::max(0, room - ofChart)));
}

void ResultOverview::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    shareRoom();
}

void ResultOverview::setHistory(const std::optional<PointHistory> &history, const QString &caption)
{
    m_caption->setVisible(history.has_value());
    m_chart->setVisible(history.has_value());
    m_caption->setText(withDecimalSigns(caption));
    m_chart->setAccessibleName(caption);
    m_chart->setHistory(history.value_or(PointHistory()));
    shareRoom();
}

void ResultOverview::startAtTheTop()
{
    m_sentences->setCurrentIndex({});
    m_sentences->clearSelection();
    m_sentences->scrollToTop();
}

} // namespace plateau::ui
