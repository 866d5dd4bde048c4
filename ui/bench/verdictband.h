// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/sentencelist.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace plateau::ui {

/// Whether a run is good, to be read from a metre away: a shape, a few words as large as they go on a line on the tint of their state,
/// and below what there is to be said first.
class VerdictBand : public QWidget
{
    Q_OBJECT

public:
    explicit VerdictBand(const Theme &theme, QWidget *parent = nullptr);
    /// failures: of the checks; limits: of results that do not lie inside theirs; mark: what else is to be
    /// known of the method. Each may be empty.
    void show(const Sentence &verdict, const QString &failures, const QString &limits, const QString &mark);

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    QLabel *addLine(QVBoxLayout *texts, const QString &objectName);
    void dress();
    /// As large as goes on one line: a second one would take its room from the results.
    void sizeVerdict();

    const Theme &m_theme;
    State m_state = State::Pending;
    QLabel *m_shape;
    QLabel *m_verdict = nullptr;
    QLabel *m_failures = nullptr;
    QLabel *m_limits = nullptr;
    QLabel *m_mark = nullptr;
};

} // namespace plateau::ui
