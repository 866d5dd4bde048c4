// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/samplenotebook.h"

#include "app/runfile.h"
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
