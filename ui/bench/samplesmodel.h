// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "ui/bench/rundraft.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

class Theme;

/// What is planned for each sample of a new run, one row each: what is expected of it, the dilution as pairs
/// of take and make up to with the signal that gives, how many tubes, and what it is. Texts stay as typed;
/// one that is no number is marked.
class SamplesModel : public RowsModel<QAbstractTableModel, SampleDraft>
{
    Q_OBJECT

public:
    /// What edits the cell: Text, Product (a text with offers), Number, or Matrix (its words by assay::Matrix as int).
    enum class Editor { None, Text, Product, Number, Matrix };
    enum Role { EditorRole = Qt::UserRole, OffersRole };

    explicit SamplesModel(const Theme &theme, QObject *parent = nullptr);

    /// Names in their order; what was filled in for a name stays with it.
    void setNames(const QStringList &names);
    /// Takes the rows as they are; a row whose name is there already is left.
    void addRows(const std::vector<SampleDraft> &fresh);
    void replaceRow(int row, SampleDraft sample);
    /// That are offered.
    void setProducts(const QStringList &products) { m_products = products; }
    void setForm(run::Form form);
    /// What the run is as far as predicted signals depend on it. Nothing is predicted without a method.
    void setAssay(const assay::Method *method, int wavelength_nm, double pathLength_mm);
    /// As many pairs of columns, at least one; what stood in a pair that goes is gone.
    void setDilutionSteps(int steps);
    int dilutionSteps() const { return m_steps; }
    /// Where the volume taken in the last step is keyed.
    int lastTakeColumn() const;

    int columnCount(const QModelIndex &parent = {}) const override;
    bool setData(const QModelIndex &index, const QVariant &value, int role) override;
    Qt::ItemFlags flags(const QModelIndex &index) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

protected:
    QVariant cellData(const QModelIndex &index, int role) const override;

private:
    enum class Kind {
        Name,
        Product,
        Expected,
        Mass,
        Extract,
        Take,
        MakeUp,
        Factor,
        Volume,
        Signal,
        Tubes,
        OwnBlank,
        Spike,
        Matrix,
        Received,
        From
    };
    struct Column {
        Kind kind = Kind::Name;
        /// Dilution step, or measurand of the method.
        int number = 0;
    };
    std::vector<Column> columnsNow() const;
    void layOut();
    const Column &columnAt(int section) const { return m_columns[static_cast<std::size_t>(section)]; }
    /// The text of that column within the sample; nullptr for a column without one.
    static QString *text(SampleDraft &sample, const Column &column);
    static Editor editorOf(Kind kind);
    static bool isFigures(const Column &column);
    QVariant shown(const SampleDraft &sample, const Column &column) const;
    QString headerText(const Column &column) const;

    const Theme &m_theme;
    run::Form m_form = run::Form::Liquid;
    int m_steps = 1;
    std::optional<assay::Method> m_method;
    int m_wavelength_nm = 0;
    double m_pathLength_mm = 0;
    QStringList m_products;
    std::vector<Column> m_columns;
};

} // namespace plateau::ui
