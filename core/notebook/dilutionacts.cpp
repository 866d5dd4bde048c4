// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/pipetting.h"

#include "core/assay/listed.h"
#include "core/notebook/decisionstore.h"
#include "core/notebook/dilutionmarkstore.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/recordnames.h"
#include "core/notebook/runstore.h"
#include "core/notebook/sentence.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

/// Each step against the marks before it.
void markDilutions(Act &act, RunId run, const std::vector<DilutionPlace> &steps, MarkKind kind)
{
    act.concerns(run);
    methodRowOf(act.database(), run); // refuses a run that is not there
    requireOnBench(act.database(), run);
    QStringList names;
    for (const DilutionPlace &place : steps) {
        const qint64 row = dilutionRow(act.database(), run, place);
        names << recordName(act.database(), u"dilution"_s, row).value_or(QString());
        const bool isDone = doneMark(loadDilutionMarks(act.database(), run), place) != nullptr;
        if (isDone == (kind == MarkKind::Done))
            throw refused((isDone ? Sentence::tr("The dilution of %1 is ticked already; nothing was stored.")
                                  : Sentence::tr("The dilution of %1 is not ticked; nothing was stored."))
                              .arg(names.back()));
        storeDilutionMark(act, run, row, kind);
    }
    act.note(assay::listed(names));
    act.commit();
}

void requireSomeDilution(const std::vector<DilutionPlace> &steps)
{
    if (steps.empty())
        throw refused(Sentence::tr("Nothing was stored, since no dilution is named: choose at least one."));
}

} // namespace

void Pipetting::markDilutionsDone(RunId run, const std::vector<DilutionPlace> &steps, const QString &person)
{
    requireSomeDilution(steps);
    Act act = m_open.act(person, u"dilutionsDone"_s);
    markDilutions(act, run, steps, MarkKind::Done);
}

void Pipetting::markDilutionsUndone(RunId run, const std::vector<DilutionPlace> &steps, const QString &person)
{
    requireSomeDilution(steps);
    Act act = m_open.act(person, u"dilutionsUndone"_s);
    markDilutions(act, run, steps, MarkKind::Undone);
}

} // namespace plateau::notebook
