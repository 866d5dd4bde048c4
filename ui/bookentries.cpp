// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bookentries.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::BookEntry)
};

} // namespace

// Ctrl with E, D, K or U is left alone: line edits take these keys for themselves.
std::vector<BookEntry> bookEntries()
{
    return {
        {Book::Today, Words::tr("Today"), u"today"_s, Words::tr("Toda&y"), u"actionToday"_s,
         QKeySequence(u"Ctrl+0"_s)},
        {Book::Notebook, Words::tr("Notebook"), u"notebook"_s, Words::tr("&Notebook"), u"actionNotebook"_s,
         QKeySequence(u"Ctrl+B"_s)},
        {Book::Charts, Words::tr("Control charts"), u"charts"_s, Words::tr("&Control charts"),
         u"actionCharts"_s, QKeySequence(u"Ctrl+Shift+C"_s)},
        {Book::Methods, Words::tr("Methods"), u"methods"_s, Words::tr("&Methods"), u"actionMethods"_s,
         QKeySequence(u"Ctrl+M"_s)},
        {Book::Samples, Words::tr("Samples"), u"samples"_s, Words::tr("&Samples"), u"actionSamples"_s,
         QKeySequence(u"Ctrl+J"_s)},
        {Book::Lots, Words::tr("Lots"), u"lots"_s, Words::tr("&Lots"), u"actionLots"_s,
         QKeySequence(u"Ctrl+L"_s)},
        {Book::Standards, Words::tr("Standards"), u"standards"_s, Words::tr("St&andards"),
         u"actionStandards"_s, QKeySequence(u"Ctrl+Shift+T"_s)},
        {Book::Equipment, Words::tr("Equipment"), u"equipment"_s, Words::tr("E&quipment"),
         u"actionEquipment"_s, QKeySequence(u"Ctrl+Shift+E"_s)},
        {Book::Laboratory, Words::tr("Laboratory"), u"laboratory"_s, Words::tr("Labora&tory"),
         u"actionLaboratory"_s, QKeySequence(u"Ctrl+Shift+L"_s)},
        {Book::Persons, Words::tr("Persons"), u"persons"_s, Words::tr("P&ersons"), u"actionPersons"_s,
         QKeySequence(u"Ctrl+Shift+P"_s)},
        {Book::Limits, Words::tr("Limits"), u"limits"_s, Words::tr("Limits of pro&ducts"), u"actionLimits"_s,
         QKeySequence(u"Ctrl+Shift+M"_s)},
        {Book::Records, Words::tr("Records"), u"records"_s, Words::tr("Records and bac&kups"),
         u"actionRecords"_s, QKeySequence(u"Ctrl+Shift+R"_s)},
    };
}

} // namespace plateau::ui
