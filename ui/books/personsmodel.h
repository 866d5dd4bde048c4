// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"
#include "ui/shared/syncrows.h"

namespace plateau::ui {

class Theme;

struct PersonRow {
    notebook::PersonId id;
    QString name;
    notebook::PersonRole role = notebook::PersonRole::Analyst;
    bool retired = false;
    QDateTime addedAt;
    bool operator==(const PersonRow &) const = default;
};

/// The persons of the notebook, in the order they came.
class PersonsModel : public RowsModel<QAbstractTableModel, PersonRow>
{
    Q_OBJECT

public:
    enum Column { Name, Role, Since, Standing, ColumnCount };

    explicit PersonsModel(const Theme &theme, QObject *parent = nullptr);

    void setPersons(const std::vector<notebook::Person> &persons);
    /// -1 if there is no such person.
    int rowOf(notebook::PersonId id) const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
