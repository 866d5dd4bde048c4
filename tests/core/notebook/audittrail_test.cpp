// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audittrail.h"

#include "core/assay/localday.h"
#include "core/notebook/keeping.h"
#include "core/notebook/recordnumbers.h"
#include "core/notebook/recordvalues.h"
#include "core/notebook/recordwords.h"
#include "core/planning/standardstock.h"
#include "tests/core/notebook/fixture.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QRegularExpression>
#include <QScopeGuard>

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

using Values = std::vector<AuditValue>;

/// By table: those whose rows the audit covers.
std::map<QString, QStringList> ownColumns()
{
    std::map<QString, QStringList> own;
    for (const auto &[table, columns] : layoutAfter(schemaSteps(), schemaSteps().back().number).columns) {
        if (!isDerived(table) && !table.startsWith("audit"_L1) && !table.startsWith("sqlite_"_L1))
            own[table] = columns;
    }
    return own;
}

/// Of a JSON schema, wherever they stand.
QStringList propertiesIn(const QJsonValue &schema)
{
    QStringList keys;
    for (const QJsonValue member : schema.toArray())
        keys += propertiesIn(member);
    const QJsonObject object = schema.toObject();
    for (auto member = object.begin(); member != object.end(); ++member) {
        if (member.key() == "properties"_L1)
            keys += member.value().toObject().keys();
        keys += propertiesIn(member.value());
    }
    return keys;
}

class AuditTrail : public OpenNotebookTest
{
protected:
    std::vector<AuditItem> of(const AuditFilter &filter) const { return m_book->keeping().audit(filter); }
    /// What the newest act of that kind changed.
    std::vector<AuditChange> newest(const QString &action) const
    {
        const auto items = of({.actions = {action}});
        EXPECT_FALSE(items.empty()) << action.toStdString();
        return items.empty() ? std::vector<AuditChange>()
                             : m_book->keeping().changes(items.front().entry.number);
    }
};

} // namespace

TEST_F(AuditTrail, HasAWordForEveryKindOfRecordAndEveryField)
{
    const QStringList told{u"bench_stamp"_s,   u"reading_point"_s, u"decision_mark"_s,
                           u"decision_size"_s, u"reading_again"_s, u"decision_repeat"_s,
                           u"mark_lot_day"_s}; // with what they are part of
    int tables = 0;
    int fields = 0;
    for (const auto &[table, columns] : ownColumns()) {
        if (told.contains(table))
            continue;
        ++tables;
        EXPECT_TRUE(hasRecordWord(table)) << table.toStdString();
        for (const QString &column : columns) {
            if (!isFieldTold(column))
                continue;
            ++fields;
            EXPECT_TRUE(hasFieldWord(column)) << table.toStdString() << "." << column.toStdString();
        }
    }
    EXPECT_GT(tables, 60);
    EXPECT_GT(fields, 150);
}

TEST_F(AuditTrail, HasAWordForEveryWordOfTheFile)
{
    const QRegularExpression listed(u"(\\w+) IN \\(([^()]*)\\)"_s);
    int words = 0;
    const Layout layout = layoutAfter(schemaSteps(), schemaSteps().back().number);
    const auto own = ownColumns();
    for (const auto &[object, sql] : layout.objects) {
        if (object.type != "table"_L1 || !own.contains(object.name))
            continue;
        for (auto found = listed.globalMatch(sql); found.hasNext();) {
            const QRegularExpressionMatch match = found.next();
            const QString column = match.captured(1);
            if (column == "NOT"_L1)
                continue;
            for (const QString &listedWord : match.captured(2).split(u',')) {
                const QString word = listedWord.trimmed().remove(u'\'');
                ++words;
                EXPECT_TRUE(valueWord(column, word).has_value())
                    << object.name.toStdString() << "." << column.toStdString() << ": " << word.toStdString();
            }
        }
    }
    EXPECT_GT(words, 80);
    for (const charts::Quantity quantity : charts::allQuantities())
        EXPECT_TRUE(valueWord(u"quantity"_s, charts::quantityWord(quantity)).has_value());
    EXPECT_FALSE(valueWord(u"kind"_s, u"writtenByANewerProgram"_s).has_value());
    EXPECT_FALSE(valueWord(u"title"_s, u"sample"_s).has_value()); // somebody's own words
}

