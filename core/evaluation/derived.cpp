// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/derived.h"

#include "core/evaluation/checks.h"
#include "core/evaluation/contribution.h"
#include "core/evaluation/derivedbound.h"
#include "core/evaluation/format.h"

#include <algorithm>
#include <deque>
#include <utility>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

/// A run that terms may come from.
struct Source {
    const Layout &layout;
    const Evaluation &evaluation;
    bool own = true;
};

/// A companion, evaluated for itself.
struct EvaluatedCompanion {
    EvaluatedCompanion(const Companion &companion, const Rules &rules)
        : layout(companion.method, companion.run, rules)
        , evaluation(evaluate(companion.method, companion.run, rules))
        , source{layout, evaluation, false}
    {
    }
    // The source refers to the members beside it.
    EvaluatedCompanion(const EvaluatedCompanion &) = delete;
    EvaluatedCompanion &operator=(const EvaluatedCompanion &) = delete;

    Layout layout;
    Evaluation evaluation;
    Source source;
};

/// Of a term: its run, and what the sample is called there.
struct Found {
    const Source *source = nullptr;
    QString sample;
};

/// A term with where it comes from. result: nullptr where that method has no such measurand.
struct Part {
    const assay::DerivedTerm *term = nullptr;
    const Source *source = nullptr;
    const Result *result = nullptr;
};

const Result *findResult(const Evaluation &evaluation, const QString &sample, const QString &measurand)
{
    const auto found = std::ranges::find_if(evaluation.results, [&](const Result &result) {
        return result.sample == sample && result.measurand == measurand && result.terms.empty();
    });
    return found == evaluation.results.end() ? nullptr : &*found;
}

bool holdsSample(const Evaluation &evaluation, const QString &sample)
{
    return std::ranges::find(evaluation.results, sample, &Result::sample) != evaluation.results.end();
}

Check derivedCheck(CheckId id, const Result &derived, const QString &finding, const QString &whatToDo = {})
{
    Check check;
    check.id = id;
    check.scope = {Scope::Kind::Sample, derived.sample, derived.measurand};
    check.passed = false;
    check.finding = finding;
    check.whatToDo = whatToDo;
    return check;
}

/// Forms the derived quantities of one run.
class Derivation
{
public:
    Derivation(const Source &own, const std::deque<EvaluatedCompanion> &companions)
        : m_own(own)
        , m_companions(companions)
    {
    }

    /// Nothing while a term's run is not at hand.
    std::optional<Result> form(const assay::Derived &derived, const QString &sample) const
    {
        std::vector<Part> parts;
        for (const assay::DerivedTerm &term : derived.terms) {
            const std::optional<Found> found = find(term, sample);
            if (!found)
                return std::nullopt;
            parts.push_back(
                {&term, found->source, findResult(found->source->evaluation, found->sample, term.measurand)});
        }
        Result result;
        result.sample = sample;
        result.measurand = derived.id;
        result.unit = unitOf(*run::findSample(m_own.layout.run(), sample));
        addTerms(parts, result);
        if (const QString obstacle = obstacleOf(parts); !obstacle.isEmpty()) {
            result.checks.push_back(
                derivedCheck(CheckId::ReadingMissing, result,
                             CheckText::tr("%1 is not calculated: %2").arg(derived.name, obstacle)));
            return result;
        }
        formFrom(parts, derived.name, result);
        return result;
    }

private:
    std::optional<Found> find(const assay::DerivedTerm &term, const QString &sample) const
    {
        if (term.method.isEmpty() || term.method == m_own.layout.method().id)
            return Found{&m_own, sample};
        const run::Sample &own = *run::findSample(m_own.layout.run(), sample);
        for (const EvaluatedCompanion &companion : m_companions) {
            if (companion.layout.method().id != term.method)
                continue;
            const QStringList names = namesIn(companion, own);
            if (names.isEmpty())
                continue;
            // What had to be repeated there has a name of its own.
            const auto good = std::ranges::find_if(names, [&](const QString &name) {
                const Result *result = findResult(companion.evaluation, name, term.measurand);
                return result && result->verdict == Verdict::Reportable;
            });
            return Found{&companion.source, good == names.end() ? names.front() : *good};
        }
        return std::nullopt;
    }

