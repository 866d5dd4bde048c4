// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"
#include "ui/shared/columnsmodel.h"

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
class PersonsModel : public ColumnsModel<PersonRow>
{
    Q_OBJECT

public:
    enum Column { Name, Role, Since, Standing, ColumnCount };

    explicit PersonsModel(const Theme &theme, QObject *parent = nullptr);

    void setPersons(const std::vector<notebook::Person> &persons);
    /// -1 if there is no such person.
    int rowOf(notebook::PersonId id) const;

protected:
    int columns() const override { return ColumnCount; }
    QString text(const PersonRow &person, int column) const override;
    QString heading(int column) const override;
    QVariant look(const PersonRow &person, int column, int role) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
