// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/notebook/records.h"
#include "core/notebook/reporting.h"

#include <QWidget>

#include <vector>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class BenchSession;
class Notice;
class ReportedModel;
class SentenceList;
class SignatureFields;
class Table;
class Theme;

/// Which of the accepted results of a sample is reported, by what rule and why; another choice with a reason.
class ReportedView : public QWidget
{
    Q_OBJECT

public:
    ReportedView(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);
    /// The samples and measurands of that run.
    void showRun(const notebook::StoredRun &stored);
    void takeFocus();

private:
    struct Subject {
        QString sample;
        QString measurand;
        bool isControl = false;
        bool operator==(const Subject &) const = default;
    };

    QWidget *buildForm(const Theme &theme);
    /// The result in the unit in which the laboratory reports it; empty where that is the evaluation's.
    QString onReport(const notebook::SampleResults &results) const;
    void showSubject();
    void store();

    BenchSession &m_session;
    ReportedModel *m_model;
    Notice *m_notice;
    QComboBox *m_subjects;
    SentenceList *m_reported;
    Table *m_table;
    QComboBox *m_rule = nullptr;
    QLineEdit *m_reason = nullptr;
    SignatureFields *m_signature;
    QPushButton *m_store = nullptr;
    notebook::RunId m_id;
    assay::Method m_method;
    std::vector<Subject> m_all;
    std::optional<Subject> m_shown;
};

} // namespace plateau::ui
