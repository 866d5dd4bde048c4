// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/laboratorysection.h"
#include "ui/books/methodchoices.h"

class QCheckBox;

namespace plateau::ui {

/// What the laboratory knows of its own for single methods.
class MethodUncertaintiesForm : public LaboratorySection
{
    Q_OBJECT

public:
    explicit MethodUncertaintiesForm(const Theme &theme, QWidget *parent = nullptr);
    void setChoices(const MethodChoices &choices);
    void load(const LaboratoryDraft &draft) override;
    void store(LaboratoryDraft &draft) const override;

private:
    MethodChoices m_choices;
    CellsModel *m_rows;
};

/// The units in which the results of a product are reported.
class ReportUnitsForm : public LaboratorySection
{
    Q_OBJECT

public:
    explicit ReportUnitsForm(const Theme &theme, QWidget *parent = nullptr);
    void setChoices(const MethodChoices &choices);
    void load(const LaboratoryDraft &draft) override;
    void store(LaboratoryDraft &draft) const override;

private:
    MethodChoices m_choices;
    CellsModel *m_rows;
};

/// Who may decide a run, and the reasons that are offered where one is rejected.
class ReviewRulesForm : public LaboratorySection
{
    Q_OBJECT

public:
    explicit ReviewRulesForm(const Theme &theme, QWidget *parent = nullptr);
    void load(const LaboratoryDraft &draft) override;
    void store(LaboratoryDraft &draft) const override;

private:
    QCheckBox *addRule(const QString &text, const QString &objectName);

    QCheckBox *m_reviewerDecides;
    QCheckBox *m_secondPersonReviews;
    CellsModel *m_reasons;
};

} // namespace plateau::ui
