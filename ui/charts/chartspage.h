// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/bookpage.h"
#include "ui/charts/chartsource.h"

class QLabel;
class QTabWidget;

namespace plateau::ui {

class ChartView;
class Dialogs;
class LossPanel;
class Notice;
class PointPanel;
class SentenceList;
class SettingsForm;
class SubjectForm;
class Theme;

/// The book of control charts: what is watched over the runs, where its limits come from, and what is out of
/// control.
class ChartsPage : public BookPage
{
    Q_OBJECT

public:
    /// Everything handed in outlives it. person: who is at the bench now, empty for nobody.
    ChartsPage(const Theme &theme, Dialogs &dialogs, notebook::Notebook &notebook,
               std::function<QString()> person, QWidget *parent = nullptr);

    void open() override;
    QString unstored() const override;
    /// Of anything that has been measured, from another page.
    void show(const charts::Subject &subject);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void build();
    QWidget *buildSide();
    QWidget *buildChart();
    void connectParts();
    void refresh();
    /// Another subject: its series and settings are read.
    void readSubject();
    /// The same series with what is chosen and typed now.
    void draw();
    void drawChart(const charts::Settings &settings);
    void listFindings();
    void showLoss();
    void sayOrigin();
    void choosePoint(int point);
    void openRun(int point);
    void omit(const QString &reason);
    void save();
    void saveFile();
    bool personIsKnown();

    const Theme &m_theme;
    Dialogs &m_dialogs;
    ChartSource m_source;
    std::optional<charts::Subject> m_subject;
    charts::SharedSeries m_series;
    /// As saved, or usual: what the form is held against.
    charts::Settings m_saved;
    Notice *m_notice;
    SubjectForm *m_subjectForm;
    ChartView *m_view;
    PointPanel *m_point;
    QLabel *m_basis;
    SentenceList *m_findings;
    /// The point each line of the list leads to.
    std::vector<std::size_t> m_findingPoints;
    /// What of the forms the notice says now.
    QString m_saidFault;
    QTabWidget *m_side;
    SettingsForm *m_settings;
    LossPanel *m_loss;
};

} // namespace plateau::ui
