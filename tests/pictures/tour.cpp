// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/pictures/going.h"

#include "app/runfile.h"
#include "core/exchange/readers.h"
#include "core/exchange/shippedtexts.h"
#include "ui/bench/benchsession.h"
#include "ui/firststart.h"
#include "ui/shared/theme.h"

#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QFile>
#include <QSpinBox>
#include <QTableView>
#include <QTemporaryDir>

using namespace Qt::StringLiterals;

namespace plateau::test {

namespace {

/// A page that an action leads to.
Stop page(const QString &name, const QString &action)
{
    return {name, [action](SampleWindow &sample, const Look &look) {
                trigger(sample, action);
                look(sample.window());
            }};
}

/// A form behind a button of such a page.
Stop behind(const QString &name, const QString &action, const QString &button)
{
    return {name, [action, button](SampleWindow &sample, const Look &look) {
                trigger(sample, action);
                click(sample, button);
                look(sample.window());
            }};
}

/// A row of its list.
Stop row(const QString &name, const QString &action, const QString &list, const QString &text = {})
{
    return {name, [action, list, text](SampleWindow &sample, const Look &look) {
                trigger(sample, action);
                openRow(sample, list, text);
                look(sample.window());
            }};
}

Stop form(const QString &name, const QString &action)
{
    return {name, [action](SampleWindow &sample, const Look &look) { lookAtForm(sample, look, action); }};
}

/// A stage of the rack on the bench that begins so.
Stop stage(const QString &name, const QString &rack, const QString &action)
{
    return {name, [rack, action](SampleWindow &sample, const Look &look) {
                goToRack(sample, rack);
                trigger(sample, action);
                look(sample.window());
            }};
}

const QString halfReadRack = u"Weekly tanks"_s;
/// By the maker's seed, at the bench.
const QString decidedRun = u"Morning rack"_s;
const QString readRack = u"D-malic acid"_s;
QString malicMethod()
{
    return exchange::inWindowLanguage(u"L-malic acid in wine"_s);
}

/// Of one method, the last two that were decided.
void compareTwo(SampleWindow &sample)
{
    auto *runs = sample.window().findChild<QTableView *>(u"runs"_s);
    runs->clearSelection();
    int chosen = 0;
    for (int row = 1; row < runs->model()->rowCount() && chosen < 2; ++row) { // the first one is on the bench
        bool isOfMethod = false;
        for (int column = 0; column < runs->model()->columnCount(); ++column)
            isOfMethod |= runs->model()->index(row, column).data().toString().startsWith(
                exchange::inWindowLanguage(u"Total sulphite (template)"_s));
        if (!isOfMethod)
            continue;
        runs->selectionModel()->select(runs->model()->index(row, 0),
                                       QItemSelectionModel::Select | QItemSelectionModel::Rows);
        ++chosen;
    }
    settle();
    click(sample, u"compareRuns"_s);
}

void planTanks(SampleWindow &sample)
{
    trigger(sample, u"actionNewRun"_s);
    choose(sample, u"method"_s, malicMethod());
    typeInto(sample, u"title"_s, u"Perry tanks"_s);
    typeInto(sample, u"sampleNames"_s, u"Perry, tank 11\nPerry, tank 12\nPerry, tank 14\nPerry base"_s);
}

Stop plan(const QString &name, int tab)
{
    return {name, [tab](SampleWindow &sample, const Look &look) {
                planTanks(sample);
                showTab(sample, u"planTabs"_s, tab);
                look(sample.window());
            }};
}

std::vector<Stop> bench()
{
    return {
        page(u"today"_s, u"actionToday"_s),
        plan(u"plan"_s, 0),
        plan(u"plan-time"_s, 1),
        plan(u"plan-reagents"_s, 2),
        plan(u"plan-queue"_s, 3),
        plan(u"plan-method"_s, 4),
        stage(u"read"_s, halfReadRack, u"actionRead"_s),
        stage(u"review"_s, readRack, u"actionReview"_s),
        {u"review-samples"_s,
         [](SampleWindow &sample, const Look &look) {
             goToRack(sample, readRack);
             trigger(sample, u"actionReview"_s);
             click(sample, u"bySample"_s);
             look(sample.window());
         }},
    };
}

std::vector<Stop> notebook()
{
    return {
        page(u"notebook"_s, u"actionNotebook"_s),
        {u"notebook-more"_s,
         [](SampleWindow &sample, const Look &look) {
             trigger(sample, u"actionNotebook"_s);
             click(sample, u"findMore"_s);
             look(sample.window());
             click(sample, u"findMore"_s);
         }},
        row(u"record"_s, u"actionNotebook"_s, u"runs"_s, decidedRun),
        {u"reported"_s,
         [](SampleWindow &sample, const Look &look) {
             trigger(sample, u"actionNotebook"_s);
             openRow(sample, u"runs"_s, decidedRun);
             click(sample, u"toReported"_s);
             look(sample.window());
         }},
        {u"compare"_s,
         [](SampleWindow &sample, const Look &look) {
             trigger(sample, u"actionNotebook"_s);
             compareTwo(sample);
             look(sample.window());
             QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
         }},
        page(u"charts"_s, u"actionCharts"_s),
        page(u"records"_s, u"actionRecords"_s),
        {u"backups"_s,
         [](SampleWindow &sample, const Look &look) {
             trigger(sample, u"actionRecords"_s);
             showTab(sample, u"recordsTabs"_s, 1);
             look(sample.window());
             showTab(sample, u"recordsTabs"_s, 0);
         }},
    };
}

std::vector<Stop> stores()
{
    return {
        page(u"samples"_s, u"actionSamples"_s),
        behind(u"register-samples"_s, u"actionSamples"_s, u"registerSamples"_s),
        page(u"lots"_s, u"actionLots"_s),
        row(u"lot"_s, u"actionLots"_s, u"lots"_s),
        behind(u"receive-lot"_s, u"actionLots"_s, u"receiveLot"_s),
        page(u"standards"_s, u"actionStandards"_s),
        row(u"standard"_s, u"actionStandards"_s, u"standards"_s),
        behind(u"prepare-standard"_s, u"actionStandards"_s, u"prepareStandard"_s),
        {u"substance"_s,
         [](SampleWindow &sample, const Look &look) {
             trigger(sample, u"actionStandards"_s);
             click(sample, u"prepareStandard"_s);
             click(sample, u"addSubstance"_s);
             look(sample.window());
         }},
        page(u"equipment"_s, u"actionEquipment"_s),
        behind(u"equipment-add"_s, u"actionEquipment"_s, u"addItem"_s),
        row(u"equipment-item"_s, u"actionEquipment"_s, u"equipment"_s),
        {u"equipment-check"_s,
         [](SampleWindow &sample, const Look &look) {
             trigger(sample, u"actionEquipment"_s);
             openRow(sample, u"equipment"_s);
             click(sample, u"keyCheck"_s);
             look(sample.window());
         }},
    };
}

std::vector<Stop> rulesOfTheHouse()
{
    return {
        page(u"methods"_s, u"actionMethods"_s),
        row(u"method"_s, u"actionMethods"_s, u"methods"_s, malicMethod()),
        {u"method-editor"_s,
         [](SampleWindow &sample, const Look &look) {
             trigger(sample, u"actionMethods"_s);
             openRow(sample, u"methods"_s, malicMethod());
             click(sample, u"newFromMethod"_s);
             look(sample.window());
         }},
        page(u"limits"_s, u"actionLimits"_s),
        row(u"limit"_s, u"actionLimits"_s, u"limits"_s),
        page(u"laboratory"_s, u"actionLaboratory"_s),
        page(u"persons"_s, u"actionPersons"_s),
    };
}

Stop firstStart(const QString &name, const ui::StartOccasion &occasion)
{
    return {name, [occasion](SampleWindow &, const Look &look) {
                const ui::Theme theme;
                QuietDialogs::Log log;
                QuietDialogs answers(log);
                ui::FirstStart first(theme, answers, occasion);
                first.setPalette(theme.adjustments());
                first.show();
                settle();
                look(first);
            }};
}

std::vector<Stop> dialogs()
{
    return {
        form(u"keys"_s, u"actionKeys"_s),
        form(u"settings"_s, u"actionBenchSettings"_s),
        {u"report"_s,
         [](SampleWindow &sample, const Look &look) {
             trigger(sample, u"actionNotebook"_s);
             openRow(sample, u"runs"_s, decidedRun);
             lookAtForm(sample, look, u"actionSaveReport"_s);
         }},
        {u"labels"_s,
         [](SampleWindow &sample, const Look &look) {
             goToRack(sample, halfReadRack);
             lookAtForm(sample, look, u"actionSaveLabels"_s);
         }},
        {u"paste"_s,
         [](SampleWindow &sample, const Look &look) {
             goToRack(sample, halfReadRack);
             trigger(sample, u"actionRead"_s);
             QApplication::clipboard()->setText(u"1;0,612\n2;0,618\n3;0,597\n4;0.60x\n"_s);
             lookAtOpen(sample, look, u"actionPasteReadings"_s, [](QDialog &dialog) {
                 dialog.findChild<QSpinBox *>(u"mappingTube"_s)->setValue(1);
                 dialog.findChild<QSpinBox *>(u"mappingAbsorbance"_s)->setValue(2);
             });
         }},
        {u"listen"_s,
         [](SampleWindow &sample, const Look &look) { lookAtOpen(sample, look, u"actionListen"_s); }},
        firstStart(u"firststart"_s, {u"/home/ilka/Documents/acids.plateau"_s}),
        firstStart(u"anothernotebook"_s, {u"/home/ilka/Documents/notebook-2.plateau"_s, {}, true}),
    };
}

/// Of another title and hour it is another run than the one in the sample notebook. Planned here, so that its samples have their
/// product, whose unit the other racks report in.
void addFailedStandard(SampleWindow &sample)
{
    QFile shipped(u":/sampledata/failed-standard.json"_s);
    if (!shipped.open(QIODevice::ReadOnly))
        qFatal("the run with a failed standard cannot be read");
    const auto read = exchange::readRun(shipped.readAll()
                                            .replace("standard of the day before", "old standard")
                                            .replace("2026-03-04", "2026-07-28")
                                            .replace("2026-03-03", "2026-07-27"),
                                        app::installedMethods().lookup());
    if (!read.value)
        qFatal("the run with a failed standard is none");
    planning::PlanRecord plan;
    for (const run::Sample &tank : read.value->run.samples) {
        planning::PlannedSample planned;
        planned.sample.id = tank.id;
        planned.sample.product = u"cider"_s;
        planned.sample.form = tank.form;
        plan.samples.push_back(planned);
    }
    sample.window().findChild<ui::BenchSession *>()->addRun(read.value->run, read.value->method, plan);
    settle();
    goToRack(sample, u"old standard"_s);
}

std::vector<Stop> changes()
{
    return {
        {u"runfile"_s,
         [](SampleWindow &sample, const Look &look) {
             // As somebody may have written it by hand.
             const QTemporaryDir folder;
             const QString path = folder.filePath(u"tanks.json"_s);
             QFile file(path);
             if (!file.open(QIODevice::WriteOnly))
                 qFatal("no file");
             file.write(R"({"format": "plateau-run/1", "title": "Perry tanks", "method": "total-sulphite",
                           "samples": [{"id": "P-104", "form": "liquid", "dilution": [{"take_mL": 50, "makeUpTo_mL": 5}]}],
                           "tubes": [{"role": "blank", "readings": {"A1": 1.387, "A2": "1,376"}},
                                     {"role": "sample", "sample": "P-105", "readings": {"A1": 1.385}}]})");
             file.close();
             sample.window().openRunFile(path);
             settle();
             look(sample.window());
         }},
        {u"review-red"_s,
         [](SampleWindow &sample, const Look &look) {
             addFailedStandard(sample);
             trigger(sample, u"actionReview"_s);
             look(sample.window());
         }},
        {u"pipette"_s,
         [](SampleWindow &sample, const Look &look) {
             planTanks(sample);
             click(sample, u"putOnBench"_s);
             for (int dose = 0; dose < 5; ++dose)
                 click(sample, u"pipetteTick"_s);
             look(sample.window());
         }},
    };
}

} // namespace

std::vector<Stop> tour()
{
    std::vector<Stop> all;
    for (const auto &part : {bench(), notebook(), stores(), rulesOfTheHouse(), dialogs(), changes()})
        all.insert(all.end(), part.begin(), part.end());
    return all;
}

} // namespace plateau::test
