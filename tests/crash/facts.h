// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/benchsession.h"

#include <QByteArray>

#include <map>

/// What the window holds to be stored of the racks on its bench, in words that another program can compare.
namespace plateau::test {

/// "reading RUN TUBE NAME" to the number, "done RUN TUBE COMPONENT" and "spoilt RUN TUBE" to "1". Tubes count
/// from 0.
using Facts = std::map<QByteArray, QByteArray>;

Facts factsOf(const ui::BenchSession &session);

/// "RUN TUBE ACT" to the moment from which it may be done, in ms of the boot clock; of tubes that wait.
Facts dueMomentsOf(const ui::BenchSession &session);

/// "word key<TAB>value" lines for all of them.
QByteArray linesOf(const QByteArray &word, const Facts &facts);

} // namespace plateau::test
