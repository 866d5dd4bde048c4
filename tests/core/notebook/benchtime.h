// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "tests/core/notebook/fixture.h"

namespace plateau::test {

/// A notebook at a bench whose two clocks are the test's: they stand still until time passes.
class BenchTimeTest : public NotebookTest
{
protected:
    void SetUp() override { m_book = notebook::Notebook::create(file(), clocks()); }

    notebook::Surroundings clocks();
    /// The program is closed and started again.
    void restartProgram();
    /// The bench's clocks go on together, be the machine awake or asleep.
    void pass(double minutes);
    /// Somebody sets the clock on the wall.
    void setWall(double forward_min) { m_now = m_now.addMSecs(inMs(forward_min)); }
    /// The machine is off for so long, and its other clock begins anew.
    void restartMachine(double off_min);

    void tick(notebook::RunId run, int tube, QStringView component);
    notebook::ReadingId read(notebook::RunId run, int tube, QStringView reading, double absorbance);
    notebook::StoredRun load(notebook::RunId run) const { return m_book->load(run); }
    run::Tube tube(notebook::RunId run, int index) const { return load(run).run.tubes.at(size_t(index)); }
    /// Now, on the run's clock.
    double now_min(notebook::RunId run) const { return load(run).clock.minutesOf({m_now, m_boot}); }
    /// In one sentence that has these words in it, and nothing was stored.
    void expectRefused(const std::function<void()> &action, QLatin1StringView words);

    static qint64 inMs(double minutes) { return qRound64(minutes * 60'000); }

    const QString person = QStringLiteral("Ines Kaddour");
    timing::BootTime m_boot{QStringLiteral("first-start"), 7'000'000};
    std::unique_ptr<notebook::Notebook> m_book;
};

} // namespace plateau::test
