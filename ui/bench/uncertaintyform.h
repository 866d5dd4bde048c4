// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/rundraft.h"

#include <QGroupBox>

namespace plateau::ui {

class NumberField;
class Theme;

/// The standard uncertainties a new run is evaluated with, filled in with the usual ones.
class UncertaintyForm : public QGroupBox
{
    Q_OBJECT

public:
    explicit UncertaintyForm(const Theme &theme, QWidget *parent = nullptr);
    void startAnew();
    UncertaintyDraft draft() const;

Q_SIGNALS:
    void changed();

private:
    std::array<NumberField *, 7> m_fields{};
};

} // namespace plateau::ui
