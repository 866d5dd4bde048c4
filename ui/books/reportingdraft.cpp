// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/laboratoryparts.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using assay::pointerTo;
using planning::ProductUnit;

namespace {

struct ReportingdraftWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LaboratoryDraft)
};

ProductUnit unitOf(const CellRow &row, const QString &pointer, const LaboratoryReader &reader)
{
    ProductUnit read;
    read.product = cell(row, reportUnit::Product).trimmed();
    read.measurand = cell(row, reportUnit::Measurand);
    if (const auto unit = evaluation::reportUnitFromWord(cell(row, reportUnit::Unit)))
        read.unit = *unit;
    else
        reader.complain(pointerTo(pointer, u"unit"_s),
                        ReportingdraftWords::tr("is not chosen yet; choose one"));
    return read;
}

} // namespace

void draftReporting(const planning::Laboratory &laboratory, LaboratoryDraft &draft)
{
    draft.address = laboratory.reportHead.address.join(u'\n');
    draft.contact = laboratory.reportHead.contact;
    draft.logo = laboratory.reportHead.logo;
    for (std::size_t i = 0; i < laboratory.reportUnits.size(); ++i) {
        const ProductUnit &each = laboratory.reportUnits[i];
        draft.reportUnits.push_back(
            {QString::number(i), {each.product, each.measurand, evaluation::reportUnitWord(each.unit)}});
    }
    draft.reviewerDecides = laboratory.review.reviewerDecides;
    draft.secondPersonReviews = laboratory.review.secondPersonReviews;
    for (const QString &reason : laboratory.review.rejectionReasons)
        draft.rejectionReasons.push_back({reason, {reason}});
}

void readReporting(const LaboratoryDraft &draft, const LaboratoryReader &reader,
                   planning::Laboratory &laboratory)
{
    planning::ReportHead &head = laboratory.reportHead;
    head.address.clear();
    for (const QString &line : draft.address.split(u'\n')) {
        if (!line.trimmed().isEmpty())
            head.address << line.trimmed();
    }
    head.contact = draft.contact.trimmed();
    head.logo = draft.logo;
    laboratory.reportUnits.clear();
    for (std::size_t i = 0; i < draft.reportUnits.size(); ++i)
        laboratory.reportUnits.push_back(
            unitOf(draft.reportUnits[i], pointerTo(u"/reportUnits"_s, static_cast<qsizetype>(i)), reader));
    planning::ReviewRules &review = laboratory.review;
    review.reviewerDecides = draft.reviewerDecides;
    review.secondPersonReviews = draft.secondPersonReviews;
    review.rejectionReasons.clear();
    for (const CellRow &row : draft.rejectionReasons)
        review.rejectionReasons << cell(row, 0).trimmed();
}

} // namespace plateau::ui
