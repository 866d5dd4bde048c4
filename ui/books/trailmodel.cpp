// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/trailmodel.h"

#include "core/assay/listed.h"
#include "ui/books/trailwords.h"
#include "ui/shared/widgets.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// In a cell of one line; all of them stand below the table.
QString inOneLine(const QStringList &texts)
{
    QStringList said = texts;
    said.removeAll(QString());
    said.removeDuplicates();
    return assay::listed(said.join(u'\n').split(u'\n'));
}

QString textsOf(const std::vector<notebook::AuditChange> &changes, QString notebook::AuditChange::*part)
{
    QStringList texts;
    for (const notebook::AuditChange &change : changes)
        texts << change.*part;
    return inOneLine(texts);
}

QString valuesOf(const std::vector<notebook::AuditChange> &changes,
                 std::vector<notebook::AuditValue> notebook::AuditChange::*part)
{
    QStringList texts;
    for (const notebook::AuditChange &change : changes) {
        for (const notebook::AuditValue &value : change.*part)
            texts << valueText(value);
    }
    return inOneLine(texts);
}

/// What stands in its row; all that it changed is told below the table.
bool hasReplaced(const std::vector<notebook::AuditChange> &changes)
{
    return std::ranges::any_of(changes, [](const notebook::AuditChange &change) { return !change.before.empty(); });
}

/// The act's own words ("Water, lot W-48") say more than the rows that it made.
QString subjectText(const TrailRow &row)
{
    // What a row cannot show, but not the narrow space of a list.
    static const QRegularExpression breaks(u"[ \\t\\r\\n]+"_s);
    const QString details = detailsText(row.item.entry).replace(breaks, u" "_s).trimmed();
    return hasReplaced(row.changes) || details.isEmpty() ? textsOf(row.changes, &notebook::AuditChange::subject)
                                                         : details;
}

QString afterText(const TrailRow &row)
{
    constexpr std::size_t mostInARow = 2;
    return hasReplaced(row.changes) || row.changes.size() <= mostInARow
               ? valuesOf(row.changes, &notebook::AuditChange::after)
               : QString();
}

} // namespace

int TrailModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant TrailModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid() || role != Qt::DisplayRole)
        return {};
    const TrailRow &row = this->row(index.row());
    const notebook::AuditEntry &entry = row.item.entry;
    switch (index.column()) {
    case When:
        return momentText(entry.at);
    case Who:
        return entry.person;
    case What:
        return actText(entry.action);
    case Run:
        return entry.run ? u"%1: %2"_s.arg(entry.run->value).arg(row.item.runTitle) : QString();
    case Of:
        return subjectText(row);
    case Before:
        return valuesOf(row.changes, &notebook::AuditChange::before);
    case After:
        return afterText(row);
    case Reason:
        return textsOf(row.changes, &notebook::AuditChange::reason);
    default:
        return {};
    }
}

QVariant TrailModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case When:
        return tr("When");
    case Who:
        return tr("Who");
    case What:
        return tr("What was done");
    case Run:
        return tr("Run");
    case Of:
        return tr("Concerning");
    case Before:
        return tr("Before");
    case After:
        return tr("After");
    case Reason:
        return tr("Reason");
    default:
        return {};
    }
}

} // namespace plateau::ui