    /// What the sample is called in the other run: as here, as what it repeats, as a repeat of that.
    static QStringList namesIn(const EvaluatedCompanion &companion, const run::Sample &own)
    {
        const QString origin = own.repeats.isEmpty() ? own.id : own.repeats;
        QStringList names{own.id, origin};
        for (const run::Sample &other : companion.layout.run().samples) {
            if (other.repeats == origin)
                names.append(other.id);
        }
        names.removeDuplicates();
        names.removeIf([&](const QString &name) { return !holdsSample(companion.evaluation, name); });
        return names;
    }

    static void addTerms(const std::vector<Part> &parts, Result &result)
    {
        for (const Part &part : parts) {
            const assay::Method &method = part.source->layout.method();
            result.terms.push_back({method.id, method.version, part.term->measurand, part.term->factor,
                                    part.result ? part.result->value : std::nullopt});
        }
    }

    /// "glucose (glucose-fructose)"
    static QString nameOf(const Part &part)
    {
        const assay::Method &method = part.source->layout.method();
        const assay::Measurand *measurand = assay::findMeasurand(method, part.term->measurand);
        const QString name = measurand ? measurand->name : part.term->measurand;
        return part.source->own ? name : CheckText::tr("%1 (%2)").arg(name, method.id);
    }

    /// Why there can be no value; empty if there can.
    static QString obstacleOf(const std::vector<Part> &parts)
    {
        for (const Part &part : parts) {
            if (!part.result)
                return CheckText::tr("method %1, version %2, has no measurand %3. Evaluate the sample by a "
                                     "version that has it.")
                    .arg(part.source->layout.method().id)
                    .arg(part.source->layout.method().version)
                    .arg(part.term->measurand);
            if (part.result->unit != parts.front().result->unit)
                return CheckText::tr("%1 is in %2 and %3 in %4. Enter the sample in the same form in both "
                                     "runs.")
                    .arg(nameOf(parts.front()), parts.front().result->unit, nameOf(part), part.result->unit);
        }
        for (const Part &part : parts) {
            if (!part.result->value)
                return CheckText::tr("%1 has no value.").arg(nameOf(part));
        }
        return {};
    }

    /// Of parts that all have a value.
    void formFrom(const std::vector<Part> &parts, const QString &name, Result &result) const
    {
        std::vector<SumTerm> terms;
        for (const Part &part : parts)
            terms.push_back({part.term->factor, part.result});
        const bool isOpen = isAnyOnlyKnownToBeLarger(terms);
        const std::optional<SumBound> bound = boundOf(terms);
        if (!isOpen || bound)
            addValue(parts, result);
        else
            result.checks.push_back(
                derivedCheck(CheckId::ReserveLow, result,
                             CheckText::tr("%1 is not calculated: %2 is only known to be larger, which "
                                           "leaves no limit for it. Repeat as advised.")
                                 .arg(name, namesOfOpen(parts))));
        judge(parts, result);
        if (bound)
            (bound->isLower ? result.greaterThan : result.lessThan) = bound->value;
    }

    static QString namesOfOpen(const std::vector<Part> &parts)
    {
        QStringList names;
        for (const Part &part : parts) {
            if (part.result->greaterThan)
                names.append(nameOf(part));
        }
        return names.join(CheckText::tr(" and "));
    }

    static void addValue(const std::vector<Part> &parts, Result &result)
    {
        double sum = 0;
        result.unit = parts.front().result->unit;
        result.n = parts.front().result->n;
        for (const Part &part : parts) {
            sum += part.term->factor * *part.result->value;
            result.n = std::min(result.n, part.result->n);
        }
        result.value = sum;
        const bool stated = std::ranges::all_of(
            parts, [](const Part &part) { return part.source->layout.run().uncertainty.has_value(); });
        if (stated)
            applyUncertainty(result, uncertaintyTerms(sharesOf(parts)));
    }

