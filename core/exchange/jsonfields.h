// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/exchange/findings.h"
#include "core/exchange/json.h"

#include <QDate>
#include <QDateTime>
#include <QString>
#include <QStringList>

#include <optional>
#include <utility>
#include <vector>

namespace plateau::exchange {

/// A value and where it stands.
struct Place {
    const json::Node &node;
    QString pointer;
    Findings &findings;
};

/// Each takes the value over if it has the right shape, else says what was expected and what was found, and
/// leaves the target alone.
bool take(const Place &place, QString &target);
bool take(const Place &place, double &target);
/// A whole number; 2 and 2.0 are the same.
bool take(const Place &place, int &target);
bool take(const Place &place, bool &target);
/// A list of two numbers.
bool take(const Place &place, assay::Interval &target);
/// ISO 8601 with seconds or without, with "Z" or an offset, which is kept: 2026-03-02T09:10:00+01:00.
bool take(const Place &place, QDateTime &target);
/// 2026-03-02.
bool take(const Place &place, QDate &target);
template <class T> bool take(const Place &place, std::optional<T> &target)
{
    T value{};
    if (!take(place, value))
        return false;
    target = std::move(value);
    return true;
}

/// nullptr, and a problem, if the value is not a list.
const json::List *takeList(const Place &place);

/// One of some words; the target is left alone, and a problem added, if it is none of them.
template <class T>
bool takeWord(const Place &place, const std::vector<std::pair<QString, T>> &words, T &target);
void wrongWord(const Place &place, const QString &word, const QStringList &words);

/// Calls read(place of the element) for every element of a list.
template <class Read> void forEach(const Place &place, Read read)
{
    const json::List *list = takeList(place);
    if (!list)
        return;
    for (std::size_t i = 0; i < list->size(); ++i) {
        if (place.findings.full())
            return;
        read(Place{(*list)[i], assay::pointerTo(place.pointer, static_cast<qsizetype>(i)), place.findings});
    }
}

/// The fields of one object. Asking for a field makes its name known; done() refuses the others by name.
class Fields
{
public:
    /// A problem if the value is not an object; then every field is absent, without further problems.
    explicit Fields(const Place &place);

    bool usable() const { return m_object; }
    /// The field if it is there.
    std::optional<Place> find(const QString &key);
    /// The field; if it isn't there, done() says so.
    std::optional<Place> need(const QString &key);

    template <class T> bool needed(const QString &key, T &target)
    {
        const auto place = need(key);
        return place && take(*place, target);
    }
    template <class T> bool optional(const QString &key, T &target)
    {
        const auto place = find(key);
        return place && take(*place, target);
    }
    /// Refuses what was not asked for and reports what was needed and is missing. A name close to a missing
    /// or known one is taken for a slip of the pen: one problem, not two. False if there was any.
    bool done();

private:
    void refuse(const QString &key);

    const json::Object *m_object = nullptr;
    QString m_pointer;
    Findings &m_findings;
    QStringList m_known;
    QStringList m_missing;
};

/// "a number", "text", "a list" and so on.
QString kindWord(const json::Node &node);

template <class T>
bool takeWord(const Place &place, const std::vector<std::pair<QString, T>> &words, T &target)
{
    QString word;
    if (!take(place, word))
        return false;
    QStringList known;
    for (const auto &[name, value] : words) {
        if (name == word) {
            target = value;
            return true;
        }
        known.append(name);
    }
    wrongWord(place, word, known);
    return false;
}

} // namespace plateau::exchange
