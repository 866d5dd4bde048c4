// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/worksheet.h"
#include "ui/print/lotstretch.h"

#include <map>
#include <optional>
#include <vector>

namespace plateau::ui {

/// What the sheet is about. Readings that the run already has are not shown: the sheet is there to write on.
struct WorksheetContent {
    assay::Method method;
    run::Run run;
    /// As planning::roundsOf gives them: what stands on the sheet is what stands on the screen.
    std::vector<planning::Round> rounds;
    /// By round, in the order of the tubes, where the lot that the run names is not the one container for all
    /// of them.
    std::map<int, std::vector<LotStretch>> lotsByRound{};
    /// Whose sheet it is, and who pipettes; empty: left to write in.
    QString laboratory;
    /// Of the rack as it was planned, where tubes were added since; empty: of the run as it is.
    QString runCode{};
    QString person;
    /// Tubes in a row of the rack; absent: the rack is not known.
    std::optional<int> rackColumns;
    /// A tube is started every so often; absent: as the hands go.
    std::optional<int> startInterval_s;
    /// By reading, of each tube: when it is due, in seconds after the first tube's start.
    std::map<QString, std::vector<int>> readAt_s{};
    /// By the method's add step that begins a wait, of each tube: when it is due, as above.
    std::map<int, std::vector<int>> startAt_s{};
};

/// With the rounds, and nothing of what only a plan knows.
WorksheetContent worksheetOf(const assay::Method &method, const run::Run &run,
                             const planning::Glassware &glassware);

/// Neighbouring tubes that hold the same, named once.
struct TubeGroup {
    int firstTube = 0;
    int tubes = 1;
    /// Of the sample or standard; for a blank the word.
    QString name;
    /// "sample", "sample blank"; empty for a blank, which is its name already.
    QString role;
    /// "5.012 g in 100 mL, 5 → 50 mL", "0.2 g/L", with the locale's decimal sign; empty: as it is.
    QString preparation;
};
std::vector<TubeGroup> tubeGroups(const run::Run &run);

/// The role as it stands on paper: "sample blank".
QString roleOnPaper(run::Role role);
/// "0.2020 g/L", of when it was made, with the locale's decimal sign.
QString strengthOnPaper(const run::Standard &standard);
/// "5 → 50 mL, 2 → 20 mL", "100 µL → 10 mL", numbers in C format; empty for none.
QString dilutionOnPaper(const std::vector<run::DilutionStep> &steps);
/// "3 to 5 min at 20 to 25 °C", numbers in C format.
QString waitOnPaper(const assay::WaitStep &wait);

} // namespace plateau::ui
