// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/doubts.h"

#include "core/evaluation/checks.h"
#include "core/evaluation/distances.h"
#include "core/evaluation/format.h"
#include "core/evaluation/model.h"
#include "core/evaluation/othertubes.h"
#include "core/evaluation/sampleview.h"
#include "core/evaluation/startbounds.h"

#include <algorithm>
#include <cmath>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

namespace {

/// So many times the reserve is nearly used up (common practice, no source).
constexpr double nearReserve = 1.5;

run::Run withReading(const run::Run &run, int tube, const QString &reading, double absorbance)
{
    run::Run changed = run;
    changed.tubes[static_cast<size_t>(tube)].readings[reading] = absorbance;
    return changed;
}

bool isBlank(run::Role role)
{
    return role == run::Role::Blank || role == run::Role::SampleBlank;
}

/// One reading of one tube under judgement. The run is laid out once, and signals are formed only of the tube
/// and its replicates: this is asked at every key.
class Judgement
{
public:
    Judgement(const assay::Method &method, const run::Run &run, int tube, const QString &reading,
              double absorbance, const Rules &rules, std::optional<double> usualBlank)
        : m_run(withReading(run, tube, reading, absorbance))
        , m_tube(tube)
        , m_reading(reading)
        , m_absorbance(absorbance)
        , m_rules(rules)
        , m_usualBlank(usualBlank)
        , m_layout(method, m_run, rules)
        , m_others(method, m_run, tube, reading)
        , m_replicates(m_others.replicates().tubes)
        , m_context{m_layout, m_evaluation, rules, m_layout.absorbanceUncertainty()}
    {
        for (size_t m = 0; m < method.measurands.size(); ++m) {
            const std::vector<QString> names = assay::readingsOf(method.measurands[m].signal);
            if (std::ranges::find(names, reading) != names.end())
                m_measurands.push_back(m);
        }
        m_evaluation.tubes.resize(m_run.tubes.size() * method.measurands.size());
        for (const size_t measurand : m_measurands)
            formSignals(measurand);
    }

    // Layout and context refer to members beside them.
    Judgement(const Judgement &) = delete;
    Judgement &operator=(const Judgement &) = delete;

    std::vector<Doubt> doubts()
    {
        if (add(Doubt::Kind::Implausible, readingChecks, CheckId::ReadingImplausible) ||
            add(Doubt::Kind::WrongDirection, directionChecks, CheckId::WrongDirection))
            return m_doubts;
        addHighAbsorbance();
        addBlankSignal();
        addDistance();
        addStart();
        addRemarks();
        addNeighbour();
        return m_doubts;
    }

private:
    const assay::Method &method() const { return m_layout.method(); }
    const run::Tube &content() const { return m_run.tubes[static_cast<size_t>(m_tube)]; }
    TubeGroup alone(size_t measurand) const { return {{}, measurand, {m_tube}, m_reading}; }

    void formSignals(size_t measurand)
    {
        const MeasurandTerms &terms = m_layout.measurands()[measurand];
        const InputIndex index(m_layout, 0, 0);
        const std::vector<double> input = inputValues<double>(m_layout, index);
        const Model<double> model(m_layout, terms, index, input);
        std::vector<int> tubes = m_replicates;
        tubes.push_back(m_tube);
        for (const int tube : tubes) {
            const TubeTerm &term = terms.tubes[static_cast<size_t>(tube)];
            TubeValue &value =
                m_evaluation.tubes[static_cast<size_t>(tube) * m_layout.measurands().size() + measurand];
            value.index = tube;
            value.role = term.role;
            value.totalVolume_mL = term.totalVolume_mL;
            value.sampleVolume_mL = term.sampleVolume_mL;
            if (!term.computable())
                continue;
            value.signal = model.signal(tube);
            if (!isBlank(term.role) && term.hasNetSignal())
                value.netSignal = model.netSignal(tube);
        }
    }

    bool has(Doubt::Kind kind) const
    {
        return std::ranges::find(m_doubts, kind, &Doubt::kind) != m_doubts.end();
    }

    void add(Doubt::Kind kind, const QString &sentence, bool asks)
    {
        if (!has(kind))
            m_doubts.push_back({kind, sentence, asks});
    }

    /// A failed check of that id, as any measurand sees it that rests on the reading.
    bool add(Doubt::Kind kind, std::vector<Check> (*look)(const CheckContext &, const TubeGroup &),
             CheckId id)
    {
        for (const size_t measurand : m_measurands) {
            for (const Check &check : look(m_context, alone(measurand))) {
                if (check.id == id && !check.passed)
                    add(kind, capitalised(check.message()), true);
            }
        }
        return has(kind);
    }

