// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/evaluation/evaluation.h"
#include "core/evaluation/specification.h"
#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <QByteArray>

#include <vector>

namespace plateau::exchange {

/// Documents of the file contract: UTF-8, two-space indent, fields in the contract's order, numbers in the
/// shortest form that reads back to the same double, a line feed at the end. What the reader would refuse is
/// never written: readMethod(writeMethod(m)).value == m for every sound method.
QByteArray writeMethod(const assay::Method &method);
/// method: written whole into the run if given, else by its id.
QByteArray writeRun(const run::Run &run, const assay::Method *method = nullptr);
QByteArray writeLaboratory(const planning::Laboratory &laboratory);
QByteArray writeSpecifications(const std::vector<evaluation::Specification> &specifications);
QByteArray writeEvaluation(const evaluation::Evaluation &evaluation);
/// One line for a run of many: {"run": its file, "evaluation": as writeEvaluation writes it}.
QByteArray writeEvaluationLine(const QString &runFile, const evaluation::Evaluation &evaluation);

} // namespace plateau::exchange
