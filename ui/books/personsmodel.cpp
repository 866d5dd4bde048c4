// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/personsmodel.h"

#include "core/assay/localday.h"
#include "ui/books/personswords.h"
#include "ui/shared/theme.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

PersonsModel::PersonsModel(const Theme &theme, QObject *parent)
    : ColumnsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void PersonsModel::setPersons(const std::vector<notebook::Person> &persons)
{
    std::vector<PersonRow> fresh;
    for (const notebook::Person &person : persons)
        fresh.push_back({person.id, person.name, person.role, person.retired, person.addedAt});
    setRows(std::move(fresh));
}

int PersonsModel::rowOf(notebook::PersonId id) const
{
    const auto found = std::ranges::find(rows(), id, &PersonRow::id);
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

QString PersonsModel::text(const PersonRow &person, int column) const
{
    switch (column) {
    case Name:
        return person.name;
    case Role:
        return personRoleText(person.role);
    case Since:
        return assay::shownDay(person.addedAt.toLocalTime().date());
    case Standing:
        return person.retired ? tr("retired, may not sign") : tr("may sign");
    default:
        return {};
    }
}

QVariant PersonsModel::look(const PersonRow &person, int column, int role) const
{
    return role == Qt::DecorationRole && column == Standing
               ? QVariant(m_theme.icon(person.retired ? State::Pending : State::Good))
               : QVariant();
}

QString PersonsModel::heading(int column) const
{
    switch (column) {
    case Name:
        return tr("Name");
    case Role:
        return tr("Role");
    case Since:
        return tr("Since");
    case Standing:
        return tr("State");
    default:
        return {};
    }
}

} // namespace plateau::ui
