// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/help/helpsearch.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/syncrows.h"

#include <QAbstractListModel>

namespace plateau::ui {

/// A line beside the page.
struct HelpRow {
    /// Group: the name over some pages, leads nowhere. Section: of the page that is read. Hit: what a search
    /// found.
    enum class Kind { Group, Page, Section, Hit } kind = Kind::Page;
    QString title;
    /// Of a hit: the title of its page, and the line that was found.
    QString where;
    QString context;
    /// Of a section: how far below the page.
    int depth = 0;
    HelpPlace place;
    bool operator==(const HelpRow &) const = default;
};

/// The contents with the sections of the page that is read, or what a search found.
class HelpListModel : public RowsModel<QAbstractListModel, HelpRow>
{
    Q_OBJECT

public:
    using RowsModel::RowsModel;

    void showContents(const HelpPages &pages, const QString &readPage);
    void showHits(const std::vector<HelpHit> &hits);
    /// -1: no row leads to it. The row of its page where none leads to the section.
    int rowOf(const HelpPlace &place) const;

    QVariant cellData(const QModelIndex &index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
};

} // namespace plateau::ui
