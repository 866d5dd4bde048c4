// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QFrame>

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class Notice;
class NumberEntry;
class NumberField;
class Theme;

/// The large entry of the bench: which tube and reading, what stands there already, the number being keyed,
/// and for a correction its reason. Knows nothing of the run; the read page gives it the words and takes the
/// number.
class EntryPanel : public QFrame
{
    Q_OBJECT

public:
    explicit EntryPanel(const Theme &theme, QWidget *parent = nullptr);

    struct Subject {
        /// "tube 7: A2" and "sample P-104, 2 of 2".
        QString place;
        QString contents;
        /// What is stored there, for a correction: "0.521, keyed by ... at ..."; empty for a first reading.
        QString stored;
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
    /// Nothing to key now: what is, and the way there.
    struct WayOn {
        QString title;
        QString text;
        QString goOn;
    };
    void showDone(const WayOn &wayOn);
    Draft draft() const;
    bool isCorrecting() const { return m_correcting; }
    /// Empties entry and reason.
    void forget();
    /// The focus where it was, and what stands there selected, so that the next keys take its place.
    void resume();

    NumberEntry *entry() const;
    Notice &notice() { return *m_notice; }
    /// "What you typed cannot be right": stays until the text changes; a second Enter then stores it as read.
    void question(const QString &sentence);

Q_SIGNALS:
    void judged();
    /// Enter on a number. reason is empty for a first reading; asked: a question was on show.
    void submitted(double absorbance, const QString &typed, const QString &reason, bool asked);
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
    void submit();
    void onJudged();
    void sayPending();
    void dress();

    const Theme &m_theme;
    QLabel *m_place;
    QLabel *m_contents;
    QLabel *m_stored;
    QLabel *m_pending;
    NumberField *m_field;
    QWidget *m_reasonRow;
    QLineEdit *m_reason;
    Notice *m_notice;
    QPushButton *m_store;
    QPushButton *m_leave;
    QPushButton *m_review;
    bool m_correcting = false;
    bool m_asked = false;
};

} // namespace plateau::ui
