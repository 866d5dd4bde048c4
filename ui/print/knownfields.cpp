// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/print/knownfields.h"

#include "ui/print/reporttext.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct KnownFieldsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::KnownFields)
};

void add(QStringList &texts, const QString &text)
{
    if (!text.isEmpty() && !texts.contains(text))
        texts << text;
}

} // namespace

std::map<QString, QString> knownFields(const ReportContent &content)
{
    std::map<QString, QString> known;
    const auto put = [&known](const QString &name, const QString &value) {
        if (!value.isEmpty())
            known[name] = value;
    };
    put(u"report-number"_s, reportNumber(content));
    put(u"tested"_s, daysOfTest(content));
    if (const ReportDecision *decision = decisionOf(content)) {
        put(u"issued"_s, dayOnReport(content.madeAt));
        if (stateOf(content) == ReportState::Accepted)
            put(u"authorised-by"_s,
                KnownFieldsWords::tr("%1, %2").arg(personOnReport(decision->act), dayOnReport(decision->act.at)));
    }
    QStringList products;
    QStringList days;
    for (const evaluation::Result &result : content.evaluation.results) {
        const ReportItem *item = findItem(content, result.sample);
        add(products, item ? item->product : QString());
        add(days, item && item->receivedAt ? dayOnReport(*item->receivedAt) : QString());
    }
    put(u"item"_s, products.join(KnownFieldsWords::tr("; ")));
    put(u"received"_s, days.join(KnownFieldsWords::tr("; ")));
    return known;
}

QString fieldOf(const ReportContent &content, const QString &name)
{
    if (const QString given = content.fields.value(name); !given.isEmpty())
        return given;
    const auto known = knownFields(content);
    const auto found = known.find(name);
    return found == known.end() ? QString() : found->second;
}

} // namespace plateau::ui
