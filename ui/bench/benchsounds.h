// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/nextaction.h"
#include "ui/shared/sounder.h"

#include <QObject>

#include <set>
#include <tuple>

namespace plateau::ui {

class BenchSession;
class BenchSettings;

/// Decides what is to be heard: of every act that has its time once "soon", once "now" and once "late". What
/// was past already when it was first seen stays silent, so that a start of the program does not sound all
/// alarms of the morning.
class SoundRule
{
public:
    /// The most pressing of what has come since the last time: late, then now, then soon.
    std::optional<Sound> hear(const std::vector<NextAction> &timed, double lead_s);

private:
    using Act = std::tuple<qint64, int, int, QString, int>;
    std::set<Act> m_seen;
    std::set<std::pair<Act, Sound>> m_heard;
};

/// Lets the bench be heard, as it is set.
class BenchSounds : public QObject
{
    Q_OBJECT

public:
    BenchSounds(BenchSession &session, BenchSettings &settings, Sounder &sounder, QObject *parent = nullptr);

private:
    void listen();

    BenchSession &m_session;
    BenchSettings &m_settings;
    Sounder &m_sounder;
    SoundRule m_rule;
};

} // namespace plateau::ui
