// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "ui/bench/rundraft.h"

#include <QGroupBox>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace plateau::ui {

class Clock;
class MomentField;
class NumberField;
class Theme;

/// A standard as it was made, with what says so.
struct MadeStandard {
    double concentration_g_per_L = 0;
    /// Standard uncertainty (k = 1).
    std::optional<double> uncertainty_percent;
    QString madeAt;
    QString source;
};

/// A working standard of a new run, or its control; unchecked means the run has none. What the method says of
/// its usual standard is preset, everything else is asked for: a loss or a time that nobody gave must not
/// count.
class StandardForm : public QGroupBox
{
    Q_OBJECT

public:
    /// prefix: of the object names. usualName: what a standard of this kind is called until somebody says so.
    struct Kind {
        QString title;
        QString prefix;
        QString usualName;
        int usualTubes = 2;
        /// Material of a known value that the run is held against: it was not prepared for it, keeps its value
        /// unless somebody says otherwise, and no result rests on it.
        bool isControl = false;
    };
    StandardForm(const Theme &theme, const Clock &clock, const Kind &kind, QWidget *parent = nullptr);

    /// Nothing but a name, and no standard.
    void startAnew();
    /// Takes over what the method says of its standard, where nothing was typed yet; it says nothing of a control.
    void showMethod(const assay::Method &method);
    /// The standards of the book that a run of this method may take; nothing is asked for where there is
    /// none.
    void setBook(std::vector<run::Standard> alive);
    /// What it will be worth when it is used; empty: nothing is said.
    void setWorth(const QString &sentence);
    /// Such a standard was made just now, or when the analyst typed that it was.
    void take(const MadeStandard &made);
    /// As many tubes as the method's rule says, where the number was not chosen.
    void setUsualTubes(int tubes);
    std::optional<StandardDraft> draft() const;

Q_SIGNALS:
    void changed();
    /// One of the book was taken.
    void taken();

private:
    void takeFromBook(int index);
    void takeOnlyOne();
    void preset(NumberField *field, QString &before, const std::optional<double> &usual);
    void presetPreparedAt(const QString &moment);
    /// Rows that have nothing to say are not there.
    void showRows();
    QString uncertaintySource() const;
    /// The concentration is set already.
    void takeUncertainty(const std::optional<double> &percent, const QString &source);

    Kind m_kind;
    QFormLayout *m_form = nullptr;
    QComboBox *m_book = nullptr;
    std::vector<run::Standard> m_alive;
    QLineEdit *m_id;
    NumberField *m_concentration;
    /// nullptr of a control.
    NumberField *m_uncertainty;
    NumberField *m_loss;
    MomentField *m_preparedAt;
    QCheckBox *m_usedWhenRead;
    MomentField *m_usedAt;
    QSpinBox *m_tubes;
    QLineEdit *m_volumes;
    QLabel *m_worth;
    QLabel *m_onlyOne;
    /// What was preset last, to tell it from what was typed.
    QString m_presetConcentration;
    QString m_presetLoss;
    QString m_presetPreparedAt;
    /// What was taken over last.
    QString m_takenConcentration;
    QString m_takenUncertainty;
    QString m_takenSource;
};

} // namespace plateau::ui
