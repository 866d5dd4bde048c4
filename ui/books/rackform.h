// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/laboratorysection.h"

namespace plateau::ui {

/// Rack, handling times, overage: what plans go by.
class RackForm : public LaboratorySection
{
    Q_OBJECT

public:
    explicit RackForm(const Theme &theme, QWidget *parent = nullptr);
    void load(const LaboratoryDraft &draft) override;
    void store(LaboratoryDraft &draft) const override;

private:
    NumberEntry *m_rackRows;
    NumberEntry *m_rackColumns;
    NumberEntry *m_addition_s;
    NumberEntry *m_mix_s;
    NumberEntry *m_reading_s;
    NumberEntry *m_overage_percent;
};

/// Pipettes and volumetric flasks.
class GlassForm : public LaboratorySection
{
    Q_OBJECT

public:
    explicit GlassForm(const Theme &theme, QWidget *parent = nullptr);
    void load(const LaboratoryDraft &draft) override;
    void store(LaboratoryDraft &draft) const override;

private:
    CellsModel *m_pipettes;
    CellsModel *m_flasks;
};

} // namespace plateau::ui
