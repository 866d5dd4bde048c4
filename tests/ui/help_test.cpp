// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/support/print.h"
#include "tests/ui/helpbench.h"
#include "ui/help/helplistmodel.h"
#include "ui/help/helpview.h"
#include "ui/help/helpwindow.h"
#include "ui/shared/notice.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QAbstractTextDocumentLayout>
#include <QAccessible>
#include <QApplication>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QTextBlock>
#include <QtTest/QTest>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class Help : public HelpBench
{
protected:
    Help()
    {
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder());
        drawRack(u"en"_s, Qt::darkGreen);
        drawRack(u"de"_s, Qt::darkRed);
    }

    void drawRack(const QString &language, Qt::GlobalColor colour) const
    {
        QDir(folder()).mkpath(u"pictures/"_s + language);
        QImage picture(1600, 900, QImage::Format_RGB32);
        picture.fill(colour);
        EXPECT_TRUE(picture.save(u"%1/pictures/%2/rack.png"_s.arg(folder(), language)));
    }

    void open(const ui::HelpPlace &place, const char *language = "en")
    {
        m_window = std::make_unique<ui::HelpWindow>(m_theme, pages(language));
        m_window->show();
        m_window->activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
        m_window->go(place);
    }
    ui::HelpWindow &window() const { return *m_window; }
    ui::HelpView &view() const { return *m_window->findChild<ui::HelpView *>(); }
    QListView &list() const { return *m_window->findChild<QListView *>(u"helpList"_s); }
    const ui::HelpListModel &rows() const { return *m_window->findChild<ui::HelpListModel *>(); }
    QLineEdit &searchField() const { return *m_window->findChild<QLineEdit *>(u"helpSearch"_s); }
    QPushButton &button(const QString &name) const { return *m_window->findChild<QPushButton *>(name); }
    QString said() const { return m_window->findChild<ui::Notice *>()->sentence(); }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) const
    {
        QWidget *focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : m_window.get(), key, modifiers);
    }
    /// The text at the top of the view.
    QString textOnTop() const { return view().cursorForPosition(QPoint(40, 12)).block().text(); }
    int scrolled() const { return view().verticalScrollBar()->value(); }
    void followLink(const char *link) const { Q_EMIT view().anchorClicked(QUrl(QString::fromUtf8(link))); }
    /// Of the only picture of the page.
    QTextImageFormat picture() const
    {
        for (QTextBlock block = view().document()->begin(); block.isValid(); block = block.next()) {
            for (auto at = block.begin(); !at.atEnd(); ++at) {
                if (at.fragment().charFormat().isImageFormat())
                    return at.fragment().charFormat().toImageFormat();
            }
        }
        return {};
    }

    ui::Theme m_theme;

private:
    std::unique_ptr<ui::HelpWindow> m_window;
};

TEST_F(Help, IsSearchedAndReadByKeysAlone)
{
    open({u"index"_s, {}});
    const QAbstractItemModelTester tester(list().model(),
                                          QAbstractItemModelTester::FailureReportingMode::Warning);
    press(Qt::Key_F, Qt::ControlModifier);
    ASSERT_EQ(QApplication::focusWidget(), &searchField());
    QTest::keyClicks(&searchField(), u"signal"_s);
    ASSERT_EQ(rows().rowCount(), 3);
    EXPECT_EQ(rows().row(0).title, u"Blank signal"_s);
    EXPECT_EQ(window().place().page, u"index"_s) << "nothing is opened before it is asked for";
    press(Qt::Key_Return);
    EXPECT_EQ(window().place(), (ui::HelpPlace{u"checks"_s, u"blank-signal"_s}));
    EXPECT_EQ(QApplication::focusWidget(), &list());
    EXPECT_EQ(list().currentIndex().row(), 0);
    EXPECT_EQ(view().extraSelections().size(), 2) << "in the heading and in the text";
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(window().place(), (ui::HelpPlace{u"read"_s, u"a-series"_s}));
    EXPECT_EQ(textOnTop(), u"A series"_s);
    EXPECT_EQ(window().windowTitle(), u"Read – Help of Plateau"_s);
    press(Qt::Key_Escape);
    EXPECT_TRUE(searchField().text().isEmpty());
    EXPECT_TRUE(view().extraSelections().isEmpty());
    EXPECT_TRUE(window().isVisible());
    EXPECT_EQ(rows().row(list().currentIndex().row()).place, window().place())
        << "the contents say where one is";
    press(Qt::Key_Escape);
    EXPECT_FALSE(window().isVisible());
}

TEST_F(Help, ASearchWithoutResultSaysSo)
{
    open({u"index"_s, {}});
    searchField().setText(u"unicorn"_s);
    EXPECT_EQ(rows().rowCount(), 0);
    EXPECT_TRUE(window().findChild<QLabel *>(u"helpFound"_s)->text().startsWith(u"No section"_s));
    press(Qt::Key_Return);
    press(Qt::Key_Down);
    EXPECT_EQ(window().place().page, u"index"_s);
}

