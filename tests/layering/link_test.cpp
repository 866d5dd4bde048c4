// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only

// This program holds every object of every core library and nothing else of the project: that it links at all
// shows that core needs no more than the libraries below, and the loader's list shows that no more came
// along.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <link.h>

#include <set>
#include <sstream>
#include <string>

namespace plateau::layering {

namespace {

int collectQt(dl_phdr_info *info, std::size_t, void *names)
{
    const std::string path = info->dlpi_name;
    const std::string file = path.substr(path.rfind('/') + 1);
    if (file.rfind("libQt6", 0) == 0)
        static_cast<std::set<std::string> *>(names)->insert(file.substr(0, file.find(".so")));
    return 0;
}

} // namespace

TEST(Core, LoadsQtCoreAndQtSqlAndNoOtherQt)
{
    std::set<std::string> loaded;
    dl_iterate_phdr(collectQt, &loaded);
    EXPECT_THAT(loaded, ::testing::ElementsAre("libQt6Core", "libQt6Sql"));
}

TEST(Core, LinkLinesNameOnlyWhatTheRoomsMayUse)
{
    const std::set<std::string> allowed{"Plateau::Common",
                                        "Plateau::assay",
                                        "Plateau::run",
                                        "Plateau::quality",
                                        "Plateau::evaluation",
                                        "Plateau::charts",
                                        "Plateau::equipment",
                                        "Plateau::exchange",
                                        "Plateau::notebook",
                                        "Plateau::planning",
                                        "Plateau::timing",
                                        "Qt6::Core",
                                        "Boost::headers",
                                        "nlohmann_json::nlohmann_json"};
    const std::set<std::string> notebookToo{"Qt6::Sql", "SQLite::SQLite3", "Sodium::Sodium"};
    std::istringstream lines(PLATEAU_CORE_LINK_LINES);
    int rooms = 0;
    for (std::string line; std::getline(lines, line, '|'); ++rooms) {
        std::istringstream words(line);
        std::string room;
        words >> room;
        for (std::string library; words >> library;)
            EXPECT_TRUE(allowed.count(library) > 0 || (room == "notebook" && notebookToo.count(library) > 0))
                << "core/" << room << " links " << library;
    }
    EXPECT_EQ(rooms, 10);
}

} // namespace plateau::layering
