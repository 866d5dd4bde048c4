// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/planning/laboratory.h"
#include "ui/bench/rundraft.h"

#include <QGroupBox>

#include <functional>
#include <optional>

class QPushButton;

namespace plateau::ui {

class Notice;
class SamplesModel;
class SamplesTable;
class Theme;

/// The samples of a plan as a table, with what makes filling it in quick: dilution steps more or less, and
/// dilutions proposed from what is expected.
class SampleSection : public QGroupBox
{
    Q_OBJECT

public:
    explicit SampleSection(const Theme &theme, QWidget *parent = nullptr);

    const SamplesModel &model() const { return *m_model; }
    void setNames(const QStringList &names);
    /// What stood beside the names in a spreadsheet, row by row: a number is what is expected of the first
    /// quantity, a text the product. What was typed already stays.
    void fillIn(const std::vector<QStringList> &rows);
    /// From the shelf; what is there already under that name is left as it is.
    void addRows(const std::vector<SampleDraft> &rows);
    void setForm(run::Form form);
    void setAssay(const assay::Method *method, int wavelength_nm, double pathLength_mm);
    /// Those that are known, to be chosen from.
    void setProducts(const QStringList &products);
    void setGlassware(const planning::Glassware &glassware) { m_glassware = glassware; }
    /// What was found last in a product, in the unit of the expectations; asked where a product is named and
    /// nothing is typed.
    using PastResult = std::function<std::optional<double>(const QString &product, const QString &measurand)>;
    void setPastResult(PastResult pastResult) { m_pastResult = std::move(pastResult); }
    void startAnew();

Q_SIGNALS:
    void changed();
    /// The names that are there now.
    void rowsAdded(const QStringList &names);
    void shelfWanted();

private:
    void build();
    void changeDilutionSteps(int by);
    void propose();
    /// "P-104 0.2 mL": what a proposal set.
    QString volumeSet(const SampleDraft &planned) const;
    /// How many expectations were taken from past results.
    int fillExpectations();
    void setSteps(int steps);

    const Theme &m_theme;
    SamplesModel *m_model;
    SamplesTable *m_table;
    QPushButton *m_fewerSteps = nullptr;
    Notice *m_notice;
    planning::Glassware m_glassware;
    PastResult m_pastResult;
    std::optional<assay::Method> m_method;
    run::Form m_form = run::Form::Liquid;
    int m_wavelength_nm = 0;
    double m_pathLength_mm = 0;
};

} // namespace plateau::ui
