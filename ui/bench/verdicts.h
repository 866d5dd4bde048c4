// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/checklines.h"
#include "core/evaluation/evaluation.h"
#include "ui/shared/sentencelist.h"

#include <map>
#include <vector>

namespace plateau::ui {

/// What an evaluation says, as sentences with their states. Words only: every number and every judgement is
/// the evaluation's.

/// "reportable", "repeat", "investigate", or "waiting" while one of the result's is missing.
Sentence verdictOf(const evaluation::Result &result);
/// As it stands in its rack: "repeated" where another sample of it repeated this one and is reportable.
Sentence verdictIn(const run::Run &run, const evaluation::Evaluation &evaluation, const evaluation::Result &result);
/// "4.82 ± 0.11 g/L"; a dash while there is no value.
QString resultText(const evaluation::Result &result);
/// The run as a whole, in one line. lines: its checks, of which one that could not be made leaves more open than a verdict.
Sentence overallVerdict(const run::Run &run, const evaluation::Evaluation &evaluation,
                        const std::vector<evaluation::CheckLine> &lines);
/// How many checks failed and which: "2 checks failed: the blank is too high; the replicates are too far
/// apart.". Each kind once, with its number where there are several.
QString failureText(const std::vector<evaluation::CheckLine> &lines);
/// What speaks against the result and what to do: its own failures, then those of the run that hold it up.
/// Empty where nothing does.
std::vector<Sentence> failureSentences(const run::Run &run, const evaluation::Evaluation &evaluation,
                                       const evaluation::Result &result);
/// Which derived quantities wait for a run by another method. methodNames: those of the others, by their ids.
std::vector<Sentence> derivedToCome(const assay::Method &method, const evaluation::Evaluation &evaluation,
                                    const std::map<QString, QString> &methodNames);
/// What has failed so far while readings are still to come, and which checks will stay open; "nothing" is a sentence, too.
std::vector<Sentence> failuresSoFar(const run::Run &run, const evaluation::Evaluation &evaluation,
                                    const std::vector<evaluation::CheckLine> &open);
bool readingsAreMissing(const evaluation::Evaluation &evaluation);

} // namespace plateau::ui
