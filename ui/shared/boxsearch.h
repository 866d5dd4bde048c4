// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QPointer>

class QComboBox;
class QKeyEvent;

namespace plateau::ui {

/// Watches the application: in a closed choice a space that follows typed letters at once is part of the name that is
/// searched for. By itself it opens the list, as it does anywhere.
class BoxSearch : public QObject
{
    Q_OBJECT

public:
    explicit BoxSearch(QObject *parent = nullptr);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    bool goesOn(QComboBox &box, const QKeyEvent &key);

    QPointer<QComboBox> m_box;
    QElapsedTimer m_sinceLetter;
};

} // namespace plateau::ui
