// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/standardwords.h"

#include "core/evaluation/format.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct StandardWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Standards)
};

int decimalsOf(const planning::StrengthMade &made)
{
    const double expanded = 2 * made.standardUncertainty_g_per_L;
    return expanded > 0 ? evaluation::decimalsFor(expanded, 2)
                        : evaluation::decimalsFor(made.concentration_g_per_L, 4);
}

QString leftText(qint64 seconds)
{
    const qint64 minutes = seconds / 60;
    if (minutes < 60)
        return StandardWords::tr("%1 min").arg(minutes);
    if (minutes < 72 * 60)
        return StandardWords::tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
    return StandardWords::tr("%1 days").arg(minutes / (24 * 60));
}

/// Of its own rule.
QString hoursText(const planning::Preparation &made)
{
    constexpr double seconds_per_h = 3600;
    const double hours = static_cast<double>(made.madeAt.secsTo(*made.useBy)) / seconds_per_h;
    return withUnit(plainText(std::round(100 * hours) / 100), u"h"_s);
}

} // namespace

PreparationStanding standingOf(const planning::HeldPreparation &held, const QDateTime &now)
{
    if (held.discarded)
        return {State::Info, StandardWords::tr("discarded")};
    const auto last = planning::goodUntil(held.preparation);
    if (!last)
        return {State::Good, StandardWords::tr("keeps its strength")};
    if (now > *last)
        return {State::Bad, StandardWords::tr("past its time since %1").arg(momentText(*last))};
    const qint64 left_s = now.secsTo(*last);
    // The last tenth of its life, and an hour at least.
    constexpr qint64 hour_s = 3600;
    const bool soon = left_s < std::max(hour_s, held.preparation.madeAt.secsTo(*last) / 10);
    return {soon ? State::Attention : State::Good,
            StandardWords::tr("good for %1, until %2").arg(leftText(left_s), momentText(*last))};
}

QString strengthText(const planning::StrengthMade &made)
{
    const int decimals = decimalsOf(made);
    return StandardWords::tr("%1 ± %2").arg(
        QString::number(made.concentration_g_per_L, 'f', decimals),
        withUnit(QString::number(2 * made.standardUncertainty_g_per_L, 'f', decimals), u"g/L"_s));
}

QString strengthNowText(const planning::HeldPreparation &held, const QDateTime &now)
{
    if (held.discarded)
        return u"–"_s;
    const planning::StrengthMade made = planning::strengthOf(held.of, held.preparation);
    return withUnit(
        QString::number(planning::strengthAt_g_per_L(made.concentration_g_per_L, held.preparation, now), 'f',
                        decimalsOf(made)),
        u"g/L"_s);
}

Label labelOf(const planning::HeldPreparation &held)
{
    Label label;
    label.what = held.preparation.name;
    label.strength = strengthText(planning::strengthOf(held.of, held.preparation));
    label.madeAt = momentText(held.preparation.madeAt);
    if (const auto last = planning::goodUntil(held.preparation))
        label.useBy = momentText(*last);
    return label;
}

QString whyGoodUntil(const planning::Preparation &made)
{
    const auto limit = planning::limitOf(made);
    if (!limit)
        return {};
    const evaluation::Rules rules;
    switch (*limit) {
    case planning::StandardLimit::OwnRule:
        return StandardWords::tr("That is your own rule, %1 after it was made.").arg(hoursText(made));
    case planning::StandardLimit::Loss:
        return StandardWords::tr("Then its loss leaves %1 of its strength, the least that may be used.")
            .arg(withUnit(plainText(100 * rules.minStandardRemaining), u"%"_s));
    case planning::StandardLimit::Age:
        break;
    }
    return StandardWords::tr("That is %1 after it was made, the oldest that may be used.")
        .arg(withUnit(plainText(rules.maxStandardAge_h), u"h"_s));
}

QString ownRuleText(const planning::Preparation &made)
{
    return made.useBy ? StandardWords::tr("%1, until %2").arg(hoursText(made), momentText(*made.useBy)) : QString();
}

QString purityText(const planning::Substance &substance)
{
    // Of a fraction times 100, without what the last bits make of it.
    const auto percent = [](double fraction) { return evaluation::roundedText(100 * fraction, 9).toDouble(); };
    if (substance.purityHalfWidth <= 0)
        return withUnit(plainText(percent(substance.purity)), u"%"_s);
    const QStringList texts = evaluation::pairedTexts(percent(substance.purity), percent(substance.purityHalfWidth));
    return StandardWords::tr("%1 ± %2").arg(texts[0], withUnit(texts[1], u"%"_s));
}

QString standardSentence(const assay::Problem &problem)
{
    // What is said of a text, such as its name, names it already.
    static const std::map<QString, const char *> names{
        {u"purity"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The purity")},
        {u"purityHalfWidth"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The uncertainty of the purity")},
        {u"water"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The water content")},
        {u"waterHalfWidth"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The uncertainty of the water")},
        {u"molarMass_g_per_mol"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The molar mass")},
        {u"density_g_per_mL"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The density")},
        {u"expires"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The use-by date")},
        {u"analyteMolarMass_g_per_mol"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "What it is for")},
        {u"analytePerMolecule"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "Analyte molecules per molecule")},
        {u"masses_mg"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "Weighed")},
        {u"mass_u_mg"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The uncertainty of a weighing")},
        {u"flask_mL"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The flask's volume")},
        {u"flask_u_mL"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The uncertainty of the flask")},
        {u"madeAt"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The time it was made")},
        {u"lossPerHour"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The loss of strength")},
        {u"useBy"_s, QT_TRANSLATE_NOOP("plateau::ui::Standards", "The rule for its use")},
    };
    const auto name = names.find(problem.pointer.section(u'/', 1, 1));
    if (name == names.end())
        return evaluation::capitalised(problem.message) + u'.';
    return u"%1 %2."_s.arg(QCoreApplication::translate("plateau::ui::Standards", name->second),
                           problem.message);
}

} // namespace plateau::ui
