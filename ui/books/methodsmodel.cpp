// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodsmodel.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct MethodsmodelWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodStandings)
};

QString cellText(const MethodRow &row, int column)
{
    switch (column) {
    case MethodsModel::Name:
        return row.name;
    case MethodsModel::Version:
        return row.version;
    case MethodsModel::Standing:
        return row.state;
    case MethodsModel::Origin:
        return row.origin;
    case MethodsModel::Runs:
        return QString::number(row.runs);
    case MethodsModel::Id:
        return row.id;
    case MethodsModel::Note:
        return row.note;
    default:
        return {};
    }
}

/// By the names of the newest versions, the older ones below them. rows: by id, newest first.
void sortByName(std::vector<MethodRow> &rows)
{
    std::map<QString, QString> names;
    for (const MethodRow &row : rows)
        names.try_emplace(row.id, row.name);
    std::ranges::stable_sort(rows, [&names](const MethodRow &one, const MethodRow &other) {
        const int order = names[one.id].localeAwareCompare(names[other.id]);
        return order != 0 ? order < 0 : one.id < other.id;
    });
}

} // namespace

MethodRow methodRow(const std::vector<notebook::StoredMethod> &catalogue,
                    const notebook::StoredMethod &method)
{
    const bool apart = notebook::isKeptApart(catalogue, method);
    MethodRow row{method.contentHash,
                  method.method.name,
                  QString::number(method.method.version),
                  State::Pending,
                  MethodsmodelWords::tr("earlier version"),
                  notebook::originText(method),
                  method.runs,
                  method.method.id,
                  method.arrival() ? method.arrival()->note : QString()};
    if (apart)
        row.version = MethodsmodelWords::tr("%1 (%2)").arg(row.version, method.mark());
    const std::vector<notebook::StoredMethod> offered = notebook::offeredOf(catalogue);
    const bool inUse = std::ranges::any_of(offered, [&](const notebook::StoredMethod &other) {
        return other.contentHash == method.contentHash;
    });
    if (method.retired) {
        row.shape = State::Bad;
        row.state = MethodsmodelWords::tr("retired");
    } else if (inUse) {
        row.shape = apart ? State::Attention : State::Good;
        row.state = apart ? MethodsmodelWords::tr("in use, kept apart") : MethodsmodelWords::tr("in use");
    } else if (method.origin == notebook::MethodOrigin::OnRecord) {
        row.shape = State::Info;
        row.state = MethodsmodelWords::tr("on record");
    }
    return row;
}

MethodsModel::MethodsModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void MethodsModel::setCatalogue(const std::vector<notebook::StoredMethod> &catalogue, const QString &id)
{
    std::vector<MethodRow> fresh;
    for (const notebook::StoredMethod &method : catalogue) {
        if (id.isEmpty() || method.method.id == id)
            fresh.push_back(methodRow(catalogue, method));
    }
    if (id.isEmpty())
        sortByName(fresh);
    setRows(std::move(fresh));
}

int MethodsModel::rowOf(const QString &contentHash) const
{
    const auto found = std::ranges::find(rows(), contentHash, &MethodRow::contentHash);
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

int MethodsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant MethodsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const MethodRow &shown = row(index.row());
    if (role == Qt::DisplayRole)
        return cellText(shown, index.column());
    if (role == Qt::DecorationRole && index.column() == Standing)
        return m_theme.icon(shown.shape);
    if (role == Qt::TextAlignmentRole && index.column() == Runs)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant MethodsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole && section == Runs)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Name:
        return tr("Name");
    case Version:
        return tr("Version");
    case Standing:
        return tr("State");
    case Origin:
        return tr("Origin");
    case Runs:
        return tr("Runs");
    case Id:
        return tr("ID");
    case Note:
        return tr("What was changed and why");
    default:
        return {};
    }
}

} // namespace plateau::ui
