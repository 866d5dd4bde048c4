// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/ui/bench.h"

#include "tests/ui/shown.h"
#include "ui/bench/benchsession.h"
#include "ui/bench/checksmodel.h"
#include "ui/bench/historymodel.h"
#include "ui/bench/readingsmodel.h"
#include "ui/bench/recoveriesmodel.h"
#include "ui/bench/resultsmodel.h"
#include "ui/bench/samplesmodel.h"
#include "ui/bench/unitsofrun.h"
#include "ui/bench/verdicts.h"
#include "ui/destinationsmodel.h"
#include "ui/shared/theme.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

using namespace Qt::StringLiterals;

namespace plateau::test {
namespace {

/// Tester and spies on one model. The tester does not notice rows that change without a signal: the spies do.
struct Watch {
    explicit Watch(QAbstractItemModel *model)
        : tester(model, QAbstractItemModelTester::FailureReportingMode::Warning)
        , inserted(model, &QAbstractItemModel::rowsInserted)
        , removed(model, &QAbstractItemModel::rowsRemoved)
        , changed(model, &QAbstractItemModel::dataChanged)
        , reset(model, &QAbstractItemModel::modelReset)
    {
    }
    QAbstractItemModelTester tester;
    QSignalSpy inserted;
    QSignalSpy removed;
    QSignalSpy changed;
    QSignalSpy reset;
};

class Models : public Bench
{
protected:
    notebook::StoredRun read(const notebook::RunId id, int tube, const QString &reading, double value)
    {
        book->addReading(id, tube, reading, value, QString::number(value), u"R. Okafor"_s);
        return book->load(id);
    }
    static evaluation::Evaluation evaluated(const notebook::StoredRun &stored)
    {
        return evaluation::evaluate(stored.method, stored.run);
    }
    ui::Theme theme;
};

TEST_F(Models, ReadingsShowTubesInWordsAndValuesAsTheyCome)
{
    ui::ReadingsModel model(theme);
    Watch watch(&model);
    const notebook::RunId id = addRun(exampleRun());
    notebook::StoredRun stored = book->load(id);
    model.show(stored, evaluated(stored));
    EXPECT_EQ(watch.reset.count(), 1);
    ASSERT_EQ(model.rowCount(), 4);
    EXPECT_EQ(shown(model, 0, 0), u"1"_s);
    EXPECT_EQ(shown(model, 1, 1), u"blank, 2 of 2"_s);
    EXPECT_EQ(shown(model, 3, 1), u"P-104, 2 of 2"_s);
    EXPECT_EQ(shown(model, 2, 2), u"–"_s);

    stored = read(id, 2, u"A1"_s, 0.1);
    model.show(stored, evaluated(stored));
    EXPECT_EQ(watch.reset.count(), 1) << "the same run changes without a reset";
    EXPECT_GE(watch.changed.count(), 1);
    EXPECT_EQ(shown(model, 2, 2), u"0.100"_s);
}

TEST_F(Models, ReadingsAndResultsStandInTheUnitOfTheLaboratory)
{
    const notebook::RunId id = addRun(exampleRun());
    for (int tube = 0; tube < 4; ++tube) {
        read(id, tube, u"A1"_s, 0.1);
        read(id, tube, u"A2"_s, tube < 2 ? 0.11 : 0.61);
    }
    const notebook::StoredRun stored = book->load(id);
    ui::ReviewBasis basis;
    basis.laboratory = planning::usualLaboratory();
    basis.laboratory.reportUnits = {{{}, u"example-acid"_s, evaluation::ReportUnit::MilligramPerLitre}};

    ui::ReadingsModel readings(theme);
    Watch watch(&readings);
    readings.show(stored, evaluated(stored));
    const int last = readings.columnCount() - 1;
    const auto heading = [&] { return readings.headerData(last, Qt::Horizontal, Qt::DisplayRole).toString(); };
    EXPECT_EQ(heading(), u"Concentration (g/L)"_s);
    EXPECT_TRUE(shown(readings, 2, last).startsWith(u"0.168"_s)) << shown(readings, 2, last).toStdString();
    readings.show(stored, evaluated(stored), ui::unitsOfRun(stored, basis.laboratory));
    EXPECT_EQ(heading(), u"Concentration (mg/L)"_s);
    EXPECT_TRUE(shown(readings, 2, last).startsWith(u"168"_s)) << shown(readings, 2, last).toStdString();
    EXPECT_EQ(watch.reset.count(), 1) << "the same run changes without a reset";

    ui::ResultsModel results(theme);
    results.show(stored, evaluated(stored), basis);
    ASSERT_EQ(results.rowCount(), 1);
    EXPECT_TRUE(shown(results, 0, ui::ResultsModel::Value).startsWith(u"168"_s));
    EXPECT_TRUE(shown(results, 0, ui::ResultsModel::Value).endsWith(u"mg/L"_s));
    EXPECT_EQ(ui::commonUnits(results.rows()), std::vector{evaluation::ReportUnit::MilligramPerLitre});
}

TEST_F(Models, AControlStandsInTheUnitOfTheSamplesBesideIt)
{
    run::Run run = exampleRun();
    run.samples.push_back(run.samples[0]);
    run.samples.back().id = u"Control 2026-2"_s;
    run.tubes.push_back(run.tubes.back());
    run.tubes.back().role = run::Role::Control;
    run.tubes.back().sample = u"Control 2026-2"_s;
    notebook::StoredRun stored = book->load(addRun(run));
    stored.plan.emplace();
    stored.plan->samples.resize(1);
    stored.plan->samples[0].sample.id = u"P-104"_s;
    stored.plan->samples[0].sample.product = u"Cider"_s;
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.reportUnits = {{u"Cider"_s, u"example-acid"_s, evaluation::ReportUnit::MilligramPerLitre}};
    const auto unitOf = [&](const QString &sample) {
        return ui::reportUnitIn(stored, laboratory, sample, u"example-acid"_s, run::Form::Liquid);
    };
    EXPECT_EQ(unitOf(u"P-104"_s), evaluation::ReportUnit::MilligramPerLitre);
    EXPECT_EQ(unitOf(u"Control 2026-2"_s), evaluation::ReportUnit::MilligramPerLitre);
    EXPECT_EQ(ui::shownUnit(ui::unitsOfRun(stored, laboratory), u"example-acid"_s).unit,
              evaluation::ReportUnit::MilligramPerLitre);
    laboratory.reportUnits.clear();
    EXPECT_FALSE(unitOf(u"Control 2026-2"_s));
}

TEST_F(Models, ReadingsShowWhatACorrectionReplaced)
{
    ui::ReadingsModel model(theme);
    Watch watch(&model);
    const notebook::RunId id = addRun(exampleRun());
    read(id, 2, u"A1"_s, 0.121);
    book->correctReading(id, 2, u"A1"_s, 0.112, u"0,112"_s, u"R. Okafor"_s, u"misread"_s);
    const notebook::StoredRun stored = book->load(id);
    model.show(stored, evaluated(stored));
    EXPECT_EQ(shown(model, 2, 2), u"0.112 (was 0.121)"_s);
}

TEST_F(Models, ReadingsShowWhatIsBeingKeyedAndWhatComesOfIt)
{
    ui::ReadingsModel model(theme);
    Watch watch(&model);
    const notebook::RunId id = addRun(exampleRun());
    for (int tube = 0; tube < 4; ++tube)
        read(id, tube, u"A1"_s, 0.1);
    for (int tube = 0; tube < 2; ++tube)
        read(id, tube, u"A2"_s, 0.11);
    const notebook::StoredRun stored = book->load(id);
    model.show(stored, evaluated(stored));
    EXPECT_EQ(shown(model, 2, 4), QString());
    const ui::Place place{2, u"A2"_s};
    model.setKeyed(place, 0.61, ui::preview(stored, place, 0.61));
    EXPECT_EQ(shown(model, 2, 3), u"0.610"_s);
    EXPECT_EQ(shown(model, 2, 4), u"0.500"_s);
    EXPECT_NEAR(shown(model, 2, 5).toDouble(), 0.5 * exampleFactor_g_per_L, 0.0005);
    EXPECT_EQ(model.placeOf(model.index(2, 3)), place);
    EXPECT_EQ(model.indexOf(place), model.index(2, 3));
    EXPECT_FALSE(model.placeOf(model.index(2, 1)));
    model.setKeyed(std::nullopt, std::nullopt, evaluated(stored));
    EXPECT_EQ(shown(model, 2, 3), u"–"_s) << "a preview leaves nothing behind";
}

TEST_F(Models, ChecksShowWhatFailedFirstWithItsLimit)
{
    using Column = ui::ChecksModel::Column;
    ui::ChecksModel model(theme);
    Watch watch(&model);
    run::Run run = exampleRun();
    for (run::Tube &tube : run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.61}};
    model.setLines(evaluation::checkLines(method(), run, evaluation::evaluate(method(), run)));
    const int rows = model.rowCount();
    ASSERT_GT(rows, 2);
    EXPECT_EQ(watch.inserted.count(), 1);
    EXPECT_EQ(shown(model, 0, Column::Outcome), u"not made"_s) << "no tube holds a standard";
    EXPECT_EQ(shown(model, 1, Column::Outcome), u"passed"_s);
    run.tubes[0].readings[u"A2"_s] = 0.2;
    run.tubes[1].readings[u"A2"_s] = 0.2;
    model.setLines(evaluation::checkLines(method(), run, evaluation::evaluate(method(), run)));
    EXPECT_GE(watch.changed.count(), 1);
    EXPECT_EQ(watch.reset.count(), 0) << "what was chosen stays chosen";
    EXPECT_EQ(shown(model, 0, Column::Outcome), u"failed"_s);
    EXPECT_TRUE(shown(model, 0, Column::Check).startsWith(u"Blank"_s));
    EXPECT_TRUE(shown(model, 0, Column::Found).contains(u"0.100"_s)) << shown(model, 0, 2).toStdString();
    EXPECT_TRUE(shown(model, 0, Column::Limit).contains(u"0.050"_s)) << shown(model, 0, 3).toStdString();
    EXPECT_EQ(shown(model, 0, Column::Origin), u"method"_s);
    EXPECT_TRUE(model.index(0, 0).data(Qt::FontRole).value<QFont>().bold());
    EXPECT_FALSE(model.index(0, 0).data(Qt::AccessibleDescriptionRole).toString().isEmpty());
    EXPECT_FALSE(model.index(1, 0).data(Qt::FontRole).isValid());
}

TEST_F(Models, ResultsFollowTheEvaluationRowByRow)
{
    ui::ResultsModel model(theme);
    Watch watch(&model);
    run::Run run = exampleRun();
    for (run::Tube &tube : run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 0.61}};
    const auto show = [&] {
        notebook::StoredRun stored;
        stored.method = method();
        stored.run = run;
        model.show(stored, evaluated(stored), {});
    };
    show();
    EXPECT_EQ(watch.inserted.count(), 1);
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(shown(model, 0, ui::ResultsModel::Sample), u"P-104"_s);
    EXPECT_EQ(shown(model, 0, ui::ResultsModel::Measurand), u"Example acid"_s);
    EXPECT_TRUE(shown(model, 0, ui::ResultsModel::Value).startsWith(u"0.168"_s))
        << shown(model, 0, 2).toStdString();
    EXPECT_TRUE(shown(model, 0, ui::ResultsModel::Value).endsWith(u" g/L"_s));
    EXPECT_GE(shown(model, 0, ui::ResultsModel::Coverage).toDouble(), 2);
    EXPECT_FALSE(model.hasSeveralMeasurands());
    EXPECT_TRUE(shown(model, 0, ui::ResultsModel::Value).contains(u" ± "_s));
    EXPECT_EQ(shown(model, 0, ui::ResultsModel::Tubes), u"2"_s);
    EXPECT_EQ(shown(model, 0, ui::ResultsModel::Verdict), u"reportable"_s);

