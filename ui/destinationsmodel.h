// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bookentries.h"
#include "ui/shared/syncrows.h"

#include <QAbstractListModel>

namespace plateau::ui {

class BenchSession;
class Theme;

/// One line of the side list.
struct Destination {
    enum class Kind { Heading, Rack, Book } kind = Kind::Heading;
    QString title;
    /// Of a rack only.
    QString runTitle;
    notebook::RunId run;
    /// Of a book only.
    Book book = Book::Notebook;
    /// Of the theme; empty for a heading.
    QString drawing;
    bool operator==(const Destination &) const = default;
};

/// Where the window can go: the racks on the bench, and the books. Headings cannot be chosen.
class DestinationsModel : public RowsModel<QAbstractListModel, Destination>
{
    Q_OBJECT

public:
    DestinationsModel(const Theme &theme, const BenchSession &session, QObject *parent = nullptr);
    void refresh();
    QModelIndex rackIndex(notebook::RunId id) const;
    QModelIndex bookIndex(Book book) const;

    QVariant cellData(const QModelIndex &index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;

private:
    const Theme &m_theme;
    const BenchSession &m_session;
};

} // namespace plateau::ui
