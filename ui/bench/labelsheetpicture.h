// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/labelchoice.h"

#include <QWidget>

namespace plateau::ui {

class Theme;

/// A sheet of labels from above: which are gone, which is the first free one, which will be printed. Says the
/// same in words.
class LabelSheetPicture : public QWidget
{
    Q_OBJECT

public:
    /// labels: how many there are to print.
    LabelSheetPicture(const Theme &theme, int labels, QWidget *parent = nullptr);

    /// Only sound choices are drawn; of others the bare paper.
    void showChoice(const LabelChoice &choice);
    QString words() const;

    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void paintLabels(QPainter &painter, const QTransform &toPixels) const;

    const Theme &m_theme;
    int m_labels;
    LabelChoice m_choice;
    bool m_sound = false;
};

} // namespace plateau::ui