TEST_F(AuditTrail, HasAWordForEveryFieldOfTheDocumentsThatAreKeptWhole)
{
    // What only groups others, or is a list whose members are numbered.
    const QStringList groups{u"glassware"_s, u"handling"_s,           u"review"_s,      u"reportHead"_s,      u"format"_s,
                             u"pipettes"_s,  u"flasks"_s,             u"reportUnits"_s, u"rejectionReasons"_s,
                             u"address"_s,   u"methodUncertainties"_s, u"specifications"_s};
    int fields = 0;
    for (const QString &name : {u"laboratory"_s, u"specifications"_s}) {
        QFile schema(QStringLiteral(PLATEAU_SOURCE_DIR) +
                     u"/resources/schemas/plateau-%1-1.schema.json"_s.arg(name));
        ASSERT_TRUE(schema.open(QIODevice::ReadOnly));
        for (const QString &key : propertiesIn(QJsonDocument::fromJson(schema.readAll()).object())) {
            ++fields;
            EXPECT_TRUE(groups.contains(key) || hasFieldWord(key)) << name.toStdString() << ": " << key.toStdString();
        }
    }
    EXPECT_GT(fields, 40);
    EXPECT_EQ(placeWord(u"/glassware/pipettes/0/largest_mL"_s), u"pipette 1, largest volume (mL)"_s);
    EXPECT_EQ(placeWord(u"/specifications/2/upper"_s), u"limit 3, upper limit"_s);
    EXPECT_EQ(conditionWord(u"temperature_C"_s), u"Water at (°C)"_s);
}

TEST_F(AuditTrail, TellsNoNumbersOfRowsAndNoWordsOfTheFile)
{
    fill(*m_book);
    fillBench(*m_book);
    fillReview(*m_book);
    const QRegularExpression inside(u"_|[a-z]{2}[A-Z]|^\\{"_s); // a column, a word of the file, a whole document
    int values = 0;
    for (const AuditItem &item : of({.most = 1000})) {
        for (const AuditChange &change : m_book->keeping().changes(item.entry.number)) {
            EXPECT_FALSE(change.subject.contains(u"(number"_s)) << change.subject.toStdString();
            for (const std::vector<AuditValue> &list : {change.before, change.after}) {
                for (const AuditValue &told : list) {
                    ++values;
                    EXPECT_FALSE(told.field.contains(u'_')) << told.field.toStdString();
                    EXPECT_NE(told.field, u"decision"_s) << told.value.toStdString(); // which has a number alone
                    const QStringList ownTexts{u"source"_s, u"line of the photometer"_s};
                    EXPECT_TRUE(ownTexts.contains(told.field) || !told.value.contains(inside))
                        << told.field.toStdString() << ": " << told.value.toStdString();
                }
            }
        }
    }
    EXPECT_GT(values, 100);
}

TEST_F(AuditTrail, SaysWhatTheFileHasAWordOrANumberFor)
{
    const RunId run = m_book->addRun(plainRun(), risingMethod(), person);
    m_book->decide(run, DecisionKind::Rejected, person, u"the flask leaked"_s);
    fillCharts(*m_book, run);
    const auto has = [](const Values &values, const AuditValue &wanted) {
        return std::ranges::find(values, wanted) != values.end();
    };
    const auto leftOut = newest(u"chartValueLeftOut"_s);
    ASSERT_THAT(leftOut, SizeIs(1));
    EXPECT_TRUE(has(leftOut[0].after, {u"left out"_s, u"yes"_s}));
    EXPECT_TRUE(has(leftOut[0].after, {u"what is watched"_s, u"signal of the blanks"_s}));
    EXPECT_FALSE(has(leftOut[0].after, {u"run"_s, QString::number(run.value)})); // which the entry names
    const auto saved = newest(u"chartSettingsSaved"_s);
    ASSERT_THAT(saved, SizeIs(1));
    EXPECT_TRUE(has(saved[0].after, {u"centre line"_s, u"0.01"_s, true}));
    EXPECT_TRUE(has(saved[0].after, {u"method"_s, risingMethod().name}));
}

