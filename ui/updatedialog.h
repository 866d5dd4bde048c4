// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/updating.h"

#include <QDialog>

#include <optional>

class QLabel;
class QProgressBar;
class QPushButton;

namespace plateau::ui {

class LongTask;

/// Brings a notebook of an older program up to date, in a thread, and says what is being done meanwhile.
/// Begins when it is shown; accepted when the notebook is up to date.
class UpdateDialog : public QDialog
{
    Q_OBJECT

public:
    explicit UpdateDialog(const QString &notebook, QWidget *parent = nullptr);

    /// What it failed with; nothing where it was stopped.
    const std::optional<notebook::Failure> &failure() const { return m_failure; }
    /// Stops, and closes when that is done.
    void reject() override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void say(notebook::UpdateStage stage, int done, int of);

    QString m_notebook;
    LongTask *m_task;
    QLabel *m_doing;
    QProgressBar *m_progress;
    QPushButton *m_stop;
    std::optional<notebook::Failure> m_failure;
    bool m_begun = false;
};

} // namespace plateau::ui
