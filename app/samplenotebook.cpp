// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/samplenotebook.h"

#include "app/runfile.h"
#include "core/assay/matrix.h"
#include "core/exchange/moment.h"
#include "core/exchange/readers.h"
#include "core/exchange/shippedtexts.h"
#include "core/notebook/notebook.h"
#include "core/planning/uncertaintyowners.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <map>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct SampleNotebookWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::SampleNotebook)
};

/// From the start of a shipped run to its readings in the notebook.
constexpr int writtenUpAfter_s = 6000;

[[noreturn]] void refuse(const QString &file)
{
    throw notebook::Failure(notebook::Failure::Kind::Storage,
                            SampleNotebookWords::tr("The sample data of this installation cannot be used "
                                                    "(%1); nothing was made. Reinstall the program.")
                                .arg(file));
}

QByteArray resource(const QString &name)
{
    QFile file(u":/sampledata/"_s + name);
    if (!file.open(QIODevice::ReadOnly))
        refuse(name);
    return file.readAll();
}

QJsonObject objectIn(const QString &name)
{
    const QJsonObject object = QJsonDocument::fromJson(resource(name)).object();
    if (object.isEmpty())
        refuse(name);
    return object;
}

planning::ShelfSample describedIn(const QJsonObject &entry)
{
    planning::ShelfSample sample;
    sample.id = entry.value("id"_L1).toString();
    sample.product = entry.value("product"_L1).toString();
    sample.receivedFrom = entry.value("from"_L1).toString();
    for (const auto &[word, matrix] : assay::matrixWords()) {
        if (word == entry.value("matrix"_L1).toString())
            sample.matrix = matrix;
    }
    return sample;
}

/// What is known of every sample beyond its runs, by name.
std::map<QString, planning::ShelfSample> sampleItems()
{
    std::map<QString, planning::ShelfSample> items;
    for (const QJsonValue &value : objectIn(u"notebook/items.json"_s).value("items"_L1).toArray()) {
        const QJsonObject entry = value.toObject();
        planning::ShelfSample item = describedIn(entry);
        item.receivedAt = exchange::parseMoment(entry.value("received"_L1).toString());
        items[item.id] = item;
    }
    return items;
}

/// As if the run had been planned here: a report tells what was tested.
planning::PlanRecord planOf(const run::Run &run, const std::map<QString, planning::ShelfSample> &items)
{
    planning::PlanRecord plan;
    for (const run::Sample &sample : run.samples) {
        const auto item = items.find(sample.id);
        if (item == items.end())
            continue;
        planning::PlannedSample planned;
        planned.sample = item->second;
        planned.sample.form = sample.form;
        plan.samples.push_back(planned);
    }
    return plan;
}

void addSampleLaboratory(notebook::Notebook &notebook, const QString &head)
{
    const sampledata::House house = sampleHouse();
    notebook.saveLaboratory(house.laboratory, head);
    notebook.saveSpecifications(house.limits, head, SampleNotebookWords::tr("the limits of the house"));
}

/// A shipped run as sampledata/notebook/decisions.json lists it.
struct ShippedRun {
    exchange::RunDocument document;
    QJsonObject entry;
    bool isDecided() const { return !entry.value("decision"_L1).toString().isEmpty(); }
};

std::vector<ShippedRun> shippedRuns(const QJsonObject &decisions)
{
    std::vector<ShippedRun> runs;
    for (const QJsonValue &run : decisions.value("runs"_L1).toArray()) {
        const QJsonObject entry = run.toObject();
        const QString name = entry.value("file"_L1).toString();
        const auto document = exchange::readRun(resource(name), installedMethods().lookup());
        if (!document.value)
            refuse(name);
        runs.push_back({*document.value, entry});
    }
    return runs;
}

/// What stands on the bench was begun half an hour ago, with what was made for it before.
ShippedRun begunToday(ShippedRun shipped, const QDateTime &now)
{
    constexpr qint64 ago_s = 30 * 60;
    run::Run &run = shipped.document.run;
    const qint64 later_s = run.startedAt->secsTo(now) - ago_s;
    const auto shift = [&](std::optional<QDateTime> &moment) {
        if (moment)
            moment = moment->addSecs(later_s).toOffsetFromUtc(now.offsetFromUtc());
    };
    shift(run.startedAt);
    for (run::Standard &standard : run.standards) {
        shift(standard.preparedAt);
        shift(standard.usedAt);
    }
    return shipped;
}

