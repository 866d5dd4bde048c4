// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/fixture.h"

#include "tests/support/keyedchecks.h"

#include <QDir>
#include <QFile>
#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QUuid>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;

RawFile::RawFile(const QString &path)
    : m_name(u"raw-"_s + QUuid::createUuid().toString())
{
    QSqlDatabase database = QSqlDatabase::addDatabase(u"QSQLITE"_s, m_name);
    database.setDatabaseName(path);
    EXPECT_TRUE(database.open());
    QSqlQuery(database).exec(u"PRAGMA synchronous=OFF"_s); // the tests need no disk to wait for
}

RawFile::~RawFile()
{
    QSqlDatabase::database(m_name, false).close();
    QSqlDatabase::removeDatabase(m_name);
}

bool RawFile::tryExecute(const QString &sql)
{
    QSqlQuery query(QSqlDatabase::database(m_name, false));
    const bool worked = query.exec(sql);
    m_error = query.lastError().databaseText();
    return worked;
}

void RawFile::execute(const QString &sql)
{
    EXPECT_TRUE(tryExecute(sql)) << sql.toStdString() << ": " << m_error.toStdString();
}

QVariant RawFile::value(const QString &sql)
{
    const std::vector<QVariantList> found = rows(sql);
    return found.empty() ? QVariant() : found.front().front();
}

std::vector<QVariantList> RawFile::rows(const QString &sql)
{
    QSqlQuery query(QSqlDatabase::database(m_name, false));
    query.setForwardOnly(true);
    EXPECT_TRUE(query.exec(sql)) << sql.toStdString() << ": " << query.lastError().text().toStdString();
    std::vector<QVariantList> found;
    while (query.next()) {
        QVariantList row;
        for (int column = 0; column < query.record().count(); ++column)
            row.append(query.value(column));
        found.push_back(row);
    }
    return found;
}

std::vector<QVariantList> RawFile::dropTriggers()
{
    const std::vector<QVariantList> triggers =
        rows(u"SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'"_s);
    EXPECT_FALSE(triggers.empty());
    for (const QVariantList &trigger : triggers)
        execute(u"DROP TRIGGER "_s + trigger[0].toString());
    return triggers;
}

void RawFile::restore(const std::vector<QVariantList> &triggers)
{
    for (const QVariantList &trigger : triggers)
        execute(trigger[1].toString());
}

Surroundings NotebookTest::surroundings()
{
    return {m_version,    u"ines"_s,
            u"bench-2"_s, [this] { return m_now = m_now.addSecs(60); },
            {},           PassphraseWork::Least};
}

QStringList NotebookTest::filesInFolder() const
{
    return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden, QDir::Name);
}

std::unique_ptr<Notebook> NotebookTest::create()
{
    return Notebook::create(file(), surroundings());
}

std::unique_ptr<Notebook> NotebookTest::reopen(Access access)
{
    return Notebook::open(file(), access, surroundings());
}

void NotebookTest::fillMethods(Notebook &notebook)
{
    notebook.saveMethod(risingMethod(), u"Ines Kaddour"_s, u"our supplier's volumes"_s, {});
    notebook.importMethod(otherRisingMethod(), u"rising.json"_s, u"Ines Kaddour"_s, {});
    notebook.retireMethod(otherRisingMethod(), u"Tomas Brandl"_s, u"the other one is ours"_s);
    notebook.reinstateMethod(otherRisingMethod(), u"Tomas Brandl"_s, u"the old kit is back"_s);
}

void NotebookTest::fillDerived(Notebook &notebook)
{
    const RunId free = notebook.addRun(freeRun(), freeMethod(), u"Ines Kaddour"_s);
    notebook.decide(free, DecisionKind::Accepted, u"Tomas Brandl"_s, u""_s);
    const RunId total = notebook.addRun(totalRun(), totalMethod(), u"Ines Kaddour"_s);
    notebook.decide(total, DecisionKind::Accepted, u"Tomas Brandl"_s, u""_s);
}

