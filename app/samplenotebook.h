// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "sampledata/maker/samplemaker.h"

#include <QDateTime>
#include <QString>

namespace plateau::app {

/// Makes a new notebook of the shipped sample runs, with the decisions that the people of the invented
/// laboratory took (sampledata/notebook/decisions.json). Throws notebook::Failure; leaves no half-made file.
void buildSampleNotebook(const QString &path);

/// The notebook that is shown: the shipped runs, then months of the house up to the day before today, and what
/// stands on the bench and waits today. Throws as buildSampleNotebook does.
void buildDemoNotebook(const QString &path, const QDateTime &today = QDateTime::currentDateTime());

/// What the invented laboratory has and works by. Throws notebook::Failure where the installation lacks it.
sampledata::House sampleHouse();

/// Name of the operating system's account, for what is done without a window.
QString currentAccount();

} // namespace plateau::app
