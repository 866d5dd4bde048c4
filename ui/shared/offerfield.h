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

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QStringListModel *m_offers;
    QCompleter *m_list;
};

} // namespace plateau::ui
