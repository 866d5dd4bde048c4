// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/lotwords.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct LotWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LotWords)
};

State shapeOf(const planning::LotOutlook &outlook)
{
    if (outlook.isBad())
        return State::Bad;
    if (outlook.isNear())
        return State::Attention;
    return outlook.fitness == planning::LotFitness::Good ? State::Good : State::Pending;
}

} // namespace

LotStanding standingOf(const planning::Lot &lot, const QDateTime &now, const LotUse &use)
{
    const planning::LotOutlook outlook = planning::outlookOf(lot, now, now, use);
    return {shapeOf(outlook), planning::outlookText(lot, outlook)};
}

LotStanding listedStandingOf(const planning::Lot &lot, const QDateTime &now, const LotUse &use)
{
    const planning::LotOutlook outlook = planning::outlookOf(lot, now, now, use);
    return {shapeOf(outlook), planning::stateText(lot, outlook)};
}

QString lotVolume(double volume_mL)
{
    const double rounded = std::round(volume_mL * 1000) / 1000;
    QString text = evaluation::plainText(rounded == 0 ? 0 : rounded);
    return evaluation::withUnit(text.replace(u'-', u'\u2212'), u"mL"_s);
}

QString dayText(const std::optional<QDate> &day)
{
    return day ? assay::shownDay(*day) : QString();
}

std::variant<QDate, DayFault> parseDay(const QString &text, assay::MonthAlone month)
{
    if (text.trimmed().isEmpty())
        return DayFault::Empty;
    const std::optional<QDate> day = assay::readDay(text, month);
    return day ? std::variant<QDate, DayFault>(*day) : DayFault::NotADay;
}

QString dayFaultSentence(DayFault fault, assay::MonthAlone month)
{
    const QDate example(2026, 12, 31); // whose order is plain
    const QString day = assay::shownDay(example);
    if (fault == DayFault::Empty)
        return LotWords::tr("Key the day as %1.").arg(day);
    const QString sentence =
        month == assay::MonthAlone::FirstDay
            ? LotWords::tr("This is not a day. Key it as %1; a month alone, as %2, means its first day.")
            : LotWords::tr("This is not a day. Key it as %1; a month alone, as %2, means its last day.");
    return sentence.arg(day, assay::shownMonth(example));
}

QString movementText(notebook::LotMovementKind kind)
{
    switch (kind) {
    case notebook::LotMovementKind::Received:
        return LotWords::tr("received");
    case notebook::LotMovementKind::Used:
        return LotWords::tr("taken, keyed by hand");
    case notebook::LotMovementKind::Discarded:
        return LotWords::tr("discarded");
    case notebook::LotMovementKind::Corrected:
        return LotWords::tr("corrected to what was found");
    case notebook::LotMovementKind::ReceivedDry:
        return LotWords::tr("received dry");
    case notebook::LotMovementKind::Opened:
        return LotWords::tr("opened");
    case notebook::LotMovementKind::OpeningCorrected:
        return LotWords::tr("opening corrected");
    case notebook::LotMovementKind::Dissolved:
        return LotWords::tr("dissolved");
    case notebook::LotMovementKind::GaveSolvent:
        return LotWords::tr("taken to dissolve");
    case notebook::LotMovementKind::Divided:
        return LotWords::tr("divided");
    case notebook::LotMovementKind::Filled:
        return LotWords::tr("filled");
    case notebook::LotMovementKind::Stored:
        return LotWords::tr("put where it is kept");
    case notebook::LotMovementKind::Noted:
        return LotWords::tr("noted");
    }
    return {};
}

} // namespace plateau::ui
