// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/uncertaintysources.h"
#include "ui/bench/rundraft.h"

#include <QGroupBox>

#include <vector>

class QLabel;

namespace plateau::ui {

class NumberField;
class Theme;

/// The standard uncertainties a new run is evaluated with: what the laboratory has for each, whose it is and
/// where it comes from. Another number may be typed over it; an emptied field takes the laboratory's again.
class UncertaintyForm : public QGroupBox
{
    Q_OBJECT

public:
    explicit UncertaintyForm(const Theme &theme, QWidget *parent = nullptr);
    /// Nothing typed, nothing known.
    void startAnew();
    /// What the draft comes to, in the order of planning::statedInputs; what is behind them is left out.
    void show(const std::vector<planning::OwnedInput> &owned);
    UncertaintyDraft draft() const;

Q_SIGNALS:
    void changed();

private:
    struct Row {
        NumberField *field = nullptr;
        QLabel *owner = nullptr;
        /// The laboratory's number as it stands in the field while nothing else was typed.
        QString own;
    };
    bool isTyped(const Row &row) const;
    void showRow(Row &row, const planning::OwnedInput &owned);
    void onJudged();
    void onLeft();

    std::array<Row, 7> m_rows{};
    QLabel *m_summary;
    bool m_isFilling = false;
};

} // namespace plateau::ui
