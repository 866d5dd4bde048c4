// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/keyslist.h"

#include "ui/print/reporthead.h"

#include <QAction>
#include <QCoreApplication>
#include <QLocale>
#include <QMenu>
#include <QMenuBar>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct KeyslistWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Keys)
};

QString withoutMnemonic(QString menuText)
{
    return menuText.remove(u'&').remove(u"…"_s);
}

void addMenu(std::vector<KeyEntry> &entries, const QMenu &menu, const QString &where)
{
    for (const QAction *action : menu.actions()) {
        if (action->menu())
            addMenu(entries, *action->menu(), where);
        else if (!action->shortcut().isEmpty())
            entries.push_back({where, action->shortcut().toString(QKeySequence::NativeText),
                               withoutMnemonic(action->text())});
    }
}

void addEverywhere(std::vector<KeyEntry> &entries)
{
    const QString where = KeyslistWords::tr("Everywhere");
    entries.insert(
        entries.end(),
        {{where, KeyslistWords::tr("Tab, Shift+Tab"),
          KeyslistWords::tr("To the next field or button, to the one before")},
         {where, KeyslistWords::tr("Alt and the underlined letter"),
          KeyslistWords::tr("To the field, button or tab with that letter")},
         {where, KeyslistWords::tr("F10"),
          KeyslistWords::tr("Into the menus; arrow keys, Enter and Esc from there")},
         {where, KeyslistWords::tr("Enter"),
          KeyslistWords::tr("In a list: open; on a button: press; in a form: what its main button does")},
         {where, KeyslistWords::tr("F1"), KeyslistWords::tr("The help for what is in front, in dialogs too")},
         {where, KeyslistWords::tr("Esc"),
          KeyslistWords::tr("Back to the list, or leave what was begun; asks about anything not stored")},
         {where, KeyslistWords::tr("Down"),
          KeyslistWords::tr("In a field with an arrow: what is offered; in a search: into the list")}});
}

void addBench(std::vector<KeyEntry> &entries)
{
    const QString plan = KeyslistWords::tr("New run");
    const QString pipette = KeyslistWords::tr("Pipette");
    const QString read = KeyslistWords::tr("Read");
    const QString chart = KeyslistWords::tr("Tubes against time");
    const QString review = KeyslistWords::tr("Review, sample by sample");
    entries.insert(
        entries.end(),
        {{plan, KeyslistWords::tr("Ctrl and an arrow key"), KeyslistWords::tr("In the rack: move the tube")},
         {pipette, KeyslistWords::tr("Space"), KeyslistWords::tr("Tick the tube; the next one waits")},
         {pipette, u"+"_s, KeyslistWords::tr("Tick the row")},
         {pipette, u"*"_s, KeyslistWords::tr("Tick the addition in every tube")},
         {pipette, u"0–9"_s, KeyslistWords::tr("Another volume went in")},
         {pipette, KeyslistWords::tr("-, Backspace"), KeyslistWords::tr("Take back the last tick")},
         {pipette, u"/"_s, KeyslistWords::tr("The tube is spoilt; asks why")},
         {pipette, KeyslistWords::tr("Space, on a dilution"),
          KeyslistWords::tr("Tick it as made, or take its tick back; * ticks all of them")},
         {read, KeyslistWords::tr("Enter"),
          KeyslistWords::tr("Store the reading, or ask about it where it cannot be right")},
         {read, KeyslistWords::tr("Up, Down"), KeyslistWords::tr("The tube before, the next one")},
         {read, KeyslistWords::tr("Space, in an empty entry"), KeyslistWords::tr("What is next is done now")},
         {read, u"/"_s, KeyslistWords::tr("The tube is spoilt; asks why")},
         {read, KeyslistWords::tr("Esc"), KeyslistWords::tr("Type the reading again; leave it as it was")},
         {chart, KeyslistWords::tr("Up, Down, Page Up, Page Down, Home, End"),
          KeyslistWords::tr("From tube to tube")},
         {chart, KeyslistWords::tr("Enter"), KeyslistWords::tr("To that tube")},
         {review, u"A"_s, KeyslistWords::tr("Accept the sample")},
         {review, u"R"_s, KeyslistWords::tr("Reject the sample")},
         {review, u"W"_s, KeyslistWords::tr("Send it back to the samples that wait, to be repeated")},
         {review, KeyslistWords::tr("Delete, Backspace"), KeyslistWords::tr("Undecided again")},
         {review, KeyslistWords::tr("Enter, F2"), KeyslistWords::tr("Change the cell")}});
}

