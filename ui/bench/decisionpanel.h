// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"
#include "ui/bench/samplechoices.h"

#include <QWidget>

#include <map>
#include <optional>

class QBoxLayout;
class QLabel;
class QPushButton;

namespace plateau::ui {

class BenchSession;
class Notice;
class OfferField;
class SampleChoicesModel;
class SampleChoicesTable;
class SignatureFields;
class Theme;

/// Accept or reject the run, with other decisions for single samples, by name and where needed with a reason
/// and a signature. What the records do not allow is said here, and nothing typed is lost but the passphrase.
class DecisionPanel : public QWidget
{
    Q_OBJECT

public:
    DecisionPanel(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);
    void showRack(notebook::RunId id);
    /// What was typed or chosen for that run and is not decided yet; empty: nothing.
    QString unfinished(notebook::RunId id) const;
    /// The sample that is looked at elsewhere on the page.
    void goToSample(const QString &sample);

Q_SIGNALS:
    /// The keys are at the decision of that sample.
    void sampleChosen(const QString &sample);
    void decided(plateau::notebook::RunId id);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    /// What was typed for a run and is not decided yet.
    struct Draft {
        /// Empty: whoever is at the bench.
        QString name;
        QString reason;
        std::vector<SampleChoiceRow> rows;
        std::optional<bool> unfolded{};
    };

    void build(const Theme &theme);
    Draft draft() const;
    void keepDraft();
    void fill();
    void follow(notebook::RunId id);
    void showRules();
    /// Whoever is at the bench, where they may decide this run.
    QString usualName();
    void sayWhatHappens();
    void unfold(bool open);
    void unfoldByHand(bool open);
    void unfoldAsNeeded();
    /// A sample is to be decided otherwise than the run, unless somebody opened or shut it.
    bool isToBeUnfolded() const;
    bool isAtSamples() const;
    void decide(notebook::DecisionKind kind);
    bool isSettled();
    bool repeatsAreReadable();
    void afterRefusal(notebook::DecisionKind kind);

    BenchSession &m_session;
    SampleChoicesModel *m_choices;
    Notice *m_notice;
    // Tab goes in the order in which they are made: what is decided sample by sample, who decides, why, and at last the act.
    QPushButton *m_bySample;
    SampleChoicesTable *m_table;
    QLabel *m_hint;
    QLabel *m_happens;
    QLabel *m_rules;
    SignatureFields *m_signature;
    OfferField *m_reason;
    QBoxLayout *m_row = nullptr;
    QPushButton *m_accept;
    QPushButton *m_reject;
    notebook::RunId m_id;
    std::map<notebook::RunId, Draft> m_drafts;
    /// Open or shut by hand, or by what was refused; nothing: as the samples need it.
    std::optional<bool> m_unfoldedByHand;
};

} // namespace plateau::ui
