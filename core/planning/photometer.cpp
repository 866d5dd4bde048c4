// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/photometer.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/planning/laboratory.h"

#include <QCoreApplication>
#include <QSet>

#include <array>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct PhotometerWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::Measuring)
};

void checkAbsorbance(const std::optional<double> &absorbance, const QString &pointer, Problems &problems)
{
    if (absorbance)
        checkWithin(problems, pointerTo(pointer, u"absorbance"_s), *absorbance, 0, 1, {});
}

void checkPercent(const std::optional<double> &percent, const QString &pointer, const QString &key,
                  Problems &problems)
{
    if (percent)
        checkWithin(problems, pointerTo(pointer, key), *percent, 0, 100, u"%"_s);
}

void checkSource(const QString &source, bool needed, const QString &pointer, Problems &problems)
{
    const QString place = pointerTo(pointer, u"source"_s);
    if (!source.trimmed().isEmpty())
        checkProse(problems, place, source, PhotometerWording::tr("the source"));
    else if (needed)
        problems.push_back(
            error(place, PhotometerWording::tr("is blank; say which record or certificate the numbers come "
                                               "from")));
}

void checkPhotometer(const Photometer &photometer, Problems &problems)
{
    const QString pointer = u"/photometer"_s;
    checkLabel(problems, pointerTo(pointer, u"name"_s), photometer.name,
               PhotometerWording::tr("the photometer's name"));
    checkAbsorbance(photometer.absorbance, pointer, problems);
    checkPercent(photometer.pathLength_percent, pointer, u"pathLength_percent"_s, problems);
    checkSource(photometer.source, photometer.absorbance || photometer.pathLength_percent, pointer, problems);
}

void checkMethodUncertainty(const MethodUncertainty &own, const QString &pointer, Problems &problems)
{
    checkLabel(problems, pointerTo(pointer, u"method"_s), own.method,
               PhotometerWording::tr("the method's id"));
    checkSource(own.source, true, pointer, problems);
    checkAbsorbance(own.absorbance, pointer, problems);
    const std::array relative{
        std::pair(u"absorptivity_percent"_s, own.absorptivity_percent),
        std::pair(u"pathLength_percent"_s, own.pathLength_percent),
        std::pair(u"totalVolume_percent"_s, own.totalVolume_percent),
        std::pair(u"sampleVolume_percent"_s, own.sampleVolume_percent),
        std::pair(u"dilution_percent"_s, own.dilution_percent),
        std::pair(u"extract_percent"_s, own.extract_percent),
    };
    bool any = own.absorbance.has_value();
    for (const auto &[key, percent] : relative) {
        checkPercent(percent, pointer, key, problems);
        any = any || percent;
    }
    if (!any)
        problems.push_back(
            error(pointer, PhotometerWording::tr("states no uncertainty; give at least one, or take the "
                                                 "entry away")));
}

} // namespace

void checkMeasuring(const Laboratory &laboratory, Problems &problems)
{
    if (laboratory.photometer)
        checkPhotometer(*laboratory.photometer, problems);
    const QString list = u"/methodUncertainties"_s;
    const std::vector<MethodUncertainty> &all = laboratory.methodUncertainties;
    if (all.size() > mostMethodUncertainties)
        problems.push_back(error(list, PhotometerWording::tr("lists %1 methods; at most %2 are allowed")
                                           .arg(all.size())
                                           .arg(mostMethodUncertainties)));
    QSet<QString> taken;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const QString pointer = pointerTo(list, static_cast<qsizetype>(i));
        checkMethodUncertainty(all[i], pointer, problems);
        if (taken.contains(all[i].method))
            problems.push_back(
                error(pointerTo(pointer, u"method"_s),
                      PhotometerWording::tr("the method %1 has an entry already; put both in one")
                          .arg(quoted(all[i].method))));
        taken.insert(all[i].method);
    }
}

} // namespace plateau::planning
