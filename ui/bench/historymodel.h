// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

class Theme;

/// One reading as it was keyed, in words.
struct HistoryRow {
    QString tube;
    QString reading;
    QString absorbance;
    QString typed;
    QString person;
    QString at;
    QString reason;
    /// Another reading has taken its place.
    bool corrected = false;
    bool operator==(const HistoryRow &) const = default;
};

/// Every reading ever keyed, tube by tube, the older of two at one place first; a corrected one is struck
/// out.
class HistoryModel : public RowsModel<QAbstractTableModel, HistoryRow>
{
    Q_OBJECT

public:
    enum Column { Tube, Reading, Absorbance, Typed, Person, At, Reason, ColumnCount };

    explicit HistoryModel(const Theme &theme, QObject *parent = nullptr);
    void show(const notebook::StoredRun &stored);
    /// Something was corrected.
    bool hasReasons() const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
};

} // namespace plateau::ui
