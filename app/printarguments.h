// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/labels.h"
#include "ui/print/paper.h"

#include <QStringList>

#include <optional>

namespace plateau::app {

struct PrintArguments {
    QString run;
    QString pdf;
    /// Empty: shipped methods and the usual glassware.
    QString notebook;
    QString person;
    ui::Paper paper = ui::Paper::A4;
    ui::LabelSheet sheet;
    int firstFree = 1;
    /// What is wrong with them; empty: nothing.
    QString fault;
};

/// command: "worksheet" or "labels", of which only the latter knows --sheet and --first.
PrintArguments printArguments(const QString &command, const QStringList &arguments);

} // namespace plateau::app
