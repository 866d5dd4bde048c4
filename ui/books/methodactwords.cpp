// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodactwords.h"

#include "core/notebook/methodcatalogue.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct MethodActWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodActWords)
};

QString actText(const notebook::MethodAct &act)
{
    using Kind = notebook::MethodActKind;
    const QString when = momentText(act.at);
    switch (act.kind) {
    case Kind::Saved:
        return act.note.isEmpty() ? MethodActWords::tr("%1, saved by %2").arg(when, act.person)
                                  : MethodActWords::tr("%1, saved by %2: %3").arg(when, act.person, act.note);
    case Kind::Imported:
        return MethodActWords::tr("%1, imported from %3 by %2").arg(when, act.person, act.fileName);
    case Kind::Retired:
        return MethodActWords::tr("%1, retired by %2: %3").arg(when, act.person, act.note);
    case Kind::Reinstated:
        return MethodActWords::tr("%1, reinstated by %2: %3").arg(when, act.person, act.note);
    }
    return {};
}

State shapeOf(notebook::MethodActKind kind)
{
    using Kind = notebook::MethodActKind;
    if (kind == Kind::Retired)
        return State::Bad;
    return kind == Kind::Reinstated ? State::Good : State::Info;
}

} // namespace

std::vector<Sentence> methodActSentences(const notebook::StoredMethod &method)
{
    std::vector<Sentence> sentences;
    for (auto act = method.acts.rbegin(); act != method.acts.rend(); ++act)
        sentences.push_back({shapeOf(act->kind), actText(*act)});
    if (!method.arrival()) {
        QString origin = notebook::originText(method);
        origin[0] = origin[0].toUpper();
        sentences.push_back({State::Info, origin});
    }
    return sentences;
}

} // namespace plateau::ui
