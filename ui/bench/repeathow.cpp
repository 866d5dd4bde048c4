// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/repeathow.h"

#include "core/assay/limits.h"
#include "core/evaluation/advice.h"
#include "core/evaluation/format.h"
#include "core/exchange/decimal.h"
#include "ui/bench/waitingwords.h"
#include "ui/shared/shownnumbers.h"

#include <QCoreApplication>
#include <QRegularExpression>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct RepeatHowWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RepeatHow)
};

using evaluation::Advice;

std::optional<double> numberIn(const QString &text)
{
    const auto parsed = exchange::parseDecimal(text);
    const double *value = std::get_if<double>(&parsed);
    return value ? std::optional(*value) : std::nullopt;
}

/// Of a text that stands between two places: "to" of "%1 to %2", in the window's language and in English.
QString eitherWord(const QString &localised, const QString &english)
{
    QString word = localised;
    word.remove(u"%1"_s).remove(u"%2"_s).remove(u',');
    return u"(?:%1|%2)"_s.arg(QRegularExpression::escape(word.trimmed()), english);
}

QString stepText(const QString &take, const QString &makeUpTo)
{
    return RepeatHowWords::tr("%1 to %2").arg(take, makeUpTo);
}

QRegularExpression ignoringCase(const QString &pattern)
{
    return QRegularExpression(pattern, QRegularExpression::CaseInsensitiveOption);
}

RepeatHow unreadable()
{
    return {
        {},
        RepeatHowWords::tr("type a dilution, e.g. 20, its steps, e.g. 5 to 100, or the sample volume, e.g. 0.5 mL")};
}

RepeatHow dilution(double factor)
{
    if (factor <= 1)
        return {
            {},
            RepeatHowWords::tr("a dilution is by more than 1; for more sample type its volume, e.g. 0.5 mL")};
    const auto steps = evaluation::dilutionChain(factor);
    if (!steps || steps->empty())
        return {{},
                RepeatHowWords::tr(
                    "usual pipettes and flasks make no dilution of %1; type its steps, e.g. 5 to 100")
                    .arg(shownNumber(evaluation::plainText(factor)))};
    return {Advice{Advice::Kind::Dilute, factor, false, *steps, 0}, {}};
}

RepeatHow inSteps(const QString &text)
{
    const QString to = eitherWord(stepText(u"%1"_s, u"%2"_s), u"to"_s);
    const QString then = eitherWord(RepeatHowWords::tr(", then "), u"then"_s);
    const QRegularExpression step =
        ignoringCase(u"^(\\S+?)(?:\\s*mL)?\\s+%1\\s+(\\S+?)(?:\\s*mL)?$"_s.arg(to));
    const QRegularExpression between = ignoringCase(u"\\s*(?:;|,?\\s+%1\\s+)\\s*"_s.arg(then));
    Advice advice;
    for (const QString &part : text.split(between)) {
        const auto found = step.match(part);
        const auto take = numberIn(found.captured(1));
        const auto makeUpTo = numberIn(found.captured(2));
        if (!take || !makeUpTo)
            return unreadable();
        if (*take < assay::limit::smallestVolume_mL || *makeUpTo <= *take)
            return {{}, RepeatHowWords::tr("a step goes from less to more, e.g. 5 to 100")};
        advice.steps.push_back({*take, *makeUpTo});
        advice.factor *= *makeUpTo / *take;
    }
    return {advice, {}};
}

} // namespace

RepeatHow repeatHow(const QString &typed)
{
    const QString text = typed.simplified();
    if (text.isEmpty())
        return {};
    if (text.contains(ignoringCase(u"\\s%1\\s"_s.arg(eitherWord(stepText(u"%1"_s, u"%2"_s), u"to"_s)))))
        return inSteps(text);
    static const QRegularExpression volume(u"^(\\S+?)\\s*mL$"_s, QRegularExpression::CaseInsensitiveOption);
    if (const auto found = volume.match(text); found.hasMatch()) {
        const auto volume_mL = numberIn(found.captured(1));
        if (!volume_mL)
            return unreadable();
        if (*volume_mL < assay::limit::smallestVolume_mL || *volume_mL > assay::limit::tubeVolume_mL)
            return {{}, RepeatHowWords::tr("no tube takes that volume of sample; type it in mL, e.g. 0.5 mL")};
        return {Advice{Advice::Kind::IncreaseVolume, 1, false, {}, *volume_mL}, {}};
    }
    const QRegularExpression factor =
        ignoringCase(u"^(\\S+?)(?:(?:-|\\s+)(?:%1|fold|times)|x)?$"_s.arg(RepeatHowWords::tr(
            "fold|times", "words that may be typed behind a factor of dilution, parted by |")));
    const auto times = numberIn(factor.match(text).captured(1));
    return times ? dilution(*times) : unreadable();
}

QString repeatHowText(const Advice &advice)
{
    QStringList steps;
    for (const run::DilutionStep &step : advice.steps)
        steps << stepText(evaluation::withUnit(evaluation::plainText(step.take_mL), u"mL"_s),
                          evaluation::withUnit(evaluation::plainText(step.makeUpTo_mL), u"mL"_s));
    const QString what = adviceWords(advice);
    return steps.isEmpty()
               ? what
               : RepeatHowWords::tr("%1 (%2)").arg(what, steps.join(RepeatHowWords::tr(", then ")));
}

} // namespace plateau::ui
