// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/specification.h"
#include "core/exchange/readers.h"
#include "core/notebook/notebook.h"
#include "core/planning/laboratory.h"

#include <QDate>

#include <vector>

namespace plateau::sampledata {

/// What the invented house has before its first run: its laboratory, its limits, and the methods it works by.
struct House {
    planning::Laboratory laboratory;
    std::vector<evaluation::Specification> limits;
    exchange::MethodLookup methods;
};

/// Common practice, no source: what one file still serves well.
inline constexpr int mostMadeRuns = 1'000'000;

struct WantedHistory {
    int runs = 1000;
    /// The same seed, runs and days give the same history.
    quint64 seed = 1;
    /// The last day; runs reach back from it for as long as three analysts need for them.
    QDate until;
    /// Of the laboratory's clock from UTC.
    int offset_s = 3600;
    /// So many of the newest runs are worked at the bench dose by dose and reading by reading; those before
    /// came in as files.
    int workedAtBench = 20;
    /// So many of the newest decisions are signed: every signature takes a good part of a second of purpose.
    int signedDecisions = 8;
    /// The newest run is left on the bench, half read.
    bool lastOnBench = true;
};

/// Everybody's in a made-up notebook.
QString samplePassphrase();

/// Two years (more where there are more runs than three analysts make in them, less where there are few) of
/// an invented laboratory: three analysts and a head, six methods, lots received, opened and used up,
/// standards made and thrown away, instruments with their checks, controls, decisions, repeats and
/// corrections. In it, for people to find: a lot of sulphite oxidase that is weak from the day it is opened,
/// a piston pipette that wears out until its check fails, and a photometer whose scale creeps until its lamp
/// is changed.
///
/// All of it is done by the acts that the window does it by, with a clock of its own: every entry of the
/// audit is that of its act. now: the clock that the notebook was opened with; it is left at the last act.
/// The notebook holds no persons and no equipment yet.
void makeHistory(notebook::Notebook &notebook, QDateTime &now, const House &house,
                 const WantedHistory &wanted);

/// A new notebook with such a history. Throws notebook::Failure; leaves no half-made file.
void makeSampleNotebook(const QString &path, const House &house, const WantedHistory &wanted);

} // namespace plateau::sampledata
