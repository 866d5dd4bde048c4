// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/words.h"

#include "core/assay/matrix.h"
#include "core/notebook/notebook.h"
#include "core/notebook/sentence.h"

#include <algorithm>
#include <array>

namespace plateau::notebook {

using namespace Qt::StringLiterals;

namespace {

template <class T> struct Entry {
    T value;
    QLatin1StringView word;
};

constexpr std::array<Entry<run::Calibration>, 3> calibrations{{
    {run::Calibration::Absorptivity, "absorptivity"_L1},
    {run::Calibration::Standard, "standard"_L1},
    {run::Calibration::Line, "line"_L1},
}};
constexpr std::array<Entry<run::Form>, 2> forms{{
    {run::Form::Liquid, "liquid"_L1},
    {run::Form::Solid, "solid"_L1},
}};
constexpr std::array<Entry<DecisionKind>, 2> decisions{{
    {DecisionKind::Accepted, "accepted"_L1},
    {DecisionKind::Rejected, "rejected"_L1},
}};
constexpr std::array<Entry<SampleDecisionKind>, 3> sampleDecisions{{
    {SampleDecisionKind::Accepted, "accepted"_L1},
    {SampleDecisionKind::Rejected, "rejected"_L1},
    {SampleDecisionKind::Repeat, "repeat"_L1},
}};
constexpr std::array<Entry<PersonRole>, 3> roles{{
    {PersonRole::Analyst, "analyst"_L1},
    {PersonRole::Reviewer, "reviewer"_L1},
    {PersonRole::Head, "head"_L1},
}};
constexpr std::array<Entry<ReportRule>, 3> reportRules{{
    {ReportRule::LastAccepted, "lastAccepted"_L1},
    {ReportRule::MeanOfAccepted, "meanOfAccepted"_L1},
    {ReportRule::Named, "named"_L1},
}};
constexpr std::array<Entry<MethodActKind>, 4> methodActs{{
    {MethodActKind::Saved, "saved"_L1},
    {MethodActKind::Imported, "imported"_L1},
    {MethodActKind::Retired, "retired"_L1},
    {MethodActKind::Reinstated, "reinstated"_L1},
}};
constexpr std::array<Entry<MarkKind>, 4> marks{{
    {MarkKind::Done, "done"_L1},
    {MarkKind::Undone, "undone"_L1},
    {MarkKind::Spoilt, "spoilt"_L1},
    {MarkKind::Unspoilt, "unspoilt"_L1},
}};
constexpr std::array<Entry<ReadingOrigin::Kind>, 4> origins{{
    {ReadingOrigin::Kind::Pasted, "pasted"_L1},
    {ReadingOrigin::Kind::File, "file"_L1},
    {ReadingOrigin::Kind::Serial, "serial"_L1},
    {ReadingOrigin::Kind::Network, "network"_L1},
}};
constexpr std::array<Entry<LotMovementKind>, 4> movements{{
    {LotMovementKind::Received, "received"_L1},
    {LotMovementKind::Used, "used"_L1},
    {LotMovementKind::Discarded, "discarded"_L1},
    {LotMovementKind::Corrected, "corrected"_L1},
}};

Failure unknownWord(const QString &word)
{
    return Failure(
        Failure::Kind::Damaged,
        Sentence::tr("The notebook is damaged: it holds the word \"%1\" where none of its own words is; "
                     "go back to the latest backup.")
            .arg(word.left(40)));
}

template <class T, size_t n> QString wordOf(const std::array<Entry<T>, n> &entries, T value)
{
    return std::ranges::find(entries, value, &Entry<T>::value)->word;
}

template <class T, size_t n> T valueOf(const std::array<Entry<T>, n> &entries, const QString &word)
{
    const auto found =
        std::ranges::find_if(entries, [&](const Entry<T> &entry) { return entry.word == word; });
    if (found == entries.end())
        throw unknownWord(word);
    return found->value;
}

} // namespace

QString calibrationWord(run::Calibration calibration)
{
    return wordOf(calibrations, calibration);
}

run::Calibration calibrationOf(const QString &word)
{
    return valueOf(calibrations, word);
}

QString formWord(run::Form form)
{
    return wordOf(forms, form);
}

run::Form formOf(const QString &word)
{
    return valueOf(forms, word);
}

run::Role roleOf(const QString &word)
{
    const auto role = run::roleFromWord(word);
    if (!role)
        throw unknownWord(word);
    return *role;
}

QString decisionWord(DecisionKind kind)
{
    return wordOf(decisions, kind);
}

DecisionKind decisionKindOf(const QString &word)
{
    return valueOf(decisions, word);
}

QString matrixWord(assay::Matrix matrix)
{
    return assay::matrixWord(matrix);
}

assay::Matrix matrixOf(const QString &word)
{
    for (const auto &[known, matrix] : assay::matrixWords()) {
        if (known == word)
            return matrix;
    }
    throw unknownWord(word);
}

planning::UncertaintyInput inputOf(const QString &word)
{
    const auto input = planning::inputFromWord(word);
    if (!input)
        throw unknownWord(word);
    return *input;
}

QString markWord(MarkKind kind)
{
    return wordOf(marks, kind);
}

MarkKind markKindOf(const QString &word)
{
    return valueOf(marks, word);
}

QString originWord(ReadingOrigin::Kind kind)
{
    return wordOf(origins, kind);
}

ReadingOrigin::Kind originOf(const QString &word)
{
    return valueOf(origins, word);
}

QString movementWord(LotMovementKind kind)
{
    return wordOf(movements, kind);
}

LotMovementKind movementKindOf(const QString &word)
{
    return valueOf(movements, word);
}

QString personRoleWord(PersonRole role)
{
    return wordOf(roles, role);
}

PersonRole personRoleOf(const QString &word)
{
    return valueOf(roles, word);
}

QString sampleDecisionWord(SampleDecisionKind kind)
{
    return wordOf(sampleDecisions, kind);
}

SampleDecisionKind sampleDecisionKindOf(const QString &word)
{
    return valueOf(sampleDecisions, word);
}

QString reportRuleWord(ReportRule rule)
{
    return wordOf(reportRules, rule);
}

ReportRule reportRuleOf(const QString &word)
{
    return valueOf(reportRules, word);
}

QString methodActWord(MethodActKind kind)
{
    return wordOf(methodActs, kind);
}

MethodActKind methodActKindOf(const QString &word)
{
    return valueOf(methodActs, word);
}

} // namespace plateau::notebook
