// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/reporting.h"

#include "core/assay/label.h"
#include "core/assay/limits.h"
#include "core/planning/laboratory.h"

#include <QCoreApplication>
#include <QSet>
#include <QXmlStreamReader>
#include <QtEndian>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using namespace plateau::assay;

namespace {

struct ReportingWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::planning::Reporting)
};

QString keyOf(const QString &name)
{
    return name.normalized(QString::NormalizationForm_KC).toCaseFolded().simplified();
}

/// Signature, then the first chunk: IHDR with width and height (ISO/IEC 15948, 5.2 and 11.2.2).
std::optional<QString> pngFault(const QByteArray &bytes)
{
    static const QByteArray signature = QByteArray::fromHex("89504e470d0a1a0a");
    constexpr qsizetype sizeEnd = 24;
    if (!bytes.startsWith(signature) || bytes.size() < sizeEnd || bytes.mid(12, 4) != "IHDR")
        return ReportingWording::tr("it is not a PNG picture");
    const quint32 width_px = qFromBigEndian<quint32>(bytes.constData() + 16);
    const quint32 height_px = qFromBigEndian<quint32>(bytes.constData() + 20);
    const auto fits = [](quint32 side_px) { return side_px >= 1 && side_px <= quint32(largestLogo_px); };
    if (!fits(width_px) || !fits(height_px))
        return ReportingWording::tr("it measures %1 by %2 pixels; 1 to %3 each way are allowed")
            .arg(width_px)
            .arg(height_px)
            .arg(largestLogo_px);
    return std::nullopt;
}

bool staysInside(const QXmlStreamAttributes &attributes)
{
    for (const QXmlStreamAttribute &attribute : attributes) {
        const QStringView value = attribute.value().trimmed();
        if (attribute.name() == "href"_L1 && !value.startsWith(u'#') &&
            !value.startsWith("data:image/"_L1, Qt::CaseInsensitive))
            return false;
    }
    return true;
}

std::optional<QString> svgFault(const QByteArray &bytes)
{
    QXmlStreamReader reader(bytes);
    bool root = true;
    while (!reader.atEnd()) {
        reader.readNext();
        if (reader.tokenType() == QXmlStreamReader::DTD)
            return ReportingWording::tr("it holds a document type declaration; save it without");
        if (reader.tokenType() != QXmlStreamReader::StartElement)
            continue;
        if (root && reader.name() != "svg"_L1)
            return ReportingWording::tr("it is not an SVG picture");
        root = false;
        if (!staysInside(reader.attributes()))
            return ReportingWording::tr(
                "it takes in a file from outside; put everything into the picture itself");
    }
    if (root || reader.hasError())
        return ReportingWording::tr("it is not an SVG picture");
    return std::nullopt;
}

void checkReview(const ReviewRules &review, Problems &problems)
{
    const QString list = u"/review/rejectionReasons"_s;
    if (review.rejectionReasons.size() > mostRejectionReasons)
        problems.push_back(error(list, ReportingWording::tr("lists %1 reasons; at most %2 are allowed")
                                           .arg(review.rejectionReasons.size())
                                           .arg(mostRejectionReasons)));
    QSet<QString> taken;
    for (qsizetype i = 0; i < review.rejectionReasons.size(); ++i) {
        const QString &reason = review.rejectionReasons[i];
        const QString place = pointerTo(list, i);
        checkLabel(problems, place, reason, ReportingWording::tr("the reason"));
        if (taken.contains(keyOf(reason)))
            problems.push_back(
                error(place, ReportingWording::tr("the reason %1 stands in the list already; take one away")
                                 .arg(quoted(reason))));
        taken.insert(keyOf(reason));
    }
}

