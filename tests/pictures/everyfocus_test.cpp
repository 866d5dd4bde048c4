// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/pictures/focusring.h"
#include "tests/pictures/tour.h"
#include "ui/colours.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

class EveryFocus : public ::testing::TestWithParam<bool>
{
protected:
    EveryFocus()
        : usual(QApplication::palette())
    {
        QApplication::setPalette(GetParam() ? ui::darkPalette() : ui::lightPalette());
    }
    ~EveryFocus() override { QApplication::setPalette(usual); }

    const QPalette usual;
};

TEST_P(EveryFocus, IsSeenOnEveryWidgetOfEveryPage)
{
    const SampleNotebook notebook;
    SampleWindow sample(notebook, QSize(1280, 800));
    QStringList found;
    for (const Stop &stop : tour()) {
        stop.visit(sample, [&](QWidget &shown) {
            shown.activateWindow();
            (void)QTest::qWaitForWindowActive(&shown);
            for (const QString &line : withoutFocusRing(shown))
                found << line + u" ("_s + stop.name + u')';
        });
    }
    EXPECT_TRUE(found.isEmpty()) << found.join(u'\n').toStdString();
}

INSTANTIATE_TEST_SUITE_P(Palettes, EveryFocus, ::testing::Bool(),
                         [](const auto &dark) { return std::string(dark.param ? "Dark" : "Light"); });

class Unmarked : public QWidget
{
public:
    Unmarked() { setFocusPolicy(Qt::StrongFocus); }
};

TEST(FocusRing, OfAWidgetThatPaintsNoneIsMissed)
{
    QWidget page;
    auto *row = new QHBoxLayout(&page);
    row->addWidget(new QPushButton(u"Go"_s));
    row->addWidget(new Unmarked);
    page.resize(300, 100);
    page.show();
    page.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&page));
    EXPECT_EQ(withoutFocusRing(page).size(), 1);
}

} // namespace
} // namespace plateau::test
