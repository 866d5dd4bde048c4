// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/standing.h"
#include "core/notebook/ids.h"

namespace plateau::notebook {

class OpenNotebook;

/// What is checked in the laboratory, and its checks. Every function that adds something is one act.
class EquipmentBook
{
public:
    explicit EquipmentBook(OpenNotebook &open)
        : m_open(open)
    {
    }

    /// Refused where one of that kind has the name already, in use or not.
    ItemId add(const equipment::Item &item, const QString &person);
    /// Another description in place of the last one, with a reason: a name, other days, out of use. The kind
    /// stays; checks keep the description they were made with.
    void change(ItemId id, const equipment::Item &item, const QString &person, const QString &reason);
    /// Of an item in use, without problems (equipment/protocol.h). Whether it passed follows from its
    /// numbers.
    CheckId addCheck(ItemId id, const equipment::Check &check, const QString &person);
    /// It was keyed wrongly and does not count any more; once.
    void withdrawCheck(CheckId id, const QString &person, const QString &reason);

    /// In the order they came, with their checks.
    std::vector<equipment::HeldItem> all() const;

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
