// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QWidget>

class QLineEdit;

namespace plateau::ui {

class BenchSession;
class Notice;
class Theme;

/// Accept or reject the run, by name and where needed with a reason. What the records do not allow is said
/// here.
class DecisionPanel : public QWidget
{
    Q_OBJECT

public:
    DecisionPanel(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);
    void showRack(notebook::RunId id);

Q_SIGNALS:
    void decided(plateau::notebook::RunId id);

private:
    void decide(notebook::DecisionKind kind);

    BenchSession &m_session;
    QLineEdit *m_name;
    QLineEdit *m_reason;
    Notice *m_notice;
    notebook::RunId m_id;
};

} // namespace plateau::ui
