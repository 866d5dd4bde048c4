// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/audittrail.h"

#include "core/notebook/keeping.h"
#include "core/notebook/recordvalues.h"
#include "core/notebook/recordwords.h"
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
    EXPECT_EQ(changes[0].before, (Values{{u"last good day"_s, u"2026-09-30"_s}}));
    EXPECT_EQ(changes[0].after, (Values{{u"last good day"_s, u"2027-09-30"_s}}));
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

TEST_F(AuditTrail, OfARunPutOnTheBenchIsCounted)
{
    run::Run run = plainRun();
    while (run.tubes.size() < 40) // more than are told one by one
        run.tubes.push_back(run.tubes.back());
    m_book->addRun(run, risingMethod(), person);
    const auto changes = newest(u"runAdded"_s);
    const auto tubes = std::ranges::find(changes, u"tube"_s, &AuditChange::subject);
    ASSERT_NE(tubes, changes.end());
    EXPECT_EQ(tubes->after, (Values{{{}, QString::number(run.tubes.size()), true}}));
}

TEST_F(AuditTrail, IsFilteredByRunPersonActDayAndText)
{
    fill(*m_book);
    const auto all = of({.most = 1000});
    EXPECT_EQ(int(all.size()), m_book->auditHead().entries);
    EXPECT_GT(all.front().entry.number, all.back().entry.number);

    const RunId run = m_book->runs().back().id;
    for (const AuditItem &item : of({.run = run}))
        EXPECT_EQ(item.entry.run, std::optional(run));
    EXPECT_EQ(of({.run = run}).size(), m_book->history(run).size());
    for (const AuditItem &item : of({.person = u"Tomas Brandl"_s}))
        EXPECT_EQ(item.entry.person, u"Tomas Brandl"_s);
    EXPECT_THAT(of({.person = u"Nobody"_s}), IsEmpty());
    EXPECT_FALSE(of({.actions = {u"runReopened"_s}}).empty());
    EXPECT_THAT(of({.text = u"TOMAS"_s}), SizeIs(of({.person = u"Tomas Brandl"_s}).size()));

    const QDate day = all.back().entry.at.date();
    EXPECT_THAT(of({.to = day.addDays(-1)}), IsEmpty());
    EXPECT_THAT(of({.from = day, .to = day, .most = 1000}), SizeIs(all.size()));
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
