// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/insentence.h"

#include "tests/support/print.h"

#include <gtest/gtest.h>

namespace plateau::assay {

using namespace Qt::StringLiterals;

TEST(NameInASentence, BeginsSmallWhereOnlyNamesHaveACapital)
{
    const QLocale english(QLocale::English);
    EXPECT_EQ(inSentence(u"Buffer pH 9"_s, english), u"buffer pH 9"_s);
    EXPECT_EQ(inSentence(u"Sample"_s, english), u"sample"_s);
    EXPECT_EQ(inSentence(u"Tampon"_s, QLocale(QLocale::French)), u"tampon"_s);
    EXPECT_EQ(inSentence(u"Échantillon"_s, QLocale(QLocale::French)), u"échantillon"_s);
    EXPECT_EQ(inSentence(u"Tampón"_s, QLocale(QLocale::Spanish)), u"tampón"_s);
    EXPECT_EQ(inSentence(u"Water"_s, QLocale::c()), u"water"_s) << "the window is English there";
    EXPECT_EQ(inSentence(u"Hexokinase/G6P-DH"_s, english), u"hexokinase/G6P-DH"_s) << "the first word says";
}

TEST(NameInASentence, ASymbolStays)
{
    for (const QString &name : {u"NAD solution"_s, u"ATP/CoA"_s, u"L-malate dehydrogenase"_s, u"GOT suspension"_s,
                                u"NaOH, 1 mol/L"_s, u"MgCl2"_s, u"K3[Fe(CN)6]"_s, u"A"_s, u"water"_s, u"1 % albumin"_s,
                                QString()})
        EXPECT_EQ(inSentence(name, QLocale(QLocale::English)), name);
}

TEST(NameInASentence, KeepsItsCapitalInGerman)
{
    for (const QLocale &german : {QLocale(QLocale::German, QLocale::Germany), QLocale(QLocale::German, QLocale::Austria)})
        EXPECT_EQ(inSentence(u"Puffer"_s, german), u"Puffer"_s);
}

} // namespace plateau::assay
