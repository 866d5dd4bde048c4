// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/runcode.h"
#include "tests/ui/bench.h"
#include "tests/ui/shown.h"
#include "ui/books/comparedrunsview.h"
#include "ui/books/notebookpage.h"
#include "ui/books/runcomparison.h"
#include "ui/books/runfilterfields.h"
#include "ui/books/runsmodel.h"
#include "ui/books/savedfilters.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTableView>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// The list of runs on a notebook with many.
class RunsList : public Bench
{
protected:
    void addRuns(int count)
    {
        for (int number = 0; number < count; ++number) {
            run::Run run = exampleRun();
            run.title = u"Rack %1"_s.arg(number);
            addRun(run);
        }
    }
    ui::RunsModel::Source source()
    {
        return [this](const auto &filter, auto order, int size, const auto &after) {
            ++m_asked;
            return book->search().page(filter, order, size, after);
        };
    }

    ui::Theme theme;
    int m_asked = 0;
};

TEST_F(RunsList, ShowsAPageAndFetchesTheNextOnlyWhenAsked)
{
    addRuns(ui::RunsModel::pageSize + 3);
    ui::RunsModel model(theme, source());
    const QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    model.find({}, notebook::RunOrder::NewestFirst);
    EXPECT_EQ(model.rowCount(), ui::RunsModel::pageSize);
    EXPECT_EQ(m_asked, 1);
    EXPECT_EQ(shown(model, 0, ui::RunsModel::Title), u"Rack 102"_s);
    ASSERT_TRUE(model.canFetchMore({}));
    model.fetchMore({});
    EXPECT_EQ(model.rowCount(), ui::RunsModel::pageSize + 3);
    EXPECT_FALSE(model.canFetchMore({}));
    EXPECT_EQ(shown(model, ui::RunsModel::pageSize + 2, ui::RunsModel::Title), u"Rack 0"_s);
    model.fetchMore({});
    EXPECT_EQ(m_asked, 2);
    EXPECT_GT(inserted.count(), 0);
    // It fetches by itself, so it comes last.
    model.find({}, notebook::RunOrder::ByTitle);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.find({}, notebook::RunOrder::OldestFirst);
    EXPECT_EQ(shown(model, 0, ui::RunsModel::Title), u"Rack 0"_s);
}

