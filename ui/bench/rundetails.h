// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/reportunit.h"
#include "core/evaluation/evaluation.h"
#include "core/notebook/records.h"
#include "ui/bench/unitsofrun.h"

#include <QWidget>

#include <vector>

class QLabel;
class QPushButton;
class QTabWidget;

namespace plateau::ui {

class ChecksModel;
class HistoryModel;
class RecoveriesModel;
class SentenceList;
class Table;
class Theme;

/// What is to be known of a run as a whole, a tab each: its checks with their limits, what failed first and
/// what to do; recoveries; all readings with their history; the method.
class RunDetails : public QWidget
{
    Q_OBJECT

public:
    explicit RunDetails(const Theme &theme, QWidget *parent = nullptr);
    /// ofResults: what its results are reported in, as commonUnits gives it. units: those of its standards.
    void show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
              const std::vector<evaluation::ReportUnit> &ofResults, const UnitsOfRun &units);
    /// The first tab, nothing chosen and nothing scrolled.
    void startAtTheTop();

private:
    QWidget *buildChecks();
    void showChecks(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                    const std::vector<evaluation::ReportUnit> &ofResults);
    void chooseCheck(int row);

    const Theme &m_theme;
    ChecksModel *m_checks;
    RecoveriesModel *m_recoveries;
    HistoryModel *m_history;
    QTabWidget *m_tabs;
    Table *m_checksTable = nullptr;
    QLabel *m_checkText = nullptr;
    QPushButton *m_explain = nullptr;
    Table *m_recoveriesTable;
    Table *m_historyTable;
    SentenceList *m_method;
};

} // namespace plateau::ui
