// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/evaluation/evaluation.h"
#include "tests/support/print.h"
#include "ui/help/helpsearch.h"
#include "ui/help/helpview.h"
#include "ui/help/helpwindow.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"

#include <QDir>
#include <QImage>
#include <QSet>
#include <QSettings>
#include <QTemporaryDir>
#include <QTextBlock>

#include <gtest/gtest.h>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// The pages that travel inside the program, in one language.
class ShippedHelp : public ::testing::TestWithParam<const char *>
{
protected:
    ShippedHelp()
        : m_pages(u":/help"_s, QString::fromLatin1(GetParam()))
    {
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_folder.path());
    }
    void SetUp() override { ASSERT_GE(m_pages.pages().size(), 20U) << "resources/help/en"; }

    ui::HelpPages m_pages;
    ui::Theme m_theme;

private:
    QTemporaryDir m_folder;
};

TEST_P(ShippedHelp, EveryPageHasATitleAndTextAndItsAnchorsAreThoseOnTheScreen)
{
    ui::HelpView view(m_theme);
    for (const ui::HelpPage &page : m_pages.pages()) {
        ASSERT_FALSE(page.sections.empty()) << page.id.toStdString();
        EXPECT_EQ(page.sections.front().level, 1) << page.id.toStdString();
        EXPECT_NE(page.title, page.id);
        view.showPage(page, m_pages.folder());
        QStringList anchors;
        for (const ui::HelpSection &section : page.sections)
            anchors << section.anchor;
        EXPECT_EQ(view.anchors(), anchors) << page.id.toStdString();
        EXPECT_EQ(QSet<QString>(anchors.begin(), anchors.end()).size(), anchors.size())
            << page.id.toStdString();
        EXPECT_FALSE(view.toPlainText().contains(u"]("_s))
            << page.id.toStdString() << ": a link that is none";
    }
}

TEST_P(ShippedHelp, EveryLinkLeadsToAPageAndASectionThatAreThere)
{
    ui::HelpWindow window(m_theme, m_pages);
    auto *view = window.findChild<ui::HelpView *>();
    int links = 0;
    for (const ui::HelpPage &page : m_pages.pages()) {
        window.go({page.id, {}});
        QSet<QString> targets;
        for (QTextBlock block = view->document()->begin(); block.isValid(); block = block.next()) {
            for (auto at = block.begin(); !at.atEnd(); ++at) {
                if (at.fragment().charFormat().isAnchor())
                    targets << at.fragment().charFormat().anchorHref();
            }
        }
        for (const QString &target : targets) {
            ++links;
            const auto wanted = ui::placeOfLink(target, page.id);
            ASSERT_TRUE(wanted) << page.id.toStdString() << ": " << target.toStdString()
                                << " leads out of the help";
            window.go({page.id, {}});
            Q_EMIT view->anchorClicked(QUrl(target));
            EXPECT_EQ(window.place(), *wanted) << page.id.toStdString() << ": " << target.toStdString();
        }
    }
    EXPECT_GE(links, 60);
}

TEST_P(ShippedHelp, EveryPictureIsThereInTheLanguageOfItsPage)
{
    ui::HelpView view(m_theme);
    const QString folder = u"../pictures/%1/"_s.arg(QString::fromLatin1(GetParam()));
    int pictures = 0;
    for (const ui::HelpPage &page : m_pages.pages()) {
        view.showPage(page, m_pages.folder());
        for (QTextBlock block = view.document()->begin(); block.isValid(); block = block.next()) {
            for (auto at = block.begin(); !at.atEnd(); ++at) {
                const QTextFormat format = at.fragment().charFormat();
                if (!format.isImageFormat())
                    continue;
                const QString name = format.toImageFormat().name();
                ++pictures;
                EXPECT_TRUE(name.startsWith(folder)) << page.id.toStdString() << ": " << name.toStdString();
                EXPECT_FALSE(view.document()
                                 ->resource(QTextDocument::ImageResource, QUrl(name))
                                 .value<QPixmap>()
                                 .isNull())
                    << page.id.toStdString() << ": " << name.toStdString();
            }
        }
    }
    EXPECT_GE(pictures, 20);
}

TEST_P(ShippedHelp, EveryCheckIsExplained)
{
    const ui::HelpPage *checks = m_pages.find(u"checks"_s);
    ASSERT_NE(checks, nullptr);
    for (int id = 0; id <= static_cast<int>(evaluation::CheckId::SampleVolumeOutsideRange); ++id) {
        const QString word = evaluation::checkWord(static_cast<evaluation::CheckId>(id));
        const ui::HelpSection *section = ui::sectionOf(*checks, word);
        ASSERT_NE(section, nullptr) << word.toStdString();
        EXPECT_EQ(section->identifier, word);
        EXPECT_GE(section->lines.size(), 3) << word.toStdString();
    }
}

TEST_P(ShippedHelp, EveryPageThatTheWindowLeadsToIsThere)
{
    for (const char *page :
         {"index",      "first-rack", "keys",    "today",      "plan",    "pipette",   "read",   "review",
          "notebook",   "samples",    "methods", "standards",  "lots",    "equipment", "charts", "limits",
          "laboratory", "persons",    "records", "instrument", "reports", "checks"})
        EXPECT_NE(m_pages.find(QString::fromLatin1(page)), nullptr) << page;
}

TEST_P(ShippedHelp, ThePagesAreTranslatedAlike)
{
    const QStringList english = QDir(u":/help/en"_s).entryList({u"*.md"_s});
    const QStringList own = QDir(u":/help/%1"_s.arg(QString::fromLatin1(GetParam()))).entryList({u"*.md"_s});
    for (const QString &page : own)
        EXPECT_TRUE(english.contains(page))
            << page.toStdString() << " is nowhere in English, to fall back to";
}

TEST_P(ShippedHelp, ASearchForACommonWordFindsItsPageFirst)
{
    const auto hits = ui::searchHelp(m_pages, m_pages.find(u"safety"_s)->title);
    ASSERT_FALSE(hits.empty());
    EXPECT_EQ(hits.front().page, u"safety"_s);
}

INSTANTIATE_TEST_SUITE_P(Language, ShippedHelp, ::testing::Values("en", "de", "fr", "es"),
                         [](const auto &language) { return std::string(language.param); });

} // namespace
} // namespace plateau::test
