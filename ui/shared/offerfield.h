// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLineEdit>

class QCompleter;
class QStringListModel;

namespace plateau::ui {

/// A line to type in that offers what is usual: Down shows all of it. Anything else may be typed as well.
class OfferField : public QLineEdit
{
    Q_OBJECT

public:
    explicit OfferField(QWidget *parent = nullptr);
    void setOffers(const QStringList &offers);
    /// Typing at the end of the line goes on with the only offer that begins so, case apart; what was added is selected, so
    /// that the next key overwrites it and Delete drops it. Enter and Tab do what they do anyway.
    void completeWhileTyping() { m_completes = true; }

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void complete();

    bool m_completes = false;
    QStringListModel *m_offers;
    QCompleter *m_list;
};

} // namespace plateau::ui
