// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/jsonfields.h"

#include "core/assay/label.h"
#include "core/exchange/moment.h"
#include "core/exchange/spelling.h"

#include <QCoreApplication>

#include <cmath>
#include <limits>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using assay::pointerTo;
using assay::quoted;
using assay::shown;

namespace {

struct JsonfieldsWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::Fields)
};

void expected(const Place &place, const QString &what)
{
    place.findings.broken(place.pointer,
                          JsonfieldsWording::tr("expected %1, found %2").arg(what, kindWord(place.node)));
}

} // namespace

QString kindWord(const json::Node &node)
{
    struct Words {
        QString operator()(const json::Null &) const { return JsonfieldsWording::tr("null"); }
        QString operator()(bool) const { return JsonfieldsWording::tr("true or false"); }
        QString operator()(double) const { return JsonfieldsWording::tr("a number"); }
        QString operator()(const QString &) const { return JsonfieldsWording::tr("text"); }
        QString operator()(const json::List &) const { return JsonfieldsWording::tr("a list"); }
        QString operator()(const json::Object &) const { return JsonfieldsWording::tr("an object"); }
    };
    return std::visit(Words(), node.value);
}

bool take(const Place &place, QString &target)
{
    const auto *text = std::get_if<QString>(&place.node.value);
    if (text)
        target = *text;
    else
        expected(place, JsonfieldsWording::tr("text"));
    return text;
}

bool take(const Place &place, double &target)
{
    const auto *number = std::get_if<double>(&place.node.value);
    if (number)
        target = *number;
    else
        expected(place, JsonfieldsWording::tr("a number"));
    return number;
}

bool take(const Place &place, int &target)
{
    double number = 0;
    if (!take(place, number))
        return false;
    if (number != std::floor(number) || std::abs(number) > std::numeric_limits<int>::max()) {
        place.findings.broken(place.pointer,
                              JsonfieldsWording::tr("expected a whole number, found %1").arg(shown(number)));
        return false;
    }
    target = static_cast<int>(number);
    return true;
}

bool take(const Place &place, bool &target)
{
    const auto *flag = std::get_if<bool>(&place.node.value);
    if (flag)
        target = *flag;
    else
        expected(place, JsonfieldsWording::tr("true or false"));
    return flag;
}

bool take(const Place &place, assay::Interval &target)
{
    const auto *list = std::get_if<json::List>(&place.node.value);
    const auto *lower = list && list->size() == 2 ? std::get_if<double>(&list->front().value) : nullptr;
    const auto *upper = list && list->size() == 2 ? std::get_if<double>(&list->back().value) : nullptr;
    if (!lower || !upper) {
        place.findings.broken(place.pointer,
                              JsonfieldsWording::tr("expected a list of two numbers, from and to"));
        return false;
    }
    target = {*lower, *upper};
    return true;
}

bool take(const Place &place, QDateTime &target)
{
    QString text;
    if (!take(place, text))
        return false;
    const auto moment = parseMoment(text);
    if (moment)
        target = *moment;
    else
        place.findings.broken(place.pointer,
                              JsonfieldsWording::tr("expected a time with its offset, such as "
                                                    "2026-03-02T09:10:00+01:00 or ending in Z, found %1")
                                  .arg(quoted(text)));
    return moment.has_value();
}

bool take(const Place &place, QDate &target)
{
    QString text;
    if (!take(place, text))
        return false;
    const auto date = parseDate(text);
    if (date)
        target = *date;
    else
        place.findings.broken(
            place.pointer,
            JsonfieldsWording::tr("expected a date, such as 2026-03-02, found %1").arg(quoted(text)));
    return date.has_value();
}

const json::List *takeList(const Place &place)
{
    const auto *list = std::get_if<json::List>(&place.node.value);
    if (!list)
        expected(place, JsonfieldsWording::tr("a list"));
    return list;
}

void wrongWord(const Place &place, const QString &word, const QStringList &words)
{
    QStringList choice;
    for (const QString &known : words)
        choice.append(quoted(known));
    place.findings.broken(
        place.pointer,
        JsonfieldsWording::tr("expected one of %1, found %2").arg(choice.join(", "_L1), quoted(word)));
}

Fields::Fields(const Place &place)
    : m_object(std::get_if<json::Object>(&place.node.value))
    , m_pointer(place.pointer)
    , m_findings(place.findings)
{
    if (!m_object)
        expected(place, JsonfieldsWording::tr("an object"));
}

std::optional<Place> Fields::find(const QString &key)
{
    m_known.append(key);
    if (!m_object)
        return std::nullopt;
    for (const json::Member &member : *m_object) {
        if (member.key == key)
            return Place{member.value, pointerTo(m_pointer, key), m_findings};
    }
    return std::nullopt;
}

std::optional<Place> Fields::need(const QString &key)
{
    auto place = find(key);
    if (!place)
        m_missing.append(key);
    return place;
}

void Fields::refuse(const QString &key)
{
    const QString missing = nearest(key, m_missing);
    const QString meant = missing.isEmpty() ? nearest(key, m_known) : missing;
    const QString pointer = pointerTo(m_pointer, key);
    if (meant.isEmpty()) {
        m_findings.broken(
            pointer, JsonfieldsWording::tr("the field %1 is not known here; leave it out").arg(quoted(key)));
        return;
    }
    m_findings.broken(pointer, JsonfieldsWording::tr("the field %1 is not known here; did you mean %2?")
                                   .arg(quoted(key), quoted(meant)));
    m_missing.removeOne(meant);
    m_findings.unreadable(pointerTo(m_pointer, meant));
}

bool Fields::done()
{
    if (!m_object)
        return false;
    bool clean = true;
    for (const json::Member &member : *m_object) {
        if (m_known.contains(member.key) || m_findings.full())
            continue;
        refuse(member.key);
        clean = false;
    }
    for (const QString &key : m_missing) {
        m_findings.broken(pointerTo(m_pointer, key), JsonfieldsWording::tr("is missing, and it is needed"));
        clean = false;
    }
    return clean;
}

} // namespace plateau::exchange
