// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/commands/program.h"

#include <QFile>
#include <QRegularExpression>
#include <QSet>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

QSet<QString> matches(const QString &pattern, const QString &text)
{
    QSet<QString> found;
    const QRegularExpression expression(pattern, QRegularExpression::MultilineOption);
    for (const QRegularExpressionMatch &match : expression.globalMatch(text))
        found.insert(match.captured(1));
    return found;
}

/// The man page as its reader sees it, near enough: without macros at the start of lines, escapes as
/// characters.
QString manPage()
{
    QFile file(QStringLiteral(PLATEAU_SOURCE_DIR "/app/packaging/plateau.1.in"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QString text = QString::fromUtf8(file.readAll());
    text.remove(QRegularExpression(u"^\\.\\\\\".*$"_s, QRegularExpression::MultilineOption));
    text.remove(QRegularExpression(u"^\\.[A-Z]{1,2} ?"_s, QRegularExpression::MultilineOption));
    text.replace(u"\\-"_s, u"-"_s).replace(u"\\~"_s, u" "_s).remove(u"\\fR"_s).remove(u"\\|"_s);
    return text.replace(QRegularExpression(u" +"_s), u" "_s);
}

std::string listed(const QSet<QString> &words)
{
    return words.values().join(u' ').toStdString();
}

/// Whatever either of them knows, the other does.
TEST(ManPage, NamesTheOptionsThatTheHelpNamesAndNoOthers)
{
    const QString help = QString::fromUtf8(runProgram({u"--help"_s}).out);
    const QString pattern = u"(--[a-z]+)"_s;
    const QSet<QString> helped = matches(pattern, help);
    const QSet<QString> described = matches(pattern, manPage());
    ASSERT_GE(helped.size(), 15);
    EXPECT_EQ(listed(helped - described), "") << "the man page lacks them";
    EXPECT_EQ(listed(described - helped), "") << "the help lacks them";
}

TEST(ManPage, HasAnEntryForEveryCommandOfTheHelpAndForNoOther)
{
    const QString help = QString::fromUtf8(runProgram({u"--help"_s}).out);
    const QSet<QString> helped = matches(u"^ +plateau ([a-z]+) "_s, help);
    const QString commands = manPage().section(u"\nCOMMANDS\n"_s, 1).section(u"\nOPTIONS\n"_s, 0, 0);
    const QSet<QString> described = matches(u"^([a-z]+) (?:--notebook |[A-Z][-A-Za-z.]+( |$))"_s, commands);
    ASSERT_GE(helped.size(), 11);
    EXPECT_EQ(listed(helped - described), "") << "the man page lacks them";
    EXPECT_EQ(listed(described - helped), "") << "the help lacks them";
}

TEST(ManPage, StatesEveryExitStatusThatTheHelpStates)
{
    const QString page = manPage();
    const QString part = page.section(u"\nEXIT STATUS\n"_s, 1).section(u"\nENVIRONMENT\n"_s, 0, 0);
    EXPECT_EQ(matches(u"^([0-9])$"_s, part), (QSet<QString>{u"0"_s, u"1"_s, u"2"_s}));
}

} // namespace
} // namespace plateau::test
