// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/layering/sources.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

namespace plateau::layering {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

std::vector<std::string> split(const std::string &list)
{
    std::vector<std::string> parts;
    std::istringstream stream(list);
    for (std::string part; std::getline(stream, part, '|');)
        parts.push_back(part);
    return parts;
}

const std::vector<std::string> qtCore = split(PLATEAU_QTCORE_FOLDERS);
const std::vector<std::string> qtCoreAndSql = split(PLATEAU_QTCORE_FOLDERS "|" PLATEAU_QTSQL_FOLDERS);

} // namespace

TEST(Includes, OfEveryRoomGoDownwardsOnly)
{
    for (const std::string top : {"core", "sampledata", "ui", "app"})
        for (const auto &source : sourcesBelow(top))
            EXPECT_THAT(upwardIncludes(source), IsEmpty());
}

TEST(Includes, OfCoreStayInsideQtCoreAndTheNotebookInsideQtSql)
{
    for (const auto &source : sourcesBelow("sampledata"))
        EXPECT_THAT(foreignQtIncludes(source, qtCore), IsEmpty());
    for (const auto &source : sourcesBelow("core"))
        EXPECT_THAT(foreignQtIncludes(source, roomOf(source.path) == "core/notebook" ? qtCoreAndSql : qtCore),
                    IsEmpty());
}

TEST(Sql, IsKnownToTheNotebookOnly)
{
    for (const std::string top : {"core", "sampledata", "ui", "app"}) {
        for (const auto &source : sourcesBelow(top)) {
            if (roomOf(source.path) != "core/notebook") {
                EXPECT_THAT(tracesOfSql(source), IsEmpty());
            }
        }
    }
}

TEST(Core, HasTheRoomsOfItsDesign)
{
    std::set<std::string> rooms;
    for (const auto &source : sourcesBelow("core"))
        rooms.insert(roomOf(source.path));
    EXPECT_THAT(rooms,
                ElementsAre("core/assay", "core/charts", "core/equipment", "core/evaluation", "core/exchange",
                            "core/notebook", "core/planning", "core/quality", "core/run", "core/timing"));
}

// The checks themselves, on sources that break the rules.

TEST(UpwardIncludes, AreFoundInEveryForm)
{
    EXPECT_THAT(upwardIncludes({"core/assay/a.h", "#pragma once\n#include \"core/run/run.h\"\n"}),
                ElementsAre("core/assay/a.h includes core/run/run.h"));
    EXPECT_THAT(upwardIncludes({"core/run/a.cpp", "#include \"../quality/line.h\"\n"}), SizeIs(1));
    EXPECT_THAT(upwardIncludes({"core/notebook/a.cpp", "  #  include <ui/shared/theme.h>\n"}), SizeIs(1));
    EXPECT_THAT(upwardIncludes({"ui/bench/a.cpp", "#include \"app/main.h\"\n"}), SizeIs(1));
    EXPECT_THAT(upwardIncludes({"app/main.cpp", "#include \"tests/support/print.h\"\n"}), SizeIs(1));
}

TEST(UpwardIncludes, LeaveDownwardOnesAlone)
{
    EXPECT_THAT(
        upwardIncludes({"core/evaluation/a.cpp", "#include \"core/quality/line.h\"\n"
                                                 "#include \"core/assay/method.h\"\n#include <vector>\n"}),
        IsEmpty());
    EXPECT_THAT(upwardIncludes({"app/main.cpp", "#include \"core/notebook/notebook.h\"\n"}), IsEmpty());
}

TEST(ForeignQtIncludes, OfWidgetsGuiChartsAndPrintSupportAreFound)
{
    for (const std::string header :
         {"QWidget", "QtWidgets/QWidget", "QColor", "QtGui/QColor", "QChart", "QtCharts/QChart", "QPrinter",
          "QtPrintSupport/QPrinter", "qwidget.h", "QtWidgets"})
        EXPECT_THAT(foreignQtIncludes({"core/run/a.cpp", "#include <" + header + ">\n"}, qtCore), SizeIs(1))
            << header;
}

TEST(ForeignQtIncludes, OfQtSqlAreForTheNotebook)
{
    const Source source{"core/x/a.cpp", "#include <QSqlQuery>\n#include <QtSql/QSqlError>\n"};
    EXPECT_THAT(foreignQtIncludes(source, qtCore), SizeIs(2));
    EXPECT_THAT(foreignQtIncludes(source, qtCoreAndSql), IsEmpty());
}

TEST(ForeignQtIncludes, LeaveQtCoreAlone)
{
    EXPECT_THAT(
        foreignQtIncludes({"core/run/a.cpp", "#include <QString>\n#include <QtCore/QFile>\n"
                                             "#include <qglobal.h>\n#include \"core/quality/line.h\"\n"},
                          qtCore),
        IsEmpty());
}

TEST(TracesOfSql, AreFoundInClassesHeadersAndStatements)
{
    for (const std::string line : {"QSqlQuery query;", "#include <sqlite3.h>", "sqlite3_open(a, b);",
                                   "\"SELECT id FROM run\"", "\"INSERT OR REPLACE INTO run VALUES (1)\"",
                                   "\"PRAGMA foreign_keys = ON\"", "\"CREATE TABLE run (\""})
        EXPECT_THAT(tracesOfSql({"ui/a.cpp", line}), SizeIs(1)) << line;
    EXPECT_THAT(tracesOfSql({"ui/a.cpp", "tr(\"Select a run\"); // QSqlite-free\n"}), IsEmpty());
}

} // namespace plateau::layering
