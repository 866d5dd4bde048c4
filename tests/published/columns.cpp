// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/published/columns.h"

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace plateau::published {

namespace {

std::vector<std::string> cells(std::string line)
{
    if (!line.empty() && line.back() == '\r')
        line.pop_back();
    std::vector<std::string> result;
    std::istringstream stream(line);
    for (std::string cell; std::getline(stream, cell, ',');)
        result.push_back(cell);
    return result;
}

double number(const std::string &cell, const std::string &fileName)
{
    char *end = nullptr;
    const double value = std::strtod(cell.c_str(), &end);
    if (cell.empty() || *end != '\0')
        throw std::runtime_error(fileName + ": not a number: '" + cell + "'");
    return value;
}

} // namespace

std::map<std::string, std::vector<double>> readColumns(const std::string &fileName)
{
    std::ifstream file(std::string(PLATEAU_SOURCE_DIR) + "/tests/published/data/" + fileName);
    std::string line;
    if (!std::getline(file, line))
        throw std::runtime_error(fileName + ": missing or empty");
    const auto names = cells(line);
    std::map<std::string, std::vector<double>> columns;
    while (std::getline(file, line)) {
        const auto row = cells(line);
        if (row.size() != names.size())
            throw std::runtime_error(fileName + ": uneven row: " + line);
        for (std::size_t i = 0; i < row.size(); ++i)
            columns[names[i]].push_back(number(row[i], fileName));
    }
    return columns;
}

} // namespace plateau::published
