// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/equipment.h"

#include "core/assay/label.h"
#include "core/equipment/protocol.h"
#include "core/notebook/equipmentstore.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <algorithm>

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using equipment::HeldItem;

namespace {

void requireItem(const equipment::Item &item)
{
    requireUsable(equipment::problemsOf(item), Sentence::tr("The item was not stored: %1 %2."));
}

/// Two of one kind and name could not be told apart in a budget.
void requireFreeName(const std::vector<HeldItem> &all, const equipment::Item &item, qint64 own)
{
    for (const HeldItem &held : all) {
        if (held.id != own && held.item.kind == item.kind &&
            comparisonKey(held.item.name) == comparisonKey(item.name))
            throw refused(Sentence::tr("The item was not stored: there is a %1 of the name %2 already; give "
                                       "this one another.")
                              .arg(equipment::kindName(item.kind), assay::quoted(item.name)));
    }
}

HeldItem itemOf(const Act &act, ItemId id)
{
    std::vector<HeldItem> all = loadEquipment(act.database());
    const auto found = std::ranges::find(all, id.value, &HeldItem::id);
    if (found == all.end())
        throw refused(Sentence::tr("The notebook holds no item number %1; nothing was stored: choose one "
                                   "from its list of equipment.")
                          .arg(id.value));
    return *found;
}

} // namespace

ItemId EquipmentBook::add(const equipment::Item &item, const QString &person)
{
    requireItem(item);
    Act act = m_open.act(person, u"equipmentAdded"_s);
    requireFreeName(loadEquipment(act.database()), item, 0);
    const ItemId id = storeItem(act);
    storeItemVersion(act, id, item, {});
    act.note(equipment::titleOf(item));
    act.commit();
    return id;
}

void EquipmentBook::change(ItemId id, const equipment::Item &item, const QString &person,
                           const QString &reason)
{
    requireItem(item);
    requireReason(reason, Sentence::tr("The item stays as it was, since a change needs a reason: say why."));
    Act act = m_open.act(person, u"equipmentChanged"_s);
    const HeldItem before = itemOf(act, id);
    if (before.item == item)
        throw refused(Sentence::tr("The item %1 reads like this already; nothing was stored.")
                          .arg(assay::quoted(item.name)));
    if (before.item.kind != item.kind)
        throw refused(Sentence::tr("The item %1 stays a %2; add another one for what is not.")
                          .arg(assay::quoted(item.name), equipment::kindName(before.item.kind)));
    requireFreeName(loadEquipment(act.database()), item, id.value);
    storeItemVersion(act, id, item, reason);
    act.note(equipment::titleOf(item));
    act.commit();
}

CheckId EquipmentBook::addCheck(ItemId id, const equipment::Check &check, const QString &person)
{
    Act act = m_open.act(person, u"equipmentChecked"_s);
    const HeldItem held = itemOf(act, id);
    if (!held.item.inUse)
        throw refused(Sentence::tr("The check was not stored: %1 is out of use; take it into use first.")
                          .arg(assay::quoted(held.item.name)));
    requireUsable(equipment::problemsOf(held.item, check, timeOf(act.at()).date()),
                  Sentence::tr("The check was not stored: %1 %2."));
    const auto outcome = equipment::outcomeOf(held.item, check);
    const CheckId stored = storeCheck(act, id, check, outcome && outcome->passed);
    act.note(Sentence::tr("%1: %2, %3")
                 .arg(equipment::titleOf(held.item), equipment::aspectName(check.aspect),
                      outcome && outcome->passed ? Sentence::tr("passed") : Sentence::tr("failed")));
    act.commit();
    return stored;
}

void EquipmentBook::withdrawCheck(CheckId id, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("The check counts as before, since taking it back needs a reason: "
                                       "say why."));
    Act act = m_open.act(person, u"equipmentCheckWithdrawn"_s);
    for (const HeldItem &held : loadEquipment(act.database())) {
        const auto check = std::ranges::find(held.checks, id.value, &equipment::HeldCheck::id);
        if (check == held.checks.end())
            continue;
        if (check->withdrawn)
            throw refused(
                Sentence::tr("The check %1 was taken back already; nothing was stored.").arg(id.value));
        storeCheckWithdrawal(act, id, reason);
        act.note(Sentence::tr("%1: %2").arg(equipment::titleOf(held.item), equipment::checkName(*check)));
        act.commit();
        return;
    }
    throw refused(
        Sentence::tr(
            "The notebook holds no check number %1; nothing was stored: choose one from the item's list.")
            .arg(id.value));
}

std::vector<HeldItem> EquipmentBook::all() const
{
    const Transaction snapshot(*m_open.database, Transaction::Kind::Read);
    return loadEquipment(*m_open.database);
}

} // namespace plateau::notebook
