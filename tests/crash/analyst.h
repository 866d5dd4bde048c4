// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/benchsession.h"

#include <QByteArray>

#include <functional>
#include <random>

class QMainWindow;

namespace plateau::test {

/// Somebody at the bench who never tires: does what the strip says by keys, with corrections and dropped
/// tubes in between, as the seed has it.
class Analyst
{
public:
    /// Told ahead of every act what it is about to store: the beginning of the facts' keys (facts.h) and how
    /// many there will be.
    using Announce = std::function<void(const QByteArray &prefix, int facts)>;

    Analyst(QMainWindow &window, ui::BenchSession &session, unsigned seed, Announce announce);

    void giveName();
    /// False where nothing but reviews is left.
    bool doNext();

private:
    void pipette(const ui::NextAction &next);
    void read(const ui::NextAction &next);
    void correct();
    void spoil(const ui::NextAction &next);

    int below(int limit);
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void type(const QString &text);
    bool isAt(const QString &name) const;
    void tabTo(const QString &name);

    QMainWindow &m_window;
    ui::BenchSession &m_session;
    std::mt19937 m_random;
    Announce m_announce;
};

} // namespace plateau::test
