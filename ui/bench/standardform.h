// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/rundraft.h"

#include <QGroupBox>

class QDateTimeEdit;
class QLineEdit;
class QSpinBox;

namespace plateau::ui {

class Clock;
class NumberField;
class Theme;

/// The optional standard of a new run.
class StandardForm : public QGroupBox
{
    Q_OBJECT

public:
    StandardForm(const Theme &theme, const Clock &clock, QWidget *parent = nullptr);
    void startAnew();
    std::optional<StandardDraft> draft() const;

Q_SIGNALS:
    void changed();

private:
    const Clock &m_clock;
    QLineEdit *m_id;
    NumberField *m_concentration;
    QDateTimeEdit *m_preparedAt;
    QDateTimeEdit *m_usedAt;
    NumberField *m_loss;
    QSpinBox *m_tubes;
};

} // namespace plateau::ui
