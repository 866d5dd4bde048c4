// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/evaluationcomparison.h"

#include "core/exchange/json.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <algorithm>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using json::List;
using json::Node;
using json::Null;
using json::Object;

namespace {

struct EvaluationComparisonWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::EvaluationComparison)
};

const Node nothing{Null()};

/// Fields that hold words for a person and nothing else.
bool isWording(const QString &key)
{
    return key == "message"_L1 || key == "term"_L1;
}

bool isNull(const Node &node)
{
    return std::holds_alternative<Null>(node.value);
}

const Node &memberOf(const Object &object, const QString &key)
{
    const auto found = std::ranges::find(object, key, &json::Member::key);
    return found == object.end() ? nothing : found->value;
}

QString shown(const Node &node)
{
    if (isNull(node))
        return EvaluationComparisonWords::tr("nothing");
    if (const bool *flag = std::get_if<bool>(&node.value))
        return *flag ? u"true"_s : u"false"_s;
    if (const double *number = std::get_if<double>(&node.value))
        return QLocale::c().toString(*number, 'g', QLocale::FloatingPointShortest);
    if (const QString *text = std::get_if<QString>(&node.value))
        return u"\"%1\""_s.arg(*text);
    if (const List *list = std::get_if<List>(&node.value))
        return EvaluationComparisonWords::tr("a list of %1").arg(list->size());
    return EvaluationComparisonWords::tr("an object of %1 fields").arg(std::get<Object>(node.value).size());
}

/// Walks two documents side by side until they differ.
class Comparison
{
public:
    std::optional<EvaluationDifference> compare(const Node &before, const Node &after)
    {
        if (before.value.index() != after.value.index())
            return differ(before, after);
        if (const Object *object = std::get_if<Object>(&before.value))
            return compareObjects(*object, std::get<Object>(after.value));
        if (const List *list = std::get_if<List>(&before.value))
            return compareLists(*list, std::get<List>(after.value), before, after);
        return isSame(before, after) ? std::nullopt : differ(before, after);
    }

private:
    static bool isSame(const Node &before, const Node &after)
    {
        if (const bool *flag = std::get_if<bool>(&before.value))
            return *flag == std::get<bool>(after.value);
        if (const double *number = std::get_if<double>(&before.value))
            return *number == std::get<double>(after.value);
        if (const QString *text = std::get_if<QString>(&before.value))
            return *text == std::get<QString>(after.value);
        return true; // null
    }

    std::optional<EvaluationDifference> compareObjects(const Object &before, const Object &after)
    {
        for (const json::Member &member : before) {
            if (auto found = compareMember(member.key, member.value, memberOf(after, member.key)))
                return found;
        }
        for (const json::Member &member : after) {
            if (auto found = compareMember(member.key, memberOf(before, member.key), member.value))
                return found;
        }
        return std::nullopt;
    }

    std::optional<EvaluationDifference> compareMember(const QString &key, const Node &before,
                                                      const Node &after)
    {
        if (isWording(key))
            return std::nullopt;
        return compareBelow(key, before, after);
    }

    std::optional<EvaluationDifference> compareLists(const List &before, const List &after, const Node &whole,
                                                     const Node &wholeAfter)
    {
        for (std::size_t i = 0; i < std::min(before.size(), after.size()); ++i) {
            if (auto found = compareBelow(QString::number(i), before[i], after[i]))
                return found;
        }
        return before.size() == after.size() ? std::nullopt : differ(whole, wholeAfter);
    }

    std::optional<EvaluationDifference> compareBelow(const QString &step, const Node &before,
                                                     const Node &after)
    {
        m_path.append(step);
        auto found = compare(before, after);
        m_path.removeLast();
        return found;
    }

    std::optional<EvaluationDifference> differ(const Node &before, const Node &after) const
    {
        return EvaluationDifference{m_path.isEmpty() ? QString() : u'/' + m_path.join(u'/'), shown(before),
                                    shown(after)};
    }

    QStringList m_path;
};

} // namespace

std::optional<EvaluationDifference> differenceOf(const QByteArray &before, const QByteArray &after)
{
    if (before == after)
        return std::nullopt;
    const json::Document then = json::parse(before);
    const json::Document now = json::parse(after);
    const auto state = [](const json::Document &document) {
        return document.root ? EvaluationComparisonWords::tr("an evaluation")
                             : EvaluationComparisonWords::tr("no evaluation that can be read");
    };
    if (!then.root || !now.root)
        return EvaluationDifference{{}, state(then), state(now)};
    return Comparison().compare(*then.root, *now.root);
}

} // namespace plateau::exchange
