// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/charts/chartsource.h"

#include "core/evaluation/reportunit.h"

#include <algorithm>

namespace plateau::ui {

ChartSource::ChartSource(notebook::Notebook &notebook, std::function<QString()> person)
    : m_notebook(notebook)
    , m_person(std::move(person))
{
}

void ChartSource::refresh()
{
    m_methods.clear();
    for (const notebook::StoredMethod &stored : m_notebook.methods())
        m_methods.push_back(stored.method);
    std::ranges::stable_sort(m_methods, std::ranges::greater(), &assay::Method::version);
}

const assay::Method *ChartSource::method(const QString &id) const
{
    const auto found = std::ranges::find(m_methods, id, &assay::Method::id);
    return found == m_methods.end() ? nullptr : &*found;
}

void ChartSource::forgetOld()
{
    const QString head = m_notebook.auditHead().hash;
    if (head == m_head)
        return;
    m_offers.clear();
    m_series.reset();
    m_head = head;
}

const std::vector<notebook::ChartOffer> &ChartSource::offers(charts::Quantity quantity)
{
    forgetOld();
    const auto known = m_offers.find(quantity);
    return known != m_offers.end()
               ? known->second
               : m_offers.emplace(quantity, m_notebook.charts().offers(quantity)).first->second;
}

charts::SharedSeries ChartSource::series(const charts::Subject &subject)
{
    forgetOld();
    if (!m_series || m_series->first != subject)
        m_series.emplace(subject, m_notebook.charts().series(subject, componentNames(subject.methodId)));
    return m_series->second;
}

/// Of every version: a component that the newest has no more was in use once.
std::map<QString, QString> ChartSource::componentNames(const QString &methodId) const
{
    std::map<QString, QString> names;
    for (const assay::Method &known : m_methods) {
        if (known.id != methodId)
            continue;
        for (const assay::Component &component : known.components)
            names.try_emplace(component.id, component.name);
    }
    return names;
}

std::optional<ChartSource::KeptSettings> ChartSource::kept(const charts::Subject &subject) const
{
    const notebook::Charts &charts = m_notebook.charts();
    if (auto own = charts.settings(subject))
        return KeptSettings{std::move(*own), false};
    if (!charts::isOfOneMaterial(subject.quantity) || subject.name.isEmpty())
        return std::nullopt;
    charts::Subject all = subject;
    all.name.clear();
    auto ofAll = charts.settings(all);
    if (!ofAll || !charts::holdsForEach(subject.quantity, ofAll->settings))
        return std::nullopt;
    return KeptSettings{std::move(*ofAll), true};
}

charts::Settings ChartSource::settings(const charts::Subject &subject) const
{
    const auto saved = kept(subject);
    return saved ? charts::withEnoughValues(saved->stored.settings) : charts::usualSettings(subject.quantity);
}

bool ChartSource::save(const charts::Subject &subject, const charts::Settings &settings)
{
    return m_notebook.charts().saveSettings(subject, settings, person());
}

void ChartSource::leaveOut(const notebook::ChartValue &value, const QString &reason)
{
    m_notebook.charts().leaveOut(value, person(), reason);
}

void ChartSource::takeBack(const notebook::ChartValue &value, const QString &reason)
{
    m_notebook.charts().takeBack(value, person(), reason);
}

QString ChartSource::measurandName(const QString &methodId, const QString &measurand) const
{
    for (const assay::Method &known : m_methods) {
        if (known.id != methodId)
            continue;
        for (const assay::Measurand &one : known.measurands) {
            if (one.id == measurand)
                return one.name;
        }
        for (const assay::Derived &one : known.derived) {
            if (one.id == measurand)
                return one.name;
        }
    }
    return measurand;
}

std::optional<double> ChartSource::statedLossPerHour(const QString &methodId) const
{
    const assay::Method *found = method(methodId);
    if (!found || !found->standard)
        return std::nullopt;
    return found->standard->lossPerHour;
}

std::vector<ChartSource::ProductLimit> ChartSource::productLimits(const charts::Subject &subject,
                                                                  const QString &unit) const
{
    std::vector<ProductLimit> limits;
    const assay::Method *found = method(subject.methodId);
    const auto inUnit = evaluation::reportUnitFromWord(unit);
    if (!found || !inUnit)
        return limits;
    const QString product = subject.quantity == charts::Quantity::ProductResult
                                ? subject.name
                                : m_notebook.resultsOf(subject.name, subject.measurand).product;
    const auto molarMass = evaluation::molarMassOf(subject.measurand, *found);
    for (const evaluation::Specification &one :
         evaluation::specificationsFor(m_notebook.specifications(), product, subject.measurand, *found)) {
        const auto factor = evaluation::conversionFactor(one.unit, *inUnit, molarMass);
        if (!factor.value)
            continue; // a limit by mass says nothing of a result by volume
        ProductLimit limit{
            {}, {}, one.kind == evaluation::LimitKind::LabelThreshold, evaluation::limitText(one)};
        if (one.lower)
            limit.lower = *one.lower * *factor.value;
        if (one.upper)
            limit.upper = *one.upper * *factor.value;
        limits.push_back(limit);
    }
    return limits;
}

} // namespace plateau::ui
