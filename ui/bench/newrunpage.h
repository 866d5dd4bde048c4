// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"
#include "core/notebook/records.h"
#include "ui/bench/methodoffer.h"
#include "ui/bench/rundraft.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QScrollArea;
class QSpinBox;

namespace plateau::ui {

class BenchSession;
class Clock;
class Notice;
class NumberField;
class ProblemList;
class SentenceList;
class SamplesModel;
class StandardForm;
class Table;
class Theme;
class UncertaintyForm;

/// Fills in a run from an installed method; what is wrong with it stands beside the form while it is filled
/// in.
class NewRunPage : public QWidget
{
    Q_OBJECT

public:
    NewRunPage(const Theme &theme, const Clock &clock, BenchSession &session, QWidget *parent = nullptr);
    /// Where the keys go first.
    void takeFocus();
    /// Other methods to choose from; what is chosen stays chosen if it is still there.
    void setMethods(std::vector<MethodOffer> offers);
    /// Something was typed that would be missed.
    bool isBegun() const;

Q_SIGNALS:
    void opened(plateau::notebook::RunId id);
    void personWanted();

private:
    QWidget *buildForm();
    QWidget *buildSamples();
    QWidget *buildSide();
    void connectAll();
    void connectNames();
    /// One more or one less, and the keys on the cell that is filled in next.
    void changeDilutionSteps(int by);
    /// An empty form with the times of now.
    void startAnew();
    const assay::Method *method() const;
    /// What is likely wanted again; empty in an empty notebook.
    QString methodOfLatestRun();
    void onMethod();
    RunDraft draft() const;
    void check();
    void putOnBench();

    const Theme &m_theme;
    const Clock &m_clock;
    BenchSession &m_session;
    std::vector<MethodOffer> m_offers;
    QComboBox *m_method;
    QLineEdit *m_title;
    QPlainTextEdit *m_names;
    // In the order of the page, for that is the order of the Tab key.
    QSpinBox *m_replicates;
    QSpinBox *m_blanks;
    QComboBox *m_form;
    QComboBox *m_wavelength;
    NumberField *m_pathLength;
    QComboBox *m_calibration;
    SamplesModel *m_samples;
    Table *m_samplesTable = nullptr;
    QPushButton *m_fewerSteps = nullptr;
    StandardForm *m_standard = nullptr;
    UncertaintyForm *m_uncertainty = nullptr;
    QScrollArea *m_scroll;
    SentenceList *m_methodText = nullptr;
    ProblemList *m_problems = nullptr;
    QLabel *m_summary = nullptr;
    Notice *m_notice = nullptr;
};

} // namespace plateau::ui
