// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/planning/laboratory.h"
#include "ui/bench/methodoffer.h"
#include "ui/bench/rundraft.h"

#include <QScrollArea>

#include <vector>

class QComboBox;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QSpinBox;

namespace plateau::ui {

class Clock;
class NumberField;
class SampleSection;
class StandardForm;
class Theme;
class UncertaintyForm;
class WeighingForm;

/// Where a run is filled in: method, samples, standard and control, uncertainties. It knows what was typed,
/// and leaves to others what that means.
class PlanForm : public QScrollArea
{
    Q_OBJECT

public:
    PlanForm(const Theme &theme, const Clock &clock, QWidget *parent = nullptr);
    /// As wide as what it scrolls: with a large font the page makes room, or is scrolled itself.
    QSize minimumSizeHint() const override;
    /// Where the keys go first.
    void takeFocus();
    /// Other methods to choose from; what is chosen stays chosen if it is still there, else the one of that
    /// id.
    void setMethods(std::vector<MethodOffer> offers, const QString &usualId);
    const std::vector<MethodOffer> &methods() const { return m_offers; }
    /// The standards of the book that are alive and hold what the method measures.
    void setStandards(const std::vector<run::Standard> &alive);
    void setLaboratory(const planning::Laboratory &laboratory);
    /// An empty form.
    void startAnew();
    /// Something was typed that would be missed.
    bool isBegun() const;

    const assay::Method *method() const;
    /// Everything that was filled in, but for the order of the tubes.
    RunDraft draft() const;
    SampleSection &samples() { return *m_samples; }
    void setWorth(const QString &sentence);
    /// What the run's uncertainties come to, and whose they are.
    void setUncertainty(const std::vector<planning::OwnedInput> &owned);

Q_SIGNALS:
    void changed();
    void methodChanged();

private:
    QFormLayout *buildFields(QWidget *page);
    void dressFields();
    void build();
    void connectAll();
    void onMethod();
    void tellSamples();
    void showWhole(QWidget *part);

    const Theme &m_theme;
    const Clock &m_clock;
    planning::Laboratory m_laboratory;
    std::vector<MethodOffer> m_offers;
    QComboBox *m_method;
    QLineEdit *m_title;
    // In the order of the page, for that is the order of the Tab key.
    QPlainTextEdit *m_names;
    QSpinBox *m_replicates;
    QSpinBox *m_blanks;
    QComboBox *m_form;
    QComboBox *m_wavelength;
    NumberField *m_pathLength;
    QComboBox *m_calibration;
    StandardForm *m_standard;
    WeighingForm *m_weighing;
    SampleSection *m_samples;
    StandardForm *m_control;
    UncertaintyForm *m_uncertainty;
};

} // namespace plateau::ui