    run.tubes[3].readings.erase(u"A2"_s);
    show();
    EXPECT_EQ(watch.changed.count(), 1);
    EXPECT_EQ(shown(model, 0, ui::ResultsModel::Verdict), u"waiting"_s);
    EXPECT_EQ(watch.reset.count(), 0);
}

TEST_F(Models, HistoryKeepsEveryReadingWithPersonAndReason)
{
    ui::HistoryModel model(theme);
    Watch watch(&model);
    const notebook::RunId id = addRun(exampleRun());
    read(id, 2, u"A1"_s, 0.121);
    read(id, 0, u"A1"_s, 0.1);
    model.show(book->load(id));
    EXPECT_EQ(watch.inserted.count(), 1);
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(shown(model, 0, ui::HistoryModel::Tube), u"1: blank, 1 of 2"_s);
    book->correctReading(id, 2, u"A1"_s, 0.112, u"0,112"_s, u"M. Lindqvist"_s, u"misread"_s);
    model.show(book->load(id));
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(shown(model, 1, ui::HistoryModel::Absorbance), u"0.121, corrected"_s);
    EXPECT_TRUE(model.index(1, ui::HistoryModel::Absorbance).data(Qt::FontRole).value<QFont>().strikeOut());
    EXPECT_EQ(shown(model, 2, ui::HistoryModel::Absorbance), u"0.112"_s);
    EXPECT_EQ(shown(model, 2, ui::HistoryModel::Typed), u"0,112"_s);
    EXPECT_EQ(shown(model, 2, ui::HistoryModel::Person), u"M. Lindqvist"_s);
    EXPECT_EQ(shown(model, 2, ui::HistoryModel::Reason), u"misread"_s);
    EXPECT_EQ(watch.reset.count(), 0);
}