TEST_F(Help, DownLeadsFromTheSearchIntoTheListWhichStepsOverGroups)
{
    open({u"index"_s, {}});
    press(Qt::Key_F, Qt::ControlModifier);
    press(Qt::Key_Down);
    ASSERT_EQ(QApplication::focusWidget(), &list());
    EXPECT_EQ(list().currentIndex().row(), 0);
    press(Qt::Key_Down);
    EXPECT_EQ(list().currentIndex().row(), 2) << "row 1 is the name of a group";
    press(Qt::Key_Return);
    EXPECT_EQ(window().place().page, u"read"_s);
}

TEST_F(Help, AnAnchorBringsItsHeadingToTheTopAlsoWhereATitleComesTwice)
{
    open({u"read"_s, u"corrections-1"_s});
    EXPECT_EQ(textOnTop(), u"Corrections"_s);
    const int second = scrolled();
    window().go({u"read"_s, u"corrections"_s});
    EXPECT_EQ(textOnTop(), u"Corrections"_s);
    EXPECT_LT(scrolled(), second);
    window().go({u"read"_s, u"never-written"_s});
    EXPECT_EQ(scrolled(), 0);
    EXPECT_EQ(window().place(), (ui::HelpPlace{u"read"_s, {}}));
    window().go({u"checks"_s, u"blank-spread"_s});
    EXPECT_EQ(window().place().section, u"blanks-apart"_s) << "by what the program calls the check";
}