void NotebookTest::fillStores(Notebook &notebook)
{
    const QString person = u"Ines Kaddour"_s;
    planning::ShelfSample told = fullPlan().samples[0].sample;
    const ShelfId first = notebook.shelf().registerSample(told, person);
    told.product = u"cider"_s;
    notebook.shelf().change(first, told, person);
    told.id = u"P-105"_s;
    notebook.shelf().withdraw(notebook.shelf().registerSample(told, person), person, u"bottle broke"_s);
    const LotId lot = notebook.lots().receive({u"Buffer"_s, u"B-17"_s, QDate(2026, 9, 30), 28}, 50, person);
    notebook.lots().relabel(lot, {u"Buffer"_s, u"B-17"_s, QDate(2027, 9, 30), 28}, person, u"year misread"_s);
    notebook.lots().open(lot, QDate(2026, 3, 1), person);
    notebook.lots().correctOpening(lot, QDate(2026, 2, 28), person, u"a Sunday"_s);
    notebook.lots().use(lot, 1, person, {});
    notebook.lots().discard(lot, 2, person, u"spilt"_s);
    notebook.lots().correct(lot, 46.5, person, u"measured"_s);
    fillLotKeeping(notebook);
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.name = u"Kaddour cidery"_s;
    notebook.saveLaboratory(laboratory, person);
}

void NotebookTest::fillLotKeeping(Notebook &notebook)
{
    const QString person = u"Ines Kaddour"_s;
    const QDate day(2026, 3, 2);
    const LotId dry =
        notebook.lots().receiveDry({u"Coenzyme"_s, u"N-12"_s, QDate(2027, 1, 31), {}, 14}, 25, person);
    notebook.lots().dissolve(dry, {4, {}, LotId{1}, day, 10, u"mixed gently"_s}, person);
    LotDivision division{2, 1.5, day, 90};
    division.place = planning::StoragePlace{u"freezer 2"_s, {}, -10};
    const std::vector<LotId> aliquots = notebook.lots().divide(dry, division, person);
    notebook.lots().store(aliquots[0], {u"cold room"_s, 2, 8}, person, u"for today"_s);
    notebook.lots().note(dry, u"a little turbid"_s, person);
    notebook.lots().correct({1}, 46.5, person, u"filled up again"_s);
    const LotId broken = notebook.lots().receiveDry({u"Coenzyme"_s, u"N-13"_s, {}, {}}, {}, person);
    notebook.lots().discardDry(broken, person, u"fell down"_s);
}

void NotebookTest::fillEquipment(Notebook &notebook)
{
    const QString person = u"Ines Kaddour"_s;
    equipment::Item thermometer;
    thermometer.kind = equipment::Kind::Thermometer;
    thermometer.name = u"T-1"_s;
    thermometer.every_days = {{equipment::Aspect::Temperature, 365}};
    const ItemId id = notebook.equipment().add(thermometer, person);
    thermometer.number = u"4711"_s;
    notebook.equipment().change(id, thermometer, person, u"number found"_s);
    equipment::Check check = blankCheck(thermometer, equipment::Aspect::Temperature, QDate(2026, 3, 1));
    check.rows[0] = {20.0, 20.2};
    const CheckId stored = notebook.equipment().addCheck(id, check, person);
    notebook.equipment().withdrawCheck(stored, person, u"the other thermometer"_s);
}

void NotebookTest::fillStandards(Notebook &notebook)
{
    const QString person = u"Ines Kaddour"_s;
    planning::Substance acid;
    acid.name = u"L-malic acid"_s;
    acid.molarMass_g_per_mol = 134.09;
    const SubstanceId of = notebook.standards().addSubstance(acid, person);
    acid.lot = u"M-3"_s;
    notebook.standards().changeSubstance(of, acid, person, u"lot read"_s);
    planning::Preparation made;
    made.name = u"STD-17"_s;
    made.analyteMolarMass_g_per_mol = 134.09;
    made.masses_mg = {20.1};
    made.flask_mL = 100;
    made.madeAt = QDateTime(QDate(2026, 3, 2), QTime(8, 30), Qt::OffsetFromUTC, 3600);
    const PreparationId id = notebook.standards().prepare(of, made, person);
    notebook.standards().discard(id, person, u"turbid"_s);
}

