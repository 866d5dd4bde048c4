// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLabel>

namespace plateau::ui {

/// Plain text on one line that gives way to its neighbours and ends in an ellipsis, or on two where it is high enough;
/// the whole of it is the tool tip.
class ElidingLabel : public QLabel
{
    Q_OBJECT

public:
    explicit ElidingLabel(QWidget *parent = nullptr);

    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;
    bool event(QEvent *event) override;
};

} // namespace plateau::ui
