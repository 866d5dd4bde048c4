// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "tests/ui/turnedclock.h"
#include "ui/shared/momentfield.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSignalSpy>
#include <QtTest/QTest>

#include <gtest/gtest.h>

#include <cmath>
#include <memory>

using namespace Qt::StringLiterals;

namespace plateau::ui {
namespace {

class NumberEntryInLocale : public ::testing::TestWithParam<const char *>
{
protected:
    NumberEntryInLocale()
    {
        QLocale::setDefault(QLocale(QLatin1StringView(GetParam())));
        entry = std::make_unique<NumberEntry>(theme);
        entry->show();
    }
    ~NumberEntryInLocale() override { QLocale::setDefault(QLocale::c()); }

    std::optional<double> keyed(const QString &text)
    {
        entry->clear();
        QTest::keyClicks(entry.get(), text);
        EXPECT_EQ(entry->text(), text) << "every key stays";
        return entry->value();
    }

    Theme theme;
    std::unique_ptr<NumberEntry> entry;
};

TEST_P(NumberEntryInLocale, TakesPointAndCommaAsTheDecimalMark)
{
    EXPECT_EQ(keyed(u"2,5"_s), 2.5);
    EXPECT_EQ(keyed(u"2.5"_s), 2.5);
    EXPECT_EQ(keyed(u"0,512"_s), 0.512);
    EXPECT_EQ(keyed(u"0.512"_s), 0.512);
    EXPECT_EQ(keyed(u"12.5"_s), 12.5);
    EXPECT_EQ(keyed(u"1,500"_s), 1.5);
    EXPECT_EQ(keyed(u"1.500"_s), 1.5);
    EXPECT_EQ(keyed(u".512"_s), 0.512);
    EXPECT_EQ(keyed(u"1,"_s), 1.0);
    EXPECT_EQ(keyed(u" 0.25 "_s), 0.25);
    EXPECT_EQ(keyed(u"0.001"_s), 0.001);
    EXPECT_EQ(keyed(u"12"_s), 12.0);
}

TEST_P(NumberEntryInLocale, TakesAMinusOfEitherKind)
{
    EXPECT_EQ(keyed(u"-1"_s), -1.0);
    entry->clear();
    entry->insert(u"\u2212"_s + u"0,004"_s);
    EXPECT_EQ(entry->value(), -0.004);
}

TEST_P(NumberEntryInLocale, KeepsAndMarksWhatIsNoNumber)
{
    for (const QString &text : {u"1e-3"_s, u"1,500.2"_s, u"1.500,2"_s, u"0,5,2"_s, u"1 500"_s, u"nan"_s,
                                u"inf"_s, u"0.5l2"_s, u"-"_s, u","_s, u"1-2"_s}) {
        EXPECT_FALSE(keyed(text)) << text.toStdString();
        EXPECT_FALSE(entry->fault().isEmpty()) << text.toStdString();
        EXPECT_EQ(entry->accessibleDescription(), entry->fault());
    }
}

TEST_P(NumberEntryInLocale, RefusesOtherDigitsAsInput)
{
    entry->clear();
    entry->insert(u"\u0662\u066b\u0665"_s); // Arabic-Indic 2, decimal separator, 5
    EXPECT_FALSE(entry->value());
    EXPECT_FALSE(entry->fault().isEmpty());
}

TEST_P(NumberEntryInLocale, AnEmptyFieldIsNoFault)
{
    EXPECT_FALSE(keyed(u"  "_s));
    EXPECT_TRUE(entry->isBlank());
    EXPECT_TRUE(entry->fault().isEmpty());
}

TEST_P(NumberEntryInLocale, JudgesWithEveryKey)
{
    const QSignalSpy judged(entry.get(), &NumberEntry::judged);
    QTest::keyClicks(entry.get(), u"0,51"_s);
    EXPECT_EQ(judged.count(), 4);
}

TEST_P(NumberEntryInLocale, WritesTheValueSoThatItReadsBack)
{
    for (const double value : {0.512, 6300.0, 0.002, -0.25}) {
        entry->setValue(value);
        EXPECT_EQ(entry->value(), value);
    }
}

INSTANTIATE_TEST_SUITE_P(Locales, NumberEntryInLocale,
                         ::testing::Values("C", "en_US", "de_DE", "fr_FR", "de_CH", "ar_EG", "fa_IR",
                                           "hi_IN"));

TEST(NumberField, SaysHowTheTextIsUnderstood)
{
    const Theme theme;
    NumberField field(theme, u"g/L"_s);
    const auto *reply = field.findChild<QLabel *>(u"reply"_s);
    QTest::keyClicks(field.entry(), u"0,20"_s);
    EXPECT_EQ(reply->text(), u"= 0.2 g/L"_s);
    QTest::keyClicks(field.entry(), u"x"_s);
    EXPECT_EQ(reply->text(), field.entry()->fault());
    field.entry()->clear();
    EXPECT_EQ(reply->text(), u"g/L"_s);
}

TEST(NumberField, SaysNothingTwice)
{
    QLocale::setDefault(QLocale(u"fr_FR"_s));
    const Theme theme;
    NumberField field(theme, u"g/L"_s);
    const auto *reply = field.findChild<QLabel *>(u"reply"_s);
    for (const QString &same : {u"1,380"_s, u"1,38"_s, u"2,000"_s, u"20"_s, u"0,0"_s}) {
        field.entry()->setText(same);
        EXPECT_EQ(reply->text(), u"g/L"_s) << same.toStdString();
    }
    field.entry()->setText(u",380"_s);
    EXPECT_EQ(reply->text(), u"= 0,38 g/L"_s) << "the nought is added";
    field.entry()->setText(u"1.380"_s);
    EXPECT_EQ(reply->text(), u"= 1,38 g/L"_s) << "it may have been meant as a thousand";
    QLocale::setDefault(QLocale::c());
}

TEST(MomentField, SaysATimeOnceThatStandsThereInFull)
{
    const auto clocks = std::make_shared<test::Clocks>();
    clocks->wall = QDateTime(QDate(2026, 3, 2), QTime(9, 10)); // of the place where the test runs
    const test::TurnedClock clock(clocks);
    const Theme theme;
    MomentField field(theme, clock);
    const auto *reply = field.findChild<QLabel *>(u"reply"_s);
    field.setText(u"2026-03-02 09:00"_s);
    EXPECT_EQ(reply->text(), u"10 min ago"_s);
    field.setText(u"9:00"_s);
    EXPECT_EQ(reply->text(), u"= 2026-03-02 09:00, 10 min ago"_s);
}

TEST(NumberField, SaysItsUnitOnceInAForm)
{
    const Theme theme;
    QWidget page;
    auto *form = new QFormLayout(&page);
    auto *volume = new NumberField(theme, u"mL"_s, &page);
    auto *line = new QLineEdit(&page);
    addFormRow(form, u"Vol&ume (mL)"_s, volume, u"volume"_s);
    addFormRow(form, u"Volumes (mL)"_s, line, u"volumes"_s);
    EXPECT_EQ(static_cast<QLabel *>(form->labelForField(volume))->text(), u"Vol&ume"_s);
    EXPECT_EQ(volume->entry()->accessibleName(), u"Volume (mL)"_s) << "heard without what stands beside it";
    EXPECT_EQ(static_cast<QLabel *>(form->labelForField(line))->text(), u"Volumes (mL)"_s) << "which says no unit";
}

} // namespace
} // namespace plateau::ui