    void addHighAbsorbance()
    {
        const auto &limit = method().window.maxAbsorbance;
        if (!limit || m_absorbance <= *limit)
            return;
        const QStringList texts = comparedTexts(m_absorbance, {*limit}, 3);
        add(Doubt::Kind::AbsorbanceHigh,
            CheckText::tr("%1: %2 is %3, above the photometer's limit of %4. An absorbance that high is not "
                          "proportional to concentration.")
                .arg(capitalised(tubeName(m_tube)), m_reading, texts[0], texts[1]),
            true);
    }

    void addBlankSignal()
    {
        const std::optional<double> limit = method().acceptance.maxBlankSignal;
        if (content().role != run::Role::Blank || !limit)
            return;
        for (const size_t measurand : m_measurands) {
            const std::optional<double> signal = m_context.value(m_tube, measurand).signal;
            if (!signal || std::abs(*signal) <= *limit + 1e-12)
                continue;
            const QStringList texts = comparedTexts(*signal, {*limit}, 3);
            add(Doubt::Kind::BlankHigh,
                CheckText::tr("%1: with this the blank's signal is %2, and the method allows %3. Look for a "
                              "slipped decimal point or the wrong tube.")
                    .arg(capitalised(tubeName(m_tube)), texts[0], texts[1]),
                true);
        }
    }

    /// Of the tube alone; a tube without a sample has one of nothing.
    SampleView viewOf(size_t measurand) const
    {
        static const run::Sample none;
        const run::Sample *sample = run::findSample(m_run, content().sample);
        const run::Sample &held = sample ? *sample : none;
        return {m_context, held, measurand, {Scope::Kind::Sample, held.id, {}}, u"g/L"_s, {m_tube}, {}, {}};
    }

    void addDistance()
    {
        if (const auto far = farInReading(m_others, m_tube, m_reading, m_absorbance, m_rules)) {
            add(far->kind, far->sentence, far->asks);
            return;
        }
        if (const auto far = m_usualBlank ? farFromUsual(m_others, m_tube, m_reading, m_absorbance, *m_usualBlank)
                                          : std::nullopt)
            add(far->kind, far->sentence, far->asks);
        for (const size_t measurand : m_measurands) {
            if (const auto far = farInSignal(viewOf(measurand), m_tube, m_replicates))
                add(far->kind, far->sentence, far->asks);
        }
    }

    /// Nothing is beside it yet, so the method alone says what is plausible; but not where the blanks of earlier runs
    /// lay beyond that as well.
    void addStart()
    {
        if (!m_others.isFirstReading() || !m_others.all().isEmpty())
            return;
        addMissingReagent();
        if (has(Doubt::Kind::ReagentMissing) || has(Doubt::Kind::FarFromOthers) ||
            has(Doubt::Kind::AbsorbanceHigh) || m_measurands.empty())
            return; // said already, or no signal begins with it
        const double *usual = m_others.isClear() && m_usualBlank ? &*m_usualBlank : nullptr;
        const auto least = leastAtStart(method(), m_run);
        if (least && isTenthOf(*least, m_absorbance) && !(usual && isTenthOf(*least, *usual))) {
            const QStringList texts = comparedTexts(m_absorbance, {*least}, 3);
            add(Doubt::Kind::ReagentMissing,
                CheckText::tr("%1: %2 is %3, and %4 has to be there at the start for the largest signal and what "
                              "must remain. Look for a slipped decimal point or a reagent left out.")
                    .arg(capitalised(tubeName(m_tube)), m_reading, texts[0], texts[1]),
                true);
        }
        const auto most = mostAtStart(method());
        if (most && m_others.isClear() && m_absorbance > *most && !(usual && *usual > *most)) {
            const QStringList texts = comparedTexts(m_absorbance, {*most}, 3);
            add(Doubt::Kind::StartHigh,
                CheckText::tr("%1: %2 is %3, and more than %4 at the start leaves no room for the largest signal. Look "
                              "for a slipped decimal point, and that the photometer was set to zero.")
                    .arg(capitalised(tubeName(m_tube)), m_reading, texts[0], texts[1]),
                true);
        }
    }

    void addMissingReagent()
    {
        const auto &reserve = method().window.reserveAbsorbance;
        if (method().direction != assay::Direction::Falling || !reserve || m_absorbance >= *reserve - 1e-12)
            return;
        const QStringList texts = comparedTexts(m_absorbance, {*reserve}, 3);
        add(Doubt::Kind::ReagentMissing,
            CheckText::tr("%1: %2 is %3, and %4 must remain when the reaction is over. Look for a slipped "
                          "decimal point or a reagent left out.")
                .arg(capitalised(tubeName(m_tube)), m_reading, texts[0], texts[1]),
            true);
    }

