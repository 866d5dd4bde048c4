// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QSortFilterProxyModel>

namespace plateau::ui {

/// Keeps the rows of a table in which every word stands somewhere in what is searched. As names are compared:
/// compatibility forms and case do not count.
class WordFilter : public QSortFilterProxyModel
{
    Q_OBJECT

public:
    explicit WordFilter(QAbstractItemModel *source, QObject *parent = nullptr);
    virtual void setFilter(const QString &text);

protected:
    /// What is searched of a row of the source: what is shown of it.
    virtual QString textOf(int sourceRow) const;
    bool filterAcceptsRow(int sourceRow, const QModelIndex &sourceParent) const override;

private:
    QStringList m_words;
};

} // namespace plateau::ui
