// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/waitingwords.h"

#include "core/evaluation/checkfacts.h"
#include "core/evaluation/format.h"

#include <QCoreApplication>
#include <QStringList>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct WaitingWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::WaitingWords)
};

/// What the person who decided gave as the reason, else what failed.
QString repeatCause(const notebook::AdvisedRepeat &repeat)
{
    if (!repeat.reason.isEmpty())
        return repeat.reason;
    QStringList failed;
    for (const evaluation::CheckId check : repeat.failed)
        failed << WaitingWords::tr("%1", "the title of a check amid a sentence, where a capital would be odd")
                      .arg(evaluation::afterColon(evaluation::checkTitle(check)));
    return failed.isEmpty() ? QString() : WaitingWords::tr("failed: %1").arg(failed.join(WaitingWords::tr(", ")));
}

QString repeatWords(const notebook::AdvisedRepeat &repeat)
{
    QStringList advices;
    for (const notebook::AdvisedRepeat::Of &of : repeat.advice) {
        if (const QString text = adviceWords(of.advice); !advices.contains(text))
            advices << text;
    }
    const QString why = repeatCause(repeat);
    const QString from = why.isEmpty()
                             ? WaitingWords::tr("repeat of run %1").arg(repeat.run.value)
                             : WaitingWords::tr("repeat of run %1 (%2)").arg(QString::number(repeat.run.value), why);
    return advices.isEmpty() ? from
                             : WaitingWords::tr("%1: %2").arg(from, advices.join(WaitingWords::tr(", ")));
}

} // namespace

QString adviceWords(const evaluation::Advice &advice)
{
    if (advice.kind == evaluation::Advice::Kind::IncreaseVolume)
        return WaitingWords::tr("take %1 of it")
            .arg(evaluation::withUnit(evaluation::plainText(advice.sampleVolume_mL), u"mL"_s));
    const QString factor = evaluation::plainText(advice.factor);
    return advice.atLeast ? WaitingWords::tr("dilute at least %1-fold").arg(factor)
                          : WaitingWords::tr("dilute %1-fold").arg(factor);
}

QString whyItWaits(const notebook::WaitingSample &waiting)
{
    if (!waiting.repeat)
        return WaitingWords::tr("registered, not run yet");
    const QString repeat = repeatWords(*waiting.repeat);
    return waiting.shelf ? WaitingWords::tr("%1; registered again").arg(repeat) : repeat;
}

} // namespace plateau::ui
