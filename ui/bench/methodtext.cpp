// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/methodtext.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct Text {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodText)
};

} // namespace

std::vector<Sentence> methodSentences(const assay::Method &method)
{
    std::vector<Sentence> sentences;
    for (const QString &caution : method.cautions)
        sentences.push_back({State::Attention, caution});
    sentences.push_back({State::Info, Text::tr("%1, version %2").arg(method.name).arg(method.version)});
    sentences.push_back({State::Info, method.source});
    if (!method.principle.isEmpty())
        sentences.push_back({State::Info, method.principle});
    return sentences;
}

} // namespace plateau::ui
