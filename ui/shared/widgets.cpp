// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/widgets.h"

#include "ui/shared/numberfield.h"
#include "ui/shared/theme.h"

#include <QDateTime>
#include <QEvent>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// The wheel scrolls the form; it must not turn the box it happens to pass.
class WheelGuard : public QObject
{
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override
    {
        if (event->type() != QEvent::Wheel || static_cast<QWidget *>(watched)->hasFocus())
            return false;
        event->ignore();
        return true;
    }
};

/// Wrapped text is as high as its lines at the width it was given: a layout that is short of room takes it
/// from tables and charts, which can be scrolled, and not from words.
class TextLabel : public QLabel
{
public:
    using QLabel::QLabel;
    QSize minimumSizeHint() const override
    {
        QSize least = QLabel::minimumSizeHint();
        if (wordWrap() && m_laidOut)
            least.setHeight(heightForWidth(width()));
        return least;
    }

protected:
    void resizeEvent(QResizeEvent *event) override
    {
        QLabel::resizeEvent(event);
        m_laidOut = true;
        if (wordWrap() && event->size().width() != event->oldSize().width())
            updateGeometry();
    }

private:
    bool m_laidOut = false;
};

} // namespace

QLabel *plainLabel(const QString &text, QWidget *parent)
{
    auto *label = new TextLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    return label;
}

QFormLayout *foldingForm(QGroupBox *group)
{
    auto *host = new QWidget(group);
    auto *form = new QFormLayout(host);
    form->setContentsMargins({});
    auto *layout = new QVBoxLayout(group);
    layout->addWidget(host);
    QObject::connect(group, &QGroupBox::toggled, host, &QWidget::setVisible);
    return form;
}

QString unitOnce(QString caption, const QString &unit)
{
    return unit.isEmpty() ? caption : caption.remove(u" (%1)"_s.arg(unit));
}

void addFormRow(QFormLayout *form, const QString &label, QWidget *widget, const QString &objectName)
{
    QWidget *focus = widget->focusProxy() ? widget->focusProxy() : widget;
    focus->setObjectName(objectName);
    if (focus->focusPolicy() == Qt::WheelFocus) {
        focus->setFocusPolicy(Qt::StrongFocus);
        focus->installEventFilter(new WheelGuard(focus));
    }
    const auto *number = qobject_cast<NumberField *>(widget);
    auto *caption = new QLabel(number ? unitOnce(label, number->unit()) : label, form->parentWidget());
    caption->setBuddy(focus);
    if (focus != widget) // a label names by itself only what stands beside it
        focus->setAccessibleName(QString(label).remove(u'&'));
    // In the middle of a field of one line, beside the first line of a larger one.
    const int oneLine = std::max(widget->minimumHeight(), widget->sizeHint().height());
    caption->setMinimumHeight(std::min(oneLine, caption->sizeHint().height() * 2));
    form->addRow(caption, widget);
}

void showRow(QFormLayout &form, QWidget *field, bool shown)
{
    QList<QLabel *> labels = field->findChildren<QLabel *>();
    if (auto *own = qobject_cast<QLabel *>(field))
        labels.append(own);
    constexpr const char *wraps = "wrapsWhileShown";
    for (QLabel *label : std::as_const(labels)) {
        if (!shown && label->wordWrap()) {
            label->setProperty(wraps, true);
            label->setWordWrap(false);
        } else if (shown && label->property(wraps).toBool()) {
            label->setProperty(wraps, false);
            label->setWordWrap(true);
        }
    }
    form.setRowVisible(field, shown);
}

QPushButton *button(const Theme &theme, const QString &text, const QString &objectName, QWidget *parent)
{
    auto *push = new QPushButton(text, parent);
    push->setObjectName(objectName);
    push->setMinimumHeight(theme.target());
    push->setAutoDefault(true); // Enter presses the button that has the focus
    return push;
}

QString tipText(const QString &text)
{
    return u"<qt>%1</qt>"_s.arg(text.toHtmlEscaped());
}

QString momentText(const QDateTime &moment)
{
    return moment.toLocalTime().toString(u"yyyy-MM-dd HH:mm"_s);
}

void setGaps(const Theme &theme, QLayout *layout)
{
    layout->setContentsMargins(theme.wideGap(), theme.gap(), theme.wideGap(), theme.gap());
    layout->setSpacing(theme.gap());
}

} // namespace plateau::ui