void NotebookTest::fillBench(Notebook &notebook)
{
    fillStores(notebook);
    fillEquipment(notebook);
    fillStandards(notebook);
    const QString person = u"Ines Kaddour"_s;
    run::Run planned = fullRun();
    planned.samples[0].dilution[0].uncertainty_percent = 0.3;
    const RunId run = notebook.addRun(planned, risingMethod(), person, fullPlan());
    notebook.pipetting().markDone(
        run, {{{0, u"buffer"_s, false}, 1.02, LotId{1}, u"piston pipette 1 mL"_s, u"foamed"_s}}, person);
    notebook.pipetting().markDone(run, {{{1, u"buffer"_s, false}}}, person);
    notebook.pipetting().markUndone(run, {{1, u"buffer"_s, false}}, person);
    notebook.pipetting().markSpoilt(run, 3, person, u"fell over"_s);
    notebook.pipetting().markUnspoilt(run, 3, person, u"it was tube 5"_s);
    notebook.pipetting().markDilutionsDone(run, {{0, 0}, {0, 1}}, person);
    notebook.pipetting().markDilutionsUndone(run, {{0, 1}}, person);
    run::Run strong = plainRun();
    for (run::Tube &tube : strong.tubes)
        tube.readings[u"A2"_s] = std::get<double>(tube.readings[u"A2"_s]) + (tube.sample.isEmpty() ? 0 : 0.7);
    const RunId repeat = notebook.addRun(strong, risingMethod(), person);
    notebook.decide(repeat, DecisionKind::Accepted, person, u"to be repeated"_s);
    notebook.shelf().waiveRepeat(repeat, u"S"_s, person, u"poured away"_s);
    fillReadAtTheBench(notebook);
}

void NotebookTest::fillReadAtTheBench(Notebook &notebook)
{
    const QString person = u"Ines Kaddour"_s;
    run::Run said = unreadRun();
    said.title = u"Read at the bench"_s;
    said.startedAt = m_now;
    said.tubes[0].addedAt_min = {{u"starter"_s, 1}};
    const RunId run = notebook.addRun(said, risingMethod(), person);
    const ReadingOrigin line{ReadingOrigin::Kind::Serial, u"ttyUSB0"_s, u"0.500\\r\\n"_s};
    notebook.addReading(run, 0, u"A2"_s, 0.5, u"0.500"_s, person, line);
    notebook.readAgain(run, 0, u"A2"_s, 0.51, u"0.51"_s, person);
    run::Sample again = liquid("S/2", {{1, 4}});
    again.repeats = u"S"_s;
    run::Tube tube = said.tubes[1];
    tube.sample = again.id;
    notebook.addTubes(run, {again}, {tube}, {}, person);
    notebook.noteClockJump(3'600'000, person);
}

void NotebookTest::fillPersons(Notebook &notebook)
{
    Persons &persons = notebook.persons();
    persons.addFirst(theHead.name, theHead.passphrase);
    persons.add(theReviewer.name, PersonRole::Reviewer, theReviewer.passphrase, theHead);
    persons.add(theAnalyst.name, PersonRole::Analyst, theAnalyst.passphrase, theHead);
}

