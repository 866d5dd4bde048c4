// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/standardwords.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

struct StandardRow {
    qint64 id = 0;
    QString name;
    QString strengthNow;
    PreparationStanding standing;
    QString strengthMade;
    QString madeAt;
    QString substance;
    QString person;
    bool operator==(const StandardRow &) const = default;
};

/// The standards that were made, with what they are worth now: those alive first, the newest first.
class StandardsModel : public RowsModel<QAbstractTableModel, StandardRow>
{
    Q_OBJECT

public:
    enum Column { Name, Now, Standing, Made, MadeAt, Substance, Person, ColumnCount };

    explicit StandardsModel(const Theme &theme, QObject *parent = nullptr);
    /// Newest first.
    void setPreparations(const std::vector<planning::HeldPreparation> &all, const QDateTime &now);

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
