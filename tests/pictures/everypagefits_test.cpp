// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/pictures/fitting.h"
#include "tests/pictures/tour.h"
#include "tests/ui/mnemonics.h"
#include "ui/books/runsmodel.h"
#include "ui/books/trailmodel.h"

#include <QApplication>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// A place of the tour, its table, and the columns of it whose cells have to be read whole; all where none is named.
struct ReadWhole {
    QString stop;
    QString table;
    QList<int> columns;
};

std::vector<ReadWhole> tablesToReadWhole()
{
    return {{u"samples"_s, u"waiting"_s, {}},
            {u"lots"_s, u"lots"_s, {}},
            {u"standards"_s, u"standards"_s, {}},
            {u"equipment"_s, u"equipment"_s, {}},
            {u"limits"_s, u"limits"_s, {}},
            {u"keys"_s, u"keys"_s, {}},
            // A run may have more samples, and an act may have changed more, than a row can hold.
            {u"notebook"_s, u"runs"_s, {ui::RunsModel::Begun, ui::RunsModel::Title, ui::RunsModel::Method}},
            {u"records"_s, u"trail"_s, {ui::TrailModel::When, ui::TrailModel::Who, ui::TrailModel::What}}};
}

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
            for (const ReadWhole &whole : tablesToReadWhole()) {
                if (whole.stop != stop.name)
                    continue;
                const QStringList cut = cutCells(shown, whole.table, whole.columns);
                EXPECT_TRUE(cut.isEmpty()) << stop.name.toStdString() << ":\n  " << cut.join(u"\n  "_s).toStdString();
            }
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
