// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "ui/charts/panelpicture.h"

#include <functional>
#include <map>
#include <optional>
#include <utility>

namespace plateau::ui {

/// A chart's way to the notebook; whatever talks to it throws notebook::Failure.
class ChartSource
{
public:
    /// notebook outlives it. person: who is at the bench now; empty: nobody has said.
    ChartSource(notebook::Notebook &notebook, std::function<QString()> person);

    QString person() const { return m_person(); }
    const std::vector<notebook::ChartOffer> &offers(charts::Quantity quantity);
    /// Lots by the name of their reagent, where the method is known.
    charts::SharedSeries series(const charts::Subject &subject);
    /// Settings that hold for a chart.
    struct KeptSettings {
        notebook::StoredChartSettings stored;
        /// Saved for all materials together, and nothing for this one.
        bool isOfAll = false;
    };
    /// Nothing where nobody saved any.
    std::optional<KeptSettings> kept(const charts::Subject &subject) const;
    /// As kept, with as many values as limits need; else what is usual.
    charts::Settings settings(const charts::Subject &subject) const;
    bool save(const charts::Subject &subject, const charts::Settings &settings);
    void leaveOut(const notebook::ChartValue &value, const QString &reason);
    void takeBack(const notebook::ChartValue &value, const QString &reason);

    /// As the newest method that has it names it.
    QString measurandName(const QString &methodId, const QString &measurand) const;
    /// As the newest version of the method states it.
    std::optional<double> statedLossPerHour(const QString &methodId) const;

    /// A limit of the product that a trend is of, in the unit of the series.
    struct ProductLimit {
        std::optional<double> lower;
        std::optional<double> upper;
        /// Only a threshold for the label: nothing is outside of it.
        bool isThreshold = false;
        QString text;
    };
    std::vector<ProductLimit> productLimits(const charts::Subject &subject, const QString &unit) const;

    /// Reads the methods anew; they are kept, since a chart asks for their names at every choice.
    void refresh();

private:
    const assay::Method *method(const QString &id) const;
    std::map<QString, QString> componentNames(const QString &methodId) const;
    /// What was read of the notebook holds until something is done to it: of a large one it takes half a second.
    void forgetOld();

    notebook::Notebook &m_notebook;
    std::function<QString()> m_person;
    std::vector<assay::Method> m_methods;
    /// What the notebook's trail ended with when these were read.
    QString m_head;
    std::map<charts::Quantity, std::vector<notebook::ChartOffer>> m_offers;
    std::optional<std::pair<charts::Subject, charts::SharedSeries>> m_series;
};

} // namespace plateau::ui
