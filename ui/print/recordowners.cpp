// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/recordowners.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

using Fit = TableColumn::Fit;

struct Text {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RecordOwners)
};

} // namespace

void writeOwners(PageFlow &flow, const RecordPart &part)
{
    if (&part.run != &part.content.run || part.content.owners.empty())
        return;
    PrintedTable table;
    table.size_pt = 7.5;
    table.columns = {{Text::tr("input of the budgets")},
                     {Text::tr("standard uncertainty"), Fit::Natural, true},
                     {Text::tr("whose it is"), Fit::Wrap},
                     {Text::tr("where it comes from"), Fit::Wrap}};
    for (const planning::OwnedInput &owned : part.content.owners) {
        // Names of glass and records hold numbers that are no numbers of the page: they stay as they are.
        const QString number =
            owned.value ? part.local(*owned.value == 0 ? evaluation::plainText(0)
                                                       : evaluation::significantText(*owned.value, 2))
                        : Text::tr("–");
        table.rows.push_back(
            {owned.name,
             owned.value && !owned.unit.isEmpty() ? evaluation::withUnit(number, owned.unit) : number,
             owned.owner, owned.source});
    }
    flow.subheading(Text::tr("Whose numbers the budgets are made of"));
    flow.table(table);
}

} // namespace plateau::ui
