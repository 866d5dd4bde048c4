// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/methodcomparison.h"

#include "core/exchange/jsonparts.h"
#include "core/exchange/methodfieldwords.h"
#include "core/exchange/sequence.h"

#include <QCoreApplication>

#include <algorithm>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using nlohmann::ordered_json;

namespace {

struct MethodComparisonWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::MethodComparison)
};

/// Where a value stands: its pointer, its key, and what the elements around it are called, innermost first.
struct Spot {
    QString pointer;
    QString key;
    QStringList labels;

    Spot member(const QString &name) const { return {pointer + u'/' + name, name, labels}; }
    Spot element(qsizetype index, const QString &label) const
    {
        Spot spot{u"%1/%2"_s.arg(pointer).arg(index), key, labels};
        if (!label.isEmpty())
            spot.labels.prepend(label);
        return spot;
    }
    QString words(const QString &what) const
    {
        return labels.isEmpty() ? what
                                : MethodComparisonWording::tr("%1 of %2")
                                      .arg(what, labels.join(MethodComparisonWording::tr(" in ")));
    }
};

/// What tells one element of a list from the others; empty where nothing does.
std::string identityOf(const ordered_json &element)
{
    if (!element.is_object())
        return {};
    for (const char *const key : {"id", "matrix"}) {
        if (element.contains(key))
            return element[key].dump();
    }
    if (element.contains("measurand"))
        return element.value("method", std::string()) + '\n' + element["measurand"].dump();
    return {};
}

/// Empty unless every element has an identity of its own.
std::vector<std::string> identitiesOf(const ordered_json &list)
{
    std::vector<std::string> identities;
    for (const ordered_json &element : list) {
        const std::string identity = identityOf(element);
        if (identity.empty() || std::ranges::find(identities, identity) != identities.end())
            return {};
        identities.push_back(identity);
    }
    return identities;
}

class MethodComparer
{
public:
    MethodComparer(const ordered_json &before, const ordered_json &after)
        : m_before(before)
        , m_after(after)
    {
    }

    std::vector<Difference> run()
    {
        compareObjects({}, m_before, m_after);
        return std::move(m_found);
    }

private:
    void compare(const Spot &spot, const ordered_json &before, const ordered_json &after)
    {
        if (before == after)
            return;
        const bool objects = before.is_object() && after.is_object() && !before.contains("kind");
        const bool lists = isList(before) && isList(after);
        if (objects)
            compareObjects(spot, before, after);
        else if (lists)
            compareLists(spot, before, after);
        else
            add(spot, spot.words(wordsOf(spot)), &before, &after);
    }

    /// A list of elements, not an interval.
    static bool isList(const ordered_json &value)
    {
        return value.is_array() && (value.empty() || !value.front().is_number());
    }

    static QString wordsOf(const Spot &spot)
    {
        // The table of absorptivities: its keys are wavelengths.
        bool number = false;
        spot.key.toInt(&number);
        return number ? MethodComparisonWording::tr("Absorptivity at %1 nm").arg(spot.key)
                      : fieldWords(spot.key);
    }

    void compareObjects(const Spot &spot, const ordered_json &before, const ordered_json &after)
    {
        for (const auto &[name, value] : after.items()) {
            const Spot here = spot.member(QString::fromStdString(name));
            const auto old = before.find(name);
            if (old == before.end())
                onlyIn(here, nullptr, &value);
            else
                compare(here, *old, value);
        }
        for (const auto &[name, value] : before.items()) {
            if (!after.contains(name))
                onlyIn(spot.member(QString::fromStdString(name)), &value, nullptr);
        }
    }

    /// One of the two is nullptr. A part that only one method has is told member by member.
    void onlyIn(const Spot &spot, const ordered_json *before, const ordered_json *after)
    {
        static const ordered_json noObject = ordered_json::object();
        static const ordered_json noList = ordered_json::array();
        const ordered_json &value = before ? *before : *after;
        if (!value.empty() && value.is_object() && !value.contains("kind"))
            compareObjects(spot, before ? *before : noObject, after ? *after : noObject);
        else if (!value.empty() && isList(value))
            compareLists(spot, before ? *before : noList, after ? *after : noList);
        else
            add(spot, spot.words(wordsOf(spot)), before, after);
    }

    void compareLists(const Spot &spot, const ordered_json &before, const ordered_json &after)
    {
        const std::vector<std::string> earlier = identitiesOf(before);
        const std::vector<std::string> later = identitiesOf(after);
        if (earlier.size() == before.size() && later.size() == after.size())
            compareByIdentity(spot, before, after, earlier, later);
        else
            compareInSequence(spot, before, after);
    }

