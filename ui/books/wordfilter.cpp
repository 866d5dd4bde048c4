// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/wordfilter.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

QString folded(const QString &text)
{
    return text.normalized(QString::NormalizationForm_KC).toCaseFolded();
}

} // namespace

WordFilter::WordFilter(QAbstractItemModel *source, QObject *parent)
    : QSortFilterProxyModel(parent)
{
    setSourceModel(source);
}

void WordFilter::setFilter(const QString &text)
{
    m_words = folded(text).split(u' ', Qt::SkipEmptyParts);
    invalidateFilter();
}

bool WordFilter::filterAcceptsRow(int sourceRow, const QModelIndex &sourceParent) const
{
    QStringList cells;
    for (int column = 0; column < sourceModel()->columnCount(sourceParent); ++column)
        cells << sourceModel()->index(sourceRow, column, sourceParent).data(Qt::DisplayRole).toString();
    const QString all = folded(cells.join(u'\n'));
    return std::ranges::all_of(m_words, [&](const QString &word) { return all.contains(word); });
}

} // namespace plateau::ui
