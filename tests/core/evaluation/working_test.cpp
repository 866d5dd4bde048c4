// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/working.h"

#include "tests/support/benches.h"
#include "tests/support/print.h"

#include <gtest/gtest.h>

#include <map>

using namespace plateau;
using namespace Qt::StringLiterals;

namespace {

QStringList lines(const std::vector<evaluation::WorkingSection> &sections)
{
    QStringList all;
    for (const auto &section : sections) {
        for (const auto &line : section.lines)
            all.append(u"%1: %2: %3 = %4"_s.arg(section.title, line.what, line.numbers, line.value));
    }
    return all;
}

} // namespace

TEST(Working, FollowsTheResultFromTheReadings)
{
    run::Run run = test::plainRun();
    run.samples[0].dilution = {{5, 50}};
    run.uncertainty = test::uncertainties();
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    const QStringList written =
        lines(evaluation::working(test::risingMethod(), run, evaluation, u"S"_s, u"analyte"_s));
    EXPECT_TRUE(written.contains(u"Blank: signal of tube 1: 0.110 - 0.100 = 0.0100"_s))
        << written.join(u'\n').toStdString();
    EXPECT_TRUE(written.contains(u"Sample S, tube 2: signal: 0.630 - 0.120 = 0.5100"_s));
    EXPECT_TRUE(written.contains(u"Sample S, tube 2: net signal dA: 0.5100 - 0.0100 = 0.5000"_s));
    EXPECT_TRUE(written.contains(u"Sample S, tube 2: concentration c in the sample as pipetted: "
                                 "0.5000 x 2.120 x 100 / (6300 x 1 x 0.1 x 1) = 0.16825\u00a0g/L"_s));
    EXPECT_TRUE(written.contains(
        u"Sample S, tube 2: in the sample as received: 0.16825 x (50 / 5) = 1.6825\u00a0g/L"_s));
    EXPECT_TRUE(written.contains(u"Result: mean, N = 2: (1.6825 + 1.6825) / 2 = 1.6825\u00a0g/L"_s));
}

TEST(Working, SolidCoupledAndExtrapolatedAreWrittenOut)
{
    assay::Method method = test::coupledMethod();
    method.volumeCorrection = assay::VolumeCorrection::ToFinalVolume;
    method.extrapolate = assay::Extrapolation{u"A3"_s, 2};
    run::Run run = test::plainRun();
    run.samples[0] = test::solid("S", 5, 100);
    for (run::Tube &tube : run.tubes)
        tube.readings[u"A3"_s] = run::ReadingSeries{{20, 0.91}, {30, 0.92}};
    const auto evaluation = evaluation::evaluate(method, run);
    const QString written =
        lines(evaluation::working(method, run, evaluation, u"S"_s, u"analyte"_s)).join(u'\n');
    EXPECT_TRUE(written.contains(u"A3 as read: 0.910 at 20.000 min; 0.920 at 30.000 min"_s)) << written.toStdString();
    EXPECT_TRUE(written.contains(u"slope b of A3"_s));
    // 0.915 less 0.001 a minute over 25 min.
    EXPECT_TRUE(written.contains(u"A3 at the addition of the starter: 0.91500 - (0.0010000) x 25.000 = 0.8900"_s))
        << written.toStdString();
    EXPECT_TRUE(written.contains(u"A1 at the final volume"_s));
    EXPECT_TRUE(written.contains(u"²"_s));
    EXPECT_TRUE(written.contains(u"\u00a0g/100\u00a0g"_s));
}

TEST(Working, OfASolidEveryFactorOfTheFormulaStandsInItsNumbers)
{
    const auto writtenWith = [](std::vector<run::DilutionStep> dilution) {
        run::Run run = test::plainRun();
        run.samples[0] = test::solid("S", 5, 100);
        run.samples[0].dilution = std::move(dilution);
        const assay::Method method = test::risingMethod();
        return lines(evaluation::working(method, run, evaluation::evaluate(method, run), u"S"_s, u"analyte"_s))
            .join(u'\n');
    };
    const QString diluted = writtenWith({{5, 50, {}}});
    EXPECT_TRUE(diluted.contains(u" x (50 / 5) x 0.1 / 5 x 100 = "_s)) << diluted.toStdString();
    const QString plain = writtenWith({});
    EXPECT_TRUE(plain.contains(u" x 1 x 0.1 / 5 x 100 = "_s)) << plain.toStdString();
    EXPECT_TRUE(plain.contains(u"Symbols: F: "_s)) << "F among the symbols";
}

TEST(Working, SaysLastWhatItsSymbolsMeanAndTheirUnits)
{
    run::Run run = test::plainRun();
    const auto evaluation = evaluation::evaluate(test::risingMethod(), run);
    const auto sections = evaluation::working(test::risingMethod(), run, evaluation, u"S"_s, u"analyte"_s);
    const evaluation::WorkingSection &symbols = sections.back();
    EXPECT_EQ(symbols.title, u"Symbols"_s);
    std::map<QString, QString> units;
    for (const evaluation::WorkingLine &line : symbols.lines)
        EXPECT_TRUE(units.emplace(line.what, line.value).second) << line.what.toStdString();
    EXPECT_EQ(units[u"V"_s], u"mL"_s);
    EXPECT_EQ(units[u"v"_s], u"mL"_s);
    EXPECT_EQ(units[u"M"_s], u"g/mol"_s);
    EXPECT_EQ(units[u"e"_s], u"L/(mol cm)"_s);
    EXPECT_EQ(units[u"d"_s], u"cm"_s);
    EXPECT_TRUE(units.contains(u"n"_s)); // molecules; N counts the tubes
    EXPECT_TRUE(units.contains(u"N"_s));
    EXPECT_FALSE(units.contains(u"F"_s)); // nothing was diluted
}

TEST(Working, UnknownResultHasNoWorking)
{
    const auto evaluation = evaluation::evaluate(test::risingMethod(), test::plainRun());
    EXPECT_TRUE(evaluation::working(test::risingMethod(), test::plainRun(), evaluation, u"X"_s, u"analyte"_s)
                    .empty());
}
