// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/pointchart.h"
#include "ui/shared/sentencelist.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;

namespace plateau::ui {

/// What is to be said of the chosen result, and the standard's recovery as the newest of its history.
class ResultOverview : public QWidget
{
    Q_OBJECT

public:
    explicit ResultOverview(const Theme &theme, QWidget *parent = nullptr);
    void setSentences(std::vector<Sentence> sentences);
    /// Without one there is no chart.
    void setHistory(const std::optional<PointHistory> &history, const QString &caption);
    /// Nothing chosen and nothing scrolled.
    void startAtTheTop();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    /// What few sentences leave free is the chart's.
    void shareRoom();

    SentenceList *m_sentences;
    QLabel *m_caption;
    PointChart *m_chart;
};

} // namespace plateau::ui
