// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/standardloss.h"

#include <QWidget>

QT_BEGIN_NAMESPACE
class QChartView;
class QLineSeries;
class QScatterSeries;
class QValueAxis;
QT_END_NAMESPACE

namespace plateau::ui {

class Theme;

/// Recoveries against age: rings; the fitted curve a full line, the stated one dashed. Of many recoveries the
/// lowest and the highest of each pixel.
class LossPicture : public QWidget
{
    Q_OBJECT

public:
    explicit LossPicture(const Theme &theme, QWidget *parent = nullptr);
    void setLoss(const charts::StandardLoss &loss, const std::vector<charts::AgedRecovery> &recoveries);
    QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent *event) override;

private:
    void dress();

    const Theme &m_theme;
    QChartView *m_view;
    QScatterSeries *m_points;
    QLineSeries *m_fitted;
    QLineSeries *m_stated;
    QValueAxis *m_age;
    QValueAxis *m_left;
};

} // namespace plateau::ui
