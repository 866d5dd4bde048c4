// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/findingswords.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Equipment)
};

} // namespace

QStringList findingTitles()
{
    return {Words::tr("What"), Words::tr("Found"), Words::tr("Allowed"), Words::tr("Verdict"),
            Words::tr("Limit from")};
}

std::vector<QStringList> findingRows(const equipment::Outcome &outcome)
{
    std::vector<QStringList> rows;
    for (const equipment::Finding &finding : outcome.findings) {
        const QString limit = equipment::limitText(finding);
        rows.push_back({evaluation::capitalised(finding.what), equipment::foundText(finding),
                        limit.isEmpty() ? Words::tr("no limit") : limit,
                        limit.isEmpty()  ? QString()
                        : finding.passed ? Words::tr("passed")
                                         : Words::tr("failed"),
                        finding.source});
    }
    return rows;
}

} // namespace plateau::ui