void NotebookTest::fillReview(Notebook &notebook)
{
    notebook.saveSpecifications(limits(), theHead.name, u"as the customer wants it"_s);
    fillPersons(notebook);
    Persons &persons = notebook.persons();
    const PersonId guest = persons.add(u"Guest"_s, PersonRole::Analyst, u"just for today"_s, theHead);
    persons.change(guest, u"Guest analyst"_s, PersonRole::Analyst, theHead);
    persons.changePassphrase(guest, u"for tomorrow too"_s, theHead);
    failureOf([&] { persons.check({u"Guest analyst"_s, u"for yesterday"_s}); });
    persons.retire(guest, theHead, u"gone home"_s);
    const RunId run = notebook.addRun(twoSampleRun(), risingMethod(), theAnalyst.name);
    RunDecision decision{
        DecisionKind::Accepted, theReviewer.name, theReviewer.passphrase, u"sample by sample"_s, {}};
    decision.samples = {
        {u"S"_s, SampleDecisionKind::Accepted, {}, {}},
        {u"T"_s, SampleDecisionKind::Repeat, u"foamed over"_s, dilution({{5, 50}, {10, 20}})}};
    notebook.decide(run, decision);
    notebook.chooseReported(u"S"_s, u"analyte"_s,
                            {ReportRule::Named, ResultSource{run, 1, u"S"_s}, theReviewer.name,
                             theReviewer.passphrase, u"the least diluted"_s});
    notebook.reopen(run, theReviewer.name, u"look at T again"_s, theReviewer.passphrase);
}

void NotebookTest::fillCharts(Notebook &notebook, RunId run)
{
    const charts::Subject blanks{charts::Quantity::Blank, u"rising"_s, u"analyte"_s};
    charts::Settings settings;
    settings.limits = charts::EarlierRuns{run.value, 20, {}};
    notebook.charts().saveSettings(blanks, settings, u"Ines Kaddour"_s);
    settings.limits = charts::FixedLimits{0.01, 0.002, u"validation"_s, QDate(2026, 1, 15)};
    notebook.charts().saveSettings(blanks, settings, u"Tomas Brandl"_s);
    notebook.charts().leaveOut({charts::Quantity::Blank, run, u"analyte"_s, {}}, u"Ines Kaddour"_s,
                               u"the flask leaked"_s);
}

void NotebookTest::fill(Notebook &notebook)
{
    fillMethods(notebook);
    const RunId accepted = notebook.addRun(plainRun(), risingMethod(), u"Ines Kaddour"_s);
    notebook.decide(accepted, DecisionKind::Accepted, u"Tomas Brandl"_s, u""_s);
    notebook.reopen(accepted, u"Tomas Brandl"_s, u"second reading of tube 2 was of tube 3"_s);
    notebook.correctReading(accepted, 1, u"A2"_s, 0.631, u"0,631"_s, u"Ines Kaddour"_s, u"tubes mixed up"_s);
    notebook.decide(accepted, DecisionKind::Accepted, u"Tomas Brandl"_s, u""_s);

    assay::Method method = risingMethod();
    method.extrapolate = assay::Extrapolation{u"A2"_s, 2};
    const RunId full = notebook.addRun(fullRun(), method, u"Ines Kaddour"_s);
    notebook.addReading(full, 4, u"A2"_s, run::ReadingSeries{{15, 0.50}, {16, 0.51}}, u"0.50 0.51"_s,
                        u"Ines Kaddour"_s);
    notebook.decide(full, DecisionKind::Rejected, u"Tomas Brandl"_s, u"the flask leaked"_s);

    notebook.addRun(unreadRun(), risingMethod(), u"Ines Kaddour"_s);
    fillCharts(notebook, full);
}

void NotebookTest::makeFilledFile()
{
    static const QByteArray filled = [this] {
        fill(*create());
        const QByteArray bytes = bytesOf(file());
        QFile::remove(file());
        return bytes;
    }();
    write(file(), filled);
}

QByteArray NotebookTest::bytesOf(const QString &path) const
{
    QFile in(path);
    EXPECT_TRUE(in.open(QIODevice::ReadOnly)) << path.toStdString();
    return in.readAll();
}

