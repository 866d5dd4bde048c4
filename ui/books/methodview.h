// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QTabWidget;
class QTextBrowser;

namespace plateau::ui {

class ComparisonView;
class Notice;
class SentenceList;
class Theme;

/// One method to read: what it says, its versions, what was done with it. Changing it in any way is for
/// whoever opened it.
class MethodView : public QWidget
{
    Q_OBJECT

public:
    explicit MethodView(const Theme &theme, QWidget *parent = nullptr);

    /// contentHash: which of the catalogue. False if it is not there.
    bool show(const std::vector<notebook::StoredMethod> &catalogue, const QString &contentHash);
    const notebook::StoredMethod &shown() const { return m_shown; }
    Notice &notice() { return *m_notice; }
    void takeFocus();
    /// Compares it with the other one of its id and version, where there is one.
    void showWhatItIsKeptApartFrom();
    QString reason() const;
    void askForReason();
    void clearReason();

Q_SIGNALS:
    void closed();
    void methodWanted(const QString &contentHash);
    void changeWanted();
    void copyWanted();
    void exportWanted();
    /// Retired where it is in use, else reinstated.
    void stateChangeWanted();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QWidget *buildHeader();
    QWidget *buildTabs();
    QWidget *buildFooter();
    void dress();

    const Theme &m_theme;
    QLabel *m_title;
    QLabel *m_subtitle;
    Notice *m_notice;
    QTabWidget *m_tabs = nullptr;
    QTextBrowser *m_text = nullptr;
    ComparisonView *m_versions = nullptr;
    SentenceList *m_acts = nullptr;
    QLabel *m_reasonCaption = nullptr;
    QLineEdit *m_reason = nullptr;
    QPushButton *m_stateChange = nullptr;
    std::vector<notebook::StoredMethod> m_catalogue;
    notebook::StoredMethod m_shown;
};

} // namespace plateau::ui
