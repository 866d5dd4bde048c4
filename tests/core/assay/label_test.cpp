// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/label.h"

#include "tests/support/print.h"

#include <QCoreApplication>
#include <QTranslator>

#include <gtest/gtest.h>

#include <cstring>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

/// French, as far as a name in marks needs it.
class FrenchMarks : public QTranslator
{
public:
    FrenchMarks() { QCoreApplication::installTranslator(this); }
    ~FrenchMarks() override { QCoreApplication::removeTranslator(this); }
    bool isEmpty() const override { return false; }
    QString translate(const char *context, const char *source, const char *, int) const override
    {
        const bool isTheName =
            std::strcmp(context, "plateau::assay::Label") == 0 && std::strcmp(source, "\"%1\"") == 0;
        return isTheName ? u"«\u00a0%1\u00a0»"_s : QString();
    }
};

} // namespace

TEST(Label, OrdinaryNamesAreFine)
{
    for (const QString &name : {u"P-104"_s, u"Tank 3, Apfelwein (süß)"_s, u"梨"_s, u"a"_s, QString(200, u'x'),
                                u"*"_s, u"../x"_s, u"<b>x</b>"_s})
        EXPECT_FALSE(labelFault(name)) << name.toStdString();
}

TEST(Label, WhatCannotBeSeenOrReadAloudIsRefused)
{
    struct Row {
        QString text;
        const char *fragment;
    };
    const Row rows[] = {
        {QString(), "blank"},
        {u" \t "_s, "blank"},
        {u"\u00A0"_s, "blank"},
        {u"a\nb"_s, "U+000A"},
        {u"a"_s + QChar(0) + u"b"_s, "U+0000"},
        {u"a\u0085b"_s, "U+0085"},
        {u"a\u2028b"_s, "U+2028"},
        {u"a\u202Eb"_s, "U+202E"},
        {u"a\u202Ab"_s, "U+202A"},
        {u"a\u2066b"_s, "U+2066"},
        {u"a\u2069b"_s, "U+2069"},
        {QString(201, u'x'), "201 characters"},
    };
    for (const Row &row : rows) {
        const auto fault = labelFault(row.text);
        ASSERT_TRUE(fault) << row.fragment;
        EXPECT_TRUE(fault->contains(QString::fromLatin1(row.fragment))) << fault->toStdString();
    }
}

TEST(Label, LengthCountsCharactersNotCodeUnits)
{
    QString wide;
    for (int i = 0; i < 200; ++i)
        wide += u"\U0001F347"_s;
    EXPECT_FALSE(labelFault(wide));
    EXPECT_TRUE(labelFault(wide + u'x'));
}

TEST(Label, ProseMayHaveLinesButNoOtherControls)
{
    EXPECT_FALSE(proseFault(u"first\n\tsecond"_s));
    EXPECT_FALSE(proseFault(QString()));
    EXPECT_TRUE(proseFault(u"a\rb"_s));
    EXPECT_TRUE(proseFault(u"a\u202Eb"_s));
    EXPECT_TRUE(proseFault(QString(4001, u'x')));
}

TEST(Label, QuotedTextStaysOnOneShortLine)
{
    EXPECT_EQ(quoted(u"A1"_s), u"\"A1\""_s);
    EXPECT_EQ(quoted(u"a\nb\u202E"_s), u"\"a<U+000A>b<U+202E>\""_s);
    EXPECT_EQ(quoted(QString(61, u'x')), u'"' + QString(60, u'x') + u"…\""_s);
    EXPECT_EQ(quoted(u"\U0001F347"_s), u"\"\U0001F347\""_s);
}

TEST(Label, QuotedTextHasTheMarksOfTheLanguage)
{
    const FrenchMarks french;
    EXPECT_EQ(quoted(u"A1"_s), u"«\u00a0A1\u00a0»"_s);
    EXPECT_EQ(quoted(u"%1"_s), u"«\u00a0%1\u00a0»"_s);
    EXPECT_EQ(named(u"a\nb"_s), u"a<U+000A>b"_s) << "without marks in every language";
}

TEST(Label, NumbersInSentencesAreShort)
{
    EXPECT_EQ(shown(0.1), u"0.1"_s);
    EXPECT_EQ(shown(1.0 / 3), u"0.333333"_s);
    EXPECT_EQ(shown(100000), u"100000"_s);
}

} // namespace plateau::assay
