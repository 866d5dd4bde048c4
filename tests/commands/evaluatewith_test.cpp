// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// plateau evaluate RUN.json --with OTHER.json: sucrose from the glucose of two runs, with the numbers of the
// worked check in tests/core/evaluation/derived_test.cpp.
#include "tests/commands/program.h"

#include <QFile>
#include <QJsonArray>
#include <QTemporaryDir>

using namespace plateau::test;
using namespace Qt::StringLiterals;

namespace {

constexpr double inversionRatio = 342.30 / 180.16;

QJsonObject glucoseMethod(const QString &id)
{
    QJsonObject method =
        QJsonDocument::fromJson(R"({"format": "plateau-method/1", "id": "", "version": 1, "name": "Glucose",
            "source": "made up for the tests", "chromophore": "NADH", "absorptivity_L_per_mol_cm": {"340": 6300},
            "wavelength_nm": 340, "pathLength_mm": 10, "direction": "rising",
            "components": [{"id": "buffer", "name": "Buffer", "volume_mL": 1.0},
                           {"id": "water", "name": "Water", "volume_mL": 1.0},
                           {"id": "sample", "name": "Sample", "volume_mL": 0.1},
                           {"id": "starter", "name": "Enzyme", "volume_mL": 0.02}],
            "sample": "sample", "diluent": "water", "starter": "starter",
            "steps": [{"add": "buffer"}, {"add": "water"}, {"add": "sample"}, {"mix": true},
                      {"wait_min": [3, 10]}, {"read": "A1"}, {"add": "starter"}, {"mix": true},
                      {"wait_min": [15, 40]}, {"read": "A2"}],
            "measurands": [{"id": "glucose", "name": "Glucose", "molarMass_g_per_mol": 180.16,
                            "chromophorePerMolecule": 1,
                            "signal": {"kind": "difference", "from": "A1", "to": "A2"}}],
            "window": {"minSignal": 0.1, "maxSignal": 1.0}, "acceptance": {}})")
            .object();
    method["id"_L1] = id;
    return method;
}

QJsonObject inversionMethod()
{
    QJsonObject method = glucoseMethod(u"inversion"_s);
    method["derived"_L1] = QJsonArray{QJsonObject{
        {u"id"_s, u"sucrose"_s},
        {u"name"_s, u"Sucrose"_s},
        {u"terms"_s, QJsonArray{QJsonObject{{u"measurand"_s, u"glucose"_s}, {u"factor"_s, inversionRatio}},
                                QJsonObject{{u"method"_s, u"free-glucose"_s},
                                            {u"measurand"_s, u"glucose"_s},
                                            {u"factor"_s, -inversionRatio}}}}}};
    return method;
}

QJsonObject step(double take_mL, double makeUpTo_mL)
{
    return {{u"take_mL"_s, take_mL}, {u"makeUpTo_mL"_s, makeUpTo_mL}};
}

QJsonObject tube(const QString &role, const QString &sample, double a1, double a2)
{
    QJsonObject object{{u"role"_s, role}, {u"readings"_s, QJsonObject{{u"A1"_s, a1}, {u"A2"_s, a2}}}};
    if (!sample.isEmpty())
        object["sample"_L1] = sample;
    return object;
}

QJsonObject runOf(const QJsonObject &method, const QString &sample, const QJsonArray &dilution,
                  const QJsonArray &tubes)
{
    return {{u"format"_s, u"plateau-run/1"_s},
            {u"method"_s, method},
            {u"samples"_s,
             QJsonArray{QJsonObject{{u"id"_s, sample}, {u"form"_s, u"liquid"_s}, {u"dilution"_s, dilution}}}},
            {u"tubes"_s, tubes}};
}

