// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/laboratory.h"
#include "core/planning/rackrepeat.h"

#include <QFrame>

#include <optional>

class QLabel;
class QPushButton;

namespace plateau::ui {

class Theme;
struct Rack;

/// While the rack still stands there: a sample that has to be repeated, and one key that adds its tubes.
class RepeatOffer : public QFrame
{
    Q_OBJECT

public:
    explicit RepeatOffer(const Theme &theme, QWidget *parent = nullptr);

    /// What the rack's evaluation advises for its first sample without a repeat; hides where there is none.
    void show(const Rack &rack, const planning::Laboratory &laboratory);

Q_SIGNALS:
    void repeatWanted(const plateau::planning::RackRepeat &repeat);

private:
    void dress();

    const Theme &m_theme;
    QLabel *m_sentence;
    QPushButton *m_add;
    std::optional<planning::RackRepeat> m_repeat;
};

} // namespace plateau::ui
