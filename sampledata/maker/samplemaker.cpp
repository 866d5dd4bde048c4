// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/samplemaker.h"

#include "sampledata/maker/history.h"

namespace plateau::sampledata {

using namespace Qt::StringLiterals;

QString samplePassphrase()
{
    return u"threnholt"_s;
}

void makeHistory(notebook::Notebook &notebook, QDateTime &now, const House &house,
                 const WantedHistory &wanted)
{
    History(notebook, now, house, wanted).make();
}

void makeSampleNotebook(const QString &path, const House &house, const WantedHistory &wanted)
{
    QDateTime now = History::firstMoment(wanted);
    notebook::Surroundings around = notebook::Surroundings::ofThisProgram();
    around.passphraseWork = notebook::PassphraseWork::Least;
    around.account = u"laboratory"_s;
    around.host = u"bench-1"_s;
    around.now = [&now] { return now; };
    around.boot = {};
    notebook::Notebook::createFilled(
        path, around, [&](notebook::Notebook &made) { makeHistory(made, now, house, wanted); });
}

} // namespace plateau::sampledata
