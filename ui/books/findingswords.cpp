// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/findingswords.h"

#include "core/evaluation/format.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct FindingsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Equipment)
};

} // namespace

QStringList findingTitles()
{
    return {FindingsWords::tr("What"), FindingsWords::tr("Found"), FindingsWords::tr("Allowed"),
            FindingsWords::tr("Verdict"), FindingsWords::tr("Limit from")};
}

std::set<int> findingTexts()
{
    return {0, 2, 3, 4};
}

std::map<QString, State> findingMarks()
{
    return {{FindingsWords::tr("passed"), State::Good}, {FindingsWords::tr("failed"), State::Bad}};
}

std::vector<QStringList> findingRows(const equipment::Outcome &outcome)
{
    std::vector<QStringList> rows;
    for (const equipment::Finding &finding : outcome.findings) {
        const QString limit = equipment::limitText(finding);
        rows.push_back({evaluation::capitalised(finding.what), equipment::foundText(finding),
                        limit.isEmpty() ? FindingsWords::tr("no limit") : limit,
                        limit.isEmpty()  ? QString()
                        : finding.passed ? FindingsWords::tr("passed")
                                         : FindingsWords::tr("failed"),
                        finding.source});
    }
    return rows;
}

} // namespace plateau::ui