TEST_F(Help, LinksAreFollowedAndTheWayBackKnowsHowFarOneHadRead)
{
    open({u"read"_s, {}});
    EXPECT_FALSE(button(u"helpBack"_s).isEnabled());
    view().verticalScrollBar()->setValue(300);
    followLink("checks.md#blanks-apart");
    EXPECT_EQ(window().place(), (ui::HelpPlace{u"checks"_s, u"blanks-apart"_s}));
    followLink("#blank-signal");
    EXPECT_EQ(window().place(), (ui::HelpPlace{u"checks"_s, u"blank-signal"_s}));
    press(Qt::Key_Left, Qt::AltModifier);
    press(Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(window().place(), (ui::HelpPlace{u"read"_s, {}}));
    EXPECT_EQ(scrolled(), 300);
    EXPECT_FALSE(button(u"helpBack"_s).isEnabled());
    press(Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(window().place().section, u"blanks-apart"_s);
    followLink("wine.md");
    EXPECT_FALSE(button(u"helpForward"_s).isEnabled()) << "what was ahead is not any more";
    button(u"helpBack"_s).click();
    EXPECT_EQ(window().place().section, u"blanks-apart"_s);
}

TEST_F(Help, ALinkIsFollowedFromTheKeyboard)
{
    open({u"checks"_s, {}});
    view().setFocus();
    press(Qt::Key_Tab);
    press(Qt::Key_Return);
    EXPECT_EQ(window().place(), (ui::HelpPlace{u"read"_s, u"a-series"_s}));
    EXPECT_EQ(textOnTop(), u"A series"_s);
}

TEST_F(Help, TabGoesFromWhatIsReadToTheNextLinkAndOutBehindTheLast)
{
    write("en/many.md", "# Many\n\n[One](read.md)\n\n" + QByteArray("Room.\n\n").repeated(60) +
                            "## Below\n\n[Two](wine.md)\n\n" + QByteArray("Room.\n\n").repeated(60));
    open({u"many"_s, u"below"_s});
    view().setFocus();
    const int before = scrolled();
    press(Qt::Key_Tab);
    EXPECT_EQ(view().textCursor().selectedText(), u"Two"_s);
    EXPECT_EQ(scrolled(), before);
    press(Qt::Key_Tab);
    EXPECT_NE(QApplication::focusWidget(), &view()) << "no trap";
    EXPECT_EQ(scrolled(), before);
}

TEST_F(Help, ALinkOutOfTheHelpIsSaidAndNotOpened)
{
    open({u"read"_s, {}});
    followLink("https://example.invalid/x");
    EXPECT_EQ(window().place().page, u"read"_s);
    EXPECT_TRUE(said().startsWith(u"https://example.invalid/x lies outside"_s)) << said().toStdString();
    followLink("nothing.md");
    EXPECT_EQ(window().place().page, u"index"_s);
    EXPECT_TRUE(said().contains(u"“nothing”"_s)) << said().toStdString();
}

TEST_F(Help, APageWithoutTranslationIsShownInEnglishAndSaysSo)
{
    open({u"read"_s, {}}, "de");
    EXPECT_TRUE(view().toPlainText().startsWith(u"Lesen"_s));
    EXPECT_TRUE(said().isEmpty()) << said().toStdString();
    window().go({u"checks"_s, {}});
    EXPECT_TRUE(view().toPlainText().startsWith(u"Checks"_s));
    EXPECT_EQ(said(), u"This page exists in English only."_s);
}

TEST_F(Help, APageShowsThePicturesOfItsLanguage)
{
    const auto colour = [this] {
        return view()
            .document()
            ->resource(QTextDocument::ImageResource, QUrl(picture().name()))
            .value<QPixmap>()
            .toImage()
            .pixelColor(10, 10);
    };
    open({u"read"_s, {}}, "de");
    EXPECT_EQ(colour(), QColor(Qt::darkRed));
    open({u"read"_s, {}}, "fr"); // not translated: page and picture are the English ones
    EXPECT_EQ(colour(), QColor(Qt::darkGreen));
}

TEST_F(Help, APictureIsAsWideAsTheViewAndFollowsIt)
{
    open({u"read"_s, {}});
    const auto room = [this] {
        return view().viewport()->width() - 2 * static_cast<int>(view().document()->documentMargin());
    };
    ASSERT_LT(room(), 1600);
    EXPECT_EQ(picture().width(), room());
    EXPECT_NEAR(picture().height(), room() * 900.0 / 1600, 1);
    const QPixmap drawn =
        view().document()->resource(QTextDocument::ImageResource, QUrl(picture().name())).value<QPixmap>();
    EXPECT_EQ(drawn.width(), qRound(room() * view().devicePixelRatioF())) << "as many pixels as it takes";
    window().resize(window().width() - 150, window().height());
    QApplication::processEvents();
    EXPECT_EQ(picture().width(), room());
    window().resize(2400, 700);
    QApplication::processEvents();
    EXPECT_EQ(picture().width(), 1600) << "never larger than it is";
}

TEST_F(Help, WhatIsReadStaysOnTopWhenTheWindowChanges)
{
    open({u"read"_s, u"a-series"_s});
    window().resize(1100, 420);
    window().go({u"read"_s, u"a-series"_s});
    QApplication::processEvents();
    ASSERT_EQ(textOnTop(), u"A series"_s);
    window().resize(900, 420);
    QApplication::processEvents();
    EXPECT_EQ(textOnTop(), u"A series"_s);
}

TEST_F(Help, ItsSizeIsThereTheNextTime)
{
    open({u"index"_s, {}});
    window().resize(700, 510);
    window().close();
    open({u"index"_s, {}});
    EXPECT_EQ(window().size(), QSize(700, 510));
    QSettings(QSettings::IniFormat, QSettings::UserScope, u"plateau"_s, u"plateau"_s)
        .setValue(u"help/size"_s, u"rubbish"_s);
    ui::HelpWindow other(m_theme, pages());
    EXPECT_GT(other.width(), 700);
}

TEST_F(Help, LinksCanBeReadOnLightAndOnDarkGround)
{
    for (const bool dark : {false, true}) {
        QPalette palette;
        palette.setColor(QPalette::Window, dark ? QColor(0x2b, 0x2d, 0x30) : QColor(0xef, 0xef, 0xef));
        palette.setColor(QPalette::WindowText, dark ? Qt::white : Qt::black);
        palette.setColor(QPalette::Base, dark ? QColor(0x1e, 0x1f, 0x22) : QColor(Qt::white));
        m_theme.refresh(palette, QApplication::font());
        open({u"checks"_s, {}});
        int links = 0;
        for (QTextBlock block = view().document()->begin(); block.isValid(); block = block.next()) {
            for (auto at = block.begin(); !at.atEnd(); ++at) {
                if (!at.fragment().charFormat().isAnchor())
                    continue;
                ++links;
                EXPECT_GE(ui::contrast(at.fragment().charFormat().foreground().color(), m_theme.base()), 4.5);
            }
        }
        EXPECT_EQ(links, 2);
    }
}

TEST_F(Help, TabComesRoundAndNothingThatTakesKeysIsNamelessOrSmall)
{
    open({u"read"_s, {}});
    searchField().setFocus();
    QStringList passed;
    do {
        passed << QApplication::focusWidget()->objectName();
        press(Qt::Key_Tab);
        ASSERT_LT(passed.size(), 20) << passed.join(u' ').toStdString();
    } while (QApplication::focusWidget() != &searchField());
    EXPECT_TRUE(passed.contains(u"helpList"_s) && passed.contains(u"helpPage"_s))
        << passed.join(u' ').toStdString();
    int seen = 0;
    for (QWidget *widget : window().findChildren<QWidget *>()) {
        if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus ||
            widget->objectName().startsWith(u"qt_"_s) || qobject_cast<QScrollBar *>(widget))
            continue;
        ++seen;
        EXPECT_FALSE(QAccessible::queryAccessibleInterface(widget)->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
        EXPECT_GE(widget->height(), 24) << widget->objectName().toStdString();
    }
    EXPECT_GE(seen, 4);
}

TEST_F(Help, WithoutAnyPageItSaysSo)
{
    ui::HelpWindow empty(m_theme, ui::HelpPages(folder() + u"/nowhere"_s, u"en"_s));
    empty.go({u"read"_s, {}});
    EXPECT_FALSE(empty.findChild<ui::Notice *>()->sentence().isEmpty());
}

} // namespace
} // namespace plateau::test
