// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"

#include <QByteArray>
#include <QString>

#include <nlohmann/json.hpp>

#include <optional>

namespace plateau::test {

/// A method and a run with every field of the contract, to be changed by a test.
nlohmann::ordered_json methodDocument();
nlohmann::ordered_json runDocument();

/// The method of methodDocument() under its id, and nothing else.
std::optional<assay::Method> installed(const QString &id);

QByteArray bytes(const nlohmann::ordered_json &document);

/// A change to a document: the value at the pointer is replaced or added; without a value it is taken away.
struct Change {
    const char *pointer;
    /// JSON; nullptr to take away.
    const char *value;
};
nlohmann::ordered_json changed(nlohmann::ordered_json document, const Change &change);

/// What a reader says of a changed document: a problem with that fragment at that pointer.
struct ChangedDocument {
    Change change;
    /// An empty fragment: the changed document is read.
    const char *pointer;
    const char *fragment;
};

} // namespace plateau::test
