// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/problem.h"

#include <algorithm>
#include <utility>

namespace plateau::assay {

using namespace Qt::StringLiterals;

Problem error(QString pointer, QString message)
{
    return {Problem::Severity::Error, std::move(pointer), std::move(message)};
}

Problem warning(QString pointer, QString message)
{
    return {Problem::Severity::Warning, std::move(pointer), std::move(message)};
}

bool hasErrors(const Problems &problems)
{
    return std::ranges::any_of(problems,
                               [](const Problem &p) { return p.severity == Problem::Severity::Error; });
}

QString pointerTo(const QString &parent, const QString &key)
{
    QString token = key;
    token.replace(u'~', "~0"_L1).replace(u'/', "~1"_L1);
    return parent + u'/' + token;
}

QString pointerTo(const QString &parent, qsizetype index)
{
    return parent + u'/' + QString::number(index);
}

} // namespace plateau::assay
