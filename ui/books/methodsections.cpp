// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodsections.h"

#include "ui/books/cellstable.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

QGroupBox *newGroup(const QString &title, const QString &sentence, QWidget *parent)
{
    auto *group = new QGroupBox(title, parent);
    auto *layout = new QVBoxLayout(group);
    if (!sentence.isEmpty()) {
        auto *label = plainLabel(sentence, group);
        label->setWordWrap(true);
        layout->addWidget(label);
    }
    return group;
}

void addRowButtons(const Theme &theme, CellsTable *table, bool movable, QBoxLayout *layout)
{
    auto *row = new QHBoxLayout;
    const auto add = [&](const QString &text, const QString &name, auto act) {
        auto *push = button(theme, text, table->objectName() + name, table->parentWidget());
        push->setFocusPolicy(Qt::NoFocus);
        QObject::connect(push, &QPushButton::clicked, table, act);
        row->addWidget(push);
    };
    add(CellsTable::tr("Insert row"), u"Insert"_s, [table] { table->insertRow(); });
    add(CellsTable::tr("Remove row"), u"Remove"_s, [table] { table->removeRow(); });
    if (movable) {
        add(CellsTable::tr("Up"), u"Up"_s, [table] { table->moveRow(-1); });
        add(CellsTable::tr("Down"), u"Down"_s, [table] { table->moveRow(1); });
    }
    row->addStretch();
    layout->addLayout(row);
}

} // namespace plateau::ui
