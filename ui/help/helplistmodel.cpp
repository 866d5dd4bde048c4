// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helplistmodel.h"

#include "ui/shared/widgets.h"

#include <algorithm>

namespace plateau::ui {

namespace {

/// Deeper headings would make the list longer than the page.
constexpr int deepestListed = 3;

} // namespace

void HelpListModel::showContents(const HelpPages &pages, const QString &readPage)
{
    std::vector<HelpRow> rows;
    for (const HelpEntry &entry : pages.contents()) {
        const HelpPage *page = pages.find(entry.page);
        if (!page) {
            rows.push_back({HelpRow::Kind::Group, entry.group, {}, {}, 0, {}});
            continue;
        }
        rows.push_back({HelpRow::Kind::Page, page->title, {}, {}, 0, {page->id, {}}});
        if (page->id != readPage || page->id == HelpPages::indexPage())
            continue;
        for (const HelpSection &section : page->sections) {
            if (section.level > 1 && section.level <= deepestListed)
                rows.push_back({HelpRow::Kind::Section,
                                section.title,
                                {},
                                {},
                                section.level - 1,
                                {page->id, section.anchor}});
        }
    }
    setRows(std::move(rows));
}

void HelpListModel::showHits(const std::vector<HelpHit> &hits)
{
    std::vector<HelpRow> rows;
    std::ranges::transform(hits, std::back_inserter(rows), [](const HelpHit &hit) {
        return HelpRow{HelpRow::Kind::Hit, hit.title, hit.pageTitle, hit.context, 0, {hit.page, hit.anchor}};
    });
    setRows(std::move(rows));
}

int HelpListModel::rowOf(const HelpPlace &place) const
{
    auto at = std::ranges::find(rows(), place, &HelpRow::place);
    if (at == rows().end())
        at = std::ranges::find(rows(), HelpPlace{place.page, {}}, &HelpRow::place);
    return at == rows().end() ? -1 : static_cast<int>(at - rows().begin());
}

QVariant HelpListModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const HelpRow &row = this->row(index.row());
    if (role == Qt::DisplayRole)
        return row.title;
    if (role == Qt::AccessibleTextRole && row.kind == HelpRow::Kind::Hit)
        return tr("%1, in %2: %3", "a section of the help, its page, a line of it")
            .arg(row.title, row.where, row.context);
    if (role == Qt::ToolTipRole && row.kind != HelpRow::Kind::Group)
        return tipText(row.title);
    return {};
}

Qt::ItemFlags HelpListModel::flags(const QModelIndex &index) const
{
    if (index.isValid() && row(index.row()).kind == HelpRow::Kind::Group)
        return Qt::ItemNeverHasChildren;
    return RowsModel::flags(index);
}

} // namespace plateau::ui
