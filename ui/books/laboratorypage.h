// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/bookpage.h"
#include "ui/books/laboratorydraft.h"

class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class BenchSession;
class CellsModel;
class CellsTable;
class Notice;
class NumberEntry;
class ProblemList;
class Stores;
class Theme;

/// What the laboratory has and how it works, where a method does not say so: rack, handling times, overage,
/// pipettes and flasks. What is usual stands there, marked as such, until somebody saves the laboratory's
/// own.
class LaboratoryPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    LaboratoryPage(const Theme &theme, const BenchSession &session, Stores &stores,
                   QWidget *parent = nullptr);

    void open() override;
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    QWidget *buildHeader();
    QWidget *buildForm();
    QWidget *buildGlass();
    QWidget *buildSide();
    NumberEntry *addNumber(QFormLayout *form, const QString &label, const QString &unit,
                           const QString &objectName);
    CellsTable *addTable(CellsModel *model, const QString &title, const QString &objectName, int stretch,
                         QWidget *parent);
    void reload();
    void load(const LaboratoryDraft &draft);
    LaboratoryDraft collect() const;
    void onEdited();
    void sayWhereItComesFrom();
    void showProblems();
    void goToProblem(int row);
    void finishCell() const;
    void save();
    void dropAnsweredQuestion();

    const Theme &m_theme;
    const BenchSession &m_session;
    Stores &m_stores;
    CellsModel *m_pipettes;
    CellsModel *m_flasks;
    Notice *m_notice;
    Notice *m_origin;
    QLineEdit *m_name = nullptr;
    NumberEntry *m_rackRows = nullptr;
    NumberEntry *m_rackColumns = nullptr;
    NumberEntry *m_addition_s = nullptr;
    NumberEntry *m_mix_s = nullptr;
    NumberEntry *m_reading_s = nullptr;
    NumberEntry *m_overage_percent = nullptr;
    QLabel *m_summary = nullptr;
    ProblemList *m_problems = nullptr;
    QPushButton *m_dropChanges = nullptr;
    /// As read last, and as typed now.
    planning::Laboratory m_keptLaboratory;
    LaboratoryDraft m_kept;
    LaboratoryOutcome m_outcome;
    bool m_loading = false;
    bool m_loaded = false;
};

} // namespace plateau::ui
