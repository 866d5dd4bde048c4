// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "ui/bench/rundraft.h"

#include <QGroupBox>

class QCheckBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace plateau::ui {

class Clock;
class MomentField;
class NumberField;
class Theme;

/// The working standard of a new run; unchecked means the run has none. What the method says of its usual
/// standard is preset, everything else is asked for: a loss or a time that nobody gave must not count.
class StandardForm : public QGroupBox
{
    Q_OBJECT

public:
    StandardForm(const Theme &theme, const Clock &clock, QWidget *parent = nullptr);

    /// Nothing but a name, and no standard.
    void startAnew();
    /// Takes over what the method says of its standard, where nothing was typed yet.
    void showMethod(const assay::Method &method);
    std::optional<StandardDraft> draft() const;

Q_SIGNALS:
    void changed();

private:
    void preset(NumberField *field, QString &before, const std::optional<double> &usual);
    void onUsedLater();

    QLineEdit *m_id;
    NumberField *m_concentration;
    NumberField *m_loss;
    MomentField *m_preparedAt;
    QCheckBox *m_usedWhenRead;
    MomentField *m_usedAt;
    QLabel *m_usedAtCaption = nullptr;
    QSpinBox *m_tubes;
    /// What was preset last, to tell it from what was typed.
    QString m_presetConcentration;
    QString m_presetLoss;
};

} // namespace plateau::ui