    void addRemarks()
    {
        for (const size_t measurand : m_measurands) {
            addNearReserve(measurand);
            const bool repeatable = !content().sample.isEmpty() && content().role != run::Role::SampleBlank;
            std::vector<Check> checks = readingChecks(m_context, alone(measurand));
            if (repeatable) {
                for (Check &check : windowChecks(m_context, alone(measurand)))
                    checks.push_back(std::move(check));
                addAdvice(viewOf(measurand), checks);
            }
            addFailed(checks, CheckId::ReserveLow, Doubt::Kind::ReserveLow, m_replicates.empty());
            addSlipOfUsedUp(measurand);
            addFailed(checks, CheckId::SignalHigh, Doubt::Kind::SignalHigh);
            // A replicate far away says why.
            if (!has(Doubt::Kind::FarFromReplicate))
                addFailed(checks, CheckId::SignalLow, Doubt::Kind::SignalLow);
        }
    }

    void addFailed(const std::vector<Check> &checks, CheckId id, Doubt::Kind kind, bool asks = false)
    {
        const auto found = std::ranges::find_if(
            checks, [id](const Check &check) { return check.id == id && !check.passed; });
        if (found != checks.end())
            add(kind, capitalised(found->message()), asks);
    }

    /// A slipped decimal point looks like a reagent that is used up: ten times the value would be what a tube shows
    /// in which some of it is left.
    void addSlipOfUsedUp(size_t measurand)
    {
        const auto usedUp = std::ranges::find(m_doubts, Doubt::Kind::ReserveLow, &Doubt::kind);
        const auto before = content().readings.find(assay::readingsOf(method().measurands[measurand].signal).front());
        if (usedUp == m_doubts.end() || !usedUp->asks || m_slipSaid || before == content().readings.end())
            return;
        const double meant = 10 * m_absorbance;
        const auto *series = std::get_if<run::ReadingSeries>(&before->second);
        const double start = series ? series->back().absorbance : std::get<double>(before->second);
        if (meant < *method().window.reserveAbsorbance || meant > start)
            return;
        usedUp->sentence = CheckText::tr("%1 Or the decimal point slipped: %2 would be plausible here.")
                               .arg(usedUp->sentence, absorbanceText(meant));
        m_slipSaid = true;
    }

    void addNearReserve(size_t measurand)
    {
        const auto &reserve = method().window.reserveAbsorbance;
        const bool falling = method().direction == assay::Direction::Falling;
        const QString later = assay::laterReading(method().measurands[measurand].signal);
        if (!falling || !reserve || m_reading != later || m_absorbance < *reserve ||
            m_absorbance >= nearReserve * *reserve - 1e-12)
            return;
        const QStringList texts = comparedTexts(m_absorbance, {*reserve}, 3);
        add(Doubt::Kind::ReserveNear,
            CheckText::tr("%1: %2 is %3, and %4 must remain: the reagent is nearly used up.")
                .arg(capitalised(tubeName(m_tube)), m_reading, texts[0], texts[1]),
            false);
    }

    void addNeighbour()
    {
        const std::optional<int> neighbour = m_others.neighbour();
        if (!neighbour || m_others.absorbanceOf(*neighbour) != m_absorbance)
            return;
        add(Doubt::Kind::SameAsNeighbour,
            CheckText::tr("%1: %2 is %3, to the last digit what %4 shows, which was read just before and "
                          "holds something else. Make sure that the cuvette was changed.")
                .arg(capitalised(tubeName(m_tube)), m_reading, plainText(m_absorbance), tubeName(*neighbour)),
            false);
    }

    const run::Run m_run;
    int m_tube;
    const QString m_reading;
    double m_absorbance;
    const Rules m_rules;
    const std::optional<double> m_usualBlank;
    Layout m_layout;
    OtherTubes m_others;
    std::vector<int> m_replicates;
    Evaluation m_evaluation;
    CheckContext m_context;
    /// Those that rest on the reading.
    std::vector<size_t> m_measurands;
    std::vector<Doubt> m_doubts;
    bool m_slipSaid = false;
};

} // namespace

std::vector<Doubt> doubtsAbout(const assay::Method &method, const run::Run &run, int tube,
                               const QString &reading, double absorbance, const Rules &rules,
                               std::optional<double> usualBlank)
{
    std::vector<Doubt> doubts = Judgement(method, run, tube, reading, absorbance, rules, usualBlank).doubts();
    std::ranges::stable_sort(doubts, {}, &Doubt::kind);
    return doubts;
}

QString doubtAbout(const assay::Method &method, const run::Run &run, int tube, const QString &reading,
                   double absorbance, const Rules &rules, std::optional<double> usualBlank)
{
    for (const Doubt &doubt : doubtsAbout(method, run, tube, reading, absorbance, rules, usualBlank)) {
        if (doubt.asks)
            return doubt.sentence;
    }
    return {};
}

} // namespace plateau::evaluation
