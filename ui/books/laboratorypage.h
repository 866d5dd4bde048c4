// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/bookpage.h"
#include "ui/books/laboratorydraft.h"

#include <vector>

class QLabel;
class QListWidget;
class QPushButton;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class Dialogs;
class LaboratorySection;
class MethodBook;
class MethodUncertaintiesForm;
class Notice;
class ProblemList;
class ReportUnitsForm;
class Stores;
class Theme;

/// What the laboratory has and how it works, where a method does not say so, in sections: report head, rack
/// and times, glassware, photometer, uncertainties by method, units, review. What is usual stands there,
/// marked as such, until somebody saves the laboratory's own; one save keeps all sections.
class LaboratoryPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it.
    LaboratoryPage(const Theme &theme, Dialogs &dialogs, const BenchSession &session, Stores &stores,
                   const MethodBook &methods, QWidget *parent = nullptr);

    void open() override;
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    QWidget *buildHeader();
    QWidget *buildSections(Dialogs &dialogs);
    QWidget *buildProblems();
    void addSection(LaboratorySection *section);
    void addShortcuts();
    void offerMethods();
    void reload();
    void load(const LaboratoryDraft &draft);
    bool isChanged() const;
    bool isChanged(const LaboratorySection &section) const;
    /// What was saved elsewhere meanwhile comes into the sections in which nothing was typed.
    void takeOver();
    LaboratoryDraft collect() const;
    void onEdited();
    /// stored: the parts that were saved just now.
    void sayWhereItComesFrom(const QStringList &stored = {});
    void showProblems();
    void markSections();
    void goToSection(int row);
    void goToProblem(int row);
    void finishCell() const;
    void save();
    void store();
    void dropAnsweredQuestion();

    const Theme &m_theme;
    const BenchSession &m_session;
    Stores &m_stores;
    const MethodBook &m_methodBook;
    Notice *m_notice;
    Notice *m_origin;
    QListWidget *m_list = nullptr;
    QStackedWidget *m_pages = nullptr;
    std::vector<LaboratorySection *> m_sections;
    MethodUncertaintiesForm *m_methods = nullptr;
    ReportUnitsForm *m_units = nullptr;
    QLabel *m_summary = nullptr;
    ProblemList *m_problems = nullptr;
    QPushButton *m_dropChanges = nullptr;
    /// As read last, and as typed now.
    planning::Laboratory m_keptLaboratory;
    LaboratoryDraft m_kept;
    LaboratoryOutcome m_outcome;
    bool m_loading = false;
    bool m_loaded = false;
    bool m_saysStored = false;
};

} // namespace plateau::ui
