// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "core/notebook/schema.h"
#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <QSqlDatabase>
#include <QTemporaryDir>
#include <QVariant>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace plateau::notebook {

inline void PrintTo(const Finding &finding, std::ostream *out)
{
    *out << finding.place.toStdString() << ": " << finding.message.toStdString();
}

} // namespace plateau::notebook

namespace plateau::test {

/// A connection of its own with SQLite's own settings, as any other program would open the file.
class RawFile
{
public:
    explicit RawFile(const QString &path);
    ~RawFile();
    RawFile(const RawFile &) = delete;
    RawFile &operator=(const RawFile &) = delete;

    /// True if it worked.
    bool tryExecute(const QString &sql);
    /// Fails the test if it does not work.
    void execute(const QString &sql);
    QVariant value(const QString &sql);
    std::vector<QVariantList> rows(const QString &sql);
    QString error() const { return m_error; }

    /// Takes the triggers away, lets change do what it likes without foreign keys and checks, and puts them
    /// back.
    template <class Change> void behindTheTriggers(Change change)
    {
        execute(QStringLiteral("PRAGMA foreign_keys=OFF"));
        execute(QStringLiteral("PRAGMA ignore_check_constraints=ON"));
        execute(QStringLiteral("BEGIN"));
        const std::vector<QVariantList> triggers = dropTriggers();
        change();
        restore(triggers);
        execute(QStringLiteral("COMMIT"));
    }

private:
    std::vector<QVariantList> dropTriggers();
    void restore(const std::vector<QVariantList> &triggers);

    QString m_name;
    QString m_error;
};

/// The audit entries of a new notebook: one for each step of the schema.
inline int entriesOfANewOne()
{
    return int(notebook::schemaSteps().size());
}

class NotebookTest : public ::testing::Test
{
protected:
    /// A fixed version, account and host, and a clock that goes on a minute with every look at it.
    notebook::Surroundings surroundings();
    QString file(const QString &name = QStringLiteral("notebook.plateau")) const
    {
        return m_folder.filePath(name);
    }
    QStringList filesInFolder() const;
    std::unique_ptr<notebook::Notebook> create();
    std::unique_ptr<notebook::Notebook> reopen(notebook::Access access = notebook::Access::ReadWrite);
    /// A notebook with runs of every kind in it: solids, dilutions, standards, spikes, series, lots,
    /// corrections, an accepted and later reopened run, a rejected one, after acts of every kind on methods.
    void fill(notebook::Notebook &notebook);
    /// An accepted run of which the other takes its derived result, accepted too.
    void fillDerived(notebook::Notebook &notebook);
    void fillMethods(notebook::Notebook &notebook);
    /// Acts of every kind on the shelf, lots, a planned run and its worksheet; with fill, fillDerived
    /// and fillReview every table has rows.
    void fillBench(notebook::Notebook &notebook);
    void fillStores(notebook::Notebook &notebook);
    /// Reagents dissolved, divided, stored and noted; the first lot is a solution in hand.
    void fillLotKeeping(notebook::Notebook &notebook);
    void fillEquipment(notebook::Notebook &notebook);
    void fillStandards(notebook::Notebook &notebook);
    /// The head, the reviewer and the analyst; typed names decide nothing any more.
    void fillPersons(notebook::Notebook &notebook);
    /// Limits, acts of every kind on persons, a signed decision sample by sample, a choice of what is
    /// reported, and the run put back on the bench.
    void fillReview(notebook::Notebook &notebook);
    void fillCharts(notebook::Notebook &notebook, notebook::RunId run);
    /// A run with times of its own, a series, a line from an instrument and a repeat, and a clock that was
    /// set.
    void fillReadAtTheBench(notebook::Notebook &notebook);
    /// The same as a file that is not open; made once for all tests.
    void makeFilledFile();
    QByteArray bytesOf(const QString &path) const;
    void write(const QString &path, const QByteArray &bytes) const;

    const notebook::Proof theHead{QStringLiteral("Ines Kaddour"), QStringLiteral("four apples in a tree")};
    const notebook::Proof theReviewer{QStringLiteral("Tomas Brandl"), QStringLiteral("rack of blue tubes")};
    const notebook::Proof theAnalyst{QStringLiteral("Mina Okoro"), QStringLiteral("pears before noon")};

    QTemporaryDir m_folder;
    QString m_version = QStringLiteral("9.8.7");
    QDateTime m_now{QDate(2026, 3, 2), QTime(9, 10), Qt::OffsetFromUTC, 3600};
};

/// A new notebook that is open.
class OpenNotebookTest : public NotebookTest
{
protected:
    void SetUp() override { m_book = create(); }
    /// In one sentence that has these words in it, and nothing was stored.
    void expectRefused(const std::function<void()> &action, QLatin1StringView words);

    const QString person = QStringLiteral("Ines Kaddour");
    std::unique_ptr<notebook::Notebook> m_book;
};

/// risingMethod with another volume, so that it has its id and version and other content.
assay::Method otherRisingMethod();

/// The failure an action ends in; fails the test if it ends in none.
notebook::Failure failureOf(const std::function<void()> &action);
/// One sentence: it starts with a capital, ends with a full stop, and names no code.
void expectOneSentence(const notebook::Failure &failure);

/// Methods of "total" and "free"; bound = total - free is derived by the former.
assay::Method totalMethod();
assay::Method freeMethod();
/// plainRun with net signals smaller by 0.2, for freeMethod.
run::Run freeRun();
/// plainRun for totalMethod.
run::Run totalRun();
/// plainRun with one tube more and no readings.
run::Run unreadRun();
/// plainRun, and duplicates of a sample T that pass.
run::Run twoSampleRun();
evaluation::Advice dilution(const std::vector<run::DilutionStep> &steps);
evaluation::Advice moreSample(double sampleVolume_mL);
std::vector<evaluation::Specification> limits();
/// Every field of a run in use.
run::Run fullRun();
/// What was planned of it, every field in use but the run that it repeats.
planning::PlanRecord fullPlan();

/// The connection a notebook opened last.
QSqlDatabase notebookConnection();

} // namespace plateau::test
