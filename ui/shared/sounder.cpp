// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/sounder.h"

#include <QApplication>
#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QBuffer>
#include <QMediaDevices>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace plateau::ui {

namespace {

constexpr int sampleRate_Hz = 44100;
constexpr double tone_s = 0.11;
constexpr double pause_s = 0.07;
/// A tone that starts or ends at once clicks.
constexpr double fade_s = 0.008;
constexpr double loudest = 0.8 * 32767;

struct Tones {
    int count = 1;
    double pitch_Hz = 0;
};

/// High enough to be told apart beside a fume cupboard, low enough for ears of sixty.
Tones tonesOf(Sound sound)
{
    switch (sound) {
    case Sound::Soon:
        return {1, 660};
    case Sound::Now:
        return {2, 990};
    case Sound::Late:
        break;
    }
    return {3, 1480};
}

QAudioFormat format()
{
    QAudioFormat format;
    format.setSampleRate(sampleRate_Hz);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

} // namespace

QByteArray toneSamples(Sound sound, int rate_Hz)
{
    const Tones tones = tonesOf(sound);
    const int toneLength = static_cast<int>(tone_s * rate_Hz);
    const int pauseLength = static_cast<int>(pause_s * rate_Hz);
    QByteArray bytes;
    const auto append = [&bytes](double value) {
        const auto sample = static_cast<qint16>(std::lround(value));
        bytes.append(reinterpret_cast<const char *>(&sample), sizeof sample);
    };
    for (int tone = 0; tone < tones.count; ++tone) {
        for (int at = 0; at < toneLength; ++at) {
            const double time_s = static_cast<double>(at) / rate_Hz;
            const double left_s = tone_s - time_s;
            const double fade = std::min({1.0, time_s / fade_s, left_s / fade_s});
            append(loudest * fade * std::sin(2 * std::numbers::pi * tones.pitch_Hz * time_s));
        }
        for (int at = 0; at < pauseLength; ++at)
            append(0);
    }
    return bytes;
}

class ToneSounder::Output
{
public:
    QBuffer buffer;
    std::unique_ptr<QAudioSink> sink;
};

ToneSounder::ToneSounder()
    : m_output(std::make_unique<Output>())
{
}

ToneSounder::~ToneSounder() = default;

void ToneSounder::play(Sound sound, int volume_percent)
{
    if (volume_percent <= 0)
        return;
    // Asked anew each time: a headset may have come or gone since.
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull() || !device.isFormatSupported(format())) {
        QApplication::beep();
        return;
    }
    if (m_output->sink)
        m_output->sink->stop();
    m_output->buffer.close();
    m_output->buffer.setData(toneSamples(sound, sampleRate_Hz));
    m_output->buffer.open(QIODevice::ReadOnly);
    m_output->sink = std::make_unique<QAudioSink>(device, format());
    // Ears hear in steps of the logarithm.
    m_output->sink->setVolume(QAudio::convertVolume(static_cast<float>(volume_percent) / 100.0F, QAudio::LogarithmicVolumeScale,
                                                    QAudio::LinearVolumeScale));
    m_output->sink->start(&m_output->buffer);
}

} // namespace plateau::ui
