// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/records.h"
#include "ui/bench/reviewbasis.h"

#include <QWidget>

class QTabWidget;
class QTextBrowser;

namespace plateau::ui {

class BarChart;
class ResultOverview;
class SentenceList;
class Theme;
struct ReviewedResult;

/// What is to be known of one result, a tab each: what is to be said of it beside the standard's recovery,
/// the calculation line by line, the uncertainty budget and whose numbers it is made of.
class ResultDetails : public QWidget
{
    Q_OBJECT

public:
    explicit ResultDetails(const Theme &theme, QWidget *parent = nullptr);
    void show(const ReviewedResult &result, const notebook::StoredRun &stored,
              const evaluation::Evaluation &evaluation, const ReviewBasis &basis);
    void clear();
    /// The first tab, nothing chosen and nothing scrolled.
    void startAtTheTop();

private:
    void showRecovery(const ReviewedResult &reviewed, const notebook::StoredRun &stored,
                      const evaluation::Evaluation &evaluation, const ReviewBasis &basis);
    QWidget *buildBudget();
    void showBudget(const evaluation::Result &result);

    const Theme &m_theme;
    QTabWidget *m_tabs;
    ResultOverview *m_overview;
    QTextBrowser *m_working;
    BarChart *m_budget;
    SentenceList *m_owners;
};

} // namespace plateau::ui
