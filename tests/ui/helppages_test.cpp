// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "tests/ui/helpbench.h"
#include "ui/help/helplistmodel.h"
#include "ui/help/helpsearch.h"
#include "ui/help/helptext.h"

#include <QAbstractItemModelTester>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

TEST(HelpText, FoldsCaseAccentsAndLigatures)
{
    EXPECT_EQ(ui::foldedText(u"Größe"_s), u"grosse"_s);
    EXPECT_EQ(ui::foldedText(u"ÉTÉ cœur Œuvre"_s), u"ete coeur oeuvre"_s);
    EXPECT_EQ(ui::foldedWords(u"blank-high, (Señal) 0,5 mL"_s),
              QStringList({u"blank"_s, u"high"_s, u"senal"_s, u"0"_s, u"5"_s, u"ml"_s}));
}

TEST(HelpText, TakesTheMarksOutOfALine)
{
    EXPECT_EQ(ui::plainLine(u"## Press `Ctrl+G`"_s), u"Press Ctrl+G"_s);
    EXPECT_EQ(ui::plainLine(u"- **Bold** and *leaning*, [a link](x.md#y)"_s), u"Bold and leaning, a link"_s);
    EXPECT_EQ(ui::plainLine(u"12. ![A picture](../pictures/en/x.png)"_s), u"A picture"_s);
    EXPECT_EQ(ui::plainLine(u"| `A` | [one](a.md) |"_s), u"A  one"_s);
    EXPECT_EQ(ui::plainLine(u"| --- | :-: |"_s), QString());
    EXPECT_EQ(ui::plainLine(u"2 * 3 * 4, `**x**`, a_b_c, 1 &lt; 2, \\*"_s),
              u"2 * 3 * 4, **x**, a_b_c, 1 < 2, *"_s);
}

TEST(HelpText, AnchorsAreLowerCaseHyphenedAndNumberedWhereTheyComeAgain)
{
    ui::HeadingAnchors anchors;
    EXPECT_EQ(anchors.next(u"How long it is good?"_s), u"how-long-it-is-good"_s);
    EXPECT_EQ(anchors.next(u"A1, A2 … (Ärger)"_s), u"a1-a2--ärger"_s);
    EXPECT_EQ(anchors.next(u"Read"_s), u"read"_s);
    EXPECT_EQ(anchors.next(u"Read"_s), u"read-1"_s);
    EXPECT_EQ(anchors.next(u"READ"_s), u"read-2"_s);
}

using HelpPagesTest = HelpBench;

TEST_F(HelpPagesTest, TheContentsFollowTheLinksOfTheIndexAndWhatItLeavesOutComesLast)
{
    const ui::HelpPages all = pages();
    const std::vector<ui::HelpEntry> wanted{{{}, u"index"_s},   {u"Bench"_s, {}},  {{}, u"read"_s},
                                            {u"Numbers"_s, {}}, {{}, u"checks"_s}, {{}, u"wine"_s}};
    EXPECT_EQ(all.contents(), wanted) << "a group without pages has no line, a page stands once";
    ASSERT_EQ(all.pages().size(), 4U);
    EXPECT_EQ(all.pages()[1].title, u"Read"_s);
    EXPECT_EQ(all.find(u"nothing"_s), nullptr);
}

TEST_F(HelpPagesTest, ASectionIsFoundByItsAnchorAndByWhatTheProgramCallsIt)
{
    const ui::HelpPages all = pages();
    const ui::HelpPage *checks = all.find(u"checks"_s);
    ASSERT_NE(checks, nullptr);
    ASSERT_EQ(checks->sections.size(), 3U);
    EXPECT_EQ(ui::sectionOf(*checks, u"blank-high"_s)->title, u"Blank signal"_s);
    EXPECT_EQ(ui::sectionOf(*checks, u"blanks-apart"_s)->identifier, u"blank-spread"_s);
    EXPECT_EQ(ui::sectionOf(*checks, u"blank"_s), nullptr);
    EXPECT_EQ(ui::sectionOf(*checks, {}), nullptr);
    EXPECT_EQ(all.find(u"read"_s)->sections.back().anchor, u"corrections-1"_s);
}

TEST_F(HelpPagesTest, APageThatIsNotTranslatedIsThereInEnglish)
{
    const ui::HelpPages german = pages("de");
    EXPECT_EQ(german.find(u"read"_s)->title, u"Lesen"_s);
    EXPECT_EQ(german.find(u"read"_s)->language, u"de"_s);
    EXPECT_EQ(german.find(u"checks"_s)->language, u"en"_s);
    EXPECT_EQ(german.pages().size(), 4U);
    EXPECT_EQ(pages("it").find(u"read"_s)->title, u"Read"_s) << "no folder of that language";
    EXPECT_TRUE(ui::HelpPages(folder() + u"/nowhere"_s, u"en"_s).pages().empty());
}

