// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/reportchoices.h"

#include "core/assay/label.h"
#include "core/notebook/deciding.h"
#include "core/notebook/opennotebook.h"
#include "core/notebook/recordnames.h"
#include "core/notebook/reportstore.h"
#include "core/notebook/sentence.h"
#include "core/notebook/text.h"
#include "core/notebook/words.h"

namespace plateau::notebook {

using namespace Qt::StringLiterals;
using assay::quoted;

void chooseReported(OpenNotebook &open, Persons &persons, const QString &sample, const QString &measurand,
                    const WantedChoice &choice, std::optional<RunId> of)
{
    requireReason(
        choice.reason,
        Sentence::tr("The choice of the reported result was not stored, since it needs a reason: say why."));
    if (choice.rule == ReportRule::Named && !choice.named)
        throw refused(Sentence::tr(
            "The choice of the reported result was not stored, since none is named: choose one."));
    const Signer signer = signerOf(open, persons, choice.person, choice.passphrase);
    Act act = open.act(signer.name, u"reportChosen"_s);
    if (!mayReview(act.database(), signer))
        throw refused(Sentence::tr("The choice of the reported result was not stored: a reviewer or a head "
                                   "decides here, and %1 is an analyst.")
                          .arg(quoted(signer.name)));
    SampleResults results = loadSampleResults(act.database(), sample, measurand, of);
    results.rule = choice.rule;
    results.choice = ReportChoice{choice.rule, choice.named};
    followRule(results);
    if (!results.reported)
        throw refused(results.obstacle);
    storeReportChoice(act, sampleRuns(act.database(), sample, of), measurand, choice, signer.versionRow());
    act.note(u"%1, %2: %3"_s.arg(sample, nameOfMeasurand(act.database(), 0, {}, measurand), reportRuleWord(choice.rule)));
    act.commit();
}

} // namespace plateau::notebook
