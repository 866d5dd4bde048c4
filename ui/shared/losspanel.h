// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/standardloss.h"

#include <QWidget>

class QLabel;
class QWidget;

namespace plateau::ui {

class LossPicture;
class Theme;

/// What was left of a standard at each age, the curve fitted to it, the stated one, and in one sentence
/// whether they agree.
class LossPanel : public QWidget
{
    Q_OBJECT

public:
    explicit LossPanel(const Theme &theme, QWidget *parent = nullptr);

    /// statedPerHour: a fraction; absent where neither method nor run states one.
    void setRecoveries(std::vector<charts::AgedRecovery> recoveries, std::optional<double> statedPerHour);
    const charts::StandardLoss &loss() const { return m_loss; }

private:
    charts::StandardLoss m_loss;
    LossPicture *m_picture;
    QLabel *m_words;
};

} // namespace plateau::ui
