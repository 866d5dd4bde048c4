// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/listed.h"
#include "core/evaluation/checks.h"
#include "core/evaluation/format.h"

#include <algorithm>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

CheckBuilder::CheckBuilder(CheckId id, const TubeGroup &group, QString passedFinding)
{
    m_check.id = id;
    m_check.scope = group.scope;
    m_check.finding = std::move(passedFinding);
}

void CheckBuilder::fail(int tube, const QString &detail)
{
    m_check.passed = false;
    if (std::ranges::find(m_check.tubes, tube) == m_check.tubes.end())
        m_check.tubes.push_back(tube);
    m_details.append(CheckText::tr("%1: %2").arg(tubeName(tube), detail));
}

Check CheckBuilder::finish(const QString &meaning, const QString &whatToDo)
{
    if (!m_check.passed) {
        m_check.finding = inARow(assay::listed(m_details) + u'.', meaning);
        m_check.whatToDo = whatToDo;
    }
    return std::move(m_check);
}

QString inARow(const QString &sentence, const QString &next)
{
    return sentence.isEmpty() || next.isEmpty() ? sentence + next : sentence + u' ' + next;
}

QString Check::message() const
{
    return inARow(finding, whatToDo);
}

QString checkPhrase(CheckId id)
{
    switch (id) {
    case CheckId::ReadingMissing:
        return CheckText::tr("a reading is missing");
    case CheckId::ReadingImplausible:
        return CheckText::tr("a reading cannot be right");
    case CheckId::WrongDirection:
        return CheckText::tr("a signal runs in the wrong direction");
    case CheckId::SignalLow:
        return CheckText::tr("the net signal is too low");
    case CheckId::SignalHigh:
        return CheckText::tr("the net signal is too high");
    case CheckId::AbsorbanceHigh:
        return CheckText::tr("the absorbance is too high");
    case CheckId::ReserveLow:
        return CheckText::tr("the reagent was used up");
    case CheckId::BlankMissing:
        return CheckText::tr("the blank is missing");
    case CheckId::BlankHigh:
        return CheckText::tr("the blank is too high");
    case CheckId::BlankSpread:
        return CheckText::tr("the blanks are too far apart");
    case CheckId::DuplicateSpread:
        return CheckText::tr("the replicates are too far apart");
    case CheckId::StandardRecovery:
        return CheckText::tr("the recovery of the standard is outside its limits");
    case CheckId::StandardTooOld:
        return CheckText::tr("the standard is too old");
    case CheckId::SpikeRecovery:
        return CheckText::tr("the recovery of the spike is outside its limits");
    case CheckId::VolumeProportionality:
        return CheckText::tr("two sample volumes disagree");
    case CheckId::ReactionUnfinished:
        return CheckText::tr("the reaction has not ended");
    case CheckId::ReadingEarly:
        return CheckText::tr("a reading was taken too early");
    case CheckId::ReadingLate:
        return CheckText::tr("a reading was taken too late");
    case CheckId::LotExpired:
        return CheckText::tr("a lot is out of date");
    case CheckId::SampleVolumeOutsideRange:
        return CheckText::tr("the sample volume is outside its range");
    }
    return {};
}

QString tubeName(int tube)
{
    return CheckText::tr("tube %1").arg(tube + 1);
}

QString tubeNames(const std::vector<int> &tubes)
{
    if (tubes.empty())
        return {};
    if (tubes.size() == 1)
        return tubeName(tubes.front());
    QStringList numbers;
    for (const int tube : tubes)
        numbers.append(QString::number(tube + 1));
    const QString last = numbers.takeLast();
    return CheckText::tr("tubes %1 and %2").arg(numbers.join(CheckText::tr(", ")), last);
}

QString adviceText(const Advice &advice)
{
    const auto millilitres = [](double volume_mL) { return withUnit(plainText(volume_mL), u"mL"_s); };
    if (advice.kind == Advice::Kind::IncreaseVolume)
        return CheckText::tr("%1 of sample").arg(millilitres(advice.sampleVolume_mL));
    if (advice.steps.empty())
        return CheckText::tr("undiluted");
    QStringList steps;
    for (const run::DilutionStep &step : advice.steps)
        steps.append(CheckText::tr("%1 to %2", "a dilution step: a volume made up to another")
                         .arg(millilitres(step.take_mL), millilitres(step.makeUpTo_mL)));
    const QString chain = steps.join(CheckText::tr(", then "));
    return advice.atLeast
               ? CheckText::tr("diluted at least %1-fold in all (%2)").arg(plainText(advice.factor), chain)
               : CheckText::tr("diluted %1-fold in all (%2)").arg(plainText(advice.factor), chain);
}

QString scopeMeasurand(const assay::Method &method, const QString &measurand)
{
    return method.measurands.size() > 1 ? measurand : QString();
}

} // namespace plateau::evaluation
