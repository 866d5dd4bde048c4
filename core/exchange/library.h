// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/assay/problem.h"
#include "core/exchange/readers.h"

#include <QString>

#include <optional>
#include <utility>
#include <vector>

namespace plateau::exchange {

/// The installed methods: the shipped ones (":/methods", compiled in) and those of the laboratory's folders,
/// each file through the strict reader. A file that cannot be used, or that holds a version there is already,
/// is left out and named in problems.
class MethodLibrary
{
public:
    /// folder: a file system folder or a resource folder.
    static MethodLibrary load(const QString &folder);
    /// Those of ":/methods", their texts in the language of the window.
    static MethodLibrary shipped();
    /// The same folder's methods in addition; a folder that does not exist adds none.
    void add(const QString &folder);

    const std::vector<assay::Method> &methods() const & { return m_methods; }
    std::vector<assay::Method> methods() && { return std::move(m_methods); }
    /// The newest version of that id.
    std::optional<assay::Method> find(const QString &id) const;
    /// A copy of the library as it is now, as a function.
    MethodLookup lookup() const;
    struct FileProblem {
        QString fileName;
        assay::Problem problem;
    };
    const std::vector<FileProblem> &problems() const { return m_problems; }

private:
    void addFile(const QString &path, const QString &name);

    std::vector<assay::Method> m_methods;
    std::vector<FileProblem> m_problems;
};

} // namespace plateau::exchange