TEST_F(RunsList, AVersionIsSaidOnlyWhereTheListHasSeveralOfTheMethod)
{
    addRun(exampleRun());
    ui::RunsModel model(theme, source());
    model.find({}, notebook::RunOrder::OldestFirst);
    const QString name = method().name;
    EXPECT_EQ(shown(model, 0, ui::RunsModel::Method), name);
    assay::Method later = method();
    later.version = 2;
    run::Run other = exampleRun();
    other.title = u"Dried apricots"_s;
    book->addRun(other, later, u"M. Lindqvist"_s);
    const QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    model.refresh();
    EXPECT_EQ(shown(model, 0, ui::RunsModel::Method), name + u", version 1"_s) << "the row that was there, too";
    EXPECT_EQ(shown(model, 1, ui::RunsModel::Method), name + u", version 2"_s);
    EXPECT_GT(changed.count(), 0);
    model.find({.text = u"nowhere"_s}, notebook::RunOrder::OldestFirst);
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(RunsList, RowsThatStayKeepTheirPlaceAndSayWhatBecameOfThem)
{
    const notebook::RunId first = addRun(exampleRun());
    ui::RunsModel model(theme, source());
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    const QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    model.find({}, notebook::RunOrder::NewestFirst);
    run::Run other = exampleRun();
    other.title = u"Dried apricots"_s;
    addRun(other);
    const QPersistentModelIndex kept(model.index(0, 0));
    model.refresh();
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(reset.count(), 0);
    EXPECT_EQ(kept.row(), 1);
    EXPECT_EQ(shown(model, 0, ui::RunsModel::Title), u"Dried apricots"_s);
    EXPECT_EQ(shown(model, 1, ui::RunsModel::Readings), u"0 of 8"_s);
    EXPECT_EQ(shown(model, 1, ui::RunsModel::Decision), u"on the bench"_s);
    book->decide(first, notebook::DecisionKind::Rejected, u"M. Lindqvist"_s, u"rack fell over"_s);
    model.refresh();
    EXPECT_EQ(shown(model, 1, ui::RunsModel::Decision), u"rejected"_s);
    EXPECT_FALSE(shown(model, 1, ui::RunsModel::Flags).isEmpty()) << "no reading was taken";
    EXPECT_TRUE(shown(model, 0, ui::RunsModel::Flags).isEmpty());
    model.find({}, notebook::RunOrder::OldestFirst);
    EXPECT_EQ(kept.row(), 0);
    model.find({.text = u"nowhere"_s}, notebook::RunOrder::NewestFirst);
    EXPECT_EQ(model.rowCount(), 0);
    EXPECT_FALSE(kept.isValid());
}

TEST_F(RunsList, FiltersAreKeptAsTheyWere)
{
    notebook::RunFilter filter;
    filter.text = u"tank \"4\""_s;
    filter.product = u"Perry"_s;
    filter.from = QDate(2026, 1, 31);
    filter.state = notebook::RunState::Rejected;
    filter.flag = evaluation::CheckId::BlankHigh;
    filter.value = notebook::ValueRange{u"malic"_s, u"g/L"_s, 0.1, {}};
    EXPECT_EQ(ui::filterOf(ui::filterText(filter)), filter);
    EXPECT_EQ(ui::filterOf(u"no filter"_s), std::nullopt);

    QSettings settings(folder.filePath(u"settings.ini"_s), QSettings::IniFormat);
    ui::keepFilters(settings, {{u"Tank, 4/5"_s, filter}, {u"all"_s, {}}});
    settings.sync();
    const ui::SavedFilters read =
        ui::savedFilters(QSettings(folder.filePath(u"settings.ini"_s), QSettings::IniFormat));
    ASSERT_EQ(read.size(), 2U);
    EXPECT_EQ(read.at(u"Tank, 4/5"_s), filter);
    EXPECT_TRUE(read.at(u"all"_s).isEmpty());
}

TEST_F(RunsList, FieldsAskForWhatStandsInThemAndSayWhatTheyDoNotUnderstand)
{
    ui::RunFilterFields fields(theme);
    fields.setChoices({{}, {}, {}, {{u"malic"_s, u"g/L"_s}, {u"malic"_s, u"g/100 g"_s}}});
    EXPECT_TRUE(fields.filter().isEmpty());
    notebook::RunFilter filter;
    filter.sample = u"C-17"_s;
    filter.from = QDate(2026, 1, 31);
    filter.flag = evaluation::CheckId::BlankHigh;
    filter.value = notebook::ValueRange{u"malic"_s, u"g/100 g"_s, 0.5, 1.5};
    fields.setFilter(filter);
    EXPECT_EQ(fields.filter(), filter);
    EXPECT_TRUE(fields.fault().isEmpty());
    auto *from = fields.findChild<QLineEdit *>(u"findFrom"_s);
    from->setText(u"2026-02"_s);
    EXPECT_EQ(fields.filter().from, QDate(2026, 2, 1));
    from->setText(u"spring"_s);
    EXPECT_EQ(fields.filter().from, std::nullopt);
    EXPECT_TRUE(fields.fault().startsWith(u"From:"_s)) << fields.fault().toStdString();
    from->setText(u"2026-02-02"_s);
    fields.findChild<QLineEdit *>(u"findTo"_s)->setText(u"2026-01-01"_s);
    EXPECT_TRUE(fields.fault().contains(u"after the last"_s));
}

TEST_F(RunsList, TwoRunsSideBySideShowFirstWhatDiffers)
{
    run::Run one = exampleRun();
    one.lots = {{u"buffer"_s, u"B-1"_s, {}}};
    run::Run other = one;
    other.title = u"Second"_s;
    other.lots[0].lot = u"B-2"_s;
    other.wavelength_nm = 365;
    const std::vector<ui::ComparedLine> lines =
        ui::compareRuns(book->load(addRun(one)), {}, book->load(addRun(other)), {});
    ASSERT_GT(lines.size(), 8U);
    EXPECT_TRUE(std::ranges::is_sorted(lines, std::greater(), &ui::ComparedLine::differs));
    const auto line = [&lines](const QString &what) {
        return *std::ranges::find(lines, what, &ui::ComparedLine::what);
    };
    EXPECT_EQ(line(u"Buffer pH 9"_s).one, u"B-1"_s);
    EXPECT_EQ(line(u"Buffer pH 9"_s).other, u"B-2"_s);
    EXPECT_TRUE(line(u"Wavelength"_s).differs());
    EXPECT_FALSE(line(u"Method"_s).differs());

    ui::ComparedRunsModel model(theme);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.show(lines, u"Plain"_s, u"Second"_s);
    EXPECT_EQ(model.rowCount(), int(lines.size()));
    EXPECT_EQ(model.headerData(ui::ComparedRunsModel::Other, Qt::Horizontal, Qt::DisplayRole), u"Second"_s);
    model.show({}, {}, {});
    EXPECT_EQ(model.rowCount(), 0);
}

/// The page by keys.
class NotebookPageKeys : public WindowBench
{
protected:
    const QTableView *runs() const { return find<QTableView>(u"runs"_s); }
    bool waitForRows(int rows) const
    {
        return QTest::qWaitFor([&] { return runs()->model()->rowCount() == rows; });
    }
};

TEST_F(NotebookPageKeys, WordsFindDownGoesToTheListEnterOpensAndEscapeClears)
{
    run::Run other = exampleRun();
    other.title = u"Dried apricots"_s;
    addRun(exampleRun());
    addRun(other);
    openWindow();
    press(Qt::Key_B, Qt::ControlModifier);
    ASSERT_EQ(focusName(), u"notebookFilter"_s);
    EXPECT_EQ(labelText(u"runCount"_s), u"2 run(s)"_s);
    type(u"apric"_s);
    ASSERT_TRUE(waitForRows(1));
    EXPECT_EQ(labelText(u"runCount"_s), u"1 of 2 run(s)"_s);
    press(Qt::Key_Down);
    EXPECT_EQ(focusName(), u"runs"_s);
    press(Qt::Key_Return);
    EXPECT_EQ(labelText(u"recordTitle"_s), u"Dried apricots"_s);
    press(Qt::Key_Escape);
    ASSERT_EQ(focusName(), u"notebookFilter"_s);
    press(Qt::Key_Escape);
    EXPECT_TRUE(waitForRows(2));
    EXPECT_TRUE(find<QLineEdit>(u"notebookFilter"_s)->text().isEmpty());
}

TEST_F(NotebookPageKeys, ARecordOpensOnTheRunWhateverWasLookedAtLast)
{
    const notebook::RunId id = addRun(exampleRun());
    openWindow();
    press(Qt::Key_B, Qt::ControlModifier);
    auto *page = window->findChild<ui::NotebookPage *>();
    ASSERT_NE(page, nullptr);
    page->showRecord(id);
    find<QPushButton>(u"toReported"_s)->click();
    EXPECT_TRUE(find<QPushButton>(u"toReported"_s)->isChecked());
    page->showRecord(id);
    EXPECT_FALSE(find<QPushButton>(u"toReported"_s)->isChecked());
    EXPECT_EQ(labelText(u"recordTitle"_s), u"Perry tanks"_s);
}

TEST_F(NotebookPageKeys, NothingFoundIsSaidAndACodeFindsItsRun)
{
    const notebook::RunId id = addRun(exampleRun());
    run::Run other = exampleRun();
    other.title = u"Another"_s;
    addRun(other);
    openWindow();
    press(Qt::Key_B, Qt::ControlModifier);
    auto *words = find<QLineEdit>(u"notebookFilter"_s);
    words->setText(u"zebra"_s);
    press(Qt::Key_Return);
    EXPECT_TRUE(labelText(u"notebookEmpty"_s).contains(u"No run in the notebook"_s));
    words->setText(run::groupedCode(run::runCode(exampleRun(), method().version)));
    press(Qt::Key_Return);
    ASSERT_EQ(runs()->model()->rowCount(), 1);
    EXPECT_EQ(book->findRuns(run::runCode(exampleRun(), method().version)), std::vector{id});
}

TEST_F(NotebookPageKeys, TwoChosenRunsAreComparedAndTheListComesBack)
{
    addRun(exampleRun());
    addRun(exampleRun());
    openWindow();
    press(Qt::Key_B, Qt::ControlModifier);
    find<QTableView>(u"runs"_s)->selectAll();
    auto *compare = find<QPushButton>(u"compareRuns"_s);
    ASSERT_TRUE(compare->isEnabled());
    compare->click();
    EXPECT_TRUE(labelText(u"comparedText"_s).contains(u"differ"_s) ||
                labelText(u"comparedText"_s).contains(u"the same"_s));
    press(Qt::Key_Escape);
    EXPECT_TRUE(find<QTableView>(u"runs"_s)->isVisible());
}

} // namespace
} // namespace plateau::test