    static std::vector<RunShare> sharesOf(const std::vector<Part> &parts)
    {
        std::vector<RunShare> shares;
        for (const Part &part : parts) {
            const Layout &layout = part.source->layout;
            auto share = std::ranges::find(shares, &layout, &RunShare::layout);
            if (share == shares.end()) {
                shares.push_back({&layout, run::findSample(layout.run(), part.result->sample), {}});
                share = shares.end() - 1;
            }
            const auto measurand =
                std::ranges::find(layout.method().measurands, part.term->measurand, &assay::Measurand::id) -
                layout.method().measurands.begin();
            Contribution contribution = contributionOf(layout, part.source->evaluation,
                                                       static_cast<size_t>(measurand), *share->sample);
            contribution.factor = part.term->factor;
            share->contributions.push_back(std::move(contribution));
        }
        return shares;
    }

    void judge(const std::vector<Part> &parts, Result &result) const
    {
        result.verdict = Verdict::Reportable;
        for (const Part &part : parts) {
            result.verdict = std::max(result.verdict, part.result->verdict);
            for (const Check &check : part.result->checks)
                takeOver(check, part, result);
            if (part.source->own)
                continue;
            // What failed with the run as a whole is not said elsewhere in this evaluation.
            for (const Check &check : part.source->evaluation.checks) {
                const bool concerned =
                    check.scope.measurand.isEmpty() || check.scope.measurand == part.term->measurand;
                if (check.scope.kind != Scope::Kind::Sample && concerned)
                    takeOver(check, part, result);
            }
        }
        if (result.verdict == Verdict::Reportable)
            result.lessThan = lessThan(parts, result);
    }

    /// The tubes stay behind: they may be those of another run.
    static void takeOver(const Check &check, const Part &part, Result &result)
    {
        if (check.passed)
            return;
        // In full only where it stands nowhere else in this evaluation.
        const QString what =
            part.source->own ? CheckText::tr("%1; see there.").arg(checkPhrase(check.id)) : check.finding;
        Check taken = derivedCheck(check.id, result, CheckText::tr("%1: %2").arg(nameOf(part), what),
                                   part.source->own ? QString() : check.whatToDo);
        if (std::ranges::find(result.checks, taken) == result.checks.end())
            result.checks.push_back(std::move(taken));
    }

    /// Where all that adds is below its own limit, the sum of those limits. Else, where the value is within
    /// its expanded uncertainty of zero or below, the upper end of its interval.
    static std::optional<double> lessThan(const std::vector<Part> &parts, const Result &result)
    {
        double limits = 0;
        bool allBelow = true;
        for (const Part &part : parts) {
            if (part.term->factor < 0)
                continue;
            allBelow = allBelow && part.result->lessThan;
            limits += part.term->factor * part.result->lessThan.value_or(0);
        }
        if (allBelow && limits > 0)
            return limits;
        if (result.expandedUncertainty && *result.value < *result.expandedUncertainty)
            return std::max(*result.value, 0.0) + *result.expandedUncertainty;
        return std::nullopt;
    }

    const Source &m_own;
    const std::deque<EvaluatedCompanion> &m_companions;
};

/// Behind the results of its sample. What failed within the run itself is among the checks already.
void insert(Result result, Evaluation &evaluation)
{
    const auto last = std::ranges::find(evaluation.results.rbegin(), evaluation.results.rend(), result.sample,
                                        &Result::sample);
    evaluation.acceptable = evaluation.acceptable && result.verdict == Verdict::Reportable;
    const bool fromElsewhere = std::ranges::any_of(
        result.terms, [&](const ResultTerm &term) { return term.method != evaluation.methodId; });
    if (fromElsewhere)
        evaluation.checks.insert(evaluation.checks.end(), result.checks.begin(), result.checks.end());
    evaluation.results.insert(last.base(), std::move(result));
}

} // namespace

void addDerived(const Layout &layout, std::span<const Companion> companions, const Rules &rules,
                Evaluation &evaluation)
{
    std::deque<EvaluatedCompanion> evaluated;
    for (const Companion &companion : companions)
        evaluated.emplace_back(companion, rules);
    // Results are looked up while more of them are added: from what was there before.
    const Evaluation measured = evaluation;
    const Source own{layout, measured, true};
    const Derivation derivation(own, evaluated);
    for (const run::Sample &sample : layout.run().samples) {
        if (!holdsSample(measured, sample.id))
            continue;
        for (const assay::Derived &derived : layout.method().derived) {
            if (auto result = derivation.form(derived, sample.id))
                insert(*std::move(result), evaluation);
        }
    }
}

} // namespace plateau::evaluation