TEST_F(HelpPagesTest, LinksLeadToPagesSectionsOrOut)
{
    const auto place = [](const char *link) { return ui::placeOfLink(QString::fromUtf8(link), u"read"_s); };
    EXPECT_EQ(place("checks.md"), (ui::HelpPlace{u"checks"_s, {}}));
    EXPECT_EQ(place("checks.md#blank-high"), (ui::HelpPlace{u"checks"_s, u"blank-high"_s}));
    EXPECT_EQ(place("#a-series"), (ui::HelpPlace{u"read"_s, u"a-series"_s}));
    EXPECT_EQ(place("#gr%C3%B6%C3%9Fe"), (ui::HelpPlace{u"read"_s, u"größe"_s}));
    for (const char *out :
         {"https://example.invalid/a.md", "mailto:a@example.invalid", "../a.md", "a.html", ""})
        EXPECT_FALSE(place(out)) << out;
}

using HelpSearch = HelpBench;

TEST_F(HelpSearch, TitlesComeBeforeTextAndEveryWordHasToBeThere)
{
    const auto hits = ui::searchHelp(pages(), u"signal"_s);
    ASSERT_EQ(hits.size(), 3U);
    EXPECT_EQ(hits[0].title, u"Blank signal"_s);
    EXPECT_EQ(hits[0].pageTitle, u"Checks"_s);
    EXPECT_EQ(hits[0].anchor, u"blank-signal"_s);
    EXPECT_EQ(hits[1].title, u"A series"_s) << "of equals as the contents have them";
    EXPECT_EQ(hits[2].title, u"Crémant"_s);
    const auto both = ui::searchHelp(pages(), u"signal starter"_s);
    ASSERT_EQ(both.size(), 1U);
    EXPECT_EQ(both[0].title, u"A series"_s);
    EXPECT_TRUE(ui::searchHelp(pages(), u"signal unicorn"_s).empty());
    EXPECT_TRUE(ui::searchHelp(pages(), u"  "_s).empty());
}

TEST_F(HelpSearch, BeginningsAreEnoughAndAccentsAndCaseDoNotCount)
{
    for (const char *typed : {"crém", "CREMANT", "cremant acc"}) {
        const auto hits = ui::searchHelp(pages(), QString::fromUtf8(typed));
        ASSERT_EQ(hits.size(), 1U) << typed;
        EXPECT_EQ(hits[0].page, u"wine"_s);
    }
    EXPECT_TRUE(ui::searchHelp(pages(), u"emant"_s).empty()) << "only how a word begins";
}

TEST_F(HelpSearch, AWordOfThePagesTitleHelpsButIsNotEnough)
{
    const auto hits = ui::searchHelp(pages(), u"checks blanks"_s);
    ASSERT_EQ(hits.size(), 2U);
    EXPECT_EQ(hits[0].title, u"Blanks apart"_s) << "the word stands in its title as it was typed";
    for (const ui::HelpHit &hit : ui::searchHelp(pages(), u"checks"_s))
        EXPECT_EQ(hit.title, u"Checks"_s) << "not every section of the page of that name";
}

TEST_F(HelpSearch, TheContextIsTheLineWithTheWordsCutToFit)
{
    EXPECT_EQ(ui::searchHelp(pages(), u"mean signal"_s).at(0).context,
              u"Tests: the mean signal of the blanks."_s);
    QByteArray page = "# Long\n\n";
    for (int word = 0; word < 40; ++word)
        page += "filling ";
    page += "needle ";
    for (int word = 0; word < 40; ++word)
        page += "filling ";
    write("en/long.md", page);
    const QString context = ui::searchHelp(pages(), u"needle"_s).at(0).context;
    EXPECT_TRUE(context.contains(u" needle "_s)) << context.toStdString();
    EXPECT_TRUE(context.startsWith(u"… filling"_s) && context.endsWith(u"filling …"_s))
        << context.toStdString();
    EXPECT_LE(context.size(), 96);
}

using HelpList = HelpBench;

TEST_F(HelpList, GoesFromContentsToWhatIsFoundAndBack)
{
    ui::HelpListModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    const ui::HelpPages all = pages();
    model.showContents(all, u"checks"_s);
    ASSERT_EQ(model.rowCount(), 8) << "the pages, two groups, and the two sections of the page that is read";
    EXPECT_EQ(model.row(1).kind, ui::HelpRow::Kind::Group);
    EXPECT_FALSE(model.flags(model.index(1)).testFlag(Qt::ItemIsSelectable));
    EXPECT_TRUE(model.flags(model.index(2)).testFlag(Qt::ItemIsSelectable));
    EXPECT_EQ(model.rowOf({u"checks"_s, u"blanks-apart"_s}), 6);
    EXPECT_EQ(model.rowOf({u"read"_s, u"a-series"_s}), 2) << "its page, while that is not read";
    EXPECT_EQ(model.rowOf({u"nothing"_s, {}}), -1);
    const auto hits = ui::searchHelp(all, u"signal"_s);
    model.showHits(hits);
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(model.data(model.index(0), Qt::AccessibleTextRole).toString(),
              u"Blank signal, in Checks: Tests: the mean signal of the blanks."_s);
    model.showHits({});
    EXPECT_EQ(model.rowCount(), 0);
    model.showContents(all, {});
    EXPECT_EQ(model.rowCount(), 6);
}

} // namespace
} // namespace plateau::test
