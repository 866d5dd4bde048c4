// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <variant>
#include <vector>

namespace plateau::exchange::json {

/// Deepest nesting, most values and most problems that are followed up in one document.
inline constexpr std::size_t maxDepth = 64;
inline constexpr std::size_t maxValues = 1'000'000;
inline constexpr std::size_t maxProblems = 500;

struct Null {
};
struct Node;
struct Member;
using List = std::vector<Node>;
/// Members in the order of the document; no key twice.
using Object = std::vector<Member>;

/// One value of a document. Numbers are finite.
struct Node {
    std::variant<Null, bool, double, QString, List, Object> value;
};
struct Member {
    QString key;
    Node value;
};

struct Document {
    /// There unless the text cannot be taken apart at all.
    std::optional<Node> root;
    /// Where it isn't: one problem that names line and column (in characters, from 1). Else keys given twice,
    /// of which the first counts.
    assay::Problems problems;
};

/// Strict JSON (RFC 8259) in UTF-8; a byte order mark is passed over. Refused are invalid UTF-8, comments,
/// NaN, Infinity, numbers beyond the range of a double, anything after the end, and documents beyond the
/// limits.
Document parse(const QByteArray &json);

} // namespace plateau::exchange::json
