// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/specification.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"

#include <QCoreApplication>
#include <QStringList>

#include <map>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct SpecificationSoundnessWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::evaluation::SpecificationSoundness)
};

void checkLimit(const QString &pointer, const std::optional<double> &limit, bool wanted, bool mayBeZero,
                Problems &problems)
{
    if (!limit) {
        if (wanted)
            problems.push_back(error(
                pointer, SpecificationSoundnessWording::tr("is missing; a limit of this kind needs it")));
        return;
    }
    if (!wanted) {
        problems.push_back(error(pointer, SpecificationSoundnessWording::tr(
                                              "has no meaning for a limit of this kind; leave it out")));
        return;
    }
    if (mayBeZero)
        checkWithin(problems, pointer, *limit, 0, largestLimit, {});
    else
        checkAbove(problems, pointer, *limit, 0, largestLimit, {});
}

void checkLimits(const Specification &specification, Problems &problems)
{
    const bool range = specification.kind == LimitKind::Range;
    const auto before = problems.size();
    checkLimit(u"/lower"_s, specification.lower, range || specification.kind == LimitKind::Minimum, range,
               problems);
    checkLimit(u"/upper"_s, specification.upper, specification.kind != LimitKind::Minimum, false, problems);
    if (range && problems.size() == before && !(*specification.lower < *specification.upper))
        problems.push_back(
            error(u"/upper"_s,
                  SpecificationSoundnessWording::tr("must be greater than lower: %1 is not greater than %2")
                      .arg(shown(*specification.upper), shown(*specification.lower))));
}

/// A band that leaves nothing inside is a slip of the pen.
void checkAbsolute(const Specification &specification, Problems &problems)
{
    const double size = specification.guard->size;
    if (!(size > 0 && size <= largestLimit)) {
        checkAbove(problems, u"/guard/size"_s, size, 0, largestLimit, reportUnitWord(specification.unit));
        return;
    }
    if (specification.rule == DecisionRule::GuardedRejection || !specification.upper)
        return;
    const double room = specification.kind == LimitKind::Range && specification.lower
                            ? (*specification.upper - *specification.lower) / 2
                            : *specification.upper;
    if (room > 0 && !(size < room))
        problems.push_back(error(u"/guard/size"_s, SpecificationSoundnessWording::tr(
                                                       "leaves nothing inside the limits; must be less "
                                                       "than %1, not %2")
                                                       .arg(shown(room), shown(size))));
}

void checkGuard(const Specification &specification, Problems &problems)
{
    const bool guarded = specification.rule != DecisionRule::SimpleAcceptance;
    if (guarded != specification.guard.has_value()) {
        problems.push_back(error(
            u"/guard"_s,
            guarded
                ? SpecificationSoundnessWording::tr("is missing; this decision rule needs a guard band")
                : SpecificationSoundnessWording::tr("has no meaning with simple acceptance; leave it out")));
        return;
    }
    if (!guarded)
        return;
    switch (specification.guard->kind) {
    case GuardBand::Kind::OneSided95:
        if (specification.guard->size != 1)
            problems.push_back(error(u"/guard/size"_s, SpecificationSoundnessWording::tr(
                                                           "has no meaning with a one-sided guard band "
                                                           "of 95 %; leave it out")));
        return;
    case GuardBand::Kind::ExpandedUncertainty:
        checkAbove(problems, u"/guard/size"_s, specification.guard->size, 0, mostExpandedUncertainties, {});
        return;
    case GuardBand::Kind::Absolute:
        checkAbsolute(specification, problems);
        return;
    }
}

} // namespace

Problems problemsOf(const Specification &specification)
{
    Problems problems;
    checkLabel(problems, u"/product"_s, specification.product,
               SpecificationSoundnessWording::tr("the product"));
    checkLabel(problems, u"/measurand"_s, specification.measurand,
               SpecificationSoundnessWording::tr("the measurand"));
    checkLimits(specification, problems);
    if (specification.source.trimmed().isEmpty())
        problems.push_back(
            error(u"/source"_s, SpecificationSoundnessWording::tr("is blank; say where the limit stands")));
    else
        checkProse(problems, u"/source"_s, specification.source,
                   SpecificationSoundnessWording::tr("the source"));
    if (!specification.date.isValid())
        problems.push_back(error(
            u"/date"_s, SpecificationSoundnessWording::tr("is not a date; say when the source was read")));
    checkGuard(specification, problems);
    return problems;
}

Problems problemsOf(const std::vector<Specification> &specifications)
{
    const QString list = u"/specifications"_s;
    Problems problems;
    if (specifications.size() > mostSpecifications)
        problems.push_back(
            error(list, SpecificationSoundnessWording::tr("lists %1 limits; at most %2 are allowed")
                            .arg(specifications.size())
                            .arg(mostSpecifications)));
    std::map<QStringList, std::size_t> taken;
    for (std::size_t i = 0; i < specifications.size(); ++i) {
        const Specification &specification = specifications[i];
        const QString pointer = pointerTo(list, static_cast<qsizetype>(i));
        for (Problem problem : problemsOf(specification)) {
            problem.pointer.prepend(pointer);
            problems.push_back(std::move(problem));
        }
        const auto key = [](const QString &text) { return text.simplified().toCaseFolded(); };
        const auto [first, isNew] =
            taken.try_emplace({key(specification.product), key(specification.measurand),
                               limitKindWord(specification.kind), key(specification.source)},
                              i);
        if (!isNew)
            problems.push_back(error(pointer, SpecificationSoundnessWording::tr(
                                                  "is the same limit from the same source as entry %1; "
                                                  "keep one of them")
                                                  .arg(first->second + 1)));
    }
    return problems;
}

} // namespace plateau::evaluation
