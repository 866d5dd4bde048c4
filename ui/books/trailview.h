// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/localday.h"
#include "core/notebook/notebook.h"

#include <QTimer>
#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace plateau::ui {

class Notice;
class Table;
class Theme;
class TrailModel;

/// The audit as a list with a filter: words, a person, a kind of act, days, one run. The chosen act stands
/// below in full.
class TrailView : public QWidget
{
    Q_OBJECT

public:
    TrailView(const Theme &theme, const notebook::Notebook &notebook, QWidget *parent = nullptr);

    /// As the notebook is now, by the filter that stands there.
    void refresh();
    void takeFocus();
    /// Only what concerns this run.
    void showRun(notebook::RunId run);

Q_SIGNALS:
    void runWanted(plateau::notebook::RunId run);

private:
    QWidget *buildFilter(const Theme &theme);
    /// Nothing after the notice said what is wrong with it.
    std::optional<notebook::AuditFilter> filter();
    void addOlder();
    /// By the filter as it stands, with the choices as they are.
    void look();
    void load(const notebook::AuditFilter &filter, bool after);
    /// The acts of an earlier search would pass for what is found now.
    void showNothing();
    void sayWhatWasLookedAt(const notebook::AuditPage &page);
    void fillChoices();
    void showDetails(int row);
    bool readDay(const QLineEdit &entry, assay::MonthAlone month, std::optional<QDate> &day);

    const notebook::Notebook &m_notebook;
    /// Below the filter, which must not move while it is typed in.
    Notice *m_notice;
    QTimer m_pause;
    /// Where the look ended; nothing where it came to the first entry.
    std::optional<qint64> m_lookedTo;
    TrailModel *m_model;
    QLineEdit *m_words;
    QComboBox *m_person;
    QComboBox *m_act;
    QLineEdit *m_from;
    QLineEdit *m_to;
    QLineEdit *m_run;
    QLabel *m_empty;
    Table *m_table;
    QPushButton *m_older;
    QPushButton *m_toRun;
    QPlainTextEdit *m_details;
};

} // namespace plateau::ui
