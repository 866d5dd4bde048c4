// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/destinationsmodel.h"

#include "ui/bench/benchsession.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Name of the drawing; a heading has none.
QString drawingOf(Destination::Kind kind)
{
    switch (kind) {
    case Destination::Kind::Rack:
        return u"rack"_s;
    case Destination::Kind::Methods:
        return u"methods"_s;
    case Destination::Kind::Samples:
        return u"samples"_s;
    case Destination::Kind::Lots:
        return u"lots"_s;
    case Destination::Kind::Laboratory:
        return u"laboratory"_s;
    case Destination::Kind::Persons:
        return u"persons"_s;
    case Destination::Kind::Limits:
        return u"limits"_s;
    default:
        return u"notebook"_s;
    }
}

} // namespace

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
    std::vector<Destination> fresh{{Kind::Heading, tr("On bench"), {}, {}}};
    for (const Rack &rack : m_session.racks())
        fresh.push_back({Kind::Rack, tr("Rack %1").arg(rack.letter), rack.stored.run.title, rack.id});
    fresh.push_back({Kind::Heading, tr("Books"), {}, {}});
    fresh.push_back({Kind::Notebook, tr("Notebook"), {}, {}});
    fresh.push_back({Kind::Methods, tr("Methods"), {}, {}});
    fresh.push_back({Kind::Samples, tr("Samples"), {}, {}});
    fresh.push_back({Kind::Lots, tr("Lots"), {}, {}});
    fresh.push_back({Kind::Laboratory, tr("Laboratory"), {}, {}});
    fresh.push_back({Kind::Persons, tr("Persons"), {}, {}});
    fresh.push_back({Kind::Limits, tr("Limits"), {}, {}});
    setRows(std::move(fresh));
}

QModelIndex DestinationsModel::firstOf(Destination::Kind kind, notebook::RunId id) const
{
    for (int index = 0; index < rowCount(); ++index) {
        if (row(index).kind == kind && row(index).run == id)
            return this->index(index);
    }
    return {};
}

QModelIndex DestinationsModel::rackIndex(notebook::RunId id) const
{
    return firstOf(Destination::Kind::Rack, id);
}

QModelIndex DestinationsModel::bookIndex(Destination::Kind book) const
{
    return firstOf(book, {});
}

QVariant DestinationsModel::data(const QModelIndex &index, int role) const
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
        return m_theme.drawing(drawingOf(destination.kind));
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
