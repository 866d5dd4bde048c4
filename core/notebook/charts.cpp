// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/charts.h"

#include "core/charts/chartwords.h"
#include "core/notebook/chartseries.h"
#include "core/notebook/chartsettingstore.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/recordnames.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"

#include <map>
#include <utility>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

bool isRun(const Database &database, qint64 run)
{
    Statement query(database, u"SELECT 1 FROM run WHERE id = ?"_s);
    query.run(run);
    return query.next();
}

std::optional<charts::Omission> omissionOf(const Database &database, const ChartValue &value)
{
    Statement query(database,
                    u"SELECT is_left_out, reason, person, at_utc, at_offset_min FROM chart_omission "
                    "WHERE quantity = ? AND measurand = ? AND run = ? AND name = ? ORDER BY id DESC "
                    "LIMIT 1"_s);
    query.run(charts::quantityWord(value.quantity), value.measurand, value.run.value, value.name);
    if (!query.next() || query.integer(0) == 0)
        return std::nullopt;
    return charts::Omission{query.text(1), query.text(2), query.time(3)};
}

/// By run and name; the newest of each.
std::map<std::pair<qint64, QString>, charts::Omission> omissionsOf(const Database &database,
                                                                   const charts::Subject &subject)
{
    Statement query(database, u"SELECT run, name, is_left_out, reason, person, at_utc, at_offset_min FROM "
                              "chart_omission WHERE quantity = ? AND measurand = ? ORDER BY id"_s);
    query.run(charts::quantityWord(subject.quantity), subject.measurand);
    std::map<std::pair<qint64, QString>, charts::Omission> omissions;
    while (query.next()) {
        const std::pair<qint64, QString> key{query.integer(0), query.text(1)};
        if (query.integer(2) != 0)
            omissions[key] = {query.text(3), query.text(4), query.time(5)};
        else
            omissions.erase(key);
    }
    return omissions;
}

void storeOmission(Act &act, const ChartValue &value, bool isLeftOut, const QString &reason)
{
    if (!isRun(act.database(), value.run.value))
        throw refused(Sentence::tr("Nothing was stored: there is no run %1.").arg(value.run.value));
    act.concerns(value.run);
    Statement insert(
        act.database(),
        u"INSERT INTO chart_omission (quantity, run, measurand, name, is_left_out, reason, person, "
        "at_utc, at_offset_min) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)"_s);
    insert.run(charts::quantityWord(value.quantity), value.run.value, value.measurand, value.name,
               int(isLeftOut), reason, act.person(), act.at());
    act.covers(u"chart_omission"_s, insert.insertedId());
    act.note(Sentence::tr("%1, %2 %3: %4")
                 .arg(charts::quantityName(value.quantity),
                      nameOfMeasurand(act.database(), value.run.value, {}, value.measurand), value.name, reason));
    act.commit();
}

} // namespace

std::vector<ChartOffer> Charts::offers(charts::Quantity quantity) const
{
    return loadChartOffers(*m_open.database, quantity);
}

charts::Series Charts::series(const charts::Subject &subject,
                              const std::map<QString, QString> &componentNames) const
{
    charts::Series series = loadChartSeries(*m_open.database, subject, componentNames);
    const auto omissions = omissionsOf(*m_open.database, subject);
    if (omissions.empty())
        return series;
    for (charts::Point &point : series) {
        if (const auto found = omissions.find({point.run->run, point.name}); found != omissions.end())
            point.omission = std::make_shared<charts::Omission>(found->second);
    }
    return series;
}

std::optional<StoredChartSettings> Charts::settings(const charts::Subject &subject) const
{
    return loadChartSettings(*m_open.database, subject);
}

bool Charts::saveSettings(const charts::Subject &subject, const charts::Settings &settings,
                          const QString &person)
{
    const assay::Problems problems = charts::problemsOf(settings);
    if (assay::hasErrors(problems))
        throw refused(
            Sentence::tr("The settings of the chart were not stored: %1").arg(problems.front().message));
    for (const QString &text : {subject.methodId, subject.measurand, subject.name})
        requireStorable(text);
    Act act = m_open.act(person, u"chartSettingsSaved"_s);
    const auto *earlier = std::get_if<charts::EarlierRuns>(&settings.limits);
    if (earlier && earlier->firstRun != 0 && !isRun(act.database(), earlier->firstRun))
        throw refused(Sentence::tr("The settings of the chart were not stored: there is no run %1.")
                          .arg(earlier->firstRun));
    if (const auto last = loadChartSettings(act.database(), subject); last && last->settings == settings)
        return false;
    storeChartSettings(act, subject, settings);
    act.note(Sentence::tr("%1, %2 %3: %4")
                 .arg(charts::quantityName(subject.quantity),
                      nameOfMeasurand(act.database(), 0, subject.methodId, subject.measurand), subject.name,
                      charts::kindName(settings.kind)));
    act.commit();
    return true;
}

void Charts::leaveOut(const ChartValue &value, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("The value was not left out, since that needs a reason: say why."));
    Act act = m_open.act(person, u"chartValueLeftOut"_s);
    if (omissionOf(act.database(), value))
        throw refused(Sentence::tr("Nothing was stored: the value of run %1 is left out already.")
                          .arg(value.run.value));
    storeOmission(act, value, true, reason);
}

void Charts::takeBack(const ChartValue &value, const QString &person, const QString &reason)
{
    requireReason(reason, Sentence::tr("The value was not taken back, since that needs a reason: say why."));
    Act act = m_open.act(person, u"chartValueTakenBack"_s);
    if (!omissionOf(act.database(), value))
        throw refused(
            Sentence::tr("Nothing was stored: the value of run %1 is not left out.").arg(value.run.value));
    storeOmission(act, value, false, reason);
}

} // namespace plateau::notebook
