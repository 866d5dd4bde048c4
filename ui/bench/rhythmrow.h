// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/nextaction.h"

#include <QWidget>

class QCheckBox;
class QLabel;

namespace plateau::ui {

class BenchSession;
class NumberField;
class Theme;

/// A steady rhythm for the additions that start a tube's clock: from the first tick on the strip counts down
/// to each next tube, and every beat is heard.
class RhythmRow : public QWidget
{
    Q_OBJECT

public:
    RhythmRow(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    /// The round on show; hidden where no wait follows it, so that tubes need no time of their own. round: -1
    /// for none.
    void showRound(notebook::RunId id, int round);

private:
    void take();
    void refresh();
    std::optional<Beat> typed() const;

    BenchSession &m_session;
    QCheckBox *m_keep;
    NumberField *m_interval;
    QLabel *m_words;
    notebook::RunId m_id;
    int m_round = -1;
    bool m_filling = false;
};

/// Whether the tubes' clocks start with that round: a wait comes before the next addition.
bool startsClock(const PipetteSheet &sheet, int round);

} // namespace plateau::ui