void NotebookTest::write(const QString &path, const QByteArray &bytes) const
{
    QFile out(path);
    ASSERT_TRUE(out.open(QIODevice::WriteOnly)) << path.toStdString();
    ASSERT_EQ(out.write(bytes), bytes.size());
}

void OpenNotebookTest::expectRefused(const std::function<void()> &action, QLatin1StringView words)
{
    const AuditHead before = m_book->auditHead();
    const Failure failure = failureOf(action);
    EXPECT_EQ(failure.kind(), Failure::Kind::Refused)
        << failure.what() << " " << failure.details().toStdString();
    EXPECT_TRUE(failure.sentence().contains(words)) << failure.what();
    expectOneSentence(failure);
    EXPECT_EQ(m_book->auditHead().hash, before.hash);
}

assay::Method otherRisingMethod()
{
    assay::Method method = risingMethod();
    method.components[0].volume_mL = 2;
    return method;
}

Failure failureOf(const std::function<void()> &action)
{
    try {
        action();
    } catch (const Failure &failure) {
        return failure;
    }
    ADD_FAILURE() << "no failure";
    return Failure(Failure::Kind::NotFound, {});
}

void expectOneSentence(const Failure &failure)
{
    const QString sentence = failure.sentence();
    ASSERT_FALSE(sentence.isEmpty());
    EXPECT_TRUE(sentence.endsWith(u'.')) << sentence.toStdString();
    EXPECT_FALSE(sentence.contains(u'\n')) << sentence.toStdString();
    EXPECT_FALSE(sentence.contains("SQL"_L1) || sentence.contains(u"%1"_s)) << sentence.toStdString();
    EXPECT_EQ(QString::fromUtf8(failure.what()), sentence);
}

assay::Method totalMethod()
{
    assay::Method method = risingMethod();
    method.id = u"total"_s;
    method.derived = {
        {u"bound"_s, u"Bound analyte"_s, {{{}, u"analyte"_s, 1}, {u"free"_s, u"analyte"_s, -1}}}};
    return method;
}

assay::Method freeMethod()
{
    assay::Method method = risingMethod();
    method.id = u"free"_s;
    return method;
}

run::Run freeRun()
{
    run::Run run = plainRun();
    run.title = u"Free"_s;
    run.method = u"free"_s;
    for (run::Tube &tube : run.tubes) {
        if (tube.role == run::Role::Sample)
            tube.readings[u"A2"_s] = std::get<double>(tube.readings[u"A2"_s]) - 0.2;
    }
    return run;
}

run::Run totalRun()
{
    run::Run run = plainRun();
    run.title = u"Total"_s;
    run.method = u"total"_s;
    return run;
}

run::Run unreadRun()
{
    run::Run run = plainRun();
    run.title = u"Unread"_s;
    run.tubes.push_back(run.tubes.back());
    for (run::Tube &tube : run.tubes)
        tube.readings.clear();
    return run;
}

run::Run twoSampleRun()
{
    run::Run run = plainRun();
    run.title = u"Two"_s;
    run.samples.push_back(liquid("T", {}));
    run.tubes.push_back(sampleTube("T", 0.100, 0.500));
    run.tubes.push_back(sampleTube("T", 0.100, 0.502));
    return run;
}

evaluation::Advice dilution(const std::vector<run::DilutionStep> &steps)
{
    evaluation::Advice advice;
    advice.steps = steps;
    for (const run::DilutionStep &step : steps)
        advice.factor *= step.makeUpTo_mL / step.take_mL;
    return advice;
}

evaluation::Advice moreSample(double sampleVolume_mL)
{
    evaluation::Advice advice;
    advice.kind = evaluation::Advice::Kind::IncreaseVolume;
    advice.sampleVolume_mL = sampleVolume_mL;
    return advice;
}

