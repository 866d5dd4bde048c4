// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "core/equipment/standing.h"
#include "core/notebook/records.h"
#include "core/planning/laboratory.h"
#include "core/planning/reagents.h"
#include "core/planning/standardstock.h"
#include "core/planning/tubeorder.h"
#include "ui/bench/methodoffer.h"
#include "ui/bench/rundraft.h"

#include <QWidget>

#include <vector>

class QLabel;
class QPushButton;
class QTabWidget;

namespace plateau::ui {

class BenchSession;
class Clock;
class Notice;
class PlanForm;
class ProblemList;
class RackModel;
class ReagentsModel;
class SentenceList;
class Stores;
class Table;
class Theme;
class TimePanel;
class WaitingModel;

/// Plans a run: the form on the left, and on the right what it comes to, live: what is wrong with it, the
/// rack from above, the time at the bench, the reagents, and the samples that wait.
class PlanPage : public QWidget
{
    Q_OBJECT

public:
    PlanPage(const Theme &theme, const Clock &clock, BenchSession &session, Stores &stores,
             QWidget *parent = nullptr);
    /// Where the keys go first.
    void takeFocus();
    void setMethods(std::vector<MethodOffer> offers);
    /// Something was typed that would be missed.
    bool isBegun() const;
    /// Of what stands beside the form, on a page of that width: so much as it has in a window of 1280, and then a third of
    /// the page, since the table of the samples needs more than the form gets by its usual part.
    static int sideWidth(int width, int target);

Q_SIGNALS:
    void opened(plateau::notebook::RunId id);
    void personWanted();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    QWidget *buildSide();
    QWidget *buildRack();
    QWidget *buildReagents();
    QWidget *buildQueue();
    void connectAll();
    void startAnew();
    QString methodOfLatestRun();
    void onMethod();
    /// What the notebook says: samples that wait, lots, the laboratory.
    void refreshStores();
    /// Of the limits, the units of reports and the samples that wait.
    QStringList knownProducts() const;
    void check();
    /// Of the problem that is chosen, or the first one.
    void offerHelp();
    void offerStandards();
    void takeUncertainties(DraftOutcome &outcome) const;
    assay::Problems equipmentRemarks(const DraftOutcome &outcome) const;
    void showRack(const DraftOutcome &outcome);
    void showTimes(const DraftOutcome &outcome);
    void showReagents(const DraftOutcome &outcome);
    void showWorth(const DraftOutcome &outcome);
    void summarise(const DraftOutcome &outcome);
    DraftOutcome outcome() const;
    void moveTube(int from, int to);
    void takeWaiting();
    void putOnBench();

    const Theme &m_theme;
    const Clock &m_clock;
    BenchSession &m_session;
    Stores &m_stores;
    PlanForm *m_form;
    QWidget *m_side = nullptr;
    RackModel *m_rackModel;
    ReagentsModel *m_reagents;
    WaitingModel *m_waiting;
    TimePanel *m_times;
    QTabWidget *m_tabs = nullptr;
    Table *m_reagentsTable = nullptr;
    QLabel *m_reagentsHint = nullptr;
    Table *m_waitingTable = nullptr;
    SentenceList *m_methodText = nullptr;
    ProblemList *m_problems = nullptr;
    QLabel *m_summary = nullptr;
    QPushButton *m_explain = nullptr;
    QLabel *m_queueText = nullptr;
    Notice *m_notice = nullptr;
    std::vector<planning::Lot> m_lots;
    planning::Laboratory m_laboratory;
    std::vector<equipment::HeldItem> m_equipment;
    std::vector<planning::HeldPreparation> m_preparations;
    std::vector<planning::TubeKey> m_order;
};

} // namespace plateau::ui
