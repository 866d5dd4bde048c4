// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/widgets.h"

#include "core/assay/localday.h"
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
#include <vector>

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

/// The rows of a form in their order, also those that are out of it for now.
class FormRows : public QObject
{
public:
    static FormRows &of(QFormLayout &form)
    {
        const QString name = u"formRows"_s;
        if (auto *known = form.findChild<QObject *>(name, Qt::FindDirectChildrenOnly))
            return *static_cast<FormRows *>(known);
        auto *fresh = new FormRows(&form);
        fresh->setObjectName(name);
        return *fresh;
    }

    /// Those that came since, each behind the one it follows and what was taken out there.
    void note(const QFormLayout &form)
    {
        std::size_t at = 0;
        for (int row = 0; row < form.rowCount(); ++row) {
            const Row here{widgetOf(form, row, QFormLayout::LabelRole), fieldOf(form, row)};
            const auto known = std::ranges::find(m_rows, here.field, &Row::field);
            if (known != m_rows.end()) {
                at = static_cast<std::size_t>(known - m_rows.begin()) + 1;
                continue;
            }
            while (at < m_rows.size() && form.indexOf(m_rows[at].field) < 0)
                ++at;
            m_rows.insert(m_rows.begin() + static_cast<std::ptrdiff_t>(at++), here);
        }
    }
    static void take(QFormLayout &form, QWidget *field)
    {
        const QFormLayout::TakeRowResult taken = form.takeRow(field);
        if (taken.labelItem && taken.labelItem->widget())
            taken.labelItem->widget()->hide();
        field->hide();
        delete taken.labelItem;
        delete taken.fieldItem;
    }
    void putBack(QFormLayout &form, QWidget *field)
    {
        int at = 0;
        for (const Row &row : m_rows) {
            if (row.field == field) {
                if (row.label)
                    form.insertRow(at, row.label, field);
                else
                    form.insertRow(at, field);
                if (row.label)
                    row.label->show();
                field->show();
                return;
            }
            at += form.indexOf(row.field) >= 0 ? 1 : 0;
        }
    }

private:
    struct Row {
        QWidget *label;
        QWidget *field;
    };

    explicit FormRows(QFormLayout *form)
        : QObject(form)
    {
    }
    static QWidget *widgetOf(const QFormLayout &form, int row, QFormLayout::ItemRole role)
    {
        const QLayoutItem *item = form.itemAt(row, role);
        return item ? item->widget() : nullptr;
    }
    static QWidget *fieldOf(const QFormLayout &form, int row)
    {
        QWidget *field = widgetOf(form, row, QFormLayout::FieldRole);
        return field ? field : widgetOf(form, row, QFormLayout::SpanningRole);
    }

    std::vector<Row> m_rows;
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
    // Folded it is its box and nothing more: an empty frame looks like a field.
    QObject::connect(group, &QGroupBox::toggled, host, [group, host, layout, usual = layout->contentsMargins()](bool open) {
        host->setVisible(open);
        group->setFlat(!open);
        layout->setContentsMargins(open ? usual : QMargins());
    });
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

void alignCaptions(const QList<QWidget *> &hosts)
{
    std::vector<QLabel *> captions; // also of rows that are out of their form for now
    int widest = 0;
    for (const QWidget *host : hosts) {
        for (QLabel *label : host->findChildren<QLabel *>(Qt::FindDirectChildrenOnly)) {
            if (!label->buddy())
                continue;
            captions.push_back(label);
            widest = std::max(widest, label->sizeHint().width());
        }
    }
    for (QLabel *caption : captions)
        caption->setMinimumWidth(widest);
}

void showRow(QFormLayout &form, QWidget *field, bool shown)
{
    FormRows &rows = FormRows::of(form);
    rows.note(form);
    int row = -1;
    QFormLayout::ItemRole role = QFormLayout::FieldRole;
    form.getWidgetPosition(field, &row, &role);
    if (shown == (row >= 0))
        return;
    if (shown)
        rows.putBack(form, field);
    else
        FormRows::take(form, field);
}

QLabel *captionOf(const QFormLayout &form, const QWidget *field)
{
    const QWidget *focus = field->focusProxy() ? field->focusProxy() : field;
    for (QLabel *label : form.parentWidget()->findChildren<QLabel *>(Qt::FindDirectChildrenOnly)) {
        if (label->buddy() == focus)
            return label;
    }
    return nullptr;
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
    return assay::shownMoment(moment.toLocalTime());
}

QString keptMomentText(const QDateTime &moment)
{
    return moment.toLocalTime().toString(u"yyyy-MM-dd HH:mm"_s);
}

void setGaps(const Theme &theme, QLayout *layout)
{
    layout->setContentsMargins(theme.wideGap(), theme.gap(), theme.wideGap(), theme.gap());
    layout->setSpacing(theme.gap());
}

} // namespace plateau::ui
