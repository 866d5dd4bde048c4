// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/chance.h"

#include <bit>

namespace plateau::sampledata {

namespace {

quint64 splitMix(quint64 &state)
{
    state += 0x9e3779b97f4a7c15;
    quint64 mixed = state;
    mixed = (mixed ^ (mixed >> 30)) * 0xbf58476d1ce4e5b9;
    mixed = (mixed ^ (mixed >> 27)) * 0x94d049bb133111eb;
    return mixed ^ (mixed >> 31);
}

} // namespace

Chance::Chance(quint64 seed, quint64 stream)
{
    quint64 state = seed;
    state = splitMix(state) ^ stream;
    for (quint64 &word : m_state)
        word = splitMix(state);
}

quint64 Chance::next()
{
    const quint64 result = std::rotl(m_state[1] * 5, 7) * 9;
    const quint64 shifted = m_state[1] << 17;
    m_state[2] ^= m_state[0];
    m_state[3] ^= m_state[1];
    m_state[1] ^= m_state[2];
    m_state[0] ^= m_state[3];
    m_state[2] ^= shifted;
    m_state[3] = std::rotl(m_state[3], 45);
    return result;
}

int Chance::whole(int least, int most)
{
    return least + int(next() % quint64(most - least + 1));
}

double Chance::part(double least, double most)
{
    constexpr double steps = 9007199254740992.0; // 2^53: every one of them is a double
    return least + (most - least) * (double(next() >> 11) / steps);
}

double Chance::scatter(double deviation)
{
    double sum = 0;
    for (int i = 0; i < 12; ++i)
        sum += part(0, 1);
    return (sum - 6) * deviation;
}

bool Chance::happens(double probability)
{
    return part(0, 1) < probability;
}

} // namespace plateau::sampledata
