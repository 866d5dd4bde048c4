// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bench/recoveryhistory.h"

#include <QWidget>

namespace plateau::ui {

class BenchSession;
class DecisionPanel;
class Notice;
class ResultView;
class SentenceList;
class Stores;
class Theme;

/// The review of a rack on the bench: its results to read, and the decision.
class ReviewPage : public QWidget
{
    Q_OBJECT

public:
    ReviewPage(const Theme &theme, BenchSession &session, Stores &stores, QWidget *parent = nullptr);
    void showRack(notebook::RunId id);
    void takeFocus();
    /// What was typed of that run's decision and is not decided yet.
    QStringList unfinished(notebook::RunId id) const;

Q_SIGNALS:
    void decided(plateau::notebook::RunId id);

private:
    void update(notebook::RunId id);
    /// The laboratory's units and limits, and the standard's history.
    ReviewBasis basisOf(const notebook::StoredRun &stored);

    BenchSession &m_session;
    Stores &m_stores;
    Notice *m_notice;
    SentenceList *m_equipment;
    ResultView *m_view;
    DecisionPanel *m_decision;
    notebook::RunId m_id;
    int m_lineHeight = 0;
};

} // namespace plateau::ui
