// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QByteArray>

#include <memory>

namespace plateau::ui {

/// In the order of how pressing they are. Each differs from the others in pitch and in the number of its
/// tones: one low, two, three high.
enum class Sound { Soon, Now, Late };

/// Makes sounds; tests listen with one of their own.
class Sounder
{
public:
    virtual ~Sounder() = default;
    /// volume_percent: 0 is silence, 100 as loud as the system's volume is set.
    virtual void play(Sound sound, int volume_percent) = 0;
};

/// Through the system's sound; its plain signal where there is none.
class ToneSounder : public Sounder
{
public:
    ToneSounder();
    ~ToneSounder() override;
    void play(Sound sound, int volume_percent) override;

private:
    class Output;
    std::unique_ptr<Output> m_output;
};

/// One channel of signed 16-bit samples.
QByteArray toneSamples(Sound sound, int sampleRate_Hz);

} // namespace plateau::ui
