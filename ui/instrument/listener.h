// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/linesource.h"
#include "ui/instrument/photometerstore.h"
#include "ui/instrument/takenreading.h"

#include <memory>
#include <optional>

namespace plateau::ui {

/// A line that came in, and what was made of it.
struct ReceivedLine {
    /// On one line, control characters as codes.
    QString raw;
    /// As it came; cut if it was too long.
    QByteArray bytes;
    std::optional<double> absorbance;
    /// Why there is no absorbance.
    exchange::LineRefusal refusal;
    bool operator==(const ReceivedLine &) const = default;
};
ReceivedLine received(const exchange::LineAssembler::Line &line, const exchange::LinePattern &pattern);

/// Listens to one photometer at a time. Connecting and taking are two things: while a connection is tried
/// out, its lines are seen but no reading is taken.
class Listener : public QObject
{
    Q_OBJECT

public:
    explicit Listener(QObject *parent = nullptr);
    ~Listener() override;

    /// Ends what there was. The photometer is sound.
    void connectTo(const Photometer &photometer);
    void disconnectFrom();
    /// Sound; for the lines to come.
    void setPattern(const exchange::LinePattern &pattern);
    void setName(const QString &name);
    void setTaking(bool isTaking);

    /// The one it is connected to or tries to; nothing while stopped.
    const std::optional<Photometer> &photometer() const { return m_photometer; }
    bool isTaking() const { return m_isTaking && m_photometer; }
    LinkState state() const;
    QString sentence() const;
    /// For sources to come.
    void setRetryInterval(int interval_ms) { m_retryInterval_ms = interval_ms; }

Q_SIGNALS:
    void lineReceived(const plateau::ui::ReceivedLine &line);
    void taken(const plateau::ui::TakenReading &reading);
    /// A line without a reading, but for those the pattern passes over.
    void refused(const QString &raw, const QString &sentence);
    void stateChanged();

private:
    void onLine(const exchange::LineAssembler::Line &line);
    void onBroken(const QByteArray &rest);
    void tell(const ReceivedLine &line);

    std::unique_ptr<LineSource> m_source;
    std::optional<Photometer> m_photometer;
    bool m_isTaking = false;
    std::optional<int> m_retryInterval_ms;
};

} // namespace plateau::ui
