// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/pictures/fitting.h"
#include "tests/pictures/tour.h"
#include "tests/ui/mnemonics.h"

#include <QApplication>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

struct Setting {
    const char *name;
    const char *language;
    double fontScale;
};

void PrintTo(const Setting &setting, std::ostream *out)
{
    *out << setting.name;
}

/// Every page and dialog of the program, on the smallest screen it is made for; a mnemonic stands once on each.
class EveryPageFits : public ::testing::TestWithParam<Setting>
{
protected:
    EveryPageFits()
        : usual(QApplication::font())
    {
        QFont font = usual;
        font.setPointSizeF(usual.pointSizeF() * GetParam().fontScale);
        QApplication::setFont(font);
    }
    ~EveryPageFits() override { QApplication::setFont(usual); }

    const QFont usual;
};

TEST_P(EveryPageFits, OnTheSmallestScreen)
{
    const QSize smallest(1280, 800);
    const SpokenLanguage language(QString::fromLatin1(GetParam().language));
    const SampleNotebook notebook; // its methods speak the language
    SampleWindow sample(notebook, smallest);
    std::size_t seen = 0;
    for (const Stop &stop : tour()) {
        stop.visit(sample, [&](QWidget &shown) {
            ++seen;
            const QStringList found = misfits(shown, smallest);
            EXPECT_TRUE(found.isEmpty())
                << stop.name.toStdString() << ":\n  " << found.join(u"\n  "_s).toStdString();
            const QStringList clashes = mnemonicClashes(shown);
            EXPECT_TRUE(clashes.isEmpty())
                << stop.name.toStdString() << ":\n  " << clashes.join(u"\n  "_s).toStdString();
        });
    }
    EXPECT_EQ(seen, tour().size());
}

INSTANTIATE_TEST_SUITE_P(Window, EveryPageFits,
                         ::testing::Values(Setting{"English", "en", 1}, Setting{"German", "de", 1},
                                           Setting{"French", "fr", 1}, Setting{"Spanish", "es", 1}),
                         [](const auto &setting) { return std::string(setting.param.name); });

} // namespace
} // namespace plateau::test
