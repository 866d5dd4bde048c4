// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QList>
#include <QString>
#include <QStringList>

#include <memory>
#include <optional>
#include <vector>

namespace plateau::charts {

/// The lot of a component that a run used.
struct LotOf {
    QString component;
    QString lot;
    bool operator==(const LotOf &) const = default;
    friend size_t qHash(const LotOf &lot, size_t seed = 0) { return qHashMulti(seed, lot.component, lot.lot); }
};

/// What is the same for all values of one run.
struct RunFacts {
    /// The notebook's number of it.
    qint64 run = 0;
    /// In UTF-8, which takes half the room: there may be a hundred thousand of them.
    QByteArray titleUtf8{};
    QString title() const { return QString::fromUtf8(titleUtf8); }
    /// When it began, else when it was put into the notebook.
    QDateTime at;
    /// By component, each lot once.
    QList<LotOf> lots;
    /// Everybody who did something on it.
    QStringList persons;
    /// What answered for its absorbances when it was planned; empty: not on record.
    QString photometer{};
};

/// Why a value does not count for limits and rules.
struct Omission {
    QString reason;
    QString person;
    QDateTime at;
};

/// How old a standard was when it was used, and what it was worth.
struct StandardUse {
    double age_h = 0;
    double made_g_per_L = 0;
    /// As the run states it.
    double lossPerHour = 0;
};

/// One value of a series.
struct Point {
    std::shared_ptr<const RunFacts> run;
    /// Of the standard, control or sample; empty for blanks.
    QString name;
    double value = 0;
    /// "%", "g/L", "g/100 g"; empty for absorbance.
    QString unit;
    /// Its run was accepted, and so was the result where it comes from one.
    bool isAccepted = true;
    std::optional<double> expandedUncertainty{};
    std::optional<StandardUse> standard{};
    /// Null: it counts. Few have one, and there may be a hundred thousand points.
    std::shared_ptr<const Omission> omission{};
};
using Series = std::vector<Point>;

/// A series that is looked at and not changed any more: copies share it, since it may be a hundred thousand points.
class SharedSeries
{
public:
    SharedSeries() = default;
    SharedSeries(Series points)
        : m_points(std::make_shared<const Series>(std::move(points)))
    {
    }
    operator const Series &() const { return *m_points; }
    const Series &points() const { return *m_points; }

    std::size_t size() const { return m_points->size(); }
    bool empty() const { return m_points->empty(); }
    const Point &operator[](std::size_t place) const { return (*m_points)[place]; }
    const Point &front() const { return m_points->front(); }
    const Point &back() const { return m_points->back(); }
    auto begin() const { return m_points->begin(); }
    auto end() const { return m_points->end(); }

private:
    std::shared_ptr<const Series> m_points = std::make_shared<const Series>();
};

/// Which of them are shown. Empty and absent: all.
struct Filter {
    QString component;
    /// Of that component, or of any.
    QString lot;
    QString person;
    QString photometer{};
    std::optional<QDate> from{};
    std::optional<QDate> to{};
    bool withRejected = false;
    bool operator==(const Filter &) const = default;
};
bool passes(const Point &point, const Filter &filter);
/// The same series where all of it passes.
SharedSeries filtered(const SharedSeries &series, const Filter &filter);

/// Something another than at the point before.
struct Change {
    /// Index of the first point after it.
    std::size_t at = 0;
    /// "Starter: lot 17-B after 16-A", "standard S-2 after S-1".
    QString text;
    bool operator==(const Change &) const = default;
};
/// Of lots, component by component, against the last run that named one; withNames: of the points' names as
/// well, those of a run together.
std::vector<Change> changesIn(const Series &series, bool withNames);

} // namespace plateau::charts