void checkHead(const ReportHead &head, Problems &problems)
{
    const QString list = u"/reportHead/address"_s;
    if (head.address.size() > mostAddressLines)
        problems.push_back(error(list, ReportingWording::tr("has %1 lines; at most %2 are allowed")
                                           .arg(head.address.size())
                                           .arg(mostAddressLines)));
    for (qsizetype i = 0; i < head.address.size(); ++i)
        checkLabel(problems, pointerTo(list, i), head.address[i], ReportingWording::tr("the line"));
    if (!head.contact.isEmpty())
        checkLabel(problems, u"/reportHead/contact"_s, head.contact, ReportingWording::tr("the contact"));
    if (!head.logo)
        return;
    if (const auto fault = logoFault(*head.logo))
        problems.push_back(error(u"/reportHead/logo/base64"_s,
                                 ReportingWording::tr("the logo cannot be used: %1").arg(*fault)));
}

void checkUnits(const std::vector<ProductUnit> &units, Problems &problems)
{
    const QString list = u"/reportUnits"_s;
    if (units.size() > mostProductUnits)
        problems.push_back(error(list, ReportingWording::tr("lists %1 units; at most %2 are allowed")
                                           .arg(units.size())
                                           .arg(mostProductUnits)));
    // Whose unit it is, and where it is that of a measurand alone, of liquids or of solids.
    QSet<std::pair<std::pair<QString, QString>, bool>> taken;
    for (std::size_t i = 0; i < units.size(); ++i) {
        const ProductUnit &unit = units[i];
        const QString pointer = pointerTo(list, static_cast<qsizetype>(i));
        if (!unit.product.isEmpty())
            checkLabel(problems, pointerTo(pointer, u"product"_s), unit.product,
                       ReportingWording::tr("the product"));
        else if (unit.measurand.isEmpty())
            problems.push_back(
                error(pointerTo(pointer, u"product"_s),
                      ReportingWording::tr("is a unit of neither a product nor a measurand; name one of them")));
        if (!unit.measurand.isEmpty())
            checkLabel(problems, pointerTo(pointer, u"measurand"_s), unit.measurand,
                       ReportingWording::tr("the measurand"));
        const bool isOfSolids = unit.product.isEmpty() && evaluation::formOf(unit.unit) == run::Form::Solid;
        const std::pair key(std::pair(keyOf(unit.product), unit.measurand), isOfSolids);
        if (taken.contains(key))
            problems.push_back(error(pointerTo(pointer, u"product"_s),
                                     ReportingWording::tr("has a unit for this already; take one away")));
        taken.insert(key);
    }
}

} // namespace

std::optional<evaluation::ReportUnit> reportUnitOf(const Laboratory &laboratory, const QString &product,
                                                   const QString &measurand, run::Form form)
{
    std::optional<evaluation::ReportUnit> ofProduct;
    std::optional<evaluation::ReportUnit> ofMeasurand;
    for (const ProductUnit &unit : laboratory.reportUnits) {
        const bool isOfEvery = unit.product.isEmpty();
        const bool isOfProduct = !isOfEvery && keyOf(unit.product) == keyOf(product);
        if (isOfProduct && unit.measurand == measurand)
            return unit.unit;
        if (isOfProduct && unit.measurand.isEmpty())
            ofProduct = unit.unit;
        if (isOfEvery && unit.measurand == measurand && evaluation::formOf(unit.unit) == form)
            ofMeasurand = unit.unit;
    }
    return ofMeasurand ? ofMeasurand : ofProduct;
}

std::optional<QString> logoFault(const Logo &logo)
{
    if (logo.bytes.size() > largestLogo_bytes)
        return ReportingWording::tr("it has %1 kB; at most %2 kB are allowed")
            .arg((logo.bytes.size() + 1023) / 1024)
            .arg(largestLogo_bytes / 1024);
    return logo.kind == LogoKind::Png ? pngFault(logo.bytes) : svgFault(logo.bytes);
}

void checkReporting(const Laboratory &laboratory, Problems &problems)
{
    checkReview(laboratory.review, problems);
    checkHead(laboratory.reportHead, problems);
    checkUnits(laboratory.reportUnits, problems);
}

} // namespace plateau::planning
