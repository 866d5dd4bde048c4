// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/evaluation.h"
#include "core/notebook/ids.h"
#include "core/planning/shelf.h"

#include <QDateTime>

#include <optional>
#include <map>
#include <vector>

namespace plateau::notebook {

class OpenNotebook;

/// How a decided run says that a sample is to be repeated.
struct AdvisedRepeat {
    RunId run;
    /// Id of its method.
    QString method;
    struct Of {
        QString measurand;
        evaluation::Advice advice;
        bool operator==(const Of &) const = default;
    };
    /// Of each measurand that says how, or what the person who decided said of all (measurand is empty then);
    /// empty where the run only says that.
    std::vector<Of> advice;
    /// Of the person who decided; may be empty.
    QString reason{};
    /// What that run found of each measurand, in the sample as received (g/L, of a solid g/100 g): the best that is
    /// known before the repeat. Where the reagent was used up, the least it can be.
    std::map<QString, double> found{};
    /// How that run had it: what is not advised otherwise stays so.
    std::vector<run::DilutionStep> dilution{};
    std::optional<double> sampleVolume_mL{};
    /// What its evaluation advises the repeat for, each once.
    std::vector<evaluation::CheckId> failed{};
};

/// A sample that is to be run.
struct WaitingSample {
    planning::ShelfSample sample;
    /// Absent where nobody registered it, or where a run held it since.
    std::optional<ShelfId> shelf;
    std::optional<AdvisedRepeat> repeat;
};

/// What an accepted run found.
struct PastResult {
    RunId run;
    QDateTime decidedAt;
    evaluation::Result result;
};

/// The samples of a notebook before and after their runs. Every function that adds something is one act, as
/// Pipetting's are.
///
/// A registration is over when a run that came after it holds the sample by its id, unless that run, or
/// the sample in it, was rejected; the id may then be registered anew.
class Shelf
{
public:
    explicit Shelf(OpenNotebook &open)
        : m_open(open)
    {
    }

    ShelfId registerSample(const planning::ShelfSample &sample, const QString &person);
    /// All or none. Refused: an id that waits on the shelf already.
    std::vector<ShelfId> registerSamples(const std::vector<planning::ShelfSample> &samples,
                                         const QString &person);
    /// What is told of it instead. Another id only while no run holds it.
    void change(ShelfId id, const planning::ShelfSample &sample, const QString &person);
    /// It will not be run, with a reason.
    void withdraw(ShelfId id, const QString &person, const QString &reason);
    /// The repeat that this run advises of the sample will not be made, with a reason.
    void waiveRepeat(RunId run, const QString &sample, const QString &person, const QString &reason);

    /// As last told, withdrawn or not. Throws Failure(Refused) if there is no such registration.
    planning::ShelfSample sample(ShelfId id) const;
    /// What was told of the registration that this run took, by the sample's id: the latest that was there before the run
    /// and that no earlier run had taken. Nothing where there is none: another sample of that id is not this one.
    std::optional<planning::ShelfSample> takenBy(RunId run, const QString &sample) const;
    /// Repeats that decided runs advise, oldest first, then the registered samples in the order they were received
    /// (those of no known time behind them), of one time in the order they were registered. A repeat is over when
    /// a later run by a method of that id holds the sample and neither was rejected, or when a repeat that was
    /// made in the accepted run itself is reportable.
    std::vector<WaitingSample> waiting() const;
    /// The newest of accepted runs on samples of that product, newest first; without those that were rejected
    /// or to be repeated.
    std::vector<PastResult> lastResults(const QString &product, const QString &measurand,
                                        int most = 10) const;

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
