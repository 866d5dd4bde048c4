// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/reviewrulewords.h"

#include "core/evaluation/format.h"
#include "core/notebook/benchwork.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ReviewRuleWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ReviewRuleWords)
};

QStringList workedAtTheBench(const std::vector<notebook::AuditEntry> &history)
{
    QStringList names;
    for (const notebook::AuditEntry &entry : history) {
        if (notebook::isBenchWork(entry.action) && !names.contains(entry.person, Qt::CaseInsensitive))
            names << entry.person;
    }
    return names;
}

QString whoMay(const QStringList &names)
{
    return names.isEmpty() ? ReviewRuleWords::tr("Nobody who is set up may decide it.")
                           : ReviewRuleWords::tr("May decide: %1.").arg(evaluation::andJoined(names));
}

} // namespace

QStringList whoMayDecide(const planning::ReviewRules &rules, const std::vector<notebook::Person> &persons,
                         const std::vector<notebook::AuditEntry> &history)
{
    const QStringList worked = rules.secondPersonReviews ? workedAtTheBench(history) : QStringList();
    QStringList names;
    for (const notebook::Person &person : persons) {
        const bool mayByRole = !rules.reviewerDecides || person.role != notebook::PersonRole::Analyst;
        if (!person.retired && mayByRole && !worked.contains(person.name, Qt::CaseInsensitive))
            names << person.name;
    }
    return names;
}

QString whoMayNotDecide(const planning::ReviewRules &rules, const std::vector<notebook::Person> &persons,
                        const std::vector<notebook::AuditEntry> &history)
{
    QStringList sentences;
    if (rules.secondPersonReviews) {
        if (const QStringList names = workedAtTheBench(history); !names.isEmpty())
            sentences << (names.size() == 1
                              ? ReviewRuleWords::tr("Nobody reviews their own run: %1 worked on this one.")
                              : ReviewRuleWords::tr("Nobody reviews their own run: %1 have worked on this one."))
                             .arg(evaluation::andJoined(names));
    }
    QStringList analysts;
    for (const notebook::Person &person : persons) {
        if (!person.retired && person.role == notebook::PersonRole::Analyst)
            analysts << person.name;
    }
    if (rules.reviewerDecides && !analysts.isEmpty())
        sentences << (analysts.size() == 1
                          ? ReviewRuleWords::tr("A reviewer or a head decides here; %1 is an analyst.")
                          : ReviewRuleWords::tr("A reviewer or a head decides here; %1 are analysts."))
                         .arg(evaluation::andJoined(analysts));
    if (!sentences.isEmpty() && !persons.empty())
        sentences << whoMay(whoMayDecide(rules, persons, history));
    return sentences.join(u' ');
}

QStringList acceptanceReasons()
{
    return {ReviewRuleWords::tr("accepted: read again, and the reading is right"),
            ReviewRuleWords::tr("accepted: the control is within its limits"),
            ReviewRuleWords::tr("accepted: the tube concerned is left out"),
            ReviewRuleWords::tr("accepted: for orientation only, not for a report")};
}

} // namespace plateau::ui
