// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/ids.h"

#include <QString>

#include <map>
#include <optional>
#include <tuple>

namespace plateau::ui {

/// Where a person went on, on the worksheet, to take more of a lot than it holds by the book. Whoever ticks
/// from elsewhere goes by it and asks nothing; where it does not stand here, only the worksheet asks. While
/// the program runs.
class BeyondBook
{
public:
    enum class Why {
        /// For want of another lot that is fit: once there is one, that is taken.
        NoOther,
        /// It was chosen though it does not hold the dose.
        Chosen
    };

    void confirm(notebook::RunId run, const QString &contents, notebook::LotId lot, Why why)
    {
        m_confirmed[{run, contents, lot}] = why;
    }
    /// Another lot was chosen for what is pipetted.
    void forget(notebook::RunId run, const QString &contents)
    {
        std::erase_if(m_confirmed, [&](const auto &known) {
            const auto &[ofRun, ofContents, lot] = known.first;
            return ofRun == run && ofContents == contents;
        });
    }
    /// Nothing where nobody did.
    std::optional<Why> why(notebook::RunId run, const QString &contents, notebook::LotId lot) const
    {
        const auto found = m_confirmed.find({run, contents, lot});
        return found == m_confirmed.end() ? std::nullopt : std::optional(found->second);
    }

private:
    std::map<std::tuple<notebook::RunId, QString, notebook::LotId>, Why> m_confirmed;
};

} // namespace plateau::ui
