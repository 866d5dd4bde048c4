// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/benchsounds.h"

#include "ui/bench/benchsession.h"
#include "ui/bench/benchsettings.h"

#include <algorithm>

namespace plateau::ui {

namespace {

/// Minutes are turned into seconds: a moment that has come is not to be missed by arithmetic.
constexpr double hair_s = 1e-3;

std::vector<Sound> soundsOf(const ActTimes &times, double lead_s)
{
    std::vector<Sound> sounds;
    // A beat, which nothing closes, announces itself.
    if (times.opens_s <= lead_s + hair_s && times.closes_s)
        sounds.push_back(Sound::Soon);
    if (times.opens_s <= 0)
        sounds.push_back(Sound::Now);
    if (times.closes_s && *times.closes_s < 0)
        sounds.push_back(Sound::Late);
    return sounds;
}

} // namespace

std::optional<Sound> SoundRule::hear(const std::vector<NextAction> &timed, double lead_s)
{
    std::optional<Sound> loudest;
    std::set<Act> present;
    for (const NextAction &action : timed) {
        const bool pipette = action.kind == NextAction::Kind::Pipette;
        const Act act{action.run.value, action.tube(), pipette ? action.dosing.round : -1,
                      pipette ? QString() : action.place.reading, action.readBefore};
        present.insert(act);
        const bool isNew = m_seen.insert(act).second;
        for (const Sound sound : soundsOf(*action.times, lead_s)) {
            if (m_heard.insert({act, sound}).second && !isNew)
                loudest = std::max(loudest.value_or(sound), sound);
        }
    }
    // What is done, or taken back and begun anew, is heard anew.
    std::erase_if(m_seen, [&present](const Act &act) { return !present.contains(act); });
    std::erase_if(m_heard, [&present](const auto &heard) { return !present.contains(heard.first); });
    return loudest;
}

BenchSounds::BenchSounds(BenchSession &session, BenchSettings &settings, Sounder &sounder, QObject *parent)
    : QObject(parent)
    , m_session(session)
    , m_settings(settings)
    , m_sounder(sounder)
{
    connect(&session, &BenchSession::ticked, this, &BenchSounds::listen);
}

void BenchSounds::listen()
{
    const auto sound = m_rule.hear(m_session.timed(), m_settings.choice().lead_s);
    if (sound && !m_settings.choice().muted)
        m_sounder.play(*sound, m_settings.choice().volume_percent);
}

} // namespace plateau::ui
