// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratorydraft.h"

#include "ui/books/laboratoryparts.h"
#include "ui/books/laboratoryplaces.h"
#include "ui/shared/keyednumber.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct LaboratoryDraftWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LaboratoryDraft)
};

using planning::Laboratory;

/// "/glassware/pipettes/2" of "/glassware/pipettes/2/step_mL"; empty of what stands in no table.
QString rowOf(const QString &pointer)
{
    for (const QString &table : {u"/glassware/pipettes/"_s, u"/glassware/flasks/"_s}) {
        if (pointer.startsWith(table))
            return pointer.left(pointer.indexOf(u'/', table.size()));
    }
    return {};
}

/// Of a place that cannot be read, what its stand-in would say is left out.
bool isOfUnread(const assay::Problem &problem, const assay::Problem &unread)
{
    if (isAtOrBelow(problem.pointer, unread.pointer) || isAtOrBelow(unread.pointer, problem.pointer))
        return true;
    // The columns of a row of glass are judged together.
    const QString row = rowOf(unread.pointer);
    return !row.isEmpty() && isAtOrBelow(problem.pointer, row) && !problem.pointer.endsWith(u"/name"_s);
}

void addMeaning(const Laboratory &laboratory, assay::Problems &problems)
{
    const assay::Problems unread = problems;
    for (const assay::Problem &problem : planning::problemsOf(laboratory)) {
        if (std::ranges::none_of(unread, [&](const auto &each) { return isOfUnread(problem, each); }))
            problems.push_back(problem);
    }
}

} // namespace

LaboratoryDraft draftOf(const Laboratory &laboratory)
{
    LaboratoryDraft draft;
    draft.name = laboratory.name;
    draft.rackRows = QString::number(laboratory.rackRows);
    draft.rackColumns = QString::number(laboratory.rackColumns);
    draft.addition_s = keyedText(laboratory.handling.addition_s);
    draft.mix_s = keyedText(laboratory.handling.mix_s);
    draft.reading_s = keyedText(laboratory.handling.reading_s);
    draft.overage_percent = keyedText(laboratory.overage_percent);
    draftGlass(laboratory, draft);
    draftMeasuring(laboratory, draft);
    draftReporting(laboratory, draft);
    return draft;
}

LaboratoryOutcome laboratoryOf(const LaboratoryDraft &draft, const Laboratory &kept)
{
    LaboratoryOutcome outcome;
    const LaboratoryReader reader(outcome.problems);
    Laboratory &laboratory = outcome.laboratory;
    laboratory = kept; // what the draft does not show stays as it was
    laboratory.name = draft.name.trimmed();
    laboratory.rackRows = reader.whole(draft.rackRows, u"/rackRows"_s);
    laboratory.rackColumns = reader.whole(draft.rackColumns, u"/rackColumns"_s);
    laboratory.handling.addition_s = reader.number(draft.addition_s, u"/handling/addition_s"_s);
    laboratory.handling.mix_s = reader.number(draft.mix_s, u"/handling/mix_s"_s);
    laboratory.handling.reading_s = reader.number(draft.reading_s, u"/handling/reading_s"_s);
    laboratory.overage_percent = reader.number(draft.overage_percent, u"/overage_percent"_s);
    readGlass(draft, kept, reader, laboratory);
    readMeasuring(draft, kept, reader, laboratory);
    readReporting(draft, reader, laboratory);
    addMeaning(laboratory, outcome.problems);
    return outcome;
}

QStringList changedParts(const Laboratory &before, const Laboratory &after)
{
    QStringList parts;
    const auto compare = [&parts](bool isSame, const QString &words) {
        if (!isSame)
            parts << words;
    };
    compare(before.name == after.name && before.reportHead == after.reportHead,
            LaboratoryDraftWords::tr("name and report head"));
    compare(before.rackRows == after.rackRows && before.rackColumns == after.rackColumns &&
                before.handling == after.handling && before.overage_percent == after.overage_percent,
            LaboratoryDraftWords::tr("rack and times"));
    compare(before.glassware == after.glassware, LaboratoryDraftWords::tr("pipettes and flasks"));
    compare(before.photometer == after.photometer, LaboratoryDraftWords::tr("photometer"));
    compare(before.methodUncertainties == after.methodUncertainties,
            LaboratoryDraftWords::tr("uncertainties by method"));
    compare(before.reportUnits == after.reportUnits, LaboratoryDraftWords::tr("units of products"));
    compare(before.review == after.review, LaboratoryDraftWords::tr("review"));
    return parts;
}

} // namespace plateau::ui
