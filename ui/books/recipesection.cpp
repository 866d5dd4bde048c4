// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/cellstable.h"
#include "ui/books/draftfields.h"
#include "ui/books/drafttables.h"
#include "ui/books/methodsections.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct RecipeSectionWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::RecipeSection)
};

QWidget *buildComponents(const SectionParts &parts, QWidget *parent)
{
    auto *group = newGroup(RecipeSectionWords::tr("Components"), CellsTable::keysHint(), parent);
    auto *table = new CellsTable(parts.theme, parts.tables.components(), RecipeSectionWords::tr("Components"),
                                 u"components"_s, group);
    table->setRowsShown(7);
    group->layout()->addWidget(table);
    addRowButtons(parts.theme, table, true, static_cast<QBoxLayout *>(group->layout()));
    return group;
}

/// A step of that kind below the cursor, filled in as far as can be guessed, and the cursor on what is open.
void addStep(const DraftTables &tables, CellsTable *table, const QString &kind)
{
    CellsModel *steps = tables.steps();
    CellRow row = steps->blankRow();
    row.cells[step::Kind] = kind;
    if (kind == step::add)
        row.cells[step::Component] = nextComponent(tables.components()->rows(), steps->rows());
    else if (kind == step::read)
        row.cells[step::Reading] = nextReading(steps->rows());
    const int at = table->currentIndex().isValid() ? table->currentIndex().row() + 1
                                                   : static_cast<int>(steps->rows().size());
    steps->insertRowAt(at, row);
    table->setFocus();
    table->goTo(at, kind == step::wait ? step::From_min : step::Kind);
}

QWidget *buildSteps(const SectionParts &parts, QWidget *parent)
{
    auto *group = newGroup(
        RecipeSectionWords::tr("Steps, in their order"),
        RecipeSectionWords::tr("In the table the letters A, M, W and R put a step below the cursor; a "
                               "step can be dragged too."),
        parent);
    const DraftTables &tables = parts.tables;
    auto *usual =
        button(parts.theme, RecipeSectionWords::tr("Lay out the &usual order"), u"usualSteps"_s, group);
    auto *table =
        new CellsTable(parts.theme, tables.steps(), RecipeSectionWords::tr("Steps"), u"steps"_s, group);
    table->setFlexibleColumn(step::Component);
    table->setRowsShown(11);
    auto *kinds = new QHBoxLayout;
    kinds->addWidget(usual);
    kinds->addStretch();
    const std::pair<QString, QString> offered[] = {{RecipeSectionWords::tr("&Add"), step::add},
                                                   {RecipeSectionWords::tr("&Mix"), step::mix},
                                                   {RecipeSectionWords::tr("&Wait"), step::wait},
                                                   {RecipeSectionWords::tr("&Read"), step::read}};
    for (const auto &[text, kind] : offered) {
        auto *push = button(parts.theme, text, u"addStep-"_s + kind, group);
        push->setFocusPolicy(Qt::NoFocus);
        table->setLetter(push);
        kinds->addWidget(push);
        QObject::connect(push, &QPushButton::clicked, table,
                         [&tables, table, kind = kind] { addStep(tables, table, kind); });
    }
    auto *layout = static_cast<QBoxLayout *>(group->layout());
    layout->addLayout(kinds);
    layout->addWidget(table);
    addRowButtons(parts.theme, table, true, layout);
    QObject::connect(usual, &QPushButton::clicked, table, [&parts = parts.tables, table] {
        parts.layOutUsualSteps();
        table->setFocus();
        table->goTo(0, step::Kind);
        for (std::size_t row = 0; row < parts.steps()->rows().size(); ++row) {
            if (parts.steps()->rows()[row].cells[step::Kind] == step::wait) {
                table->goTo(static_cast<int>(row), step::From_min);
                break;
            }
        }
    });
    return group;
}

} // namespace

QWidget *buildRecipeSection(const SectionParts &parts, QWidget *parent)
{
    auto *page = new QWidget(parent);
    auto *layout = new QVBoxLayout(page);
    setGaps(parts.theme, layout);
    layout->addWidget(buildComponents(parts, page));
    layout->addWidget(buildSteps(parts, page));
    layout->addStretch(1);
    return page;
}

} // namespace plateau::ui