    void compareByIdentity(const Spot &spot, const ordered_json &before, const ordered_json &after,
                           const std::vector<std::string> &earlier, const std::vector<std::string> &later)
    {
        QStringList orderBefore;
        QStringList orderAfter;
        for (std::size_t i = 0; i < later.size(); ++i) {
            const auto old = std::ranges::find(earlier, later[i]);
            const QString label = elementLabel(after[i]);
            const Spot here = spot.element(qsizetype(i), label);
            if (old == earlier.end()) {
                addElement(spot.element(qsizetype(i), {}), label, nullptr, &after[i]);
                continue;
            }
            orderAfter.append(label);
            compare(here, before[std::size_t(old - earlier.begin())], after[i]);
        }
        for (std::size_t i = 0; i < earlier.size(); ++i) {
            const auto now = std::ranges::find(later, earlier[i]);
            if (now == later.end())
                addElement(spot.element(qsizetype(i), {}), elementLabel(before[i]), &before[i], nullptr);
            else
                orderBefore.append(elementLabel(after[std::size_t(now - later.begin())]));
        }
        if (orderBefore != orderAfter)
            m_found.push_back(
                {spot.pointer,
                 spot.words(MethodComparisonWording::tr("Order of: %1").arg(fieldWords(spot.key))),
                 orderBefore.join(u", "_s), orderAfter.join(u", "_s)});
    }

    void compareInSequence(const Spot &spot, const ordered_json &before, const ordered_json &after)
    {
        std::vector<std::string> earlier;
        std::vector<std::string> later;
        for (const ordered_json &element : before)
            earlier.push_back(element.dump());
        for (const ordered_json &element : after)
            later.push_back(element.dump());
        for (const Pairing &pair : aligned(earlier, later, [&](std::size_t i, std::size_t j) {
                 return sameKind(before[i], after[j]);
             })) {
            const ordered_json *old = pair.before ? &before[*pair.before] : nullptr;
            const ordered_json *now = pair.after ? &after[*pair.after] : nullptr;
            if (old && now && *old == *now)
                continue;
            const auto index = qsizetype(pair.after ? *pair.after : *pair.before);
            addElement(spot.element(index, {}), QString::number(index + 1), old, now);
        }
    }

    /// Two steps of one kind, or two texts, may be one that was changed.
    static bool sameKind(const ordered_json &before, const ordered_json &after)
    {
        if (!before.is_object() || !after.is_object() || before.empty() || after.empty())
            return before.type() == after.type();
        return before.begin().key() == after.begin().key();
    }

    void addElement(const Spot &spot, const QString &label, const ordered_json *before,
                    const ordered_json *after)
    {
        add(spot, spot.words(u"%1 %2"_s.arg(elementWords(spot.key), label)), before, after);
    }

    void add(const Spot &spot, const QString &words, const ordered_json *before, const ordered_json *after)
    {
        Difference difference{spot.pointer, words, {}, {}};
        // Within a table of wavelengths the unit is that of the table.
        const QString unitKey = spot.pointer.section(u'/', 1, 1) == "absorptivity_L_per_mol_cm"_L1
                                    ? u"absorptivity_L_per_mol_cm"_s
                                    : spot.key;
        if (before)
            difference.before = valueText(unitKey, *before, m_before);
        if (after)
            difference.after = valueText(unitKey, *after, m_after);
        m_found.push_back(std::move(difference));
    }

    const ordered_json &m_before;
    const ordered_json &m_after;
    std::vector<Difference> m_found;
};

} // namespace

std::vector<Difference> differences(const assay::Method &before, const assay::Method &after)
{
    return MethodComparer(methodJson(before), methodJson(after)).run();
}

QString differenceWords(const std::vector<Difference> &differences, int named)
{
    QStringList words;
    for (const Difference &difference : differences) {
        if (words.size() < named && !words.contains(difference.words))
            words.append(difference.words);
    }
    const qsizetype more = qsizetype(differences.size()) - words.size();
    if (more > 0)
        return MethodComparisonWording::tr("%1 and %2 more").arg(words.join(u", "_s)).arg(more);
    if (words.size() < 2)
        return words.join(QString());
    const QString last = words.takeLast();
    return MethodComparisonWording::tr("%1 and %2").arg(words.join(u", "_s), last);
}

} // namespace plateau::exchange
