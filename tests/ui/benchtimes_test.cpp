// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"
#include "ui/bench/benchsettings.h"
#include "ui/bench/benchsettingsdialog.h"
#include "ui/bench/benchsounds.h"
#include "ui/bench/timewords.h"
#include "ui/shared/theme.h"

#include <QLineEdit>
#include <QPushButton>
#include <QSettings>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

TEST(TimeWords, CountDownInWholeSecondsThatAreLeftAndUpInThoseThatPassed)
{
    EXPECT_EQ(ui::countdownText(12, {}), u"in 0:12"_s);
    EXPECT_EQ(ui::countdownText(11.2, {}), u"in 0:12"_s);
    EXPECT_EQ(ui::countdownText(0.1, 60), u"in 0:01"_s);
    EXPECT_EQ(ui::countdownText(0, 60), u"now, 1:00 left"_s);
    EXPECT_EQ(ui::countdownText(-10, 250), u"now, 4:10 left"_s);
    EXPECT_EQ(ui::countdownText(-10, 0), u"now, 0:00 left"_s);
    EXPECT_EQ(ui::countdownText(-10, -0.4), u"late by 0:00"_s);
    EXPECT_EQ(ui::countdownText(-10, -30.9), u"late by 0:30"_s);
    EXPECT_EQ(ui::countdownText(-0.5, {}), u"now"_s);
    EXPECT_EQ(ui::countdownText(-8.2, {}), u"since 0:08"_s);
    EXPECT_EQ(ui::countdownText(3750, {}), u"in 1:02:30"_s);
}

