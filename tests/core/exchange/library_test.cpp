// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/library.h"

#include "core/run/volumes.h"
#include "tests/core/exchange/documents.h"
#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace plateau::exchange {

using namespace Qt::StringLiterals;

namespace {

void write(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

QByteArray method(const char *id, int version)
{
    auto document = test::methodDocument();
    document["id"] = id;
    document["version"] = version;
    return test::bytes(document);
}

} // namespace

TEST(MethodLibrary, TheShippedMethodsAreAllSound)
{
    const MethodLibrary library = MethodLibrary::load(u":/methods"_s);
    for (const auto &[fileName, problem] : library.problems())
        ADD_FAILURE() << problemLine(fileName, problem).toStdString();
    for (const QString &id : {u"total-sulphite"_s, u"l-malic-acid"_s, u"d-sorbitol"_s, u"glucose-fructose"_s,
                              u"acetic-acid"_s, u"glycerol"_s, u"citric-acid-wine"_s})
        EXPECT_TRUE(library.find(id)) << id.toStdString();
}

TEST(MethodLibrary, ShippedVolumesAddUpAsTheirSourcesSay)
{
    const MethodLibrary library = MethodLibrary::load(u":/methods"_s);
    struct Row {
        const char *id;
        const char *reading;
        double volume_mL;
    };
    // Published: citric acid 3.14 mL (Regulation (EEC) No 2676/90, Annex), D-sorbitol 3.05 mL (French order
    // of 7 October 1987, annex X), D-glucose after starch digestion 3.22 mL (Regulation (EC) No 900/2008,
    // Annex I). L-malic acid 2.22 mL: the last 0.01 mL from memory. D-malic acid 2.95 mL: from memory. The
    // others: common practice, no source.
    const Row rows[] = {{"citric-acid-wine", "A2", 3.14}, {"d-sorbitol", "A2", 3.05},
                        {"l-malic-acid", "A2", 2.22},     {"glucose-after-starch-digestion", "A2", 3.22},
                        {"d-malic-acid", "A2", 2.95},     {"total-sulphite", "A2", 3.32}};
    run::Tube tube;
    tube.role = run::Role::Blank;
    for (const Row &row : rows) {
        const auto method = library.find(QString::fromLatin1(row.id));
        ASSERT_TRUE(method);
        EXPECT_NEAR(run::volumeAt_mL(*method, tube, QString::fromLatin1(row.reading)), row.volume_mL, 1e-12)
            << row.id;
    }
}

TEST(MethodLibrary, TheNewestVersionIsFound)
{
    const QTemporaryDir folder;
    write(folder.filePath(u"a.json"_s), method("acid", 2));
    write(folder.filePath(u"b.json"_s), method("acid", 10));
    write(folder.filePath(u"c.json"_s), method("acid", 3));
    const MethodLibrary library = MethodLibrary::load(folder.path());
    EXPECT_EQ(library.methods().size(), 3U);
    ASSERT_TRUE(library.find(u"acid"_s));
    EXPECT_EQ(library.find(u"acid"_s)->version, 10);
    EXPECT_FALSE(library.find(u"base"_s));
}

TEST(MethodLibrary, AFileThatCannotBeUsedIsNamedAndTheOthersAreThere)
{
    const QTemporaryDir folder;
    write(folder.filePath(u"good.json"_s), method("acid", 1));
    write(folder.filePath(u"broken.json"_s), "{");
    write(folder.filePath(u"again.json"_s), method("acid", 1));
    write(folder.filePath(u"notes.txt"_s), "not a method");
    const MethodLibrary library = MethodLibrary::load(folder.path());
    EXPECT_EQ(library.methods().size(), 1U);
    ASSERT_EQ(library.problems().size(), 2U);
    EXPECT_EQ(library.problems()[0].fileName, u"broken.json"_s);
    EXPECT_TRUE(library.problems()[0].problem.message.contains(u"line 1, column 2"_s))
        << library.problems()[0].problem.message.toStdString();
    EXPECT_EQ(library.problems()[1].fileName, u"good.json"_s);
    EXPECT_TRUE(library.problems()[1].problem.message.contains(u"installed already"_s));
}

TEST(MethodLibrary, ALaboratorysFolderComesOnTopOfTheShippedMethods)
{
    const QTemporaryDir folder;
    write(folder.filePath(u"own.json"_s), method("glycerol", 2));
    MethodLibrary library = MethodLibrary::load(u":/methods"_s);
    const MethodLookup before = library.lookup();
    library.add(folder.path());
    library.add(folder.filePath(u"absent"_s));
    EXPECT_EQ(library.find(u"glycerol"_s)->version, 2);
    EXPECT_EQ(before(u"glycerol"_s).method->version, 1);
    EXPECT_FALSE(before(u"absent"_s).method);
}

TEST(Resources, SchemasAreCompiledIn)
{
    for (const QString &name : {u"method"_s, u"run"_s, u"evaluation"_s}) {
        const auto read = readFile(u":/schemas/plateau-%1-1.schema.json"_s.arg(name));
        ASSERT_TRUE(read.value) << name.toStdString();
        EXPECT_TRUE(read.value->contains("https://json-schema.org/draft/2020-12/schema"));
    }
}

} // namespace plateau::exchange
