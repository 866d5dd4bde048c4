// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/verdictband.h"

#include "ui/shared/widgets.h"

#include <QHBoxLayout>
#include <QLabel>

using namespace Qt::StringLiterals;

namespace plateau::ui {

VerdictBand::VerdictBand(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_shape(new QLabel(this))
{
    setAutoFillBackground(true);
    auto *texts = new QVBoxLayout;
    texts->setSpacing(0);
    m_verdict = addLine(texts, u"verdict"_s);
    m_failures = addLine(texts, u"failures"_s);
    m_limits = addLine(texts, u"limitsText"_s);
    m_mark = addLine(texts, u"templateText"_s);
    auto *layout = new QHBoxLayout(this);
    setGaps(theme, layout);
    layout->addWidget(m_shape);
    layout->addLayout(texts, 1);
    connect(&theme, &Theme::changed, this, &VerdictBand::dress);
    dress();
}

QLabel *VerdictBand::addLine(QVBoxLayout *texts, const QString &objectName)
{
    QLabel *line = plainLabel({}, this);
    line->setObjectName(objectName);
    line->setWordWrap(true);
    texts->addWidget(line);
    return line;
}

void VerdictBand::show(const Sentence &verdict, const QString &failures, const QString &limits,
                       const QString &mark)
{
    m_state = verdict.state;
    m_verdict->setText(verdict.text);
    m_shape->setAccessibleName(verdict.text); // what the picture says to whoever does not see it
    m_failures->setText(failures);
    m_limits->setText(limits);
    m_mark->setText(mark);
    for (QLabel *line : {m_limits, m_mark})
        line->setVisible(!line->text().isEmpty());
    dress();
}

void VerdictBand::sizeVerdict()
{
    const QFont huge = m_theme.huge();
    const double least = m_theme.large().pointSizeF();
    QFont font = huge;
    for (double size = huge.pointSizeF(); size > least; size -= 1) {
        font.setPointSizeF(size);
        if (QFontMetrics(font).horizontalAdvance(m_verdict->text()) < m_verdict->width())
            break;
    }
    m_verdict->setFont(font);
}

void VerdictBand::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    sizeVerdict();
}

void VerdictBand::dress()
{
    const int side = QFontMetrics(m_theme.huge()).height();
    m_shape->setPixmap(m_theme.icon(m_state).pixmap(side, side));
    sizeVerdict();
    m_failures->setFont(m_theme.bold());
    m_limits->setFont(m_theme.bold());
    QPalette own;
    own.setColor(QPalette::Window, m_theme.tint(m_state));
    setPalette(own);
}

} // namespace plateau::ui
