// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QWidget>

#include "core/exchange/readinglines.h"

class QComboBox;
class QFormLayout;
class QLineEdit;
class QSpinBox;

namespace plateau::ui {

class Theme;

/// Which number of a photometer's line is the absorbance.
class PatternForm : public QWidget
{
    Q_OBJECT

public:
    explicit PatternForm(const Theme &theme, QWidget *parent = nullptr);

    /// As it stands; sound or not.
    exchange::LinePattern pattern() const;
    void setPattern(const exchange::LinePattern &pattern);

Q_SIGNALS:
    void changed();

private:
    void showWanted();

    QFormLayout *m_form;
    QComboBox *m_which;
    QSpinBox *m_nth;
    QLineEdit *m_after;
    QComboBox *m_decimal;
    QLineEdit *m_mustContain;
    QLineEdit *m_leaveOut;
    QComboBox *m_encoding;
};

} // namespace plateau::ui
