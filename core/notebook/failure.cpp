// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/notebook.h"

#include <utility>

namespace plateau::notebook {

Failure::Failure(Kind kind, QString sentence, QString details)
    : m_kind(kind)
    , m_sentence(std::move(sentence))
    , m_details(std::move(details))
    , m_utf8(m_sentence.toUtf8())
{
}

WrongPassphrase::WrongPassphrase(QString sentence)
    : Failure(Kind::Refused, std::move(sentence))
{
}

} // namespace plateau::notebook
