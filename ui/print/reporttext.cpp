// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/reporttext.h"

#include "core/assay/listed.h"
#include "core/assay/localday.h"
#include "core/evaluation/checkfacts.h"
#include "core/evaluation/format.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::plainText;
using evaluation::withUnit;

namespace {

struct ReporttextWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Report)
};

/// With the three decimals of a photometer, or with those it was keyed with where they are more.
QString absorbanceOnReport(double absorbance)
{
    const QString keyed = plainText(absorbance);
    const QString shown = evaluation::absorbanceText(absorbance);
    return keyed.size() > shown.size() ? keyed : shown;
}

} // namespace

ResultWords wordsOf(const ReportContent &content, const evaluation::Result &result)
{
    const evaluation::Reported reported = reportedOf(content, result);
    ResultWords words{none, none, none, evaluation::reportUnitWord(reported.unit)};
    if (!reported.value && !reported.lessThan && !reported.greaterThan)
        return words;
    if (reported.lessThan) {
        words.value = u"< "_s + evaluation::upperBoundText(*reported.lessThan, 2);
    } else if (reported.greaterThan) {
        words.value = u"> "_s + evaluation::lowerBoundText(*reported.greaterThan, 3);
    } else {
        words.value = evaluation::valueText(*reported.value, reported.expandedUncertainty);
        if (reported.expandedUncertainty)
            words.uncertainty = evaluation::uncertaintyText(*reported.expandedUncertainty);
        if (reported.coverageFactor)
            words.coverage = evaluation::significantText(*reported.coverageFactor, 3);
    }
    for (QString *word : {&words.value, &words.uncertainty, &words.coverage})
        *word = localNumbers(*word, content.decimalSign);
    return words;
}

QString quantityName(const assay::Method &method, const QString &id)
{
    if (const assay::Measurand *measurand = assay::findMeasurand(method, id))
        return measurand->name;
    const auto derived = std::ranges::find(method.derived, id, &assay::Derived::id);
    return derived == method.derived.end() ? id : derived->name;
}

QString methodTitle(const assay::Method &method)
{
    return ReporttextWords::tr("%1 (%2), version %3").arg(method.name, method.id).arg(method.version);
}

QString templateSentence(const assay::Method &method)
{
    return assay::isTemplate(method)
               ? ReporttextWords::tr("Made with a template whose volumes nobody confirmed: %1.")
                     .arg(method.name)
               : QString();
}

QString stateMark(ReportState state)
{
    switch (state) {
    case ReportState::Accepted:
        return {};
    case ReportState::Rejected:
        return ReporttextWords::tr("REJECTED");
    case ReportState::Replaced:
        return ReporttextWords::tr("REPLACED");
    case ReportState::Draft:
        break;
    }
    return ReporttextWords::tr("DRAFT");
}

QString stateSentence(ReportState state)
{
    switch (state) {
    case ReportState::Accepted:
        return {};
    case ReportState::Rejected:
        return ReporttextWords::tr("The run was rejected; its results are not to be used.");
    case ReportState::Replaced:
        return ReporttextWords::tr(
            "This revision was taken back; what counts is the latest one in the notebook.");
    case ReportState::Draft:
        break;
    }
    return ReporttextWords::tr("Nobody has accepted this run; its results may change.");
}

QString momentOnReport(const QDateTime &moment)
{
    if (!moment.isValid())
        return none;
    const int offset_min = moment.offsetFromUtc() / 60;
    return u"%1 %2 %3%4:%5"_s
        .arg(assay::shownDay(moment.date()), moment.toString(u"HH:mm:ss"_s), offset_min < 0 ? u"-"_s : u"+"_s)
        .arg(std::abs(offset_min) / 60, 2, 10, QChar(u'0'))
        .arg(std::abs(offset_min) % 60, 2, 10, QChar(u'0'));
}

QString dayOnReport(const QDateTime &moment)
{
    return assay::shownDay(moment.date());
}

QString readingOnReport(const ReportContent &content, const run::Reading &reading)
{
    if (const double *absorbance = std::get_if<double>(&reading))
        return localNumbers(absorbanceOnReport(*absorbance), content.decimalSign);
    QStringList points;
    for (const run::TimedAbsorbance &point : std::get<run::ReadingSeries>(reading))
        points << ReporttextWords::tr("%1: %2", "minutes, absorbance")
                      .arg(withUnit(plainText(point.at_min), u"min"_s), absorbanceOnReport(point.absorbance));
    return localNumbers(assay::listed(points), content.decimalSign);
}

QString personOnReport(const ReportAct &act)
{
    QString person =
        act.role.isEmpty() ? act.person : ReporttextWords::tr("%1 (%2)").arg(act.person, act.role);
    if (!act.isSigned)
        return person;
    return *act.isSigned ? ReporttextWords::tr("%1, signed with a passphrase").arg(person)
                         : ReporttextWords::tr("%1, a typed name, unsigned").arg(person);
}

QString checkOnReport(const ReportContent &content, const evaluation::Check &check)
{
    const QString where = check.scope.kind == evaluation::Scope::Kind::Run
                              ? check.scope.measurand
                              : evaluation::scopeText(check.scope, content.run);
    QString said = local(content, check.finding);
    if (const QString consequence = evaluation::checkConsequence(check.id); !consequence.isEmpty())
        said += u' ' + consequence;
    return evaluation::capitalised(where.isEmpty() ? said : ReporttextWords::tr("%1: %2").arg(where, said));
}

QString acceptanceOnReport(const ReportContent &content, const evaluation::Result &result)
{
    const ReportDecision *decision = decisionOf(content);
    const ReportedResult *reported = reportedAs(content, result);
    if (stateOf(content) != ReportState::Accepted || !decision || (reported && !reported->isReported))
        return {};
    const QString &person = decision->act.person;
    if (reported && !reported->reason.isEmpty())
        return ReporttextWords::tr("Accepted by %1: %2").arg(person, reported->reason);
    if (result.verdict == evaluation::Verdict::Reportable)
        return {};
    return decision->act.reason.isEmpty()
               ? ReporttextWords::tr("Accepted by %1.").arg(person)
               : ReporttextWords::tr("Accepted by %1: %2 (one reason for the whole run)")
                     .arg(person, decision->act.reason);
}

QString daysOfTest(const ReportContent &content)
{
    std::vector<QDate> days;
    const auto add = [&days](const QDateTime &moment) {
        if (moment.isValid())
            days.push_back(moment.date());
    };
    if (content.run.startedAt)
        add(*content.run.startedAt);
    if (content.record) {
        for (const ReportReading &reading : content.record->readings) {
            if (!reading.typed.isEmpty())
                add(reading.act.at);
        }
        for (const ReportDilution &dilution : content.record->dilutions)
            add(dilution.at);
        for (const ReportDosing &dosing : content.record->dosings) {
            add(dosing.first);
            add(dosing.last);
        }
    }
    for (const ReportCompanion &companion : content.companions) {
        if (companion.run.startedAt)
            add(*companion.run.startedAt);
    }
    if (days.empty())
        return {};
    const auto [first, last] = std::ranges::minmax_element(days);
    return *first == *last
               ? assay::shownDay(*first)
               : ReporttextWords::tr("%1 to %2").arg(assay::shownDay(*first), assay::shownDay(*last));
}

QString footnoteMark(int number)
{
    QString mark;
    for (int rest = number; rest >= 0; rest = rest / 26 - 1)
        mark.prepend(QChar(u'a' + rest % 26));
    return mark;
}

} // namespace plateau::ui
