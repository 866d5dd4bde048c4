// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/standardloss.h"
#include "core/notebook/records.h"
#include "ui/books/standardwords.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class ElidingLabel;
class FactsModel;
class LossPanel;
class Notice;
class Table;
class Theme;

/// A run that used a preparation, and what it recovered of it.
struct PreparationRun {
    notebook::RunId run;
    QString title;
    QDateTime at;
    /// Hours from when it was made to its use, and found against expected at that moment; absent where the
    /// run does not say.
    std::optional<double> age_h{};
    std::optional<double> recovery_percent{};
};

/// One standard that was made: what it is worth now, how it was made, the runs that used it.
class PreparationView : public QWidget
{
    Q_OBJECT

public:
    explicit PreparationView(const Theme &theme, QWidget *parent = nullptr);

    void show(const planning::HeldPreparation &held, const std::vector<PreparationRun> &runs,
              const QDateTime &now);
    /// The strength now, counted down.
    void tick(const QDateTime &now);
    /// What was left of it and of the others of its substance, by age, against the loss that is stated (a
    /// fraction per hour). After show.
    void showLife(std::vector<charts::AgedRecovery> recoveries, std::optional<double> statedPerHour);
    const planning::HeldPreparation &held() const { return m_held; }
    bool hasUnsavedChanges() const;
    void markDiscarded();
    void takeFocus();
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    void labelWanted();
    void discardWanted(const QString &reason);
    void runWanted(plateau::notebook::RunId run);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QWidget *buildHeader();
    void discard();

    const Theme &m_theme;
    planning::HeldPreparation m_held;
    std::vector<PreparationRun> m_shownRuns;
    ElidingLabel *m_title = nullptr;
    QLabel *m_shape = nullptr;
    QLabel *m_now = nullptr;
    QPushButton *m_label = nullptr;
    Notice *m_notice;
    FactsModel *m_facts;
    Table *m_factsTable;
    FactsModel *m_runs;
    Table *m_runsTable;
    QLabel *m_noRuns;
    LossPanel *m_loss;
    QWidget *m_disposal;
    QLineEdit *m_reason = nullptr;
};

} // namespace plateau::ui
