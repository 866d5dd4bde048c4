// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"
#include "core/evaluation/evaluation.h"
#include "core/evaluation/specification.h"
#include "core/planning/laboratory.h"
#include "core/run/run.h"

#include <QByteArray>

#include <functional>
#include <optional>
#include <tuple>
#include <utility>
#include <vector>

namespace plateau::exchange {

/// Largest file that is read at all.
inline constexpr qint64 maxFileSize_bytes = qint64{16} * 1024 * 1024;

/// value is there if and only if problems hold no error; warnings may come with it.
template <class T> struct Read {
    std::optional<T> value;
    assay::Problems problems;
};

/// A plateau-method/1 document: strict JSON, unknown fields refused by name, everything wrong listed at once,
/// then checked by assay::problemsOf.
Read<assay::Method> readMethod(const QByteArray &json);

struct RunDocument {
    run::Run run;
    assay::Method method;
    /// The method stood in the run itself, not as the id of an installed one.
    bool methodEmbedded = false;
};
/// What a method's id stands for.
struct NamedMethod {
    NamedMethod(std::optional<assay::Method> found)
        : method(std::move(found))
    {
    }
    NamedMethod(std::nullopt_t) {}
    /// One that stands for none, and why: what is known of it, and what would help.
    static NamedMethod none(const QString &obstacle)
    {
        NamedMethod named(std::nullopt);
        named.obstacle = obstacle;
        return named;
    }

    std::optional<assay::Method> method;
    /// Empty where there is no more to say than that there is no such method.
    QString obstacle;
};
using MethodLookup = std::function<NamedMethod(const QString &id)>;

/// A plateau-run/1 document, checked by run::problemsOf against its method.
Read<RunDocument> readRun(const QByteArray &json, const MethodLookup &installedMethod);

/// A plateau-laboratory/1 document, checked by planning::problemsOf.
Read<planning::Laboratory> readLaboratory(const QByteArray &json);

/// A plateau-specifications/1 document, checked by evaluation::problemsOf.
Read<std::vector<evaluation::Specification>> readSpecifications(const QByteArray &json);

/// The results of a plateau-evaluation/1 document as it was written, of whatever version of the program:
/// without their budgets, checks and terms, and unknown fields are passed over. Degrees of freedom are absent
/// where they are infinite.
Read<std::vector<evaluation::Result>> readResults(const QByteArray &evaluation);

/// What a plateau-evaluation/1 document says besides its arithmetic, results as readResults gives them.
struct WrittenEvaluation {
    struct FailedCheck {
        /// As evaluation::checkWord and scopeWord write them.
        QString id;
        QString scope;
        bool operator<(const FailedCheck &other) const
        {
            return std::tie(id, scope) < std::tie(other.id, other.scope);
        }
    };
    std::vector<evaluation::Result> results;
    std::vector<evaluation::BlankMean> blanks;
    std::vector<evaluation::StandardRecovery> standards;
    std::vector<FailedCheck> failed;
};
Read<WrittenEvaluation> readEvaluation(const QByteArray &evaluation);

/// The bytes of a regular file of at most maxFileSize_bytes. Never follows into devices or pipes.
Read<QByteArray> readFile(const QString &path);

/// "name: /tubes/3/readings/A1: expected a number, found text" - one line, for standard error.
QString problemLine(const QString &fileName, const assay::Problem &problem);

} // namespace plateau::exchange