TEST_F(Models, RecoveriesNameExpectedAndFound)
{
    ui::RecoveriesModel model;
    Watch watch(&model);
    run::Run run = exampleRun();
    run::Standard standard;
    standard.id = u"STD"_s;
    standard.concentration_g_per_L = 0.2;
    run.standards = {standard};
    run::Tube tube;
    tube.role = run::Role::Standard;
    tube.standard = u"STD"_s;
    run.tubes.push_back(tube);
    for (run::Tube &each : run.tubes)
        each.readings = {{u"A1"_s, 0.1}, {u"A2"_s, each.role == run::Role::Blank ? 0.11 : 0.61}};
    model.show(method(), run, evaluation::evaluate(method(), run));
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(shown(model, 0, ui::RecoveriesModel::What), u"Standard STD"_s);
    EXPECT_EQ(shown(model, 0, ui::RecoveriesModel::Expected), u"0.2000"_s);
    EXPECT_EQ(shown(model, 0, ui::RecoveriesModel::Found), u"0.1683"_s); // 0.5 x 0.33651
    EXPECT_EQ(shown(model, 0, ui::RecoveriesModel::Recovery), u"84.1"_s);
    const auto heading = [&](int column) { return model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(); };
    EXPECT_EQ(heading(ui::RecoveriesModel::Found), u"Found (g/L)"_s);
    model.show(method(), run, evaluation::evaluate(method(), run),
               {{u"example-acid"_s, {evaluation::ReportUnit::MilligramPerLitre, 1000}}});
    EXPECT_EQ(shown(model, 0, ui::RecoveriesModel::Expected), u"200.0"_s);
    EXPECT_EQ(shown(model, 0, ui::RecoveriesModel::Found), u"168.3"_s);
    EXPECT_EQ(heading(ui::RecoveriesModel::Found), u"Found (mg/L)"_s);
    run.tubes.back().role = run::Role::Control;
    model.show(method(), run, evaluation::evaluate(method(), run));
    EXPECT_EQ(shown(model, 0, ui::RecoveriesModel::What), u"Control STD"_s) << "in tubes of controls only";
    model.show(method(), run, {});
    EXPECT_EQ(watch.removed.count(), 1);
}

