// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/reporting.h"

#include <QWidget>

#include <optional>

class QLabel;
class QPushButton;

namespace plateau::ui {

class Dialogs;
class FieldNote;
class Theme;

/// The logo of the reports: loaded from a file, shown as on paper, replaced, removed. A file that is no logo
/// is refused with a sentence, and what was there stays.
class LogoField : public QWidget
{
    Q_OBJECT

public:
    LogoField(const Theme &theme, Dialogs &dialogs, QWidget *parent = nullptr);

    const std::optional<planning::Logo> &logo() const { return m_logo; }
    void setLogo(const std::optional<planning::Logo> &logo);

Q_SIGNALS:
    void changed();

private:
    void load();
    void remove();
    void draw();

    const Theme &m_theme;
    Dialogs &m_dialogs;
    std::optional<planning::Logo> m_logo;
    QLabel *m_picture;
    QLabel *m_text;
    QPushButton *m_load;
    QPushButton *m_remove;
    FieldNote *m_refusal;
};

} // namespace plateau::ui
