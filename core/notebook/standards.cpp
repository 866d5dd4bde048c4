// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/standards.h"

#include "core/assay/label.h"
#include "core/assay/localday.h"
#include "core/notebook/charts.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/standardstore.h"
#include "core/notebook/text.h"

#include <algorithm>
#include <iterator>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using assay::quoted;
using planning::HeldPreparation;
using planning::HeldSubstance;

namespace {

void requireSubstance(const planning::Substance &substance)
{
    requireUsable(planning::problemsOf(substance), Sentence::tr("The substance was not stored: %1 %2."));
}

HeldSubstance substanceOf(const Act &act, SubstanceId id)
{
    const std::vector<HeldSubstance> all = loadSubstances(act.database());
    const auto found = std::ranges::find(all, id.value, &HeldSubstance::id);
    if (found == all.end())
        throw refused(
            Sentence::tr(
                "The notebook holds no substance number %1; nothing was stored: choose one from its list.")
                .arg(id.value));
    return *found;
}

HeldPreparation preparationOf(const Database &database, PreparationId id)
{
    const std::vector<HeldPreparation> all = loadPreparations(database);
    const auto found = std::ranges::find(all, id.value, &HeldPreparation::id);
    if (found == all.end())
        throw refused(Sentence::tr("The notebook holds no preparation number %1; nothing was stored: choose "
                                   "one from its list of standards.")
                          .arg(id.value));
    return *found;
}

} // namespace

SubstanceId StandardBook::addSubstance(const planning::Substance &substance, const QString &person)
{
    requireSubstance(substance);
    Act act = m_open.act(person, u"substanceAdded"_s);
    const SubstanceId id = storeSubstance(act);
    storeSubstanceVersion(act, id, substance, {});
    act.note(substance.name);
    act.commit();
    return id;
}

void StandardBook::changeSubstance(SubstanceId id, const planning::Substance &substance,
                                   const QString &person, const QString &reason)
{
    requireSubstance(substance);
    requireReason(reason,
                  Sentence::tr("The substance stays as it was, since a change needs a reason: say why."));
    Act act = m_open.act(person, u"substanceChanged"_s);
    if (substanceOf(act, id).substance == substance)
        throw refused(Sentence::tr("The substance %1 reads like this already; nothing was stored.")
                          .arg(quoted(substance.name)));
    storeSubstanceVersion(act, id, substance, reason);
    act.note(substance.name);
    act.commit();
}

PreparationId StandardBook::prepare(SubstanceId of, const planning::Preparation &preparation,
                                    const QString &person)
{
    Act act = m_open.act(person, u"standardPrepared"_s);
    const HeldSubstance substance = substanceOf(act, of);
    requireUsable(planning::problemsOf(preparation, timeOf(act.at())),
                  Sentence::tr("The standard was not stored: %1 %2."));
    for (const HeldPreparation &held : loadPreparations(act.database())) {
        if (comparisonKey(held.preparation.name) == comparisonKey(preparation.name))
            throw refused(
                Sentence::tr("The standard was not stored: the name %1 is taken by one made on %2; "
                             "give this one another, since runs tell them apart by it.")
                    .arg(quoted(preparation.name), assay::shownDay(held.preparation.madeAt.date())));
    }
    const PreparationId id = storePreparation(act, of, preparation);
    act.note(Sentence::tr("%1, made from %2").arg(preparation.name, substance.substance.name));
    act.commit();
    return id;
}

void StandardBook::discard(PreparationId id, const QString &person, const QString &reason)
{
    requireReason(reason,
                  Sentence::tr("The standard was not discarded, since that needs a reason: say why."));
    Act act = m_open.act(person, u"standardDiscarded"_s);
    const HeldPreparation held = preparationOf(act.database(), id);
    if (held.discarded)
        throw refused(Sentence::tr("The standard %1 was discarded already; nothing was stored.")
                          .arg(quoted(held.preparation.name)));
    storeDisposal(act, id, reason);
    act.note(held.preparation.name);
    act.commit();
}

std::vector<HeldSubstance> StandardBook::substances() const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return loadSubstances(*m_open.database);
}

std::vector<HeldPreparation> StandardBook::preparations() const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    std::vector<HeldPreparation> all = loadPreparations(*m_open.database);
    std::ranges::reverse(all);
    return all;
}

std::vector<RunId> StandardBook::runsOf(PreparationId id) const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return loadRunsOf(*m_open.database, preparationOf(*m_open.database, id));
}

charts::Series StandardBook::recoveriesOfItsKind(PreparationId id) const
{
    std::vector<QString> names;
    QString substance;
    {
        const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
        const HeldPreparation held = preparationOf(*m_open.database, id);
        substance = comparisonKey(held.of.name);
        for (const HeldPreparation &one : loadPreparations(*m_open.database)) {
            if (comparisonKey(one.of.name) == substance &&
                one.preparation.measurand == held.preparation.measurand)
                names.push_back(comparisonKey(one.preparation.name));
        }
    }
    const Charts charts(m_open);
    charts::Series all;
    for (const ChartOffer &offer : charts.offers(charts::Quantity::StandardRecovery)) {
        if (offer.preparations == 0 || comparisonKey(offer.subject.name) != substance)
            continue;
        std::ranges::copy_if(charts.series(offer.subject), std::back_inserter(all),
                             [&](const charts::Point &point) {
                                 return std::ranges::find(names, comparisonKey(point.name)) != names.end();
                             });
    }
    return all;
}

} // namespace plateau::notebook