/// withOwners: the plan keeps whose the numbers of its budget are, as if the laboratory's lists had been
/// asked. The record of a run that came in a file says that nobody is known.
void addSampleRun(notebook::Notebook &notebook, const ShippedRun &shipped,
                  const std::map<QString, planning::ShelfSample> &items, bool withOwners)
{
    const exchange::RunDocument &document = shipped.document;
    const QJsonObject &entry = shipped.entry;
    planning::PlanRecord plan = planOf(document.run, items);
    if (withOwners && document.run.uncertainty)
        plan.owners = planning::ownersFor(document.method, notebook.laboratory(), document.run);
    const notebook::RunId id =
        notebook.addRun(document.run, document.method, entry.value("analyst"_L1).toString(), plan);
    if (!shipped.isDecided())
        return;
    const auto kind = entry.value("decision"_L1).toString() == "accepted"_L1
                          ? notebook::DecisionKind::Accepted
                          : notebook::DecisionKind::Rejected;
    notebook.decide(id, kind, entry.value("reviewer"_L1).toString(), entry.value("reason"_L1).toString());
}

/// Its samples were registered the same morning: those of these names that were tested in March are others.
void addRunOfToday(notebook::Notebook &notebook, const ShippedRun &shipped,
                   std::map<QString, planning::ShelfSample> items)
{
    constexpr qint64 before_s = 40 * 60;
    const run::Run &run = shipped.document.run;
    for (const run::Sample &sample : run.samples) {
        const auto item = items.find(sample.id);
        if (item == items.end())
            continue;
        item->second.form = sample.form;
        item->second.receivedAt = run.startedAt->addSecs(-before_s);
        notebook.shelf().registerSample(item->second, shipped.entry.value("analyst"_L1).toString());
    }
    addSampleRun(notebook, shipped, items, true);
}

void addSampleOnTheShelf(notebook::Notebook &notebook, const QJsonObject &entry, const QString &analyst,
                         const QDateTime &now)
{
    planning::ShelfSample sample = describedIn(entry);
    sample.receivedAt = now;
    const QJsonObject expected = entry.value("expected"_L1).toObject();
    for (auto each = expected.begin(); each != expected.end(); ++each)
        sample.expected[each.key()] = each.value().toDouble();
    notebook.shelf().registerSample(sample, analyst);
}

planning::StoragePlace placeIn(const QJsonObject &entry)
{
    planning::StoragePlace place{entry.value("place"_L1).toString()};
    if (entry.contains("lowest_C"_L1))
        place.lowest_C = entry.value("lowest_C"_L1).toDouble();
    if (entry.contains("highest_C"_L1))
        place.highest_C = entry.value("highest_C"_L1).toDouble();
    return place;
}

/// In so much water, and then into aliquots where the entry has some.
void dissolveSampleLot(notebook::Notebook &notebook, notebook::LotId lot, const QJsonObject &entry,
                       const QString &analyst, QDate today)
{
    const QDate day = today.addDays(-entry.value("dissolvedFor_days"_L1).toInt());
    notebook::LotDissolving how{
        entry.value("volume_mL"_L1).toDouble(), entry.value("dissolvedIn"_L1).toString(), {}, day};
    how.keeps_days = entry.value("keepsDissolved_days"_L1).toInt();
    notebook.lots().dissolve(lot, how, analyst);
    const QJsonObject aliquots = entry.value("aliquots"_L1).toObject();
    if (aliquots.isEmpty())
        return;
    notebook::LotDivision division{
        aliquots.value("number"_L1).toInt(), aliquots.value("volume_mL"_L1).toDouble(), day,
        aliquots.value("keeps_days"_L1).toInt(), aliquots.value("keepsThawed_days"_L1).toInt()};
    division.place = placeIn(aliquots);
    notebook.lots().divide(lot, division, analyst);
}

/// Days count from the day it is made, so that the sample notebook never is all expired.
notebook::LotId receiveSampleLot(notebook::Notebook &notebook, const QJsonObject &entry, const QString &analyst, QDate today)
{
    notebook::LotLabel label;
    label.reagent = exchange::inWindowLanguage(entry.value("reagent"_L1).toString());
    label.lot = entry.value("lot"_L1).toString();
    label.expires = today.addDays(entry.value("goodFor_days"_L1).toInt());
    if (entry.contains("keepsOpened_days"_L1))
        label.keepsOpened_days = entry.value("keepsOpened_days"_L1).toInt();
    if (entry.contains("keepsDissolved_days"_L1))
        label.keepsDissolved_days = entry.value("keepsDissolved_days"_L1).toInt();
    const bool dry = entry.contains("dry_mg"_L1);
    const notebook::LotId lot =
        dry ? notebook.lots().receiveDry(label, entry.value("dry_mg"_L1).toDouble(), analyst)
            : notebook.lots().receive(label, entry.value("volume_mL"_L1).toDouble(), analyst);
    if (entry.contains("place"_L1))
        notebook.lots().store(lot, placeIn(entry), analyst, {});
    return lot;
}

/// Opens it, or dissolves it, where the entry says so.
void openSampleLot(notebook::Notebook &notebook, notebook::LotId lot, const QJsonObject &entry, const QString &analyst,
                   QDate today)
{
    if (entry.contains("openFor_days"_L1))
        notebook.lots().open(lot, today.addDays(-entry.value("openFor_days"_L1).toInt()), analyst);
    if (entry.contains("dry_mg"_L1) && entry.contains("volume_mL"_L1))
        dissolveSampleLot(notebook, lot, entry, analyst, today);
}

