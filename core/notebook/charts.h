// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/series.h"
#include "core/charts/settings.h"
#include "core/notebook/ids.h"

#include <map>
#include <vector>

namespace plateau::notebook {

class OpenNotebook;

/// Something that a chart can be of, and how many decided values there are of it.
struct ChartOffer {
    charts::Subject subject;
    QString methodName;
    int values = 0;
    /// The name is a substance's, and the values are of so many standards made of it; 0: what is named
    /// itself.
    int preparations = 0;
};

/// The settings of a chart as they were saved last.
struct StoredChartSettings {
    charts::Settings settings;
    QString person;
    QDateTime at;
    /// How often they were saved.
    int version = 1;
};

/// One value of a series, as it is left out. name: as charts::Point has it.
struct ChartValue {
    charts::Quantity quantity = charts::Quantity::StandardRecovery;
    RunId run;
    QString measurand;
    QString name;
};

/// What is watched over the runs of a notebook. Values come from the index of the search (of the decisions
/// that stand), so that ten thousand runs are read at once; nothing is evaluated anew. Runs on the bench have
/// no value yet.
class Charts
{
public:
    explicit Charts(OpenNotebook &open)
        : m_open(open)
    {
    }

    /// Of that quantity, each standard, control, sample or product by itself; in the order of methods,
    /// measurands and names. Of recoveries the substances that standards of the book were made of come ahead
    /// of the standards: one that is made anew every day has no chart by itself.
    std::vector<ChartOffer> offers(charts::Quantity quantity) const;
    /// Oldest first, what was rejected too, and with what was left out. Values that are in another unit than
    /// the newest are not among them.
    /// componentNames: of components by their id, for the lots; one that is not there goes by its id.
    charts::Series series(const charts::Subject &subject,
                          const std::map<QString, QString> &componentNames = {}) const;

    /// Nothing where nobody saved any.
    std::optional<StoredChartSettings> settings(const charts::Subject &subject) const;
    /// False where exactly these were saved last. Refused where problemsOf finds an error, or the first run
    /// is none.
    bool saveSettings(const charts::Subject &subject, const charts::Settings &settings,
                      const QString &person);

    /// From now on it counts for no limit and no rule, in whatever chart it stands. Refused without a reason,
    /// and where it is left out already.
    void leaveOut(const ChartValue &value, const QString &person, const QString &reason);
    /// Refused without a reason, and where it is not left out.
    void takeBack(const ChartValue &value, const QString &person, const QString &reason);

private:
    OpenNotebook &m_open;
};

} // namespace plateau::notebook