class EvaluateWith : public ::testing::Test
{
protected:
    QString write(const QString &name, const QJsonObject &object)
    {
        const QString path = m_folder.filePath(name);
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        const QByteArray bytes = QJsonDocument(object).toJson();
        EXPECT_EQ(file.write(bytes), bytes.size());
        return path;
    }
    QString inverted()
    {
        return write(u"inverted.json"_s, runOf(inversionMethod(), u"Juice"_s, {step(5, 50), step(10, 25)},
                                               {tube(u"blank"_s, {}, 0.101, 0.113),
                                                tube(u"sample"_s, u"Juice"_s, 0.130, 0.642)}));
    }
    QString free(const QString &name = u"free.json"_s, const QString &sample = u"Juice"_s,
                 const QString &method = u"free-glucose"_s, double a2 = 0.530)
    {
        return write(name, runOf(glucoseMethod(method), sample, {step(5, 50)},
                                 {tube(u"blank"_s, {}, 0.100, 0.110), tube(u"sample"_s, sample, 0.120, a2)}));
    }
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(EvaluateWith, FormsTheDerivedResultWhateverTheOrderOfTheArguments)
{
    const QString run = inverted();
    const QString other = free();
    for (const QStringList &words : {QStringList{u"evaluate"_s, run, u"--with"_s, other},
                                     QStringList{u"evaluate"_s, u"--with"_s, other, run},
                                     QStringList{u"evaluate"_s, u"--with"_s, other, u"--"_s, run}}) {
        const Outcome outcome = runProgram(words);
        EXPECT_EQ(outcome.status, 0) << outcome.error.toStdString();
        const QJsonArray results = outcome.json()["results"_L1].toArray();
        ASSERT_EQ(results.size(), 2);
        const QJsonObject sucrose = results[1].toObject();
        EXPECT_EQ(sucrose["measurand"_L1].toString(), u"sucrose"_s);
        EXPECT_NEAR(sucrose["value"_L1].toDouble(), 9.79086, 2e-5);
        EXPECT_EQ(sucrose["verdict"_L1].toString(), u"reportable"_s);
        const QJsonArray terms = sucrose["terms"_L1].toArray();
        ASSERT_EQ(terms.size(), 2);
        EXPECT_EQ(terms[1].toObject()["method"_L1].toString(), u"free-glucose"_s);
        EXPECT_NEAR(terms[1].toObject()["value"_L1].toDouble(), 2.42501, 5e-6);
        EXPECT_FALSE(results[0].toObject().contains("terms"_L1));
    }
}

TEST_F(EvaluateWith, WithoutTheOtherRunTheRunStandsOnItsOwn)
{
    const Outcome outcome = runProgram({u"evaluate"_s, inverted()});
    EXPECT_EQ(outcome.status, 0) << outcome.error.toStdString();
    EXPECT_EQ(outcome.json()["results"_L1].toArray().size(), 1);
}

TEST_F(EvaluateWith, DerivedResultThatNeedsAttentionIsInTheStatus)
{
    const QString strong = free(u"strong.json"_s, u"Juice"_s, u"free-glucose"_s, 1.400);
    const Outcome outcome = runProgram({u"evaluate"_s, inverted(), u"--with"_s, strong});
    EXPECT_EQ(outcome.status, 1);
    EXPECT_FALSE(outcome.json()["acceptable"_L1].toBool());
}

TEST_F(EvaluateWith, OtherRunThatCannotServeIsRefusedByItsName)
{
    const QString run = inverted();
    const QString other = free();
    const QString unrelated = free(u"unrelated.json"_s, u"Juice"_s, u"another-method"_s);
    const QString stranger = free(u"stranger.json"_s, u"Must"_s);
    const QString again = free(u"again.json"_s);
    QJsonObject broken = glucoseMethod(u"free-glucose"_s);
    broken["colour"_L1] = u"red"_s;
    struct Case {
        QStringList words;
        const char *file;
        const char *place;
    };
    const std::vector<Case> cases{
        {{run, u"--with"_s, unrelated}, "unrelated.json", "/method"},
        {{run, u"--with"_s, stranger}, "stranger.json", "/samples"},
        {{run, u"--with"_s, other, u"--with"_s, again}, "again.json", "/samples"},
        {{other, u"--with"_s, run}, "inverted.json", "/method"},
        {{run, u"--with"_s, write(u"broken.json"_s, runOf(broken, u"Juice"_s, {}, {}))},
         "broken.json",
         "/method/colour"},
        {{run, u"--with"_s, m_folder.filePath(u"absent.json"_s)}, "absent.json", ""},
        {{m_folder.filePath(u"absent.json"_s), u"--with"_s, other}, "absent.json", ""},
    };
    for (const Case &wrong : cases) {
        const Outcome outcome = runProgram(QStringList{u"evaluate"_s} + wrong.words);
        EXPECT_EQ(outcome.status, 2) << wrong.words.join(u' ').toStdString();
        EXPECT_TRUE(outcome.out.isEmpty());
        ASSERT_GE(outcome.errorLines().size(), 1);
        EXPECT_TRUE(outcome.errorLines().front().contains(wrong.file)) << outcome.error.toStdString();
        EXPECT_TRUE(outcome.error.contains(wrong.place)) << outcome.error.toStdString();
    }
}

TEST_F(EvaluateWith, WrongUseIsOneLine)
{
    const QString run = inverted();
    for (const QStringList &words :
         {QStringList{u"evaluate"_s, run, u"--with"_s}, QStringList{u"evaluate"_s, u"--with"_s, run},
          QStringList{u"evaluate"_s, run, run, u"--with"_s, run}, QStringList{u"evaluate"_s, run, u"--without"_s, run},
          QStringList{u"evaluate"_s, u"--"_s, u"--with"_s}}) {
        const Outcome outcome = runProgram(words);
        EXPECT_EQ(outcome.status, 2) << words.join(u' ').toStdString();
        EXPECT_EQ(outcome.errorLines().size(), 1) << outcome.error.toStdString();
        EXPECT_TRUE(outcome.out.isEmpty());
    }
}

TEST_F(EvaluateWith, HelpNamesTheOptions)
{
    const QByteArray help = runProgram({u"--help"_s}).out;
    EXPECT_TRUE(help.contains("--with OTHER.json"));
    EXPECT_TRUE(help.contains("[--notebook FILE]                   with the methods"));
}

TEST_F(EvaluateWith, ANotebookKnowsTheLaboratorysMethods)
{
    QJsonObject named =
        runOf(glucoseMethod(u"own"_s), u"Juice"_s, {},
              {tube(u"blank"_s, {}, 0.101, 0.113), tube(u"sample"_s, u"Juice"_s, 0.130, 0.642)});
    const Outcome embedded = runProgram({u"evaluate"_s, write(u"embedded.json"_s, named)});
    ASSERT_EQ(embedded.status, 0) << embedded.error.toStdString();
    named["method"_L1] = u"own"_s;
    const QString run = write(u"named.json"_s, named);
    const Outcome unknown = runProgram({u"evaluate"_s, run});
    EXPECT_EQ(unknown.status, 2);
    ASSERT_EQ(unknown.errorLines().size(), 1);
    EXPECT_TRUE(unknown.error.contains("named.json: /method: no method \"own\" is shipped;") &&
                unknown.error.contains("put the whole method here") &&
                unknown.error.contains("--notebook FILE"))
        << unknown.error.toStdString();

    const QString book = m_folder.filePath(u"own.plateau"_s);
    const QString method = write(u"own.json"_s, glucoseMethod(u"own"_s));
    ASSERT_EQ(runProgram({u"import"_s, book, method}).status, 0);
    const auto bytesOf = [](const QString &path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    };
    const QByteArray before = bytesOf(book);
    const Outcome known = runProgram({u"evaluate"_s, run, u"--notebook"_s, book});
    EXPECT_EQ(known.status, 0) << known.error.toStdString();
    EXPECT_EQ(known.out, embedded.out);
    EXPECT_EQ(bytesOf(book), before) << "it is only read";

    QJsonObject other = glucoseMethod(u"own"_s);
    other["pathLength_mm"_L1] = 20;
    ASSERT_EQ(runProgram({u"import"_s, book, write(u"other.json"_s, other)}).status, 1) << "kept apart";
    const Outcome torn = runProgram({u"evaluate"_s, u"--notebook"_s, book, run});
    EXPECT_EQ(torn.status, 2);
    EXPECT_TRUE(
        torn.error.contains("/method: 2 methods with the id \"own\" are in use: version 1, imported from "
                            "own.json on ") &&
        torn.error.contains("; version 1, imported from other.json on "))
        << torn.error.toStdString();
}

TEST_F(EvaluateWith, NotebookThatIsNotThereIsNotMade)
{
    const QString absent = m_folder.filePath(u"absent.plateau"_s);
    const Outcome outcome = runProgram({u"evaluate"_s, inverted(), u"--notebook"_s, absent});
    EXPECT_EQ(outcome.status, 2);
    EXPECT_EQ(outcome.errorLines().size(), 1);
    EXPECT_TRUE(outcome.error.contains("absent.plateau")) << outcome.error.toStdString();
    EXPECT_FALSE(QFile::exists(absent));
    const Outcome bare = runProgram({u"evaluate"_s, inverted(), u"--notebook"_s});
    EXPECT_EQ(bare.status, 2);
    EXPECT_TRUE(bare.error.contains("--notebook needs the name of one notebook")) << bare.error.toStdString();
}
