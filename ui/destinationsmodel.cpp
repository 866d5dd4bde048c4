// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/destinationsmodel.h"

#include "ui/bench/benchsession.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

DestinationsModel::DestinationsModel(const Theme &theme, const BenchSession &session, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
    , m_session(session)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
    refresh();
}

void DestinationsModel::refresh()
{
    using Kind = Destination::Kind;
    std::vector<Destination> fresh{{Kind::Heading, tr("On the bench"), {}, {}, {}, {}}};
    for (const Rack &rack : m_session.racks())
        fresh.push_back(
            {Kind::Rack, tr("Rack %1").arg(rack.letter), rack.stored.run.title, rack.id, {}, u"rack"_s});
    fresh.push_back({Kind::Heading, tr("Books"), {}, {}, {}, {}});
    for (const BookEntry &entry : bookEntries())
        fresh.push_back({Kind::Book, entry.title, {}, {}, entry.book, entry.drawing});
    setRows(std::move(fresh));
}

QModelIndex DestinationsModel::rackIndex(notebook::RunId id) const
{
    for (int at = 0; at < rowCount(); ++at) {
        if (row(at).kind == Destination::Kind::Rack && row(at).run == id)
            return index(at);
    }
    return {};
}

QModelIndex DestinationsModel::bookIndex(Book book) const
{
    for (int at = 0; at < rowCount(); ++at) {
        if (row(at).kind == Destination::Kind::Book && row(at).book == book)
            return index(at);
    }
    return {};
}

QVariant DestinationsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Destination &destination = row(index.row());
    const bool heading = destination.kind == Destination::Kind::Heading;
    switch (role) {
    case Qt::DisplayRole:
        return destination.runTitle.isEmpty() ? destination.title
                                              : u"%1\n%2"_s.arg(destination.title, destination.runTitle);
    case Qt::AccessibleTextRole:
        return destination.runTitle.isEmpty() ? destination.title
                                              : tr("%1, %2").arg(destination.title, destination.runTitle);
    case Qt::ToolTipRole:
        return tipText(destination.runTitle.isEmpty() ? destination.title : destination.runTitle);
    case Qt::DecorationRole:
        if (heading)
            return {};
        return m_theme.drawing(destination.drawing);
    case Qt::ForegroundRole:
        return heading ? QVariant(m_theme.mutedText()) : QVariant();
    case Qt::FontRole:
        return heading ? QVariant(m_theme.bold()) : QVariant();
    default:
        return {};
    }
}

Qt::ItemFlags DestinationsModel::flags(const QModelIndex &index) const
{
    if (!index.isValid() || row(index.row()).kind == Destination::Kind::Heading)
        return Qt::NoItemFlags;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace plateau::ui
