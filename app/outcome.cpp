// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/outcome.h"

#include "app/console.h"

#include <QCoreApplication>
#include <QDir>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct OutcomeWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

} // namespace

ExitStatus wrongUse(const QString &sentence)
{
    writeError(u"plateau: "_s + sentence);
    return Unusable;
}

ExitStatus unusableNotebook(const QString &path, const notebook::Failure &failure)
{
    // Most sentences name the file where it is read best.
    const bool named = failure.sentence().contains(QDir::toNativeSeparators(path));
    writeError(named ? failure.sentence() : u"%1: %2"_s.arg(path, failure.sentence()));
    return Unusable;
}

ExitStatus written(bool complete)
{
    return complete ? Sound
                    : wrongUse(OutcomeWords::tr("the result could not be written to standard output"));
}

} // namespace plateau::app
