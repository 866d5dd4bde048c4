// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/assay/listed.h"

#include "tests/support/print.h"

#include <QCoreApplication>
#include <QTranslator>

#include <gtest/gtest.h>

#include <cstring>

namespace plateau::assay {

using namespace Qt::StringLiterals;

namespace {

/// French, as far as a list needs it.
class NarrowSpace : public QTranslator
{
public:
    NarrowSpace() { QCoreApplication::installTranslator(this); }
    ~NarrowSpace() override { QCoreApplication::removeTranslator(this); }
    bool isEmpty() const override { return false; }
    QString translate(const char *context, const char *source, const char *, int) const override
    {
        const bool isTheSign =
            std::strcmp(context, "plateau::assay::Listed") == 0 && std::strcmp(source, "; ") == 0;
        return isTheSign ? u"\u202f; "_s : QString();
    }
};

} // namespace

TEST(Listed, PartsThatHoldACommaAreToldApart)
{
    EXPECT_EQ(listed({u"Cider, tank 1"_s, u"Must"_s}), u"Cider, tank 1; Must"_s);
    EXPECT_EQ(listed({u"Must"_s}), u"Must"_s);
    EXPECT_EQ(listed({}), QString());
}

TEST(Listed, TheSemicolonIsSetAsTheLanguageSetsIt)
{
    const NarrowSpace french;
    EXPECT_EQ(listed({u"a"_s, u"b"_s, u"c"_s}), u"a\u202f; b\u202f; c"_s);
}

} // namespace plateau::assay
