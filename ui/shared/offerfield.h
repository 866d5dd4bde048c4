// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLineEdit>
#include <QStringList>

class QCompleter;
class QStringListModel;

namespace plateau::ui {

/// A line to type in that offers what is usual: Down shows all of it. Anything else may be typed as well, and Enter takes
/// what stands there: what an open list has marked only where it was marked after the last letter. Esc closes the list
/// and nothing else.
class OfferField : public QLineEdit
{
    Q_OBJECT

public:
    explicit OfferField(QWidget *parent = nullptr);
    void setOffers(const QStringList &offers);
    /// Behind what is typed at the end of the line, the only offer that begins so, case apart, goes on in grey. It is no part
    /// of the text until Down takes it: Enter and Tab take what was typed, unless the list is closed.
    void completeWhileTyping() { m_completes = true; }
    /// Only these may be typed, offered or not: a beginning that is none of them, case apart, is no answer, so Tab, Enter and
    /// whatever else leaves the field for another one of its window take the only offer that begins so. Empty: anything may
    /// be typed.
    void setClosed(const QStringList &valid) { m_valid = valid; }
    /// The offer that Down would take; empty where there is none, or not only one.
    QString completion() const;

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    /// As if it had been typed: it can be undone.
    void take(const QString &offer);
    void openList();
    /// Of a closed list.
    void takeOnlyOne();
    /// For who does not see the grey.
    void describe();

    bool m_completes = false;
    QStringList m_valid;
    QStringListModel *m_offers;
    QCompleter *m_list;
    /// What describe() said last, and what was said of the field before.
    QString m_said;
    QString m_saidBefore;
};

} // namespace plateau::ui
