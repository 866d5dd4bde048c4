// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/shared/widgets.h"

#include "ui/shared/theme.h"

#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

namespace plateau::ui {

QLabel *plainLabel(const QString &text, QWidget *parent)
{
    auto *label = new QLabel(text, parent);
    label->setTextFormat(Qt::PlainText);
    return label;
}

void addFormRow(QFormLayout *form, const QString &label, QWidget *widget, const QString &objectName)
{
    QWidget *focus = widget->focusProxy() ? widget->focusProxy() : widget;
    focus->setObjectName(objectName);
    auto *caption = new QLabel(label, form->parentWidget());
    caption->setBuddy(focus);
    form->addRow(caption, widget);
}

QPushButton *button(const Theme &theme, const QString &text, const QString &objectName, QWidget *parent)
{
    auto *push = new QPushButton(text, parent);
    push->setObjectName(objectName);
    push->setMinimumHeight(theme.target());
    push->setAutoDefault(true); // Enter presses the button that has the focus
    return push;
}

QTableView *table(const Theme &theme, QAbstractItemModel *model, const QString &accessibleName,
                  const QString &objectName, QWidget *parent)
{
    auto *view = new QTableView(parent);
    view->setModel(model);
    view->setAccessibleName(accessibleName);
    view->setObjectName(objectName);
    view->setTabKeyNavigation(false);
    view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view->setSelectionMode(QAbstractItemView::SingleSelection);
    view->setWordWrap(false);
    view->setAlternatingRowColors(true);
    view->setShowGrid(false);
    view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    view->verticalHeader()->hide();
    view->verticalHeader()->setDefaultSectionSize(theme.target());
    view->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    view->horizontalHeader()->setHighlightSections(false);
    view->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    return view;
}

void setGaps(const Theme &theme, QLayout *layout)
{
    layout->setContentsMargins(theme.wideGap(), theme.gap(), theme.wideGap(), theme.gap());
    layout->setSpacing(theme.gap());
}

} // namespace plateau::ui