/// What stands on the shelves and in the cold room: lots come in first, since some are opened days before the day it is made.
class SampleStores
{
public:
    SampleStores()
        : m_stores(objectIn(u"notebook/stores.json"_s))
        , m_analyst(m_stores.value("analyst"_L1).toString())
    {
    }
    void receiveLots(notebook::Notebook &notebook, QDate today)
    {
        for (const QJsonValue &lot : m_stores.value("lots"_L1).toArray())
            m_received.push_back(receiveSampleLot(notebook, lot.toObject(), m_analyst, today));
    }
    void putInUse(notebook::Notebook &notebook, const QDateTime &now) const
    {
        for (const QJsonValue &sample : m_stores.value("samples"_L1).toArray())
            addSampleOnTheShelf(notebook, sample.toObject(), m_analyst, now);
        const QJsonArray lots = m_stores.value("lots"_L1).toArray();
        for (std::size_t i = 0; i < m_received.size(); ++i)
            openSampleLot(notebook, m_received[i], lots[static_cast<qsizetype>(i)].toObject(), m_analyst, now.date());
    }

private:
    QJsonObject m_stores;
    QString m_analyst;
    std::vector<notebook::LotId> m_received;
};

/// As much as makes charts worth looking at, and is made while somebody waits for the window.
sampledata::WantedHistory demoHistory()
{
    sampledata::WantedHistory wanted;
    wanted.runs = 80;
    wanted.seed = 20;
    wanted.workedAtBench = 2;
    wanted.signedDecisions = 2;
    wanted.lastOnBench = false;
    return wanted;
}

} // namespace

sampledata::House sampleHouse()
{
    const QString laboratory = u"notebook/laboratory.json"_s;
    const auto read = exchange::readLaboratory(resource(laboratory));
    if (!read.value)
        refuse(laboratory);
    const QString limits = u"notebook/limits.json"_s;
    const auto specifications = exchange::readSpecifications(resource(limits));
    if (!specifications.value)
        refuse(limits);
    return {*read.value, *specifications.value, installedMethods().lookup()};
}

void buildSampleNotebook(const QString &path)
{
    const QJsonObject decisions = objectIn(u"notebook/decisions.json"_s);
    const std::map<QString, planning::ShelfSample> items = sampleItems();
    auto made = notebook::Notebook::create(path);
    try {
        addSampleLaboratory(*made, decisions.value("head"_L1).toString());
        for (const ShippedRun &run : shippedRuns(decisions))
            addSampleRun(*made, run, items, false);
        const QDateTime now = QDateTime::currentDateTime();
        SampleStores stores;
        stores.receiveLots(*made, now.date());
        stores.putInUse(*made, now);
    } catch (...) {
        made.reset(); // closed first: a file that is open is not removed
        QFile::remove(path);
        throw;
    }
}

void buildDemoNotebook(const QString &path, const QDateTime &today)
{
    const QJsonObject decisions = objectIn(u"notebook/decisions.json"_s);
    const std::map<QString, planning::ShelfSample> items = sampleItems();
    const std::vector<ShippedRun> shipped = shippedRuns(decisions);

    sampledata::WantedHistory wanted = demoHistory();
    wanted.until = today.date().addDays(-1);
    wanted.offset_s = today.offsetFromUtc();
    QDateTime now = *shipped.front().document.run.startedAt;
    notebook::Surroundings around = notebook::Surroundings::ofThisProgram();
    around.passphraseWork = notebook::PassphraseWork::Least;
    // Of an invented laboratory: nobody at this machine did any of it.
    around.account = u"bench"_s;
    around.host = u"laboratory"_s;
    around.now = [&now] { return now; };
    around.boot = {};
    notebook::Notebook::createFilled(path, around, [&](notebook::Notebook &made) {
        addSampleLaboratory(made, decisions.value("head"_L1).toString());
        for (const ShippedRun &run : shipped) {
            now = std::max(now, run.document.run.startedAt->addSecs(writtenUpAfter_s));
            if (run.isDecided())
                addSampleRun(made, run, items, true);
        }
        SampleStores stores;
        stores.receiveLots(made, today.date());
        makeHistory(made, now, sampleHouse(), wanted);
        now = std::max(now, today);
        for (const ShippedRun &run : shipped) {
            if (!run.isDecided())
                addRunOfToday(made, begunToday(run, today), items);
        }
        stores.putInUse(made, today);
    });
}

QString currentAccount()
{
    const QString account = qEnvironmentVariable("USER", qEnvironmentVariable("LOGNAME"));
    return account.isEmpty() ? SampleNotebookWords::tr("unknown account") : account;
}

} // namespace plateau::app
