// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methoddraft.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Collects steps, each with a key of its own.
class Order
{
public:
    CellRow &append(const QString &kind)
    {
        CellRow row{u"\u0001usual%1"_s.arg(m_steps.size()), std::vector<QString>(step::Count)};
        row.cells[step::Kind] = kind;
        m_steps.push_back(std::move(row));
        return m_steps.back();
    }
    void add(const CellRow &component) { append(step::add).cells[step::Component] = component.key; }
    void read()
    {
        append(step::mix);
        append(step::wait);
        const QString name = nextReading(m_steps);
        append(step::read).cells[step::Reading] = name;
    }
    std::vector<CellRow> take() { return std::move(m_steps); }

private:
    std::vector<CellRow> m_steps;
};

} // namespace

std::vector<CellRow> usualSteps(const std::vector<CellRow> &components)
{
    Order order;
    const auto addAll = [&](const QString &wanted) {
        for (const CellRow &component : components) {
            if (component.cells[component::Part] == wanted)
                order.add(component);
        }
    };
    for (const QString &each : {part::reagent, part::diluent, part::sample})
        addAll(each);
    order.read();
    addAll(part::starter);
    order.read();
    return order.take();
}

std::vector<QString> readingsOf(const std::vector<CellRow> &steps)
{
    std::vector<QString> readings;
    for (const CellRow &row : steps) {
        if (row.cells[step::Kind] == step::read)
            readings.push_back(row.cells[step::Reading]);
    }
    return readings;
}

QString nextReading(const std::vector<CellRow> &steps)
{
    const std::vector<QString> taken = readingsOf(steps);
    for (int number = 1;; ++number) {
        const QString name = u"A%1"_s.arg(number);
        if (std::ranges::find(taken, name) == taken.end())
            return name;
    }
}

QString nextComponent(const std::vector<CellRow> &components, const std::vector<CellRow> &steps)
{
    for (const CellRow &component : components) {
        const bool added = std::ranges::any_of(steps, [&](const CellRow &row) {
            return row.cells[step::Kind] == step::add && row.cells[step::Component] == component.key;
        });
        if (!added)
            return component.key;
    }
    return {};
}

} // namespace plateau::ui
