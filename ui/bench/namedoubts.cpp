// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/namedoubts.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::ui {

namespace {

struct NameDoubtsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::NameDoubts)
};

} // namespace

QStringList nameDoubts(const QString &name, const std::vector<notebook::Person> &persons)
{
    QStringList doubts;
    if (name.isEmpty())
        return doubts;
    if (std::ranges::any_of(name, [](QChar letter) { return letter.isDigit(); }))
        doubts << NameDoubtsWords::tr("A name with a figure in it: was a reading meant?");
    const auto found = std::ranges::find_if(persons, [&](const notebook::Person &person) {
        return person.name.compare(name, Qt::CaseInsensitive) == 0;
    });
    if (!persons.empty() && found == persons.end())
        doubts << NameDoubtsWords::tr("Nobody of that name is set up: they can work, but not sign.");
    else if (!persons.empty() && found->retired)
        doubts << NameDoubtsWords::tr("This name is retired: they can work, but not sign.");
    return doubts;
}

QStringList namesOffered(const std::vector<notebook::Person> &persons)
{
    QStringList names;
    for (const notebook::Person &person : persons) {
        if (!person.retired)
            names << person.name;
    }
    return names;
}

} // namespace plateau::ui
