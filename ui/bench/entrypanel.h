// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/shared/theme.h"

#include <QFrame>
#include <QStringList>
#include <QTimer>

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class Notice;
class NumberEntry;
class NumberField;

/// The large entry of the bench: which tube and reading, its time, what stands there already, the number
/// being keyed and what speaks against it, and for a correction or a spoilt tube the reason. Knows nothing of
/// the run; the read page gives it the words and takes the number.
class EntryPanel : public QFrame
{
    Q_OBJECT

public:
    explicit EntryPanel(const Theme &theme, QWidget *parent = nullptr);

    /// What Enter does with the number.
    enum class Mode {
        First,   ///< stores it
        Correct, ///< replaces what stands there, with a reason
        Again,   ///< adds it to what was read there before
        Spoilt   ///< takes no number: why the tube does not count, or counts after all
    };
    struct Subject {
        /// "tube 7: A2" and "sample P-104, 2 of 2".
        QString place;
        QString contents;
        /// What is stored there: "0.521, keyed by ... at ..."; empty for a first reading.
        QString stored;
        /// A correction is asked for first; else, where something is stored, another reading of a series.
        bool isSeries = false;
        /// The tube is marked as spoilt.
        bool isSpoilt = false;
        bool operator==(const Subject &) const = default;
    };
    /// What was typed and is not stored.
    struct Draft {
        QString text;
        /// Of a correction.
        QString reason;
        bool isEmpty() const { return text.trimmed().isEmpty() && reason.trimmed().isEmpty(); }
    };
    /// Puts the entry on the subject, with what was typed there earlier, if anything. Takes the focus.
    void ask(const Subject &subject, const Draft &draft);
    /// "open from 15:00 to 40:00: now, 4:10 left"; empty where the reading has no time.
    void setTimes(const QString &times, State state);
    /// Nothing to key now: what is, and the way there.
    struct WayOn {
        QString title;
        QString text;
        QString goOn;
    };
    void showDone(const WayOn &wayOn);
    Draft draft() const;
    Mode mode() const { return m_mode; }
    bool isCorrecting() const { return m_mode == Mode::Correct; }
    /// Empties entry and reason.
    void forget();
    /// The focus where it was, and what stands there selected, so that the next keys take its place.
    void resume();
    /// Asks why the tube does not count, or counts after all.
    void askSpoilt();

    NumberEntry *entry() const;
    Notice &notice() { return *m_notice; }
    /// What is to be said of the number as it stands, without stopping anybody.
    void remark(const QStringList &sentences);
    /// "What you typed cannot be right": stays until the text changes; a second Enter stores it as read.
    void question(const QString &sentence);

Q_SIGNALS:
    void judged();
    /// The number has stood unchanged for a moment.
    void settled();
    void modeChanged();
    /// Enter on a number. reason is empty but for a correction; asked: a question was on show.
    void submitted(double absorbance, const QString &typed, const QString &reason, bool asked);
    /// The tube does not count, or does so after all, for that reason.
    void spoiltWanted(const QString &reason);
    /// Space, with nothing typed: what the bench has next is done.
    void doneWanted();
    /// Esc, or the button: back to what is next.
    void left();
    /// The way on was taken.
    void goOnWanted();
    /// An arrow key: to the tube so many rows further down the table.
    void tubeWanted(int rows);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    void connectAll();
    void setMode(Mode mode);
    void showMode();
    void submit();
    void submitSpoilt();
    void retype();
    void onJudged();
    void sayPending();
    void leaveSpoilt();
    void dress();

    const Theme &m_theme;
    Subject m_subject;
    Mode m_mode = Mode::First;
    Mode m_modeBefore = Mode::First;
    QLabel *m_place;
    QLabel *m_contents;
    QLabel *m_times;
    QLabel *m_stored;
    QLabel *m_pending;
    NumberField *m_field;
    QWidget *m_reasonRow;
    QLabel *m_reasonCaption;
    QLineEdit *m_reason;
    Notice *m_remark;
    Notice *m_notice;
    QPushButton *m_store;
    QPushButton *m_retype;
    QPushButton *m_again;
    QPushButton *m_spoilt;
    QPushButton *m_leave;
    QPushButton *m_review;
    QTimer m_pause;
    bool m_asked = false;
};

} // namespace plateau::ui
