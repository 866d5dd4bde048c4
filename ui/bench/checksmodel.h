// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/evaluation/checklines.h"
#include "ui/shared/columnsmodel.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// The checks of a run: what was found, its limit, where the limit comes from, and how it came out, in words
/// and shape. What failed stands first.
class ChecksModel : public ColumnsModel<evaluation::CheckLine>
{
    Q_OBJECT

public:
    enum Column { Check, Outcome, Found, Limit, Origin, ColumnCount };

    explicit ChecksModel(const Theme &theme, QObject *parent = nullptr);
    void setLines(std::vector<evaluation::CheckLine> lines) { setRows(std::move(lines)); }

protected:
    int columns() const override { return ColumnCount; }
    QString text(const evaluation::CheckLine &row, int column) const override;
    QString heading(int column) const override;
    QVariant look(const evaluation::CheckLine &row, int column, int role) const override;

private:
    const Theme &m_theme;
};

/// "pass", "fail", "repeat" and so on, with its shape.
Sentence outcomeOf(evaluation::CheckOutcome outcome);

} // namespace plateau::ui
