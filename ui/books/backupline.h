// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLabel>

namespace plateau::ui {

class Keeper;

/// One quiet line: that a backup is being made and how far it has come, else when the newest one was made.
class BackupLine : public QLabel
{
    Q_OBJECT

public:
    /// Says nothing before watch.
    explicit BackupLine(QWidget *parent = nullptr);
    void watch(const Keeper &keeper);

private:
    void sayNewest(const Keeper &keeper);
    void sayRunning(int part);
};

} // namespace plateau::ui
