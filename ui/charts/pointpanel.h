// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/controlchart.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class Theme;

/// The chosen point in words, the way to its run, and leaving it out with a reason.
class PointPanel : public QWidget
{
    Q_OBJECT

public:
    explicit PointPanel(const Theme &theme, QWidget *parent = nullptr);

    /// Nothing: no point is chosen.
    void setPoint(const charts::ControlChart &chart, std::optional<std::size_t> point);
    /// After it was stored.
    void clearReason();
    QString reason() const;

Q_SIGNALS:
    void openWanted();
    /// It is to count no more, or again, if it was left out.
    void omissionWanted(const QString &reason);

private:
    QLabel *m_words;
    QPushButton *m_open;
    QLineEdit *m_reason;
    QPushButton *m_omit;
};

} // namespace plateau::ui
