// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/instrument/photometerstore.h"

#include "tests/support/print.h"
#include "tests/ui/instrumentbench.h"

#include <QSettings>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// What is remembered of photometers.

namespace plateau::test {
namespace {

using namespace Qt::StringLiterals;
using ::testing::ElementsAre;
using ui::NamedMapping;
using ui::NetworkLink;
using ui::Photometer;
using ui::SerialLink;

class Remembering : public ::testing::Test
{
protected:
    QTemporaryDir folder;
    QString path = folder.filePath(u"plateau.ini"_s);
};

TEST_F(Remembering, GivesBackWhatWasKeptTheLastFirst)
{
    Photometer first{u"A, \"old\""_s,
                     SerialLink{u"ttyS0"_s, 4800, 7, SerialLink::Parity::Even, 2, SerialLink::Flow::Software},
                     {}};
    first.pattern = {exchange::TextEncoding::Latin1,
                     exchange::DecimalSign::Comma,
                     exchange::LinePattern::Which::After,
                     3,
                     u"ABS;"_s,
                     u"a,b"_s,
                     u"=x"_s};
    const Photometer second{u"B"_s, NetworkLink{u"fe80::1"_s, 4001}, {}};
    const NamedMapping mapping{u"Export"_s,
                               {exchange::TextEncoding::Latin1, exchange::Delimiter::Comma,
                                exchange::DecimalSign::Point, 3, 1, 2, true, true}};
    {
        QSettings settings(path, QSettings::IniFormat);
        ui::PhotometerStore store(settings);
        EXPECT_TRUE(store.keep(first));
        EXPECT_TRUE(store.keep(second));
        EXPECT_TRUE(store.keep(mapping));
    }
    QSettings settings(path, QSettings::IniFormat);
    ui::PhotometerStore store(settings);
    EXPECT_EQ(store.photometers(), (std::vector{second, first}));
    EXPECT_EQ(store.mappings(), std::vector{mapping});
    EXPECT_TRUE(store.keep(first));
    EXPECT_EQ(store.photometers(), (std::vector{first, second}));
    EXPECT_TRUE(store.forgetPhotometer(first.name));
    EXPECT_EQ(store.photometers(), std::vector{second});
    EXPECT_TRUE(store.forgetMapping(mapping.name));
    EXPECT_TRUE(store.mappings().empty());
}

TEST_F(Remembering, TakesNothingUnsoundFromTheSettings)
{
    const std::pair<QString, QVariant> nonsense[] = {
        {u"name"_s, u""_s},        {u"name"_s, u"a\nb"_s},    {u"port"_s, u""_s},
        {u"speed_baud"_s, u"x"_s}, {u"speed_baud"_s, 0},      {u"speed_baud"_s, QStringList{u"1"_s, u"2"_s}},
        {u"dataBits"_s, 9},        {u"parity"_s, u"mark"_s},  {u"stopBits"_s, 0},
        {u"flow"_s, u""_s},        {u"which"_s, u"regexp"_s}, {u"nth"_s, u"1.5"_s},
        {u"link"_s, u"network"_s},
    };
    for (const auto &[key, value] : nonsense) {
        QSettings settings(path, QSettings::IniFormat);
        ui::PhotometerStore store(settings);
        ASSERT_TRUE(store.keep(Photometer{u"A"_s, serial(u"ttyS0"_s), {}}));
        ASSERT_EQ(store.photometers().size(), 1u);
        settings.setValue(u"instrument/photometers/1/"_s + key, value);
        EXPECT_TRUE(store.photometers().empty()) << key.toStdString();
        settings.clear();
    }
    QSettings settings(path, QSettings::IniFormat);
    settings.setValue(u"instrument/photometers/size"_s, 2147483647);
    settings.setValue(u"instrument/mappings/size"_s, u"many"_s);
    EXPECT_TRUE(ui::PhotometerStore(settings).photometers().empty());
    EXPECT_TRUE(ui::PhotometerStore(settings).mappings().empty());
}

TEST_F(Remembering, KeepsAtMostFortyAndSaysWhatCannotBeWritten)
{
    QSettings settings(path, QSettings::IniFormat);
    ui::PhotometerStore store(settings);
    for (int number = 0; number <= ui::PhotometerStore::mostKept; ++number)
        EXPECT_TRUE(store.keep(NamedMapping{u"M%1"_s.arg(number), {}}));
    EXPECT_EQ(store.mappings().size(), 40u);
    EXPECT_EQ(store.mappings().front().name, u"M40"_s);
    EXPECT_EQ(store.mappings().back().name, u"M1"_s);
    QSettings nowhere(u"/proc/no/such/plateau.ini"_s, QSettings::IniFormat);
    EXPECT_FALSE(ui::PhotometerStore(nowhere).keep(NamedMapping{u"M"_s, {}}));
}

} // namespace
} // namespace plateau::test