TEST_F(AuditTrail, TellsOldAndNewValueAndReasonOfACorrection)
{
    const RunId run = m_book->addRun(plainRun(), risingMethod(), person);
    const double old = std::get<double>(plainRun().tubes[1].readings.at(u"A2"_s));
    m_book->correctReading(run, 1, u"A2"_s, 0.631, u"0,631"_s, person, u"tubes mixed up"_s);
    const auto changes = newest(u"readingCorrected"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0], (AuditChange{u"tube 2, A2"_s,
                                       {{{}, QString::number(old, 'f', 3), true}},
                                       {{{}, u"0.631"_s, true}},
                                       u"tubes mixed up"_s}));
}

TEST_F(AuditTrail, TellsWhatBecameOfARunAndWhy)
{
    const RunId run = m_book->addRun(plainRun(), risingMethod(), person);
    m_book->decide(run, DecisionKind::Rejected, u"Tomas Brandl"_s, u"the flask leaked"_s);
    EXPECT_EQ(newest(u"runRejected"_s).front(),
              (AuditChange{u"the run"_s, {{{}, u"on the bench"_s}}, {{{}, u"rejected"_s}}, u"the flask leaked"_s}));
    m_book->reopen(run, u"Tomas Brandl"_s, u"it did not"_s);
    EXPECT_EQ(newest(u"runReopened"_s).front(),
              (AuditChange{u"the run"_s, {{{}, u"rejected"_s}}, {{{}, u"on the bench"_s}}, u"it did not"_s}));
}

TEST_F(AuditTrail, TellsWhatOfSettingsWasChanged)
{
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.name = u"Kaddour cidery"_s;
    m_book->saveLaboratory(laboratory, person);
    laboratory.name = u"Kaddour and Daughters"_s;
    m_book->saveLaboratory(laboratory, person);
    const auto changes = newest(u"laboratorySaved"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0].before, (Values{{u"name"_s, u"Kaddour cidery"_s}}));
    EXPECT_EQ(changes[0].after, (Values{{u"name"_s, u"Kaddour and Daughters"_s}}));
}

TEST_F(AuditTrail, TellsDaysInTheFormOfTheDesk)
{
    fillCharts(*m_book, m_book->addRun(plainRun(), risingMethod(), person));
    planning::Laboratory laboratory = planning::usualLaboratory();
    laboratory.photometer =
        planning::Photometer{u"P1"_s, 0.002, {}, u"check record 7"_s, QDate(2026, 2, 14)};
    m_book->saveLaboratory(laboratory, person);
    laboratory.photometer->checkedOn = QDate(2026, 2, 27);
    m_book->saveLaboratory(laboratory, person);
    const auto back = qScopeGuard([] { QLocale::setDefault(QLocale::c()); });
    QLocale::setDefault(QLocale(QLocale::German));
    const auto settings = newest(u"chartSettingsSaved"_s);
    ASSERT_THAT(settings, SizeIs(1));
    EXPECT_NE(std::ranges::find(settings[0].after, AuditValue{u"day of the source"_s, u"15.01.2026"_s}),
              settings[0].after.end());
    const auto changes = newest(u"laboratorySaved"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0].before, (Values{{u"photometer, checked on"_s, u"14.02.2026"_s}}));
    EXPECT_EQ(changes[0].after, (Values{{u"photometer, checked on"_s, u"27.02.2026"_s}}));
}

TEST_F(AuditTrail, TellsWhatWasWrittenOnAContainerBefore)
{
    const LotId lot = m_book->lots().receive({u"Buffer"_s, u"B-17"_s, QDate(2026, 9, 30), 28}, 50, person);
    m_book->lots().relabel(lot, {u"Buffer"_s, u"B-17"_s, QDate(2027, 9, 30), 28}, person, u"year misread"_s);
    const auto changes = newest(u"lotChanged"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0].subject, u"label of a container: B-17"_s);
    EXPECT_EQ(changes[0].before, (Values{{u"use-by date"_s, u"2026-09-30"_s}}));
    EXPECT_EQ(changes[0].after, (Values{{u"use-by date"_s, u"2027-09-30"_s}}));
    EXPECT_EQ(changes[0].reason, u"year misread"_s);
}

