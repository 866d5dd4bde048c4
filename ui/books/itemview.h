// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/standing.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class ElidingLabel;
class FactsModel;
class Notice;
class SentenceList;
class Table;
class Theme;

/// One item of equipment: how it stands, its checks, and the findings of the one that is chosen.
class ItemView : public QWidget
{
    Q_OBJECT

public:
    explicit ItemView(const Theme &theme, QWidget *parent = nullptr);

    void show(const equipment::HeldItem &held, const QDate &today);
    qint64 itemId() const { return m_held.id; }
    bool hasUnsavedChanges() const;
    void markWithdrawn();
    void takeFocus();
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    void checkWanted();
    void changeWanted();
    void withdrawalWanted(qint64 check, const QString &reason);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QWidget *buildHeader();
    QWidget *buildHistory();
    QWidget *buildChosen();
    const equipment::HeldCheck *chosen() const;
    void showChosen();
    void withdraw();

    const Theme &m_theme;
    equipment::HeldItem m_held;
    ElidingLabel *m_title = nullptr;
    QLabel *m_subtitle = nullptr;
    QLabel *m_shape = nullptr;
    QPushButton *m_check = nullptr;
    QPushButton *m_change = nullptr;
    Notice *m_notice;
    SentenceList *m_standings = nullptr;
    FactsModel *m_checks = nullptr;
    Table *m_checksTable = nullptr;
    QLabel *m_noChecks = nullptr;
    QLabel *m_about = nullptr;
    FactsModel *m_findings = nullptr;
    Table *m_findingsTable = nullptr;
    QWidget *m_withdrawal = nullptr;
    QLineEdit *m_reason = nullptr;
};

} // namespace plateau::ui
