// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "sampledata/maker/chance.h"

#include <map>

namespace plateau::sampledata {

/// A container that is open.
struct OpenLot {
    notebook::LotId id;
    notebook::LotLabel label;
    QDate opened;
    double left_mL = 0;
    /// By the run that it was handed out for last.
    double taken_mL = 0;
    /// Taken by runs that came in as files, and not yet noted in the ledger.
    double toNote_mL = 0;
    notebook::RunId firstToNote{};
    notebook::RunId lastToNote{};
    /// Of what reacts: 1 of a good one.
    double activity = 1;
    double fade_per_day = 0;
    double activityOn(const QDate &day) const;
    /// By label and opening.
    QDate lastGood() const;
};

/// The reagents of the house, container after container: received in time, opened when the one before is used
/// up or too old, and what was left of it thrown away.
class Cupboard
{
public:
    Cupboard(notebook::Notebook &notebook, quint64 seed)
        : m_notebook(notebook)
        , m_chance(seed, 2)
    {
    }

    /// A container that has this much, opened if need be; it has so much less then.
    OpenLot &take(const assay::Component &reagent, double volume_mL, const QDate &day, const QString &person);
    /// The next container of that reagent is a weak one; what is open of it is thrown away.
    void spoilNext(const QString &reagent) { m_spoilt = reagent; }
    /// Was the container one of those?
    bool isWeak(const QString &reagent) const;
    /// A run that came in as a file took from these containers.
    void noteLater(const std::map<QString, OpenLot> &taken, notebook::RunId run);
    void discard(const QString &reagent, const QString &person, const QString &reason);
    /// Takings of runs that came in as files go into the ledger.
    void noteAll(const QString &person);

private:
    struct Shelf {
        std::optional<OpenLot> open;
        std::optional<OpenLot> sealed;
        int received = 0;
        /// From 0, in the order in which the reagents came.
        int number = 0;
    };
    OpenLot receive(Shelf &shelf, const assay::Component &reagent, const QDate &day, const QString &person);
    void note(OpenLot &lot, const QString &person);

    notebook::Notebook &m_notebook;
    Chance m_chance;
    /// By name of the reagent.
    std::map<QString, Shelf> m_shelves;
    QString m_spoilt;
};

} // namespace plateau::sampledata
