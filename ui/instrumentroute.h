// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/instrument/instrumentintake.h"
#include "ui/shared/whenwanted.h"

namespace plateau::ui {

class BenchSession;
class Notice;
class RackPage;
struct WindowActions;

/// The way of a reading from the photometer to the Read page: to the tube that is due, on whatever rack,
/// unless somebody is in the middle of something there. Everything handed in outlives it.
class InstrumentRoute : public QObject
{
    Q_OBJECT

public:
    InstrumentRoute(InstrumentIntake &intake, BenchSession &session, WhenWanted<RackPage> &rack, Notice &notice,
                    QObject *parent);
    /// The menu's entries for it; dialogs open over the window.
    void connectActions(const WindowActions &actions, QWidget *window);

Q_SIGNALS:
    /// The page of the rack takes a reading and should be seen.
    void rackPageWanted();

private:
    void take(const std::vector<TakenReading> &readings);
    bool isReadPageOnShow() const;

    InstrumentIntake &m_intake;
    BenchSession &m_session;
    WhenWanted<RackPage> &m_rack;
    Notice &m_notice;
};

} // namespace plateau::ui
