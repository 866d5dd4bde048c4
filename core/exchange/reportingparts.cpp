// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/reportingparts.h"

#include "core/exchange/jsonparts.h"

#include <QCoreApplication>

namespace plateau::exchange {

using namespace Qt::StringLiterals;
using namespace plateau::planning;
using nlohmann::ordered_json;

namespace {

struct ReportingPartsWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::ReportingParts)
};

const std::vector<std::pair<QString, LogoKind>> &logoWords()
{
    static const std::vector<std::pair<QString, LogoKind>> words{{u"png"_s, LogoKind::Png},
                                                                 {u"svg"_s, LogoKind::Svg}};
    return words;
}

QStringList takeLines(const Place &place)
{
    QStringList lines;
    forEach(place, [&](const Place &element) {
        QString line;
        take(element, line);
        lines.append(line); // also an unreadable one, so that the places of the others stay
    });
    return lines;
}

void takeBytes(const Place &place, QByteArray &bytes)
{
    QString text;
    if (!take(place, text))
        return;
    const auto decoded =
        QByteArray::fromBase64Encoding(text.toUtf8(), QByteArray::AbortOnBase64DecodingErrors);
    if (decoded && decoded.decoded.toBase64() == text.toUtf8()) // Qt takes one without padding, too
        bytes = *decoded;
    else
        place.findings.broken(
            place.pointer,
            ReportingPartsWording::tr("is not base64 text; take it from a file the program wrote"));
}

/// A text that may be left out; given, it must say something.
void takeOptionalText(Fields &fields, const QString &key, QString &target)
{
    const auto place = fields.find(key);
    if (place && take(*place, target) && target.isEmpty())
        place->findings.broken(place->pointer,
                               ReportingPartsWording::tr("is blank; fill it in, or leave the field out"));
}

Logo takeLogo(const Place &place)
{
    Logo logo;
    Fields fields(place);
    if (const auto type = fields.need(u"type"_s))
        takeWord(*type, logoWords(), logo.kind);
    if (const auto bytes = fields.need(u"base64"_s))
        takeBytes(*bytes, logo.bytes);
    fields.done();
    return logo;
}

void takeReview(const Place &place, ReviewRules &review)
{
    Fields fields(place);
    fields.needed(u"reviewerDecides"_s, review.reviewerDecides);
    fields.needed(u"secondPersonReviews"_s, review.secondPersonReviews);
    if (const auto reasons = fields.need(u"rejectionReasons"_s))
        review.rejectionReasons = takeLines(*reasons);
    fields.done();
}

void takeHead(const Place &place, ReportHead &head)
{
    Fields fields(place);
    if (const auto address = fields.need(u"address"_s))
        head.address = takeLines(*address);
    takeOptionalText(fields, u"contact"_s, head.contact);
    if (const auto logo = fields.find(u"logo"_s))
        head.logo = takeLogo(*logo);
    fields.done();
}

const std::vector<std::pair<QString, evaluation::ReportUnit>> &unitWords()
{
    static const std::vector<std::pair<QString, evaluation::ReportUnit>> words = [] {
        std::vector<std::pair<QString, evaluation::ReportUnit>> list;
        for (const evaluation::ReportUnit unit : evaluation::reportUnits())
            list.emplace_back(evaluation::reportUnitWord(unit), unit);
        return list;
    }();
    return words;
}

ProductUnit takeUnit(const Place &place)
{
    ProductUnit unit;
    Fields fields(place);
    takeOptionalText(fields, u"product"_s, unit.product);
    takeOptionalText(fields, u"measurand"_s, unit.measurand);
    if (const auto word = fields.need(u"unit"_s))
        takeWord(*word, unitWords(), unit.unit);
    fields.done();
    return unit;
}

ordered_json linesJson(const QStringList &lines)
{
    return listOf(lines, [](const QString &line) { return utf8(line); });
}

ordered_json headJson(const ReportHead &head)
{
    ordered_json object{{"address", linesJson(head.address)}};
    if (!head.contact.isEmpty())
        object["contact"] = utf8(head.contact);
    if (head.logo)
        object["logo"] = {{"type", head.logo->kind == LogoKind::Png ? "png" : "svg"},
                          {"base64", head.logo->bytes.toBase64().toStdString()}};
    return object;
}

ordered_json unitJson(const ProductUnit &unit)
{
    ordered_json object;
    if (!unit.product.isEmpty())
        object["product"] = utf8(unit.product);
    if (!unit.measurand.isEmpty())
        object["measurand"] = utf8(unit.measurand);
    object["unit"] = utf8(evaluation::reportUnitWord(unit.unit));
    return object;
}

} // namespace

void takeReporting(Fields &fields, Laboratory &laboratory)
{
    if (const auto review = fields.find(u"review"_s))
        takeReview(*review, laboratory.review);
    if (const auto head = fields.find(u"reportHead"_s))
        takeHead(*head, laboratory.reportHead);
    if (const auto units = fields.find(u"reportUnits"_s))
        forEach(*units, [&](const Place &element) { laboratory.reportUnits.push_back(takeUnit(element)); });
}

void writeReporting(ordered_json &object, const Laboratory &laboratory)
{
    const ReviewRules &review = laboratory.review;
    if (review != ReviewRules())
        object["review"] = {{"reviewerDecides", review.reviewerDecides},
                            {"secondPersonReviews", review.secondPersonReviews},
                            {"rejectionReasons", linesJson(review.rejectionReasons)}};
    if (laboratory.reportHead != ReportHead())
        object["reportHead"] = headJson(laboratory.reportHead);
    if (!laboratory.reportUnits.empty())
        object["reportUnits"] = listOf(laboratory.reportUnits, unitJson);
}

} // namespace plateau::exchange
