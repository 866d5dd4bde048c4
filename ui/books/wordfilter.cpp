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
    m_words = folded(text).simplified().split(u' ', Qt::SkipEmptyParts);
    invalidateFilter();
}

QString WordFilter::textOf(int sourceRow) const
{
    QStringList cells;
    for (int column = 0; column < sourceModel()->columnCount(); ++column)
        cells << sourceModel()->index(sourceRow, column).data(Qt::DisplayRole).toString();
    return cells.join(u'\n');
}

bool WordFilter::filterAcceptsRow(int sourceRow, const QModelIndex &) const
{
    const QString all = folded(textOf(sourceRow));
    return std::ranges::all_of(m_words, [&](const QString &word) { return all.contains(word); });
}

} // namespace plateau::ui
