// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/reportcontent.h"

#include <QString>

namespace plateau::ui {

/// How things are said on a report, with the content's decimal sign.

/// What stands where nothing is known.
inline const QString none(1, QChar(0x2013));

/// One result in words. Bounds ("< 0.021") stand in place of the value, without U and k; a result that has no
/// value is a dash.
struct ResultWords {
    QString value;
    QString uncertainty;
    QString coverage;
    QString unit;
};
ResultWords wordsOf(const ReportContent &content, const evaluation::Result &result);

/// The measurand's or derived quantity's name; its id where the method has none of that id.
QString quantityName(const assay::Method &method, const QString &id);
/// "Malic acid (l-malic-acid), version 2"
QString methodTitle(const assay::Method &method);
/// That nobody confirmed the method's volumes; empty where it is no template.
QString templateSentence(const assay::Method &method);
/// "DRAFT", "REJECTED"; empty for what was accepted.
QString stateMark(ReportState state);
/// What the mark means, in one sentence.
QString stateSentence(ReportState state);

/// "2026-03-02 09:10:00 +01:00" as it was noted; a dash for none.
QString momentOnReport(const QDateTime &moment);
/// "2026-03-02"
QString dayOnReport(const QDateTime &moment);
/// "0.512", or a series "15 min: 0.512; 20 min: 0.514".
QString readingOnReport(const ReportContent &content, const run::Reading &reading);
/// "M. Keel (analyst), signed"; what is not known is left out.
QString personOnReport(const ReportAct &act);

/// Where a failed check stands, what was found and what that means for the result; nothing of what the bench is
/// to do.
QString checkOnReport(const ReportContent &content, const evaluation::Check &check);

/// Who let a result stand that its checks speak against, and why: "Accepted by R. Voss: …". Empty where nothing
/// speaks against it, or nobody accepted it.
QString acceptanceOnReport(const ReportContent &content, const evaluation::Result &result);

/// First and last day that anything of the run is known to have been done on: "2026-03-02", "2026-03-02 to
/// 2026-03-03"; empty where nothing is known.
QString daysOfTest(const ReportContent &content);

/// a, b, … z, aa, ab, …
QString footnoteMark(int number);

} // namespace plateau::ui