TEST_F(AuditTrail, TellsWhenALotWasOpenedInsteadAndWhy)
{
    const LotId lot = m_book->lots().receive({u"Buffer"_s, u"B-17"_s, {}, 28}, 50, person);
    m_book->lots().open(lot, QDate(2026, 3, 1), person);
    m_book->lots().correctOpening(lot, QDate(2026, 2, 27), person, u"on Friday"_s);
    const auto change = [](const QString &before, const QString &after, const QString &why) {
        return AuditChange{u"lot B-17"_s, {{{}, before}}, {{{}, after}}, why};
    };
    EXPECT_THAT(newest(u"lotOpeningCorrected"_s),
                ElementsAre(change(u"opened on 2026-03-01"_s, u"opened on 2026-02-27"_s, u"on Friday"_s)));
    m_book->lots().correctOpening(lot, std::nullopt, person, u"it was B-18"_s);
    EXPECT_THAT(newest(u"lotOpeningCorrected"_s),
                ElementsAre(change(u"opened on 2026-02-27"_s, u"not opened"_s, u"it was B-18"_s)));
    m_book->lots().open(lot, QDate(2026, 3, 2), person);
    EXPECT_THAT(newest(u"lotOpened"_s),
                ElementsAre(change(u"not opened"_s, u"opened on 2026-03-02"_s, {})));
}

TEST_F(AuditTrail, NeverShowsAPassphrase)
{
    fillPersons(*m_book);
    for (const AuditItem &item : of({})) {
        for (const AuditChange &change : m_book->keeping().changes(item.entry.number)) {
            for (const AuditValue &told : change.after)
                EXPECT_FALSE(told.value.contains(u"argon2"_s)) << told.value.toStdString();
        }
    }
}

TEST_F(AuditTrail, OfARunPutOnTheBenchIsItsTubesItsMethodAndItsLots)
{
    run::Run run = plainRun();
    run.lots = {{u"buffer"_s, u"B-17"_s, {}}, {u"starter"_s, u"E-4"_s, {}}};
    m_book->addRun(run, risingMethod(), person);
    const auto changes = newest(u"runAdded"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0].subject, u"%1 tubes by Rising, version 1"_s.arg(run.tubes.size()));
    qsizetype readings = 0;
    for (const run::Tube &tube : run.tubes)
        readings += qsizetype(tube.readings.size());
    EXPECT_EQ(changes[0].after, (Values{{u"samples"_s, QString::number(run.samples.size()), true},
                                        {u"readings"_s, QString::number(readings), true},
                                        {u"Buffer"_s, u"lot B-17"_s},
                                        {u"Enzyme"_s, u"lot E-4"_s}}));
}

