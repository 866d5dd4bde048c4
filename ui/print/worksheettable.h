// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/paper.h"
#include "ui/print/worksheetcontent.h"

#include <QPageLayout>

#include <utility>
#include <vector>

namespace plateau::ui {

/// A column of the sheet's table, in the order of the method's steps.
struct SheetColumn {
    enum class Kind {
        Round,  ///< one addition: a box to tick and the volume in each row
        Pause,  ///< what is done before it goes on: mix, wait
        Reading ///< room for the absorbance, and for the time
    } kind = Kind::Round;
    /// Index into the rounds.
    int round = 0;
    /// What to do in a pause, or the reading's name.
    QString text;
    /// Absorbances to be written: more than one where a line through the last ones is wanted.
    int values = 1;
    double width_mm = 0;
    /// Of a suspension whose mark is too wide to lie over the volume.
    bool hasUprightSwirl = false;
    /// Of the time at which each tube gets it, beside the volume; 0 where none is planned.
    double start_mm = 0;
    /// Where the columns have no room for it beside: above the volumes that stand alone.
    bool isStartAbove = false;
};

/// The table with its place on the sheet: margins, widths, and upright or across, whichever holds it.
struct SheetTable {
    QPageLayout::Orientation orientation = QPageLayout::Portrait;
    double left_mm = 0;
    double width_mm = 0;
    double sheetHeight_mm = 0;
    double number_mm = 0;
    double contents_mm = 0;
    std::vector<SheetColumn> columns;
};
SheetTable tableOf(const WorksheetContent &content, Paper paper);

/// The volumes of a round in the unit of the usual one, which heads them, with the decimals that the finest of them
/// needs; one that is set in the other unit with that.
QString doseText(const planning::Round &round, double volume_mL);
/// What most tubes get, with its unit.
QString usualDoseText(const planning::Round &round);

/// Minutes and seconds after the first tube's start: "6:15".
QString sheetTimeText(int seconds);

/// What goes in where neither the column nor the tube's own name says so: the diluent in a blank, the
/// standard of a spike. Empty: what they say.
QString standIn(const run::Run &run, const planning::Round::Dose &dose, int tube);

/// The mark of a suspension.
QString swirlWord();

inline constexpr double volumeSize_pt = 9;
inline constexpr double swirlSize_pt = 6.5;
/// What the mark takes from its column where it stands upright.
inline constexpr double uprightSwirl_mm = 3.2;
/// Type that can be read at arm's length; what needs smaller goes on on another line.
inline constexpr double smallestSheetType_pt = 6.5;
inline constexpr double standInSize_pt = 6.5;

/// Heights that rows can have: a box of 4.4 mm and room to write are in the smallest, two lines of a name and
/// one of what it is in the second.
inline constexpr double smallestRow_mm = 6.2;
inline constexpr double twoLineRow_mm = 8.4;
inline constexpr double largestRow_mm = 8.5;
inline constexpr double tickBox_mm = 4.4;

/// Which tubes stand on which page, from and to (not included); tail: on the last page, or on pages of its
/// own where that leaves it no room.
struct SheetPages {
    double row_mm = smallestRow_mm;
    std::vector<std::pair<int, int>> tubes;
    bool tailApart = false;
};
/// As few pages as hold all rows and the tail, and then the highest rows. starts: tubes that a page should
/// begin with, in order (of a rack's row, of a group); elsewhere it begins only where not even one of them is
/// in reach. first, other: room for rows on the first and the other pages. least: no row is lower.
SheetPages pagesOf(int tubes, double first_mm, double other_mm, double tail_mm,
                   const std::vector<int> &starts, double least_mm = smallestRow_mm);

} // namespace plateau::ui
