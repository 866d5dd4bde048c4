// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/reporting.h"
#include "ui/shared/columnsmodel.h"
#include "ui/shared/sentencelist.h"

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
class ReportedModel : public ColumnsModel<ReportedRow>
{
    Q_OBJECT

public:
    enum Column { Run, Sample, Decided, By, Dilution, Result, Part, ColumnCount };

    explicit ReportedModel(const Theme &theme, QObject *parent = nullptr);
    void show(const notebook::SampleResults &results);
    /// Of the first that is reported; 0 where none is.
    int reportedRow() const;

protected:
    int columns() const override { return ColumnCount; }
    QString text(const ReportedRow &row, int column) const override;
    QString heading(int column) const override;
    bool isNumber(int column) const override;
    QVariant look(const ReportedRow &row, int column, int role) const override;

private:
    const Theme &m_theme;
};

/// "the last accepted result" and so on, in the middle of a sentence.
QString ruleText(notebook::ReportRule rule);
/// What is reported, by what rule, by whom it was chosen and why. onReport: the same in the unit of the report, or empty.
/// isControl: material that is measured run after run under one name.
std::vector<Sentence> reportedSentences(const notebook::SampleResults &results, const QString &onReport = {},
                                        bool isControl = false);

} // namespace plateau::ui