TEST_F(AuditTrail, TellsManyRowsByCounts)
{
    run::Run planned = unreadRun();
    while (planned.tubes.size() < 14) // more than are told one by one
        planned.tubes.push_back(planned.tubes.back());
    const RunId run = m_book->addRun(planned, risingMethod(), person);
    std::vector<DoneDose> doses;
    for (int tube = 0; tube < int(planned.tubes.size()); ++tube)
        doses.push_back({{tube, u"buffer"_s, false}});
    m_book->pipetting().markDone(run, doses, person);
    const auto changes = newest(u"dosesDone"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_EQ(changes[0].subject, u"mark at the bench: %1"_s.arg(doses.size()));
    EXPECT_THAT(changes[0].after, IsEmpty());
}

TEST_F(AuditTrail, NamesComponentsAndMeasurandsAsTheMethodDoes)
{
    const RunId run = m_book->addRun(unreadRun(), risingMethod(), person);
    m_book->pipetting().markDone(run, {{{1, u"buffer"_s, false}}}, person);
    const auto marked = newest(u"dosesDone"_s);
    ASSERT_THAT(marked, SizeIs(1));
    EXPECT_NE(std::ranges::find(marked[0].after, AuditValue{u"component"_s, u"Buffer"_s}), marked[0].after.end());
    EXPECT_EQ(of({.actions = {u"dosesDone"_s}}).front().entry.details, u"Buffer: tube 2"_s);
    fillCharts(*m_book, run);
    const auto saved = newest(u"chartSettingsSaved"_s);
    ASSERT_THAT(saved, SizeIs(1));
    EXPECT_NE(std::ranges::find(saved[0].after, AuditValue{u"measurand"_s, u"Analyte"_s}), saved[0].after.end());
}

TEST_F(AuditTrail, TellsAStandardAsItsBookDoes)
{
    planning::Substance acid;
    acid.name = u"L-malic acid"_s;
    acid.purity = 0.975;
    acid.purityHalfWidth = 0.01;
    acid.molarMass_g_per_mol = 134.09;
    const SubstanceId substance = m_book->standards().addSubstance(acid, person);
    planning::Preparation made;
    made.name = u"STD-17"_s;
    made.analyteMolarMass_g_per_mol = 134.09;
    made.masses_mg = {20.1};
    made.flask_mL = 100;
    made.flask_u_mL = 0.14433756729740646;
    made.madeAt = QDateTime(QDate(2026, 3, 2), QTime(8, 30), Qt::OffsetFromUTC, 3600);
    made.lossPerHour = 0.02;
    made.useBy = made.madeAt.addDays(1);
    m_book->standards().prepare(substance, made, person);
    const auto afterOf = [this](const QString &action, const QString &subject) {
        for (const AuditChange &change : newest(action)) {
            if (change.subject.startsWith(subject))
                return change.after;
        }
        return Values();
    };
    const auto has = [](const Values &values, const AuditValue &wanted) {
        return std::ranges::find(values, wanted) != values.end();
    };
    const Values particulars = afterOf(u"substanceAdded"_s, u"particulars of a substance"_s);
    EXPECT_TRUE(has(particulars, {u"purity (%)"_s, u"97.5"_s, true}));
    EXPECT_TRUE(has(particulars, {u"purity, plus or minus (%)"_s, u"1.0"_s, true}));
    const Values standard = afterOf(u"standardPrepared"_s, u"standard as prepared"_s);
    EXPECT_TRUE(has(standard, {u"loss per hour (%)"_s, u"2"_s, true}));
    EXPECT_TRUE(has(standard, {u"uncertainty of the flask (mL)"_s, u"0.1443"_s, true}));
    EXPECT_TRUE(has(standard, {u"use by, by its own rule"_s, assay::shownMoment(made.useBy->toLocalTime())}));
    const std::optional<QDateTime> last = planning::goodUntil(made);
    ASSERT_TRUE(last && *last < *made.useBy);
    EXPECT_TRUE(has(standard, {u"use by"_s, assay::shownMoment(last->toLocalTime())}));
    EXPECT_EQ(of({.actions = {u"standardPrepared"_s}}).front().entry.details, u"STD-17, made from L-malic acid"_s);
}

TEST(RecordNumbers, AreAsKeyedOrRoundedWhereTheyWereWorkedOut)
{
    EXPECT_EQ(recordNumber(0), u"0"_s);
    EXPECT_EQ(recordNumber(126.0433), u"126.0433"_s);
    EXPECT_EQ(recordNumber(-0.0012345), u"-0.0012345"_s);
    EXPECT_EQ(recordNumber(0.1 + 0.2), u"0.3"_s);
    EXPECT_EQ(recordNumber(0.46188021535170065), u"0.4619"_s);
    EXPECT_EQ(recordNumber(12345.678901234), u"12346"_s);
    EXPECT_EQ(recordPercent(0.07), u"7"_s);
    EXPECT_EQ(recordPercent(0.975, 0.01), u"97.5"_s);
    EXPECT_EQ(recordPercent(0.01, 0.975), u"1.0"_s);
    EXPECT_TRUE(isKeyedInPercent(u"water"_s));
    EXPECT_FALSE(isKeyedInPercent(u"percent"_s));
}

TEST_F(AuditTrail, OfANewNotebookBeginsWithOneLine)
{
    const auto all = of({});
    ASSERT_THAT(all, SizeIs(1));
    EXPECT_EQ(all[0].entry.action, u"notebookCreated"_s);
    const auto changes = newest(u"notebookCreated"_s);
    ASSERT_THAT(changes, SizeIs(1));
    EXPECT_TRUE(changes[0].subject.startsWith(u"with entries 2 to %1,"_s.arg(entriesOfANewOne())))
        << changes[0].subject.toStdString();
    EXPECT_THAT(of({.actions = {u"schemaStep"_s}}), SizeIs(entriesOfANewOne() - 1)); // they can be looked at
}

TEST_F(AuditTrail, OfAnOlderNotebookShowsEveryStepOfItsUpdate)
{
    const QString old = file(u"old.plateau"_s);
    write(old, qUncompress(bytesOf(QStringLiteral(PLATEAU_NOTEBOOK_DATA "/schema1.plateau.z"))));
    const auto book = Notebook::open(old, Access::ReadWrite, surroundings());
    const auto all = book->keeping().audit({.most = 1000});
    EXPECT_EQ(int(all.size()), book->auditHead().entries);
    EXPECT_EQ(std::ranges::count(all, u"schemaStep"_s, [](const AuditItem &item) { return item.entry.action; }),
              entriesOfANewOne() - 1);
    EXPECT_THAT(book->keeping().changes(1), IsEmpty());
}

TEST_F(AuditTrail, IsFilteredByRunPersonActDayAndText)
{
    fill(*m_book);
    const auto all = of({.most = 1000});
    EXPECT_EQ(int(all.size()), m_book->auditHead().entries - (entriesOfANewOne() - 1)); // it was made in one line
    EXPECT_GT(all.front().entry.number, all.back().entry.number);

    const RunId run = m_book->runs().back().id;
    for (const AuditItem &item : of({.run = run}))
        EXPECT_EQ(item.entry.run, std::optional(run));
    EXPECT_EQ(of({.run = run}).size(), m_book->history(run).size());
    for (const AuditItem &item : of({.person = u"Tomas Brandl"_s}))
        EXPECT_EQ(item.entry.person, u"Tomas Brandl"_s);
    EXPECT_THAT(of({.person = u"Nobody"_s}), IsEmpty());
    EXPECT_FALSE(of({.actions = {u"runReopened"_s}}).empty());
    EXPECT_GE(of({.text = u"TOMAS"_s, .most = 1000}).size(), of({.person = u"Tomas Brandl"_s, .most = 1000}).size());

    const QDate day = all.back().entry.at.date();
    EXPECT_THAT(of({.to = day.addDays(-1)}), IsEmpty());
    EXPECT_THAT(of({.from = day, .to = day, .most = 1000}), SizeIs(all.size()));
}

TEST_F(AuditTrail, IsSearchedInAllThatItsTableShows)
{
    fill(*m_book);
    const auto corrected = of({.actions = {u"readingCorrected"_s}});
    ASSERT_THAT(corrected, SizeIs(1));
    const auto finds = [&](const QString &text) {
        const auto items = of({.text = text, .most = 1000});
        return std::ranges::find(items, corrected.front()) != items.end();
    };
    EXPECT_TRUE(finds(u"Mixed UP"_s)) << "its reason";
    EXPECT_TRUE(finds(u"up, tubes"_s)) << "words in any order";
    EXPECT_TRUE(finds(u"0.631"_s)) << "after";
    EXPECT_TRUE(finds(u"0,631"_s));
    EXPECT_TRUE(finds(u"0.63"_s)) << "while it is typed";
    EXPECT_TRUE(finds(u"tube\u00a02"_s)) << "what it concerns";
    EXPECT_TRUE(finds(u"ines mixed 0,631"_s)) << "words of several columns";
    EXPECT_FALSE(finds(u"631"_s)) << "the end of a number is another one";
    EXPECT_FALSE(finds(u"mixed nobody"_s));
    const auto changes = m_book->keeping().changes(corrected.front().entry.number);
    ASSERT_THAT(changes, SizeIs(1));
    ASSERT_THAT(changes[0].before, SizeIs(1));
    EXPECT_TRUE(finds(changes[0].before[0].value)) << "before";
    EXPECT_EQ(of({.text = u"second reading of tube 2"_s}).front().entry.action, u"runReopened"_s);
    EXPECT_FALSE(of({.actions = {u"runRejected"_s}, .text = u"flask leaked"_s}).empty()) << "why a decision";
}

TEST_F(AuditTrail, IsSearchedInTheWordsOfTheWindow)
{
    fill(*m_book);
    AuditFilter filter{.text = u"valeur corrig\u00e9e"_s, .most = 1000};
    EXPECT_THAT(of(filter), IsEmpty());
    filter.shown = [](const AuditEntry &entry) {
        return entry.action == "readingCorrected"_L1 ? u"Valeur corrig\u00e9e"_s : QString();
    };
    EXPECT_THAT(of(filter), SizeIs(1));
}

TEST_F(AuditTrail, SaysWhereASearchHasNotLookedAtOlderActs)
{
    fill(*m_book);
    const auto all = of({.most = 1000});
    AuditFilter filter{.text = u"mixed"_s, .mostLooked = 2};
    std::vector<AuditItem> found;
    int parts = 0;
    for (;;) {
        const AuditPage page = m_book->keeping().auditPage(filter);
        ++parts;
        found.insert(found.end(), page.items.begin(), page.items.end());
        if (!page.lookedTo)
            break;
        EXPECT_TRUE(page.isCutShort);
        EXPECT_EQ(*page.lookedTo, all.at(std::size_t(2 * parts - 1)).entry.number);
        EXPECT_EQ(page.lookedBackTo, all.at(std::size_t(2 * parts - 1)).entry.at);
        filter.before = page.lookedTo;
    }
    EXPECT_EQ(parts, int(all.size() + 1) / 2);
    EXPECT_EQ(found, of({.text = u"mixed"_s, .most = 1000}));
    EXPECT_FALSE(found.empty());

    const AuditPage full = m_book->keeping().auditPage({.most = 3});
    EXPECT_EQ(full.lookedTo, std::optional(all.at(2).entry.number));
    EXPECT_FALSE(full.isCutShort) << "without words nothing has to be read for it";
    EXPECT_FALSE(m_book->keeping().auditPage({.most = int(all.size())}).lookedTo);
}

TEST_F(AuditTrail, ComesInPartsThatFollowEachOther)
{
    fill(*m_book);
    std::vector<AuditItem> found;
    AuditFilter filter{.most = 3};
    for (auto part = of(filter); !part.empty(); part = of(filter)) {
        found.insert(found.end(), part.begin(), part.end());
        filter.before = part.back().entry.number;
    }
    EXPECT_EQ(found, of({.most = 1000}));
}

TEST_F(AuditTrail, NamesEveryActThatTheNotebookKnows)
{
    fill(*m_book);
    EXPECT_TRUE(m_book->keeping().actions().contains(u"readingCorrected"_s));
    EXPECT_TRUE(m_book->keeping().persons().contains(u"Tomas Brandl"_s));
}

TEST_F(AuditTrail, IsVerifiedStepByStepAndCanBeStopped)
{
    fill(*m_book);
    qint64 last = 0;
    qint64 of = 0;
    const Verification whole = m_book->verify([&](qint64 done, qint64 all) {
        EXPECT_GT(done, last);
        last = done;
        of = all;
        return true;
    });
    EXPECT_THAT(whole.findings, IsEmpty());
    EXPECT_EQ(last, of);
    EXPECT_GT(of, m_book->auditHead().entries);
    EXPECT_THROW(m_book->verify([](qint64, qint64) { return false; }), Stopped);
    EXPECT_THAT(m_book->verify().findings, IsEmpty());
}

} // namespace plateau::test
