// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/ids.h"

#include <QFrame>

#include <optional>
#include <vector>

class QComboBox;
class QLabel;

namespace plateau::ui {

class Notice;
class Theme;

/// What to do now, to be read from a metre away: the addition, what the tube holds, what is unlike the other
/// tubes, what to mind, and from which lot with which pipette.
class PipettePanel : public QFrame
{
    Q_OBJECT

public:
    struct Subject {
        QString action;
        QString progress;
        QString contents;
        /// Swirling, mixing.
        QString hints;
        QString unlike;
        /// unlike is by plan, nothing went wrong.
        bool planned = false;
    };
    struct Source {
        struct Lot {
            /// Nothing: none is noted, or one that is not in hand.
            std::optional<notebook::LotId> id;
            QString words;
        };
        /// What may be chosen. Empty where no lot belongs to what is pipetted.
        std::vector<Lot> lots;
        std::optional<notebook::LotId> lot;
        /// The one in whose place lot is taken, since it does not hold the dose by the book.
        std::optional<notebook::LotId> insteadOf{};
        /// By the book lot does not hold the dose, and no other one does.
        bool isShort = false;
        /// Another one may be typed.
        QStringList pipettes;
        QString pipette;
    };

    explicit PipettePanel(const Theme &theme, QWidget *parent = nullptr);

    void ask(const Subject &subject, const Source &source);
    /// What the subject says may depend on the source that is chosen.
    void setHints(const QString &hints);
    /// Nothing to pipette now.
    void pause(const QString &title, const QString &text, const QString &hints);
    /// What comes is another rack: its words need not be as high as those before.
    void forgetHeight();
    std::optional<notebook::LotId> lot() const;
    QString pipette() const;
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    /// Another lot or pipette was chosen or typed.
    void sourceChanged();
    /// Enter or Esc in one of the boxes.
    void sourceLeft();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void build();
    void dress();
    QComboBox *box(const QString &name);
    void fill(const Source &source);
    void keepHeight();

    const Theme &m_theme;
    QLabel *m_action;
    QLabel *m_progress;
    QLabel *m_contents;
    QLabel *m_hints;
    Notice *m_unlike;
    QWidget *m_source;
    QLabel *m_lotCaption;
    QComboBox *m_lot;
    QComboBox *m_pipette;
    std::vector<Source::Lot> m_lots;
    Notice *m_notice;
};

} // namespace plateau::ui
