// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/background.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/assay/matrix.h"

#include <QCoreApplication>
#include <QSet>

#include <algorithm>
#include <cmath>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

struct BackgroundWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::assay::Background)
};

void checkTypicalRanges(const Method &method, Problems &problems)
{
    for (std::size_t i = 0; i < method.measurands.size(); ++i) {
        const auto &range = method.measurands[i].typicalRange_g_per_L;
        if (range)
            checkInterval(
                problems,
                pointerTo(pointerTo(u"/measurands"_s, static_cast<qsizetype>(i)), u"typicalRange_g_per_L"_s),
                *range, 0, limit::concentration_g_per_L, u"g/L"_s);
    }
}

void checkTerm(const Method &method, const DerivedTerm &term, const QString &pointer, Problems &problems)
{
    checkLabel(problems, pointerTo(pointer, u"measurand"_s), term.measurand,
               BackgroundWording::tr("the measurand"));
    if (!term.method.isEmpty())
        checkLabel(problems, pointerTo(pointer, u"method"_s), term.method,
                   BackgroundWording::tr("the method's id"));
    const bool own = term.method.isEmpty() || term.method == method.id;
    if (own && !term.measurand.isEmpty() && !findMeasurand(method, term.measurand))
        problems.push_back(
            error(pointerTo(pointer, u"measurand"_s),
                  BackgroundWording::tr("must be a measurand of this method, and %1 is none; name the other "
                                        "method it belongs to, or one of this method's")
                      .arg(quoted(term.measurand))));
    if (!std::isfinite(term.factor) || term.factor == 0)
        problems.push_back(
            error(pointerTo(pointer, u"factor"_s),
                  BackgroundWording::tr("must be a number other than 0, not %1; leave out a term "
                                        "that does not count")
                      .arg(shown(term.factor))));
}

void checkDerived(const Method &method, Problems &problems)
{
    QSet<QString> taken;
    for (const Measurand &measurand : method.measurands)
        taken.insert(measurand.id);
    for (std::size_t i = 0; i < method.derived.size(); ++i) {
        const Derived &derived = method.derived[i];
        const QString pointer = pointerTo(u"/derived"_s, static_cast<qsizetype>(i));
        checkLabel(problems, pointerTo(pointer, u"id"_s), derived.id, BackgroundWording::tr("the id"));
        checkLabel(problems, pointerTo(pointer, u"name"_s), derived.name, BackgroundWording::tr("the name"));
        if (!derived.id.isEmpty() && taken.contains(derived.id))
            problems.push_back(error(pointerTo(pointer, u"id"_s),
                                     BackgroundWording::tr("the id %1 is taken by a measurand or an "
                                                           "earlier derived result; give each its own")
                                         .arg(quoted(derived.id))));
        taken.insert(derived.id);
        const QString terms = pointerTo(pointer, u"terms"_s);
        if (derived.terms.empty())
            problems.push_back(
                error(terms, BackgroundWording::tr("a derived result needs at least one term")));
        for (std::size_t j = 0; j < derived.terms.size(); ++j)
            checkTerm(method, derived.terms[j], pointerTo(terms, static_cast<qsizetype>(j)), problems);
    }
}

void checkStandard(const UsualStandard &standard, Problems &problems)
{
    if (standard.concentration_g_per_L)
        checkAbove(problems, u"/standard/concentration_g_per_L"_s, *standard.concentration_g_per_L, 0,
                   limit::concentration_g_per_L, u"g/L"_s);
    if (standard.lossPerHour && !(*standard.lossPerHour >= 0 && *standard.lossPerHour < 1))
        problems.push_back(
            error(u"/standard/lossPerHour"_s,
                  BackgroundWording::tr("must be a fraction per hour from 0 to below 1, not %1")
                      .arg(shown(*standard.lossPerHour))));
}

void checkTubes(const UsualTubes &tubes, Problems &problems)
{
    checkWithin(problems, u"/tubes/blanks"_s, tubes.blanks, 0, limit::tubesOfARack, {});
    checkWithin(problems, u"/tubes/replicates"_s, tubes.replicates, 1, limit::replicates, {});
    checkWithin(problems, u"/tubes/standards"_s, tubes.standards, 0, limit::tubesOfARack, {});
}

void checkText(const QString &text, const QString &pointer, const QString &what, Problems &problems)
{
    if (text.trimmed().isEmpty())
        problems.push_back(
            error(pointer, BackgroundWording::tr("%1 is blank; write it out or leave it out").arg(what)));
    checkProse(problems, pointer, text, what);
}

void checkTexts(const std::vector<QString> &texts, const QString &pointer, const QString &what,
                Problems &problems)
{
    for (std::size_t i = 0; i < texts.size(); ++i)
        checkText(texts[i], pointerTo(pointer, static_cast<qsizetype>(i)), what, problems);
}

void checkPreparation(const Method &method, Problems &problems)
{
    std::vector<Matrix> seen;
    for (std::size_t i = 0; i < method.samplePreparation.size(); ++i) {
        const Preparation &preparation = method.samplePreparation[i];
        const QString pointer = pointerTo(u"/samplePreparation"_s, static_cast<qsizetype>(i));
        checkText(preparation.text, pointerTo(pointer, u"text"_s), BackgroundWording::tr("the preparation"),
                  problems);
        if (std::ranges::find(seen, preparation.matrix) != seen.end())
            problems.push_back(
                error(pointerTo(pointer, u"matrix"_s),
                      BackgroundWording::tr("%1 has its preparation already; say all of it in one text")
                          .arg(quoted(matrixWord(preparation.matrix)))));
        seen.push_back(preparation.matrix);
    }
}

} // namespace

void checkBackground(const Method &method, Problems &problems)
{
    checkTypicalRanges(method, problems);
    checkDerived(method, problems);
    if (method.standard)
        checkStandard(*method.standard, problems);
    if (method.tubes)
        checkTubes(*method.tubes, problems);
    checkTexts(method.reactions, u"/reactions"_s, BackgroundWording::tr("the reaction"), problems);
    checkTexts(method.interferences, u"/interferences"_s, BackgroundWording::tr("the interference"),
               problems);
    checkPreparation(method, problems);
    checkTexts(method.cautions, u"/cautions"_s, BackgroundWording::tr("the caution"), problems);
}

} // namespace plateau::assay
