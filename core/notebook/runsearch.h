// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QDate>
#include <QStringList>

namespace plateau::notebook {

class OpenNotebook;

/// Accepted or not, a result whose value lies from least to most, in the unit it was found in.
struct ValueRange {
    QString measurand;
    /// "g/L" or "g/100 g".
    QString unit;
    std::optional<double> least{};
    std::optional<double> most{};
    bool operator==(const ValueRange &) const = default;
};

/// Which runs. What is empty or absent asks for nothing; a run has to meet all the rest. Texts are words in
/// any order, without regard to case and accents, each from its beginning on ("per" finds "Perry"); what is
/// neither letter nor digit parts words. A text without any word asks for nothing (hasWords).
struct RunFilter {
    /// Anywhere: title, samples, products, method, persons, lots, standards, the state, and notes, which are
    /// the reasons of decisions, reopenings and corrections and what was noted at the bench.
    QString text{};
    QString sample{};
    QString product{};
    QString method{};
    /// Somebody who did something on the run.
    QString person{};
    /// The number of a lot that was used, as it was at that time.
    QString lot{};
    QString standard{};
    /// Exactly this container.
    std::optional<LotId> container{};
    /// The day the run was started (where it does not say, put into the notebook), on the clock of the wall;
    /// both days belong to it.
    std::optional<QDate> from{};
    std::optional<QDate> to{};
    std::optional<RunState> state{};
    /// The last two are of the decision that stands; a run on the bench has neither results nor flags.
    std::optional<ValueRange> value{};
    /// That check failed.
    std::optional<evaluation::CheckId> flag{};

    bool operator==(const RunFilter &) const = default;
    bool isEmpty() const;
};
/// All there are, in their order.
std::vector<evaluation::CheckId> allChecks();
/// Whether there is anything in the text to look for.
bool hasWords(const QString &text);

enum class RunOrder {
    NewestFirst, ///< as they were put into the notebook
    OldestFirst,
    ByDay,      ///< the latest day first
    ByDecision, ///< the latest decision first, what is on the bench last
    ByTitle,
    ByMethod
};

/// One line of what was found.
struct FoundRun {
    RunSummary summary;
    /// See RunFilter::from.
    QDateTime startedAt;
    /// The checks that failed, each once, in the order of evaluation::CheckId.
    std::vector<evaluation::CheckId> flags;
};

/// Where a page ended; only of use with the same filter and order.
struct PageEnd {
    qint64 run = 0;
    QString key{};
    bool operator==(const PageEnd &) const = default;
};

struct RunPage {
    std::vector<FoundRun> runs;
    /// Absent where nothing follows.
    std::optional<PageEnd> end;
};

struct RunCount {
    int runs = 0;
    /// There are more, they were not counted.
    bool atLeast = false;
};

/// A measurand with a unit that results are in.
struct KnownMeasurand {
    QString measurand;
    QString unit;
    bool operator==(const KnownMeasurand &) const = default;
};

/// The search over all runs of a notebook. Reads an index that every act keeps up to date; a page is read in
/// a time that does not grow with the notebook. Whatever reads throws Failure.
class RunSearch
{
public:
    explicit RunSearch(OpenNotebook &open)
        : m_open(open)
    {
    }

    /// From the beginning, or what follows that end. size: of the page, at least 1.
    RunPage page(const RunFilter &filter, RunOrder order = RunOrder::NewestFirst, int size = 100,
                 const std::optional<PageEnd> &after = {}) const;
    /// Counts up to that many.
    RunCount count(const RunFilter &filter, int upTo = 10'000) const;
    /// Oldest first.
    std::vector<RunId> onBench() const;
    /// Newest first, but for what it holds the same as a page.
    std::vector<FoundRun> of(const std::vector<RunId> &runs) const;

    /// What there is to choose from, each once, in alphabetical order: names of methods, of measurands with
    /// their units, of persons, and of products.
    QStringList methods() const;
    std::vector<KnownMeasurand> measurands() const;
    QStringList persons() const;
    QStringList products() const;

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
