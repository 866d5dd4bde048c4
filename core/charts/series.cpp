// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/series.h"

#include "core/assay/listed.h"
#include "core/charts/wording.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

namespace plateau::charts {

using namespace Qt::StringLiterals;

namespace {

std::map<QString, QStringList> byComponent(const RunFacts &run)
{
    std::map<QString, QStringList> lots;
    for (const LotOf &lot : run.lots)
        lots[lot.component].append(lot.lot);
    for (auto &[component, names] : lots)
        names.sort();
    return lots;
}

/// Remembers what was used last, so that a run that does not say hides no change.
class LastUsed
{
public:
    QStringList changesWith(const RunFacts &run)
    {
        QStringList texts;
        for (const auto &[component, lots] : byComponent(run)) {
            QStringList &last = m_lots[component];
            if (!last.isEmpty() && last != lots)
                texts << Wording::tr("%1: lot %2 after %3")
                             .arg(component, lots.join(u", "_s), last.join(u", "_s));
            last = lots;
        }
        return texts;
    }

    QStringList changesWith(const std::set<QString> &names)
    {
        QStringList texts;
        if (!m_names.empty() && m_names != names) {
            const QStringList now(names.begin(), names.end());
            const QStringList before(m_names.begin(), m_names.end());
            texts << Wording::tr("%1 after %2").arg(now.join(u", "_s), before.join(u", "_s));
        }
        m_names = names;
        return texts;
    }

private:
    std::map<QString, QStringList> m_lots;
    std::set<QString> m_names;
};

} // namespace

bool passes(const Point &point, const Filter &filter)
{
    const RunFacts &run = *point.run;
    const auto isThatLot = [&](const LotOf &lot) {
        return (filter.component.isEmpty() || lot.component == filter.component) && lot.lot == filter.lot;
    };
    const QDate day = run.at.date();
    return (filter.withRejected || point.isAccepted) &&
           (filter.lot.isEmpty() || std::ranges::any_of(run.lots, isThatLot)) &&
           (filter.person.isEmpty() || run.persons.contains(filter.person)) &&
           (filter.photometer.isEmpty() || run.photometer == filter.photometer) &&
           (!filter.from || day >= *filter.from) && (!filter.to || day <= *filter.to);
}

SharedSeries filtered(const SharedSeries &series, const Filter &filter)
{
    if (std::ranges::all_of(series, [&](const Point &point) { return passes(point, filter); }))
        return series;
    Series kept;
    std::ranges::copy_if(series, std::back_inserter(kept),
                         [&](const Point &point) { return passes(point, filter); });
    return kept;
}

std::vector<Change> changesIn(const Series &series, bool withNames)
{
    std::vector<Change> changes;
    LastUsed last;
    for (std::size_t i = 0; i < series.size();) {
        std::set<QString> names;
        std::size_t next = i;
        for (; next < series.size() && series[next].run->run == series[i].run->run; ++next) {
            if (withNames && !series[next].name.isEmpty())
                names.insert(series[next].name);
        }
        const QStringList texts = last.changesWith(*series[i].run) + last.changesWith(names);
        if (!texts.isEmpty())
            changes.push_back({i, assay::listed(texts)});
        i = next;
    }
    return changes;
}

} // namespace plateau::charts