TEST_F(Models, SamplesKeepWhatWasFilledInForAName)
{
    ui::SamplesModel model(theme);
    Watch watch(&model);
    const QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    model.setNames({u"P-104"_s, u"P-105"_s});
    EXPECT_TRUE(model.setData(model.index(1, 2), u"5"_s, Qt::EditRole));
    EXPECT_TRUE(model.setData(model.index(1, 3), u"50"_s, Qt::EditRole));
    EXPECT_EQ(shown(model, 1, 4), u"10"_s);
    EXPECT_EQ(shown(model, 0, 4), u"1"_s);
    model.setNames({u"P-103"_s, u"P-104"_s, u"P-105"_s});
    EXPECT_EQ(shown(model, 2, 4), u"10"_s);
    EXPECT_FALSE(model.setData(model.index(0, 0), u"other"_s, Qt::EditRole))
        << "names come from the list beside it";
    EXPECT_TRUE(model.setData(model.index(0, 2), u"5x"_s, Qt::EditRole));
    EXPECT_EQ(shown(model, 0, 2), u"5x"_s) << "what is no number stays as typed";
    EXPECT_EQ(shown(model, 0, 4), u"–"_s);
    EXPECT_FALSE(model.index(0, 2).data(Qt::DecorationRole).value<QIcon>().isNull());
    model.setNames({u"P-105"_s});
    EXPECT_EQ(model.rowCount(), 1);
    EXPECT_EQ(shown(model, 0, 4), u"10"_s);
    EXPECT_GE(watch.removed.count(), 1);
}

