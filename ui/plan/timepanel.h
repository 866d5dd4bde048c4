// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/methodoffer.h"
#include "ui/plan/feasibility.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QComboBox;
class QSpinBox;

namespace plateau::ui {

class NumberField;
class SentenceList;
class Theme;
class TimeChart;

/// How the rack runs against the clock: whether one person can work it, when to start each tube, and whether
/// a second rack fits into its waits.
class TimePanel : public QWidget
{
    Q_OBJECT

public:
    explicit TimePanel(const Theme &theme, QWidget *parent = nullptr);

    void setMethods(const std::vector<MethodOffer> &offers);
    /// Works it out anew. The rack may have no tubes yet. names: of its tubes in their order.
    void show(const TimedRack &rack, const QStringList &names, const planning::HandlingTimes &handling);
    const Feasibility &feasibility() const { return m_feasibility; }

Q_SIGNALS:
    /// The time allowed, or the second rack.
    void changed();

private:
    std::optional<TimedRack> secondRack() const;

    std::vector<MethodOffer> m_offers;
    Feasibility m_feasibility;
    NumberField *m_most;
    QCheckBox *m_withSecond;
    QComboBox *m_secondMethod;
    QSpinBox *m_secondTubes;
    SentenceList *m_sentences;
    TimeChart *m_chart;
};

} // namespace plateau::ui
