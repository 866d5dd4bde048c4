// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/appraisalwords.h"
#include "ui/books/cellsmodel.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace plateau::ui {

class CellsTable;
class FactsModel;
class NumberEntry;
class Table;
class Theme;
class TubeDrawing;

/// What the method means at the bench, while it is written: the tube, factors, ranges, limits, and how many
/// tubes a bottle serves.
class AppraisalPanel : public QWidget
{
    Q_OBJECT

public:
    explicit AppraisalPanel(const Theme &theme, QWidget *parent = nullptr);
    /// components: the draft's rows, in the method's order; what is known of bottles stays with the row.
    void show(const assay::Method &method, const std::vector<CellRow> &components);
    const evaluation::Appraisal &appraisal() const { return m_appraisal; }

Q_SIGNALS:
    void appraised();

private:
    struct Facts {
        FactsModel *model = nullptr;
        Table *table = nullptr;
    };
    Facts addFacts(QVBoxLayout *layout, const QString &title, const QString &objectName);
    void showFacts(const Facts &facts, FactsTable content) const;
    /// As high as its rows, and the scroll bar where there is one.
    void fitHeight(Table &table) const;
    void buildLimits(QVBoxLayout *layout);
    void buildBottles(QVBoxLayout *layout);
    evaluation::AppraisalInputs inputs() const;
    void showBottles();
    void appraise();

    const Theme &m_theme;
    assay::Method m_method;
    std::vector<CellRow> m_components;
    evaluation::Appraisal m_appraisal;
    TubeDrawing *m_tube;
    Facts m_factors;
    Facts m_ranges;
    Facts m_limits;
    NumberEntry *m_smallest = nullptr;
    QLabel *m_rule = nullptr;
    CellsModel *m_bottles;
    CellsTable *m_bottlesTable = nullptr;
};

} // namespace plateau::ui
