// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/reporting.h"
#include "ui/shared/sentencelist.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>

namespace plateau::ui {

class Theme;

/// One accepted result, in words.
struct ReportedRow {
    notebook::ResultSource from;
    QString decided;
    QString by;
    QString dilution;
    QString result;
    /// "reported", "in the mean"; empty for the others.
    QString part;
    bool operator==(const ReportedRow &) const = default;
};

/// The accepted results of one sample and measurand, oldest first, and which of them is reported.
class ReportedModel : public RowsModel<QAbstractTableModel, ReportedRow>
{
    Q_OBJECT

public:
    enum Column { Run, Sample, Decided, By, Dilution, Result, Part, ColumnCount };

    explicit ReportedModel(const Theme &theme, QObject *parent = nullptr);
    void show(const notebook::SampleResults &results);
    /// Of the first that is reported; 0 where none is.
    int reportedRow() const;

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
};

/// "the last accepted result" and so on, in the middle of a sentence.
QString ruleText(notebook::ReportRule rule);
/// What is reported, by what rule, by whom it was chosen and why.
std::vector<Sentence> reportedSentences(const notebook::SampleResults &results);

} // namespace plateau::ui
