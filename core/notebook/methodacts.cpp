// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/methodacts.h"

#include "core/notebook/methodstore.h"
#include "core/notebook/words.h"

#include <algorithm>
#include <tuple>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

std::map<qint64, int> runsByMethod(const Database &database)
{
    Statement query(database, u"SELECT method, count(*) FROM run GROUP BY method"_s);
    query.run();
    std::map<qint64, int> runs;
    while (query.next())
        runs[query.integer(0)] = int(query.integer(1));
    return runs;
}

std::map<qint64, std::vector<MethodAct>> actsByMethod(const Database &database)
{
    Statement query(database, u"SELECT method, kind, person, at_utc, at_offset_min, note, file_name "
                              "FROM method_act ORDER BY id"_s);
    query.run();
    std::map<qint64, std::vector<MethodAct>> acts;
    while (query.next())
        acts[query.integer(0)].push_back(
            {methodActKindOf(query.text(1)), query.text(2), query.time(3), query.text(5), query.text(6)});
    return acts;
}

void placeActs(StoredMethod &stored, std::vector<MethodAct> acts)
{
    stored.acts = std::move(acts);
    for (const MethodAct &act : stored.acts) {
        switch (act.kind) {
        case MethodActKind::Saved:
            stored.origin = MethodOrigin::Saved;
            break;
        case MethodActKind::Imported:
            stored.origin = MethodOrigin::Imported;
            break;
        case MethodActKind::Retired:
            stored.retired = true;
            break;
        case MethodActKind::Reinstated:
            stored.retired = false;
            break;
        }
    }
}

} // namespace

const MethodAct *StoredMethod::arrival() const
{
    const auto found = std::ranges::find_if(acts, [](const MethodAct &act) {
        return act.kind == MethodActKind::Saved || act.kind == MethodActKind::Imported;
    });
    return found == acts.end() ? nullptr : &*found;
}

std::vector<StoredMethod> loadMethods(const Database &database)
{
    const std::map<qint64, int> runs = runsByMethod(database);
    std::map<qint64, std::vector<MethodAct>> acts = actsByMethod(database);
    std::vector<StoredMethod> methods;
    Statement query(database, u"SELECT id, content_hash FROM method ORDER BY id"_s);
    query.run();
    while (query.next()) {
        const qint64 row = query.integer(0);
        StoredMethod stored;
        stored.id = {row};
        stored.method = loadMethod(database, row);
        stored.contentHash = query.text(1);
        placeActs(stored, std::move(acts[row]));
        const auto used = runs.find(row);
        stored.runs = used == runs.end() ? 0 : used->second;
        methods.push_back(std::move(stored));
    }
    std::ranges::stable_sort(methods, {}, [](const StoredMethod &stored) {
        return std::tie(stored.method.id, stored.method.version);
    });
    return methods;
}

void storeMethodAct(Act &act, qint64 methodRow, const NewMethodAct &what)
{
    Statement insert(act.database(), u"INSERT INTO method_act (method, kind, person, at_utc, at_offset_min, "
                                     "note, file_name) VALUES (?, ?, ?, ?, ?, ?, ?)"_s);
    const auto fileName = what.kind == MethodActKind::Imported ? std::optional(what.fileName) : std::nullopt;
    insert.run(methodRow, methodActWord(what.kind), act.person(), act.at(), what.note, fileName);
    act.covers(u"method_act"_s, insert.insertedId());
}

} // namespace plateau::notebook