void addBooks(std::vector<KeyEntry> &entries)
{
    const QString charts = KeyslistWords::tr("Control charts");
    const QString tables = KeyslistWords::tr("Tables that are typed in");
    const QString lots = KeyslistWords::tr("Lots");
    const QString forms = KeyslistWords::tr("Methods, Laboratory, Limits, Samples");
    entries.insert(
        entries.end(),
        {{charts, KeyslistWords::tr("Left, Right"), KeyslistWords::tr("From point to point")},
         {charts, KeyslistWords::tr("Ctrl+Left, Ctrl+Right"),
          KeyslistWords::tr("From one point out of control to the next")},
         {charts, KeyslistWords::tr("Page Up, Page Down"), KeyslistWords::tr("Ten points on")},
         {charts, KeyslistWords::tr("Home, End"), KeyslistWords::tr("The first point, the last one")},
         {charts, u"+ -"_s, KeyslistWords::tr("Fewer points in view, more of them")},
         {charts, u"0"_s, KeyslistWords::tr("All points")},
         {charts, KeyslistWords::tr("Enter"), KeyslistWords::tr("Open the run of the point")},
         {tables, KeyslistWords::tr("Enter"), KeyslistWords::tr("Change the cell")},
         {tables, KeyslistWords::tr("Delete"), KeyslistWords::tr("Empty the cell")},
         {tables, KeyslistWords::tr("Insert, Ctrl+Delete"), KeyslistWords::tr("New row, remove the row")},
         {tables, KeyslistWords::tr("Alt+Up, Alt+Down"), KeyslistWords::tr("Move the row")},
         {tables, KeyslistWords::tr("Ctrl+Z"), KeyslistWords::tr("Undo")},
         {tables, KeyslistWords::tr("Ctrl+V"),
          KeyslistWords::tr("Paste a column of names into the table of samples")},
         {lots, KeyslistWords::tr("Alt+Up, Alt+Down"),
          KeyslistWords::tr("Sort by the column the keys are in, falling or rising; once more: as it was")},
         {forms, KeyslistWords::tr("Ctrl+S"), KeyslistWords::tr("Save")},
         {forms, KeyslistWords::tr("Alt+1, Alt+2 …"),
          KeyslistWords::tr("To the sections of a method or of the laboratory")}});
}

void addHelpWindow(std::vector<KeyEntry> &entries)
{
    const QString help = KeyslistWords::tr("Window of the help");
    entries.insert(entries.end(),
                   {{help, KeyslistWords::tr("Alt+Left, Alt+Right"),
                     KeyslistWords::tr("To the page read before, to the one after it")},
                    {help, KeyslistWords::tr("Ctrl+F"), KeyslistWords::tr("To the search")},
                    {help, KeyslistWords::tr("Enter"),
                     KeyslistWords::tr("In the search: the first section found; on a link: follow it")},
                    {help, KeyslistWords::tr("Tab, Shift+Tab"),
                     KeyslistWords::tr("In the page: to the next link, to the one before")},
                    {help, KeyslistWords::tr("Esc"),
                     KeyslistWords::tr("Empty the search; close the help where nothing is searched")}});
}

} // namespace

std::vector<KeyEntry> keyEntries(const QMenuBar &menus)
{
    std::vector<KeyEntry> entries;
    addEverywhere(entries);
    for (const QAction *action : menus.actions()) {
        if (const QMenu *menu = action->menu())
            addMenu(entries, *menu, KeyslistWords::tr("%1 menu").arg(withoutMnemonic(action->text())));
    }
    addBench(entries);
    addBooks(entries);
    addHelpWindow(entries);
    return entries;
}

QByteArray keysPdf(const std::vector<KeyEntry> &entries)
{
    const QString title = KeyslistWords::tr("Keys of Plateau");
    const RunningText running{
        title, title, {}, {}, KeyslistWords::tr("Plateau %1").arg(QCoreApplication::applicationVersion())};
    return flowedPdf(running, usualPaper(QLocale::system()), [&](PageFlow &flow) {
        paintTitle(flow, title, KeyslistWords::tr("Everything can be done without the mouse."));
        PrintedTable table;
        using Fit = TableColumn::Fit;
        table.columns = {{KeyslistWords::tr("where"), Fit::Natural},
                         {KeyslistWords::tr("keys"), Fit::Wrap, false, true, 0.3},
                         {KeyslistWords::tr("what they do"), Fit::Wrap}};
        for (const KeyEntry &entry : entries)
            table.rows.push_back({entry.where, entry.keys, entry.does});
        flow.table(table);
    });
}

} // namespace plateau::ui
