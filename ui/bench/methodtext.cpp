// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/methodtext.h"

#include "core/exchange/shippedtexts.h"

#include <QCoreApplication>

namespace plateau::ui {

namespace {

struct MethodTextWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodText)
};

} // namespace

std::vector<Sentence> methodSentences(const assay::Method &method)
{
    std::vector<Sentence> sentences;
    for (const QString &caution : method.cautions)
        sentences.push_back({State::Attention, exchange::inWindowLanguage(caution)});
    sentences.push_back(
        {State::Info, MethodTextWords::tr("%1, version %2").arg(method.name).arg(method.version)});
    sentences.push_back({State::Info, method.source});
    if (!method.principle.isEmpty())
        sentences.push_back({State::Info, method.principle});
    return sentences;
}

QString templateSentence(const notebook::StoredRun &stored)
{
    QStringList names;
    const auto add = [&names](const assay::Method &method) {
        if (assay::isTemplate(method))
            names << MethodTextWords::tr("%1, version %2").arg(method.name).arg(method.version);
    };
    add(stored.method);
    for (const evaluation::Companion &companion : stored.companions)
        add(companion.method);
    names.removeDuplicates();
    return names.isEmpty() ? QString()
                           : MethodTextWords::tr("Made with a template whose volumes nobody confirmed: %1.")
                                 .arg(names.join(MethodTextWords::tr("; ")));
}

} // namespace plateau::ui