TEST_F(Models, AVolumeLeftEmptyShowsTheMethods)
{
    ui::SamplesModel model(theme);
    const Watch watch(&model);
    model.setNames({u"P-104"_s});
    const auto volumeCell = [&model] {
        int column = 0;
        while (column < model.columnCount() &&
               model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString() != u"In the tube\n(mL)"_s)
            ++column;
        return model.index(0, column);
    };
    EXPECT_EQ(volumeCell().data().toString(), QString());
    model.setAssay(&method(), 340, 10);
    const QModelIndex volume = volumeCell();
    EXPECT_EQ(volume.data().toString(), u"0.1 (method)"_s);
    EXPECT_EQ(volume.data(Qt::EditRole).toString(), QString()) << "nothing was typed";
    EXPECT_EQ(volume.data(Qt::ForegroundRole).value<QColor>(), theme.mutedText());
    EXPECT_TRUE(model.setData(volume, u"0,25"_s, Qt::EditRole));
    EXPECT_EQ(volume.data().toString(), u"0,25"_s);
    EXPECT_FALSE(volume.data(Qt::ForegroundRole).isValid());
}

TEST_F(Models, SamplesGrowColumnsForSolidsAndDilutionSteps)
{
    ui::SamplesModel model(theme);
    Watch watch(&model);
    model.setNames({u"F-22"_s});
    const int before = model.columnCount();
    model.setForm(run::Form::Solid);
    EXPECT_EQ(model.columnCount(), before + 2);
    model.setDilutionSteps(2);
    EXPECT_EQ(model.columnCount(), before + 4);
    for (const auto &[column, text] : {std::pair{4, u"5"_s}, {5, u"50"_s}, {6, u"2"_s}, {7, u"50"_s}})
        EXPECT_TRUE(model.setData(model.index(0, column), text, Qt::EditRole));
    EXPECT_EQ(shown(model, 0, 8), u"250"_s);
}

TEST_F(Models, AResultOfUsedUpReagentIsOnlyKnownToBeLarger)
{
    evaluation::Result result;
    result.value = 0.449;
    result.unit = u"g/L"_s;
    result.expandedUncertainty = 0.01;
    EXPECT_TRUE(ui::resultText(result).contains(u'±'));
    result.greaterThan = 0.449;
    EXPECT_EQ(ui::resultText(result), u"> 0.449 g/L"_s);
}

TEST_F(Models, AResultSpoiltByAnImpossibleReadingIsNotSaidToWait)
{
    run::Run run = exampleRun();
    for (run::Tube &tube : run.tubes)
        tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, tube.role == run::Role::Blank ? 0.11 : 8.12}};
    const evaluation::Evaluation spoilt = evaluation::evaluate(method(), run);
    ASSERT_EQ(spoilt.results.size(), 1U);
    EXPECT_FALSE(spoilt.results[0].value);
    EXPECT_EQ(ui::verdictOf(spoilt.results[0]).text, u"investigate"_s);
    EXPECT_EQ(ui::resultText(spoilt.results[0]), u"–"_s);
    run.tubes[2].readings.erase(u"A2"_s);
    EXPECT_EQ(ui::verdictOf(evaluation::evaluate(method(), run).results[0]).text, u"waiting"_s);
}

TEST_F(Models, DestinationsAreTheRacksAndTheBooks)
{
    ui::BenchSession session(*book);
    session.reload();
    ui::DestinationsModel model(theme, session);
    Watch watch(&model);
    const int books = static_cast<int>(ui::bookEntries().size());
    EXPECT_EQ(model.rowCount(), 2 + books);
    const notebook::RunId id = addRun(exampleRun());
    session.reload();
    model.refresh();
    ASSERT_EQ(model.rowCount(), 3 + books);
    EXPECT_EQ(watch.inserted.count(), 1);
    EXPECT_EQ(model.rackIndex(id).data(Qt::AccessibleTextRole).toString(), u"Rack A, Perry tanks"_s);
    EXPECT_EQ(model.bookIndex(ui::Book::Today).row(), 3) << "behind the headings and the rack";
    for (const ui::BookEntry &entry : ui::bookEntries())
        EXPECT_EQ(model.bookIndex(entry.book).data(Qt::DisplayRole).toString(), entry.title);
    EXPECT_EQ(model.flags(model.index(0)), Qt::NoItemFlags) << "headings cannot be chosen";
}

} // namespace
} // namespace plateau::test
