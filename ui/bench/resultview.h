// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/records.h"
#include "ui/bench/reviewbasis.h"

#include <QWidget>

class QSplitter;

namespace plateau::ui {

class ResultDetails;
class ResultsModel;
class RunDetails;
class SentenceList;
class Table;
class Theme;
class VerdictBand;

/// A run's results to read: what was decided about it, the verdict, then the results; below them what is to
/// be known of the run, beside them what is to be known of the chosen result. Changes nothing.
class ResultView : public QWidget
{
    Q_OBJECT

public:
    explicit ResultView(const Theme &theme, QWidget *parent = nullptr);
    void show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
              const ReviewBasis &basis = {});
    /// The chosen one; nullptr: none is. Holds until something else is shown.
    const evaluation::Result *chosenResult() const;
    /// Where the keys go first.
    void focusResults();
    /// The first result of that sample, unless one of its results is chosen.
    void goToSample(const QString &sample);

Q_SIGNALS:
    /// Another result is chosen, and it is that sample's.
    void sampleChosen(const QString &sample);

protected:
    void resizeEvent(QResizeEvent *event) override;
    void showEvent(QShowEvent *event) override;

private:
    QWidget *buildLists();
    void divideLists();
    void chooseResult(int row);
    /// Nothing chosen and nothing scrolled, as for a run that was never looked at.
    void startAtTheTop();
    void showVerdict();
    void showDecisions();

    const Theme &m_theme;
    ResultsModel *m_results;
    SentenceList *m_decisions;
    VerdictBand *m_verdict;
    QSplitter *m_lists = nullptr;
    bool m_isDividedByHand = false;
    Table *m_resultsTable;
    RunDetails *m_ofRun;
    ResultDetails *m_ofResult;
    notebook::StoredRun m_stored;
    evaluation::Evaluation m_evaluation;
    ReviewBasis m_basis;
};

} // namespace plateau::ui
