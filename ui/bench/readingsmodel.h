// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bench/places.h"
#include "ui/bench/unitsofrun.h"
#include "ui/shared/showncells.h"

#include <QAbstractTableModel>

namespace plateau::ui {

class Theme;

/// Tubes by readings, with what each holds in words and what comes of it so far. A corrected reading shows
/// the value it replaced; the place being keyed shows what is typed.
class ReadingsModel : public ShownCells<QAbstractTableModel>
{
    Q_OBJECT

public:
    static constexpr int contentsColumn = 1;

    explicit ReadingsModel(const Theme &theme, QObject *parent = nullptr);

    /// Same run as before: changes only. Another run, or another method: a reset.
    void show(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation, const UnitsOfRun &units = {});
    /// The place being keyed and the absorbance typed so far; the evaluation is the preview with it.
    void setKeyed(const std::optional<Place> &place, std::optional<double> absorbance,
                  const evaluation::Evaluation &evaluation);

    /// Nothing for a cell that holds no reading.
    std::optional<Place> placeOf(const QModelIndex &index) const;
    QModelIndex indexOf(const Place &place) const;

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    enum class Kind { Number, Contents, Reading, Net, Concentration };
    struct Column {
        Kind kind = Kind::Number;
        /// The reading or the measurand it belongs to.
        QString id;
        QString title;
    };

    void layOut();
    void touch();
    QString text(int tube, const Column &column) const;
    /// Of a series the last reading and how many there are.
    static QString cellText(const run::Reading &reading);
    QString readingCell(const Place &place) const;
    QString contentsCell(int tube) const;
    bool isKeyed(int tube, const Column &column) const;

    const Theme &m_theme;
    std::vector<Column> m_columns;
    UnitsOfRun m_units;
    notebook::StoredRun m_stored;
    evaluation::Evaluation m_evaluation;
    std::optional<Place> m_keyed;
    std::optional<double> m_typed;
};

} // namespace plateau::ui
