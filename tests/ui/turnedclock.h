// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "ui/shared/clock.h"

#include <cmath>
#include <memory>

namespace plateau::test {

/// Both clocks of a machine, as a test turns them.
struct Clocks {
    QDateTime wall = QDateTime::fromString(QStringLiteral("2026-03-02T09:10:00+01:00"), Qt::ISODate);
    timing::BootTime boot{QStringLiteral("first start"), 1'000'000};

    /// Time goes on, whether the machine sleeps or not.
    void pass(double seconds)
    {
        const auto ms = static_cast<qint64>(std::llround(seconds * 1000));
        wall = wall.addMSecs(ms);
        boot.ms += ms;
    }
    /// Somebody sets the clock on the wall.
    void set(qint64 shift_s) { wall = wall.addSecs(shift_s); }
    /// Off for so long, then started anew.
    void restartMachine(qint64 off_s)
    {
        wall = wall.addSecs(off_s);
        boot = {boot.id + QStringLiteral(", started anew"), 5'000};
    }
};

/// The window's clock, and the notebook's, over the same two.
class TurnedClock : public ui::Clock
{
public:
    explicit TurnedClock(std::shared_ptr<const Clocks> clocks)
        : m_clocks(std::move(clocks))
    {
    }
    QDateTime now() const override { return m_clocks->wall; }
    timing::BootTime boot() const override { return m_clocks->boot; }

private:
    std::shared_ptr<const Clocks> m_clocks;
};

inline notebook::Surroundings surroundingsOf(const std::shared_ptr<const Clocks> &clocks)
{
    notebook::Surroundings surroundings = notebook::Surroundings::ofThisProgram();
    surroundings.now = [clocks] { return clocks->wall; };
    surroundings.boot = [clocks] { return clocks->boot; };
    return surroundings;
}

} // namespace plateau::test