TEST(TimeWords, SayByHowMuchAClockWasSet)
{
    EXPECT_EQ(ui::shiftText(3'600'000), u"1 h 00 min forward"_s);
    EXPECT_EQ(ui::shiftText(-3'600'000), u"1 h 00 min back"_s);
    EXPECT_EQ(ui::shiftText(65'000), u"1 min 05 s forward"_s);
    EXPECT_EQ(ui::shiftText(-2'400), u"0 min 02 s back"_s);
}

ui::NextAction reading(int tube, double opens_s, double closes_s)
{
    ui::NextAction action;
    action.run = {1};
    action.place = {tube, u"A2"_s};
    action.times = ui::ActTimes{opens_s, closes_s};
    return action;
}

TEST(SoundRule, IsHeardOnceForEachStepOfAnAct)
{
    ui::SoundRule rule;
    EXPECT_EQ(rule.hear({reading(1, 60, 120)}, 20), std::nullopt);
    EXPECT_EQ(rule.hear({reading(1, 20, 80)}, 20), ui::Sound::Soon);
    EXPECT_EQ(rule.hear({reading(1, 19, 79)}, 20), std::nullopt);
    EXPECT_EQ(rule.hear({reading(1, 0, 60)}, 20), ui::Sound::Now);
    EXPECT_EQ(rule.hear({reading(1, -60, 0)}, 20), std::nullopt);
    EXPECT_EQ(rule.hear({reading(1, -61, -1)}, 20), ui::Sound::Late);
    EXPECT_EQ(rule.hear({reading(1, -90, -30)}, 20), std::nullopt);
}

TEST(SoundRule, HearsABeatWhenItComes)
{
    ui::SoundRule rule;
    ui::NextAction beat = reading(1, 30, 0);
    beat.times->closes_s.reset();
    EXPECT_EQ(rule.hear({beat}, 20), std::nullopt);
    beat.times->opens_s = 10;
    EXPECT_EQ(rule.hear({beat}, 20), std::nullopt);
    beat.times->opens_s = 0;
    EXPECT_EQ(rule.hear({beat}, 20), ui::Sound::Now);
    beat.times->opens_s = -90;
    EXPECT_EQ(rule.hear({beat}, 20), std::nullopt);
}

TEST(SoundRule, SaysTheMostPressingWhereSeveralComeAtOnce)
{
    ui::SoundRule rule;
    rule.hear({reading(1, 60, 90), reading(2, 60, 500), reading(3, 90, 500)}, 20);
    EXPECT_EQ(rule.hear({reading(1, -40, -10), reading(2, -40, 400), reading(3, -10, 400)}, 20),
              ui::Sound::Late);
    EXPECT_EQ(rule.hear({reading(1, -41, -11), reading(2, -41, 399), reading(3, -11, 399)}, 20),
              std::nullopt);
}

TEST(SoundRule, IsSilentOnWhatWasPastWhenItWasFirstSeenAndHearsItAnewWhenItIsBegunAnew)
{
    ui::SoundRule rule;
    EXPECT_EQ(rule.hear({reading(1, -60, -10)}, 20), std::nullopt);
    EXPECT_EQ(rule.hear({}, 20), std::nullopt); // taken back
    rule.hear({reading(1, 60, 90)}, 20);
    EXPECT_EQ(rule.hear({reading(1, 0, 30)}, 20), ui::Sound::Now);
}

TEST(Tones, DifferInNumberAndPitch)
{
    const QByteArray soon = ui::toneSamples(ui::Sound::Soon, 8000);
    const QByteArray now = ui::toneSamples(ui::Sound::Now, 8000);
    const QByteArray late = ui::toneSamples(ui::Sound::Late, 8000);
    EXPECT_EQ(now.size(), 2 * soon.size());
    EXPECT_EQ(late.size(), 3 * soon.size());
    const auto crossings = [](const QByteArray &samples) {
        const auto *first = reinterpret_cast<const qint16 *>(samples.constData());
        int count = 0;
        for (qsizetype at = 1; at < 800; ++at)
            count += (first[at - 1] < 0) != (first[at] < 0) ? 1 : 0;
        return count;
    };
    // A tenth of a second: twice the pitch in hertz over ten.
    EXPECT_NEAR(crossings(soon), 132, 3);
    EXPECT_NEAR(crossings(now), 198, 3);
    EXPECT_NEAR(crossings(late), 296, 3);
}

class Choice : public Bench
{
protected:
    QSettings settings{folder.filePath(u"settings.ini"_s), QSettings::IniFormat};
};

TEST_F(Choice, IsKept)
{
    EXPECT_EQ(ui::keptBench(settings), ui::BenchChoice());
    const ui::BenchChoice choice{true, 35, 45, true};
    ASSERT_TRUE(ui::keepBench(settings, choice));
    EXPECT_EQ(ui::keptBench(settings), choice);
}

TEST_F(Choice, WhateverElseStandsThereIsTheUsual)
{
    settings.setValue(u"bench/muted"_s, u"perhaps"_s);
    settings.setValue(u"bench/volume_percent"_s, 101);
    settings.setValue(u"bench/lead_s"_s, -1);
    settings.setValue(u"bench/keysThousandths"_s, 7);
    EXPECT_EQ(ui::keptBench(settings), ui::BenchChoice());
}

TEST_F(Choice, TheDialogTakesNoLeadThatIsNone)
{
    std::vector<ui::Sound> heard;
    QuietSounder sounder(heard);
    const ui::Theme theme;
    ui::BenchSettingsDialog dialog(theme, {false, 50, 20, false}, sounder);
    auto *lead = dialog.findChild<QLineEdit *>(u"benchLead"_s);
    auto *keep = dialog.findChild<QPushButton *>(u"keepBenchSettings"_s);
    for (const QString &text : {u"301"_s, u"-1"_s, u"1,5"_s, u""_s, u"soon"_s}) {
        lead->setText(text);
        EXPECT_FALSE(keep->isEnabled()) << text.toStdString();
    }
    lead->setText(u"300"_s);
    EXPECT_TRUE(keep->isEnabled());
    EXPECT_EQ(dialog.choice(), (ui::BenchChoice{false, 50, 300, false}));
    dialog.findChild<QPushButton *>(u"hearLate"_s)->click();
    EXPECT_EQ(heard, std::vector{ui::Sound::Late});
}

} // namespace
} // namespace plateau::test
