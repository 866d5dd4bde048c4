// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/planning/laboratory.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <gtest/gtest.h>

#include <functional>

namespace plateau::planning {

using namespace Qt::StringLiterals;
using evaluation::ReportUnit;
using test::listed;
using test::names;

namespace {

/// The beginning of a PNG: signature, length and name of the first chunk, width and height.
QByteArray png(quint32 width_px, quint32 height_px)
{
    QByteArray bytes = QByteArray::fromHex("89504e470d0a1a0a0000000d49484452");
    for (const quint32 side_px : {width_px, height_px}) {
        for (int shift = 24; shift >= 0; shift -= 8)
            bytes.append(char((side_px >> shift) & 0xff));
    }
    return bytes;
}

QString faultOf(LogoKind kind, const QByteArray &bytes)
{
    return logoFault({kind, bytes}).value_or(QString());
}

assay::Problems problemsWith(const std::function<void(Laboratory &)> &change)
{
    Laboratory laboratory;
    change(laboratory);
    return problemsOf(laboratory);
}

} // namespace

TEST(Logo, APngIsOneAndOfASensibleSize)
{
    EXPECT_EQ(faultOf(LogoKind::Png, png(1, 1)), QString());
    EXPECT_EQ(faultOf(LogoKind::Png, png(4096, 4096)), QString());
    EXPECT_TRUE(faultOf(LogoKind::Png, png(4097, 1)).contains(u"4097 by 1 pixels"_s));
    EXPECT_TRUE(faultOf(LogoKind::Png, png(1, 0)).contains(u"1 by 0 pixels"_s));
    EXPECT_TRUE(faultOf(LogoKind::Png, png(0x80000000, 1)).contains(u"2147483648 by 1"_s));
    EXPECT_EQ(faultOf(LogoKind::Png, png(1, 1).first(23)), u"it is not a PNG picture"_s);
    EXPECT_EQ(faultOf(LogoKind::Png, {}), u"it is not a PNG picture"_s);
    EXPECT_EQ(faultOf(LogoKind::Png, "<svg/>"), u"it is not a PNG picture"_s);
}

TEST(Logo, AnSvgIsWellFormedAndTakesInNothingFromOutside)
{
    const auto svg = [](const char *inside) {
        return faultOf(LogoKind::Svg, QByteArray("<svg xmlns='http://www.w3.org/2000/svg' "
                                                 "xmlns:xlink='http://www.w3.org/1999/xlink'>") +
                                          inside + "</svg>");
    };
    EXPECT_EQ(svg("<rect width='1' height='1'/>"), QString());
    EXPECT_EQ(svg("<use xlink:href='#a'/>"), QString());
    EXPECT_EQ(svg("<image href='data:image/png;base64,AAAA'/>"), QString());
    EXPECT_TRUE(svg("<image xlink:href='http://example.org/a.png'/>").contains(u"from outside"_s));
    EXPECT_TRUE(svg("<image href='/etc/passwd'/>").contains(u"from outside"_s));
    EXPECT_EQ(svg("<rect>"), u"it is not an SVG picture"_s);
    EXPECT_EQ(faultOf(LogoKind::Svg, "<html/>"), u"it is not an SVG picture"_s);
    EXPECT_EQ(faultOf(LogoKind::Svg, {}), u"it is not an SVG picture"_s);
    EXPECT_EQ(faultOf(LogoKind::Svg, png(1, 1)), u"it is not an SVG picture"_s);
    EXPECT_TRUE(faultOf(LogoKind::Svg, "<!DOCTYPE svg [<!ENTITY a 'b'>]><svg>&a;</svg>")
                    .contains(u"type declaration"_s));
}

TEST(Logo, HasAtMost256Kilobytes)
{
    QByteArray bytes = png(1, 1);
    bytes.resize(256 * 1024);
    EXPECT_EQ(faultOf(LogoKind::Png, bytes), QString());
    bytes.append('\0');
    EXPECT_EQ(faultOf(LogoKind::Png, bytes), u"it has 257 kB; at most 256 kB are allowed"_s);
}

TEST(Reporting, ListsHaveAnEnd)
{
    const auto lines = [](int count) {
        QStringList list;
        for (int i = 0; i < count; ++i)
            list << QString::number(i);
        return list;
    };
    EXPECT_TRUE(problemsWith([&](Laboratory &l) {
                    l.reportHead.address = lines(8);
                    l.review.rejectionReasons = lines(100);
                }).empty());
    EXPECT_TRUE(names(problemsWith([&](Laboratory &l) { l.reportHead.address = lines(9); }),
                      "/reportHead/address", "has 9 lines; at most 8"));
    EXPECT_TRUE(names(problemsWith([&](Laboratory &l) { l.review.rejectionReasons = lines(101); }),
                      "/review/rejectionReasons", "lists 101 reasons; at most 100"));
    const auto units = [&](std::size_t count) {
        return problemsWith([&](Laboratory &l) {
            for (std::size_t i = 0; i < count; ++i)
                l.reportUnits.push_back({QString::number(i), {}, ReportUnit::GramPerLitre});
        });
    };
    EXPECT_TRUE(units(1000).empty());
    EXPECT_TRUE(names(units(1001), "/reportUnits", "lists 1001 units; at most 1000"));
}

TEST(Reporting, AProductHasOneUnitForAMeasurand)
{
    const auto with = [](const ProductUnit &second) {
        return problemsWith([&](Laboratory &l) {
            l.reportUnits = {{u"Cider"_s, u"Ethanol"_s, ReportUnit::GramPerLitre}, second};
        });
    };
    EXPECT_TRUE(with({u"cider"_s, {}, ReportUnit::GramPerLitre}).empty());
    EXPECT_TRUE(with({u"cider"_s, u"Acetic acid"_s, ReportUnit::GramPerLitre}).empty());
    EXPECT_TRUE(names(with({u" cider"_s, u"Ethanol"_s, ReportUnit::MilligramPerLitre}),
                      "/reportUnits/1/product", "has a unit for this already"));
}

TEST(Reporting, TheUnitOfAMeasurandComesBeforeThatOfItsProduct)
{
    Laboratory laboratory;
    laboratory.reportUnits = {{u"Cider"_s, u"Ethanol"_s, ReportUnit::MillimolPerLitre},
                              {u"Cider"_s, {}, ReportUnit::MilligramPerLitre}};
    EXPECT_EQ(reportUnitOf(laboratory, u"cider "_s, u"Ethanol"_s, run::Form::Liquid), ReportUnit::MillimolPerLitre);
    EXPECT_EQ(reportUnitOf(laboratory, u"CIDER"_s, u"Acetic acid"_s, run::Form::Liquid), ReportUnit::MilligramPerLitre);
    EXPECT_EQ(reportUnitOf(laboratory, u"perry"_s, u"Ethanol"_s, run::Form::Liquid), std::nullopt);
}

TEST(Reporting, AMeasurandMayHaveItsUnitWhateverTheProduct)
{
    Laboratory laboratory;
    laboratory.reportUnits = {{{}, u"Ethanol"_s, ReportUnit::GramPerLitre},
                              {u"Cider"_s, {}, ReportUnit::MilligramPerLitre},
                              {u"Perry"_s, u"Ethanol"_s, ReportUnit::MillimolPerLitre}};
    EXPECT_EQ(reportUnitOf(laboratory, {}, u"Ethanol"_s, run::Form::Liquid), ReportUnit::GramPerLitre);
    EXPECT_EQ(reportUnitOf(laboratory, u"cider"_s, u"Ethanol"_s, run::Form::Liquid), ReportUnit::GramPerLitre);
    EXPECT_EQ(reportUnitOf(laboratory, u"cider"_s, u"Acetic acid"_s, run::Form::Liquid), ReportUnit::MilligramPerLitre);
    EXPECT_EQ(reportUnitOf(laboratory, u"perry"_s, u"Ethanol"_s, run::Form::Liquid), ReportUnit::MillimolPerLitre);
    EXPECT_EQ(reportUnitOf(laboratory, {}, {}, run::Form::Liquid), std::nullopt);
    const auto with = [](const ProductUnit &only) {
        return problemsWith([&](Laboratory &l) { l.reportUnits = {only}; });
    };
    laboratory.reportUnits.push_back({{}, u"Ethanol"_s, ReportUnit::MilligramPerKilogram});
    EXPECT_EQ(reportUnitOf(laboratory, {}, u"Ethanol"_s, run::Form::Solid), ReportUnit::MilligramPerKilogram);
    EXPECT_EQ(reportUnitOf(laboratory, {}, u"Ethanol"_s, run::Form::Liquid), ReportUnit::GramPerLitre);
    EXPECT_EQ(reportUnitOf(laboratory, u"perry"_s, u"Acetic acid"_s, run::Form::Solid), std::nullopt);
    EXPECT_TRUE(problemsWith([&](Laboratory &l) { l.reportUnits = laboratory.reportUnits; }).empty());
    EXPECT_TRUE(with({{}, u"Ethanol"_s, ReportUnit::GramPerLitre}).empty());
    EXPECT_TRUE(names(with({{}, {}, ReportUnit::GramPerLitre}), "/reportUnits/0/product",
                      "neither a product nor a measurand"));
}

} // namespace plateau::planning
