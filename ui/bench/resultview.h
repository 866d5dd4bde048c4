// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/records.h"
#include "ui/bench/reviewbasis.h"

#include <QWidget>

class QLabel;
class QTabWidget;
class QTextBrowser;

namespace plateau::ui {

class BarChart;
class ChecksModel;
class HistoryModel;
class RecoveriesModel;
class ResultOverview;
class ResultsModel;
class SentenceList;
class Table;
class Theme;

/// A run's results to read: what was decided about it, the verdict, then results and checks with their
/// limits, and for the chosen result what is to be said of it, the calculation and its uncertainty budget;
/// recoveries, all readings with their history. Changes nothing.
class ResultView : public QWidget
{
    Q_OBJECT

public:
    explicit ResultView(const Theme &theme, QWidget *parent = nullptr);
    void show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
              const ReviewBasis &basis = {});
    /// Where the keys go first.
    void focusResults();

private:
    QWidget *buildVerdict();
    QWidget *buildLists();
    QWidget *buildDetails();
    void chooseResult(int row);
    /// Nothing chosen and nothing scrolled, as for a run that was never looked at.
    void startAtTheTop();
    void chooseCheck(int row);
    void showRecovery(const evaluation::Result &result);
    void showBudget(const evaluation::Result &result);
    void showChecks();
    void showDecisions();
    void dress();

    const Theme &m_theme;
    ResultsModel *m_results;
    RecoveriesModel *m_recoveries;
    HistoryModel *m_history;
    ChecksModel *m_checks;
    QWidget *m_verdictBand = nullptr;
    QLabel *m_verdictShape = nullptr;
    QLabel *m_verdictText = nullptr;
    QLabel *m_failureText = nullptr;
    QLabel *m_templateText = nullptr;
    SentenceList *m_decisions = nullptr;
    Table *m_resultsTable = nullptr;
    Table *m_checksTable = nullptr;
    QLabel *m_checkText = nullptr;
    ResultOverview *m_overview = nullptr;
    SentenceList *m_method = nullptr;
    Table *m_recoveriesTable = nullptr;
    QTabWidget *m_tabs = nullptr;
    QTextBrowser *m_working = nullptr;
    Table *m_historyTable = nullptr;
    BarChart *m_budget = nullptr;
    notebook::StoredRun m_stored;
    evaluation::Evaluation m_evaluation;
    ReviewBasis m_basis;
};

} // namespace plateau::ui
