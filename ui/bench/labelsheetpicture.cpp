// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/labelsheetpicture.h"

#include "ui/shared/theme.h"

#include <QPainter>

#include <algorithm>

namespace plateau::ui {

LabelSheetPicture::LabelSheetPicture(const Theme &theme, int labels, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_labels(labels)
{
    setAccessibleName(tr("The sheet of labels"));
    connect(&theme, &Theme::changed, this, qOverload<>(&QWidget::update));
}

void LabelSheetPicture::showChoice(const LabelChoice &choice)
{
    m_choice = choice;
    m_sound = faultOf(choice).isEmpty();
    setAccessibleDescription(words());
    update();
}

QString LabelSheetPicture::words() const
{
    if (!m_sound)
        return tr("The sheet is drawn once its numbers are right.");
    const int columns = m_choice.sheet.columns;
    const int onSheet = columns * m_choice.sheet.rows;
    const int index = m_choice.firstFree - 1;
    const int sheets = (index + m_labels + onSheet - 1) / onSheet;
    const QString chosen =
        tr("Labels to print: %1, from label %2 of %3 on (row %4, column %5). Sheets needed: %6.")
            .arg(m_labels)
            .arg(m_choice.firstFree)
            .arg(onSheet)
            .arg(index / columns + 1)
            .arg(index % columns + 1)
            .arg(sheets);
    return index > 0 ? tr("%1 Hatched: used.").arg(chosen) : chosen;
}

QSize LabelSheetPicture::sizeHint() const
{
    const int width = fontMetrics().averageCharWidth() * 40;
    return {width, width * 297 / 210};
}

void LabelSheetPicture::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QSizeF paper = sheetOf(m_choice.sheet.paper, QPageLayout::Portrait).fullRect().size();
    const double scale = std::min((width() - 2) / paper.width(), (height() - 2) / paper.height());
    QTransform toPixels = QTransform::fromTranslate((width() - paper.width() * scale) / 2, 1);
    toPixels.scale(scale, scale);
    painter.setPen(m_theme.mutedText());
    painter.setBrush(m_theme.base());
    painter.drawRect(toPixels.mapRect(QRectF({}, paper)));
    if (m_sound)
        paintLabels(painter, toPixels);
}

void LabelSheetPicture::paintLabels(QPainter &painter, const QTransform &toPixels) const
{
    const LabelSheet &sheet = m_choice.sheet;
    const int first = m_choice.firstFree - 1;
    for (int position = 0; position < sheet.columns * sheet.rows; ++position) {
        const QRectF label = toPixels.mapRect(placeOf(sheet, position)).adjusted(1, 1, -1, -1);
        painter.setPen(QPen(m_theme.mutedText(), 1));
        if (position < first) // gone: never by colour alone
            painter.setBrush(QBrush(m_theme.mutedText(), Qt::BDiagPattern));
        else if (position < first + m_labels)
            painter.setBrush(m_theme.tint(State::Good));
        else
            painter.setBrush(m_theme.base());
        painter.drawRect(label);
    }
    const QRectF free = toPixels.mapRect(placeOf(sheet, first)).adjusted(1, 1, -1, -1);
    painter.setPen(QPen(m_theme.text(), 2.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(free);
    QFont number = m_theme.bold();
    number.setPixelSize(std::max(1, static_cast<int>(std::min(free.width() / 3, free.height() * 0.7))));
    painter.setFont(number);
    painter.drawText(free, Qt::AlignCenter, QString::number(m_choice.firstFree));
}

} // namespace plateau::ui
