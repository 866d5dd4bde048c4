// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/charts/standardloss.h"

#include "core/charts/wording.h"
#include "core/evaluation/format.h"

#include <algorithm>
#include <cmath>

namespace plateau::charts {

using namespace Qt::StringLiterals;

namespace {

/// In percent, all with the decimals that two figures of the interval's width need.
class PercentText
{
public:
    explicit PercentText(double width)
        : m_decimals(width > 0 ? std::clamp(evaluation::decimalsFor(width * 100, 2), 0, 4) : 2)
    {
    }
    QString operator()(double part) const
    {
        const QString text = QString::number(part * 100, 'f', m_decimals);
        return text.toDouble() == 0 ? QString::number(0.0, 'f', m_decimals) : text; // no -0.0
    }

private:
    int m_decimals;
};

QString tooFewSentence(std::size_t recoveries)
{
    if (recoveries < 3)
        return Wording::tr(
            "The loss per hour cannot be told yet: it takes three recoveries or more whose standard's "
            "age is known.");
    return Wording::tr("The loss per hour cannot be told yet: all these standards were used at one age.");
}

bool isNone(const QString &stated)
{
    return stated.left(stated.indexOf(QChar::Nbsp)).toDouble() == 0;
}

QString verdictText(StandardLoss::Verdict verdict, const QString &stated)
{
    switch (verdict) {
    case StandardLoss::Verdict::Agrees:
        return isNone(stated) ? Wording::tr("which agrees with a standard that keeps its strength")
                              : Wording::tr("which agrees with the %1 stated").arg(stated);
    case StandardLoss::Verdict::LosesFaster:
        return Wording::tr("so the standard loses its strength faster than the %1 stated").arg(stated);
    case StandardLoss::Verdict::LosesSlower:
        return Wording::tr("so the standard loses its strength more slowly than the %1 stated").arg(stated);
    case StandardLoss::Verdict::NotTold:
        break;
    }
    return stated.isEmpty() ? Wording::tr("and no loss is stated to hold it against")
                            : Wording::tr("which is too wide to tell whether the %1 stated are right: it takes "
                                          "standards of more different ages").arg(stated);
}

StandardLoss::Verdict verdictOf(const quality::ExponentialLoss::Interval &interval,
                                std::optional<double> stated)
{
    using Verdict = StandardLoss::Verdict;
    if (!stated)
        return Verdict::NotTold;
    // No loss at all and twice the stated one would be said to agree as well: that is no agreement.
    if (*stated > 0 && interval.lowest <= 0 && interval.highest >= 2 * *stated)
        return Verdict::NotTold;
    if (*stated < interval.lowest)
        return Verdict::LosesFaster;
    return *stated > interval.highest ? Verdict::LosesSlower : Verdict::Agrees;
}

} // namespace

std::vector<AgedRecovery> agedRecoveries(const Series &series)
{
    std::vector<AgedRecovery> recoveries;
    for (const Point &point : series) {
        if (!point.standard || point.omission || !point.isAccepted)
            continue;
        // A recovery is against what should be left; take that loss off again.
        const double left = std::pow(1 - point.standard->lossPerHour, point.standard->age_h);
        recoveries.push_back({point.standard->age_h, point.value * left});
    }
    return recoveries;
}

StandardLoss standardLoss(const std::vector<AgedRecovery> &recoveries, std::optional<double> statedPerHour)
{
    std::vector<quality::AgedValue> values;
    for (const AgedRecovery &recovery : recoveries) {
        if (recovery.left_percent > 0)
            values.push_back({recovery.age_h, recovery.left_percent});
    }
    StandardLoss loss;
    loss.statedPerHour = statedPerHour;
    loss.fit = quality::fitExponentialLoss(values);
    if (!loss.fit || !loss.fit->interval95) {
        loss.sentence = tooFewSentence(values.size());
        return loss;
    }
    const auto &interval = *loss.fit->interval95;
    loss.verdict = verdictOf(interval, statedPerHour);
    const PercentText text(interval.highest - interval.lowest);
    const auto percent = [&](double part) { return evaluation::withUnit(text(part), u"%"_s); };
    loss.sentence =
        Wording::tr(
            "%1 recoveries at ages of %2 to %3 show a loss of %4 an hour (95 % interval %5 to %6), %7.")
            .arg(QString::number(loss.fit->n),
                 evaluation::withUnit(QString::number(loss.fit->youngest_h, 'f', 1), u"h"_s),
                 evaluation::withUnit(QString::number(loss.fit->oldest_h, 'f', 1), u"h"_s),
                 percent(loss.fit->lossPerHour), percent(interval.lowest), percent(interval.highest),
                 verdictText(loss.verdict, statedPerHour ? percent(*statedPerHour) : QString()));
    return loss;
}

} // namespace plateau::charts