std::vector<evaluation::Specification> limits()
{
    evaluation::Specification limit;
    limit.product = u"Perry, tank 4"_s;
    limit.measurand = u"analyte"_s;
    limit.upper = 4.5;
    limit.source = u"agreed with the customer"_s;
    limit.date = QDate(2026, 2, 1);
    return {limit};
}

run::Run fullRun()
{
    const QDateTime made(QDate(2026, 3, 2), QTime(8, 10, 0, 123), Qt::OffsetFromUTC, -3 * 3600 - 1800);
    run::Run run;
    run.title = u"Full"_s;
    run.method = u"rising"_s;
    run.wavelength_nm = 365;
    run.pathLength_mm = 9.99;
    run.startedAt = made.addSecs(3600);
    run.uncertainty = uncertainties();
    run.standards = {{u"STD"_s, 0.2, u"analyte"_s, made, made.addSecs(5400), 0.02, 0.8},
                     {u"OTHER"_s, 0.5, {}, {}, {}, 0}};
    run.samples = {liquid("P-104", {{5, 50}, {0.1, 1.1}}), solid("F-22", 5.012, 100, {{10, 25}})};
    run::Tube wide = sampleTube("P-104", 0.141, 0.852);
    wide.sampleVolume_mL = 0.2;
    run::Tube dark = sampleTube("P-104", 0.120, 0.121);
    dark.role = run::Role::SampleBlank;
    run::Tube spiked = sampleTube("P-104", 0.120, 0.700);
    spiked.role = run::Role::Spiked;
    spiked.spike = run::Spike{u"STD"_s, 0.1};
    run::Tube unfinished = sampleTube("F-22", 0.120, 0);
    unfinished.readings.erase(u"A2"_s);
    run::Tube series = sampleTube("F-22", 0.119, 0);
    series.readings[u"A2"_s] = run::ReadingSeries{{15, 0.512}, {20, 0.514}, {25.5, 0.5151}};
    run.tubes = {
        blank(0.102, 0.115), standardTube("STD", 0.110, 0.560), wide, dark, unfinished, series, spiked};
    run.lots = {{u"buffer"_s, u"B-17"_s, QDate(2027, 1, 31)}, {u"starter"_s, u"E-3"_s, {}}};
    return run;
}

planning::PlanRecord fullPlan()
{
    planning::ShelfSample perry;
    perry.id = u"P-104"_s;
    perry.matrix = assay::Matrix::Coloured;
    perry.product = u"Perry, tank 4"_s;
    perry.receivedAt = QDateTime(QDate(2026, 3, 1), QTime(17, 40), Qt::OffsetFromUTC, 3600);
    perry.receivedFrom = u"cellar"_s;
    perry.expected = {{u"analyte"_s, 3.5}};
    planning::ShelfSample rings;
    rings.id = u"F-22"_s;
    rings.matrix = assay::Matrix::Solid;
    rings.form = run::Form::Solid;
    planning::PlanRecord plan;
    plan.samples = {
        {perry, {{u"bulb pipette 5 mL"_s, u"flask 50 mL"_s}, {u"piston pipette 0.1 mL"_s, u"tube"_s}}, {}},
        {rings, {{u"bulb pipette 10 mL"_s, u"flask 25 mL"_s}}, {}}};
    plan.rackRows = 3;
    plan.rackColumns = 8;
    plan.interval_s = 45;
    plan.owners = {
        {planning::UncertaintyInput::Absorbance, {}, u"photometer P1"_s, u"check record 7"_s, false},
        {planning::UncertaintyInput::Extract, {}, u"flask of the extract"_s, u"common practice"_s, true},
        {planning::UncertaintyInput::Standard, u"STD"_s, u"standard STD"_s, u"weighed"_s, false}};
    return plan;
}

QSqlDatabase notebookConnection()
{
    for (const QString &name : QSqlDatabase::connectionNames()) {
        if (name.startsWith("plateau-notebook-"_L1))
            return QSqlDatabase::database(name, false);
    }
    return {};
}

} // namespace plateau::test
