// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/settings.h"
#include "core/notebook/records.h"
#include "ui/bench/recoveryhistory.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;

namespace plateau::ui {

class BenchSession;
class Notice;
class ReportedView;
class ResultView;
class SignatureFields;
class Theme;

/// One run of the notebook as it was: its decisions, results and readings. A decided run is locked; it can be
/// put back on the bench with a reason and a signature, its decisions staying readable. Earlier revisions can
/// be opened, and which of several results of a sample is reported is seen and chosen on a page of its own.
class RecordView : public QWidget
{
    Q_OBJECT

public:
    RecordView(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    /// False where the notebook could not give it; the sentence stands in the page then.
    bool showRun(notebook::RunId id);
    /// The same from its beginning: the verdict of the newest revision, whatever was looked at last.
    bool openRun(notebook::RunId id);
    notebook::RunId runId() const { return m_stored.summary.id; }
    void takeFocus();

Q_SIGNALS:
    void closed();
    void rackWanted(plateau::notebook::RunId id);
    void chartWanted(const plateau::charts::Subject &subject);

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QWidget *buildHeader();
    QWidget *buildFooter();
    void fill();
    void fillRevisions();
    /// The stored run, or one of its revisions.
    void showRevision(int index);
    /// Read against what held when it was decided. revision: nothing for the stored run as it stands.
    void showResults(const notebook::StoredRun &stored, const evaluation::Evaluation &evaluation,
                     std::optional<int> revision);
    void showReported(bool reported);
    /// From the reported values to the run, from the run to the list.
    void leave();
    void wantTrend();
    void compareWithDecision(const evaluation::Evaluation &evaluation);
    void putBack();

    const Theme &m_theme;
    BenchSession &m_session;
    QLabel *m_title;
    QLabel *m_subtitle;
    Notice *m_notice;
    QStackedWidget *m_pages;
    ResultView *m_view;
    ReportedView *m_reported;
    QComboBox *m_revisions = nullptr;
    QLabel *m_revisionCaption = nullptr;
    QPushButton *m_toReported = nullptr;
    QPushButton *m_toTrend = nullptr;
    QWidget *m_lockRow = nullptr;
    QLabel *m_lockCaption = nullptr;
    QLineEdit *m_reason = nullptr;
    SignatureFields *m_signature = nullptr;
    QPushButton *m_toRack = nullptr;
    QPushButton *m_back = nullptr;
    notebook::StoredRun m_stored;
};

} // namespace plateau::ui
