// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QObject>

class QSettings;

namespace plateau::ui {

/// How the bench sounds and how readings are keyed: a matter of the person and the machine, not of the
/// record.
struct BenchChoice {
    bool muted = false;
    int volume_percent = 60;
    /// How long before its time the first sound comes, and the strip turns to it.
    int lead_s = 20;
    /// Digits without a decimal mark are thousandths: 512 is 0.512.
    bool keysThousandths = false;
    bool operator==(const BenchChoice &) const = default;
};

inline constexpr int longestLead_s = 300;

/// Whatever else stands in the settings, what is usual.
BenchChoice keptBench(const QSettings &settings);
/// False where the settings can't be written.
bool keepBench(QSettings &settings, const BenchChoice &choice);

/// The choice that holds now, kept over the end of the program.
class BenchSettings : public QObject
{
    Q_OBJECT

public:
    explicit BenchSettings(QObject *parent = nullptr);

    const BenchChoice &choice() const { return m_choice; }
    /// False where it holds now but could not be kept for the next time.
    bool setChoice(const BenchChoice &choice);

Q_SIGNALS:
    void changed();

private:
    BenchChoice m_choice;
};

} // namespace plateau::ui
