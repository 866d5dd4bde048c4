// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/samplenotebook.h"

#include "app/runfile.h"
#include "core/assay/matrix.h"
#include "core/notebook/notebook.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::SampleNotebook)
};

[[noreturn]] void refuse(const QString &file)
{
    throw notebook::Failure(
        notebook::Failure::Kind::Storage,
        Text::tr("The sample data of this installation cannot be used (%1); nothing was made. "
                 "Install the program again.")
            .arg(file));
}

QByteArray resource(const QString &name)
{
    QFile file(u":/sampledata/"_s + name);
    if (!file.open(QIODevice::ReadOnly))
        refuse(name);
    return file.readAll();
}

void addSampleRun(notebook::Notebook &notebook, const QJsonObject &entry)
{
    const QString name = entry.value("file"_L1).toString();
    const auto document = exchange::readRun(resource(name), installedMethods().lookup());
    if (!document.value)
        refuse(name);
    const notebook::RunId id =
        notebook.addRun(document.value->run, document.value->method, entry.value("analyst"_L1).toString());
    const QString decision = entry.value("decision"_L1).toString();
    if (decision.isEmpty())
        return;
    const auto kind =
        decision == "accepted"_L1 ? notebook::DecisionKind::Accepted : notebook::DecisionKind::Rejected;
    notebook.decide(id, kind, entry.value("reviewer"_L1).toString(), entry.value("reason"_L1).toString());
}

void addSampleOnTheShelf(notebook::Notebook &notebook, const QJsonObject &entry, const QString &analyst)
{
    planning::ShelfSample sample;
    sample.id = entry.value("id"_L1).toString();
    sample.product = entry.value("product"_L1).toString();
    sample.receivedFrom = entry.value("from"_L1).toString();
    sample.receivedAt = QDateTime::currentDateTime();
    for (const auto &[word, matrix] : assay::matrixWords()) {
        if (word == entry.value("matrix"_L1).toString())
            sample.matrix = matrix;
    }
    const QJsonObject expected = entry.value("expected"_L1).toObject();
    for (auto each = expected.begin(); each != expected.end(); ++each)
        sample.expected[each.key()] = each.value().toDouble();
    notebook.shelf().registerSample(sample, analyst);
}

/// Days count from the day it is made, so that the sample notebook never is all expired.
void addSampleLot(notebook::Notebook &notebook, const QJsonObject &entry, const QString &analyst)
{
    const QDate today = QDate::currentDate();
    notebook::LotLabel label;
    label.reagent = entry.value("reagent"_L1).toString();
    label.lot = entry.value("lot"_L1).toString();
    label.expires = today.addDays(entry.value("goodFor_days"_L1).toInt());
    if (entry.contains("keepsOpened_days"_L1))
        label.keepsOpened_days = entry.value("keepsOpened_days"_L1).toInt();
    const notebook::LotId lot =
        notebook.lots().receive(label, entry.value("volume_mL"_L1).toDouble(), analyst);
    if (entry.contains("openFor_days"_L1))
        notebook.lots().open(lot, today.addDays(-entry.value("openFor_days"_L1).toInt()), analyst);
}

void addSampleStores(notebook::Notebook &notebook)
{
    const QString name = u"notebook/stores.json"_s;
    const QJsonObject stores = QJsonDocument::fromJson(resource(name)).object();
    if (stores.isEmpty())
        refuse(name);
    const QString analyst = stores.value("analyst"_L1).toString();
    for (const QJsonValue &sample : stores.value("samples"_L1).toArray())
        addSampleOnTheShelf(notebook, sample.toObject(), analyst);
    for (const QJsonValue &lot : stores.value("lots"_L1).toArray())
        addSampleLot(notebook, lot.toObject(), analyst);
}

} // namespace

void buildSampleNotebook(const QString &path)
{
    const QString decisions = u"notebook/decisions.json"_s;
    const QJsonArray runs = QJsonDocument::fromJson(resource(decisions)).object().value("runs"_L1).toArray();
    if (runs.isEmpty())
        refuse(decisions);
    auto made = notebook::Notebook::create(path);
    try {
        for (const QJsonValue &run : runs)
            addSampleRun(*made, run.toObject());
        addSampleStores(*made);
    } catch (...) {
        made.reset(); // closed first: a file that is open is not removed
        QFile::remove(path);
        throw;
    }
}

QString currentAccount()
{
    const QString account = qEnvironmentVariable("USER", qEnvironmentVariable("LOGNAME"));
    return account.isEmpty() ? Text::tr("unknown account") : account;
}

} // namespace plateau::app
