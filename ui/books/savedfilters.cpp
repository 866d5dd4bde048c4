// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/savedfilters.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QSettings>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

using notebook::RunFilter;

const std::vector<std::pair<QString, QString RunFilter::*>> &texts()
{
    static const std::vector<std::pair<QString, QString RunFilter::*>> list{
        {u"text"_s, &RunFilter::text},        {u"sample"_s, &RunFilter::sample},
        {u"product"_s, &RunFilter::product},  {u"method"_s, &RunFilter::method},
        {u"person"_s, &RunFilter::person},    {u"lot"_s, &RunFilter::lot},
        {u"standard"_s, &RunFilter::standard}};
    return list;
}

const std::vector<std::pair<QString, notebook::RunState>> &states()
{
    static const std::vector<std::pair<QString, notebook::RunState>> list{
        {u"onBench"_s, notebook::RunState::OnBench},
        {u"accepted"_s, notebook::RunState::Accepted},
        {u"rejected"_s, notebook::RunState::Rejected}};
    return list;
}

std::optional<double> numberIn(const QJsonObject &object, const QString &key)
{
    return object.value(key).isDouble() ? std::optional(object.value(key).toDouble()) : std::nullopt;
}

std::optional<QDate> dayIn(const QJsonObject &object, const QString &key)
{
    const QDate day = QDate::fromString(object.value(key).toString(), Qt::ISODate);
    return day.isValid() ? std::optional(day) : std::nullopt;
}

QSettings filterSettings()
{
    return QSettings(QSettings::IniFormat, QSettings::UserScope, u"plateau"_s, u"plateau"_s);
}

} // namespace

QString filterText(const RunFilter &filter)
{
    QJsonObject object;
    for (const auto &[key, member] : texts()) {
        if (!(filter.*member).isEmpty())
            object[key] = filter.*member;
    }
    if (filter.from)
        object[u"from"_s] = filter.from->toString(Qt::ISODate);
    if (filter.to)
        object[u"to"_s] = filter.to->toString(Qt::ISODate);
    for (const auto &[word, state] : states()) {
        if (filter.state == state)
            object[u"state"_s] = word;
    }
    if (filter.flag)
        object[u"flag"_s] = evaluation::checkWord(*filter.flag);
    if (filter.value) {
        object[u"measurand"_s] = filter.value->measurand;
        object[u"unit"_s] = filter.value->unit;
        if (filter.value->least)
            object[u"least"_s] = *filter.value->least;
        if (filter.value->most)
            object[u"most"_s] = *filter.value->most;
    }
    return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

std::optional<RunFilter> filterOf(const QString &text)
{
    const QJsonDocument document = QJsonDocument::fromJson(text.toUtf8());
    if (!document.isObject())
        return std::nullopt;
    const QJsonObject object = document.object();
    RunFilter filter;
    for (const auto &[key, member] : texts())
        filter.*member = object.value(key).toString();
    filter.from = dayIn(object, u"from"_s);
    filter.to = dayIn(object, u"to"_s);
    for (const auto &[word, state] : states()) {
        if (object.value(u"state"_s) == word)
            filter.state = state;
    }
    for (const evaluation::CheckId check : notebook::allChecks()) {
        if (object.value(u"flag"_s) == evaluation::checkWord(check))
            filter.flag = check;
    }
    if (object.contains(u"measurand"_s))
        filter.value =
            notebook::ValueRange{object.value(u"measurand"_s).toString(), object.value(u"unit"_s).toString(),
                                 numberIn(object, u"least"_s), numberIn(object, u"most"_s)};
    return filter;
}

SavedFilters savedFilters(const QSettings &settings)
{
    const QVariantMap kept = settings.value(u"notebook/filters"_s).toMap();
    SavedFilters filters;
    for (auto entry = kept.begin(); entry != kept.end(); ++entry) {
        if (const auto filter = filterOf(entry.value().toString()))
            filters[entry.key()] = *filter;
    }
    return filters;
}

void keepFilters(QSettings &settings, const SavedFilters &filters)
{
    QVariantMap kept;
    for (const auto &[name, filter] : filters)
        kept[name] = filterText(filter);
    settings.setValue(u"notebook/filters"_s, kept);
}

SavedFilters savedFilters()
{
    return savedFilters(filterSettings());
}

void keepFilters(const SavedFilters &filters)
{
    QSettings settings = filterSettings();
    keepFilters(settings, filters);
}

} // namespace plateau::ui
