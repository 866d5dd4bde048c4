// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/shelf.h"

#include "core/assay/limits.h"

#include <QCoreApplication>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct ShelfWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::ShelfSample)
};

/// Of 100 g there can be no more than 100 g in it.
constexpr double most_g_per_100_g = 100;

} // namespace

Problems problemsOf(const ShelfSample &sample)
{
    Problems problems;
    checkLabel(problems, u"/id"_s, sample.id, ShelfWording::tr("the id"));
    if (!sample.product.isEmpty())
        checkLabel(problems, u"/product"_s, sample.product, ShelfWording::tr("the product"));
    if (!sample.receivedFrom.isEmpty())
        checkLabel(problems, u"/receivedFrom"_s, sample.receivedFrom, ShelfWording::tr("who it came from"));
    if (sample.receivedAt && !sample.receivedAt->isValid())
        problems.push_back(error(
            u"/receivedAt"_s, ShelfWording::tr("is not a real time; give a time with its offset from UTC")));
    const bool solid = sample.form == run::Form::Solid;
    for (const auto &[measurand, amount] : sample.expected) {
        const QString place = pointerTo(u"/expected"_s, measurand);
        checkLabel(problems, place, measurand, ShelfWording::tr("the measurand"));
        checkWithin(problems, place, amount, 0, solid ? most_g_per_100_g : limit::concentration_g_per_L,
                    solid ? u"g/100 g"_s : u"g/L"_s);
    }
    return problems;
}

} // namespace plateau::planning
