// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/limitsdraft.h"

#include "core/assay/localday.h"
#include "ui/books/lotwords.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/numberreader.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using namespace evaluation;

namespace {

struct LimitsDraftWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LimitsDraft)
};

QString numberText(const std::optional<double> &number)
{
    return number ? keyedText(*number) : QString();
}

/// What cannot be read has a sentence of its own already; what its stand-in would say is left out.
void addMeaning(const assay::Problems &found, assay::Problems &problems)
{
    const assay::Problems typed = problems;
    for (const assay::Problem &problem : found) {
        if (std::ranges::none_of(
                typed, [&](const assay::Problem &other) { return other.pointer == problem.pointer; }))
            problems.push_back(problem);
    }
}

bool isSame(const Specification &limit, const std::vector<Specification> &others)
{
    std::vector<Specification> all = others;
    all.push_back(limit);
    const QString own = assay::pointerTo(u"/specifications"_s, static_cast<qsizetype>(others.size()));
    const assay::Problems found = problemsOf(all);
    return std::ranges::any_of(found, [&](const assay::Problem &problem) { return problem.pointer == own; });
}

} // namespace

LimitDraft draftOf(const Specification &limit)
{
    LimitDraft draft;
    draft.product = limit.product;
    draft.measurand = limit.measurand;
    draft.kind = limit.kind;
    draft.lower = numberText(limit.lower);
    draft.upper = numberText(limit.upper);
    draft.unit = limit.unit;
    draft.source = limit.source;
    draft.date = assay::shownDay(limit.date);
    draft.rule = limit.rule;
    if (limit.guard) {
        draft.guard = limit.guard->kind;
        if (limit.guard->kind != GuardBand::Kind::OneSided95)
            draft.guardSize = keyedText(limit.guard->size);
    }
    return draft;
}

LimitOutcome limitOf(const LimitDraft &draft, const std::vector<Specification> &others)
{
    LimitOutcome outcome;
    const NumberReader reader(outcome.problems);
    Specification &limit = outcome.limit;
    limit.product = draft.product.simplified();
    limit.measurand = draft.measurand.simplified();
    if (limit.product.isEmpty())
        reader.complain(u"/product"_s, LimitsDraftWords::tr("is empty; say what it is a limit of"));
    if (limit.measurand.isEmpty())
        reader.complain(u"/measurand"_s, LimitsDraftWords::tr("is empty; say what is measured"));
    limit.kind = draft.kind;
    if (draft.kind == LimitKind::Minimum || draft.kind == LimitKind::Range)
        limit.lower = reader.number(draft.lower, u"/lower"_s);
    if (draft.kind != LimitKind::Minimum)
        limit.upper = reader.number(draft.upper, u"/upper"_s);
    limit.unit = draft.unit;
    limit.source = draft.source.trimmed();
    limit.rule = draft.rule;
    if (draft.rule != DecisionRule::SimpleAcceptance) {
        limit.guard = GuardBand{draft.guard, 1};
        if (draft.guard != GuardBand::Kind::OneSided95)
            limit.guard->size = reader.number(draft.guardSize, u"/guard/size"_s);
    }
    const auto day = parseDay(draft.date);
    if (const DayFault *fault = std::get_if<DayFault>(&day))
        reader.complain(u"/date"_s, dayFaultSentence(*fault));
    else
        limit.date = std::get<QDate>(day);
    addMeaning(problemsOf(limit), outcome.problems);
    if (outcome.problems.empty() && isSame(limit, others))
        reader.complain(
            u"/product"_s,
            LimitsDraftWords::tr("this limit from this source is in the list already; change that one"));
    return outcome;
}

LimitField limitField(const QString &pointer, LimitKind kind)
{
    if (pointer == u"/product"_s)
        return {u"limitProduct"_s, LimitsDraftWords::tr("Product")};
    if (pointer == u"/measurand"_s)
        return {u"limitMeasurand"_s, LimitsDraftWords::tr("Measurand")};
    if (pointer == u"/lower"_s)
        return {u"limitLower"_s, LimitsDraftWords::tr("Lower limit")};
    if (pointer == u"/upper"_s)
        return {u"limitUpper"_s, kind == LimitKind::LabelThreshold ? LimitsDraftWords::tr("Threshold")
                                                                   : LimitsDraftWords::tr("Upper limit")};
    if (pointer == u"/source"_s)
        return {u"limitSource"_s, LimitsDraftWords::tr("Source")};
    if (pointer == u"/date"_s)
        return {u"limitDate"_s, LimitsDraftWords::tr("As of")};
    return {u"limitGuardSize"_s, LimitsDraftWords::tr("Guard band")};
}

} // namespace plateau::ui
