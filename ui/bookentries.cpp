// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bookentries.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct BookentriesWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::BookEntry)
};

} // namespace

// Ctrl with E, D, K or U is left alone: line edits take these keys for themselves.
std::vector<BookEntry> bookEntries()
{
    return {
        {Book::Today, BookentriesWords::tr("Today"), u"today"_s, BookentriesWords::tr("Toda&y"),
         u"actionToday"_s, QKeySequence(u"Ctrl+0"_s)},
        {Book::Notebook, BookentriesWords::tr("Notebook"), u"notebook"_s, BookentriesWords::tr("&Notebook"),
         u"actionNotebook"_s, QKeySequence(u"Ctrl+B"_s)},
        {Book::Charts, BookentriesWords::tr("Control charts"), u"charts"_s,
         BookentriesWords::tr("&Control charts"), u"actionCharts"_s, QKeySequence(u"Ctrl+Shift+C"_s)},
        {Book::Methods, BookentriesWords::tr("Methods"), u"methods"_s, BookentriesWords::tr("&Methods"),
         u"actionMethods"_s, QKeySequence(u"Ctrl+M"_s)},
        {Book::Samples, BookentriesWords::tr("Samples"), u"samples"_s, BookentriesWords::tr("&Samples"),
         u"actionSamples"_s, QKeySequence(u"Ctrl+J"_s)},
        {Book::Lots, BookentriesWords::tr("Lots"), u"lots"_s, BookentriesWords::tr("&Lots"), u"actionLots"_s,
         QKeySequence(u"Ctrl+L"_s)},
        {Book::Standards, BookentriesWords::tr("Standards"), u"standards"_s,
         BookentriesWords::tr("St&andards"), u"actionStandards"_s, QKeySequence(u"Ctrl+Shift+T"_s)},
        {Book::Equipment, BookentriesWords::tr("Equipment"), u"equipment"_s,
         BookentriesWords::tr("E&quipment"), u"actionEquipment"_s, QKeySequence(u"Ctrl+Shift+E"_s)},
        {Book::Laboratory, BookentriesWords::tr("Laboratory"), u"laboratory"_s,
         BookentriesWords::tr("Labora&tory"), u"actionLaboratory"_s, QKeySequence(u"Ctrl+Shift+L"_s)},
        {Book::Persons, BookentriesWords::tr("People"), u"persons"_s, BookentriesWords::tr("P&eople"),
         u"actionPersons"_s, QKeySequence(u"Ctrl+Shift+P"_s)},
        {Book::Limits, BookentriesWords::tr("Limits"), u"limits"_s,
         BookentriesWords::tr("Limits of pro&ducts"), u"actionLimits"_s, QKeySequence(u"Ctrl+Shift+M"_s)},
        {Book::Records, BookentriesWords::tr("Records"), u"records"_s,
         BookentriesWords::tr("Records and bac&kups"), u"actionRecords"_s, QKeySequence(u"Ctrl+Shift+R"_s)},
    };
}

} // namespace plateau::ui
