// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/personswords.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct PersonsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::PersonsWords)
};

} // namespace

QString personRoleText(notebook::PersonRole role)
{
    switch (role) {
    case notebook::PersonRole::Analyst:
        return PersonsWords::tr("Analyst");
    case notebook::PersonRole::Reviewer:
        return PersonsWords::tr("Reviewer");
    case notebook::PersonRole::Head:
        break;
    }
    return PersonsWords::tr("Head");
}

QString personRoleMeaning(notebook::PersonRole role)
{
    switch (role) {
    case notebook::PersonRole::Analyst:
        return PersonsWords::tr("Signs decisions, unless the laboratory wants a reviewer's signature.");
    case notebook::PersonRole::Reviewer:
        return PersonsWords::tr("Signs decisions.");
    case notebook::PersonRole::Head:
        break;
    }
    return PersonsWords::tr("Signs decisions and keeps this list.");
}

} // namespace plateau::ui
