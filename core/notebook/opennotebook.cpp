// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/opennotebook.h"

#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <QDir>

#include <utility>

namespace plateau::notebook {

OpenNotebook::OpenNotebook(std::unique_ptr<Database> connection, const Surroundings &around)
    : database(std::move(connection))
    , surroundings(around)
    , version(schemaSteps().back().number)
    , layout(layoutAfter(schemaSteps(), version))
{
}

Act OpenNotebook::act(const QString &person, const QString &action) const
{
    if (database->access() == Access::ReadOnly)
        throw Failure(Failure::Kind::Storage,
                      Sentence::tr("The notebook %1 is open for reading only; nothing was stored.")
                          .arg(QDir::toNativeSeparators(database->path())));
    requirePerson(person);
    return Act(session(), person, action);
}

Failure refused(const QString &sentence)
{
    return Failure(Failure::Kind::Refused, sentence);
}

void requireUsable(const assay::Problems &problems, const QString &sentence)
{
    for (const assay::Problem &problem : problems) {
        if (problem.severity == assay::Problem::Severity::Error)
            throw refused(sentence.arg(problem.pointer, problem.message));
    }
}

} // namespace plateau::notebook
