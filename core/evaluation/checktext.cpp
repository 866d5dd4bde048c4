// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/checks.h"
#include "core/evaluation/format.h"

#include <algorithm>

namespace plateau::evaluation {

using namespace Qt::StringLiterals;

CheckBuilder::CheckBuilder(CheckId id, const TubeGroup &group, QString passedMessage)
{
    m_check.id = id;
    m_check.scope = group.scope;
    m_check.message = std::move(passedMessage);
}

void CheckBuilder::fail(int tube, const QString &detail)
{
    m_check.passed = false;
    if (std::ranges::find(m_check.tubes, tube) == m_check.tubes.end())
        m_check.tubes.push_back(tube);
    m_details.append(CheckText::tr("%1: %2").arg(tubeName(tube), detail));
}

Check CheckBuilder::finish(const QString &whatToDo)
{
    if (!m_check.passed)
        m_check.message = CheckText::tr("%1. %2").arg(m_details.join(u"; "_s), whatToDo);
    return std::move(m_check);
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
        steps.append(CheckText::tr("%1 to %2").arg(millilitres(step.take_mL), millilitres(step.makeUpTo_mL)));
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
