// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/cellstable.h"
#include "ui/books/draftfields.h"
#include "ui/books/drafttables.h"
#include "ui/books/methodsections.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct MeasuresSectionWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MeasuresSection)
};

QWidget *buildMeasurands(const SectionParts &parts, QWidget *parent)
{
    auto *group = newGroup(
        MeasuresSectionWords::tr("Measurands"),
        MeasuresSectionWords::tr(
            "M: molar mass. n: molecules of the chromophore formed or used for each molecule. From, to: "
            "what samples usually hold. ") +
            CellsTable::keysHint(),
        parent);
    auto *table = new CellsTable(parts.theme, parts.tables.measurands(),
                                 MeasuresSectionWords::tr("Measurands"), u"measurands"_s, group);
    for (int column = measurand::Signal; column < measurand::Count; ++column)
        table->hideColumn(column);
    table->setRowsShown(4);
    group->layout()->addWidget(table);
    addRowButtons(parts.theme, table, true, static_cast<QBoxLayout *>(group->layout()));
    return group;
}

QWidget *buildDerived(const SectionParts &parts, QWidget *parent)
{
    auto *group = newGroup(
        MeasuresSectionWords::tr("Quantities that come from others"),
        MeasuresSectionWords::tr("One row for each part: its result times a number, −1 to subtract. Rows "
                                 "of one name are added up."),
        parent);
    auto *table =
        new CellsTable(parts.theme, parts.tables.derived(),
                       MeasuresSectionWords::tr("Quantities that come from others"), u"derived"_s, group);
    table->setRowsShown(3);
    group->layout()->addWidget(table);
    addRowButtons(parts.theme, table, false, static_cast<QBoxLayout *>(group->layout()));
    return group;
}

} // namespace

QWidget *buildMeasuresSection(const SectionParts &parts, QWidget *parent)
{
    auto *page = new QWidget(parent);
    auto *layout = new QVBoxLayout(page);
    setGaps(parts.theme, layout);
    auto *host = new QWidget(page);
    QFormLayout *form = newForm(host);
    form->setContentsMargins({});
    parts.fields.addText(form, MeasuresSectionWords::tr("Name"), u"methodName"_s,
                         [](MethodDraft &d) -> QString & { return d.name; });
    parts.fields
        .addText(form, MeasuresSectionWords::tr("ID"), u"methodId"_s,
                 [](MethodDraft &d) -> QString & { return d.id; })
        ->setPlaceholderText(MeasuresSectionWords::tr("made from the name"));
    auto *fixedName = plainLabel({}, host);
    fixedName->setObjectName(u"fixedMethodId"_s);
    fixedName->setWordWrap(true);
    fixedName->setMinimumHeight(parts.theme.target());
    form->addRow(plainLabel(MeasuresSectionWords::tr("ID"), host), fixedName);
    parts.fields.addProse(form, MeasuresSectionWords::tr("Source"), 2, u"methodSource"_s,
                          [](MethodDraft &d) -> QString & { return d.source; });
    layout->addWidget(host);
    layout->addWidget(buildMeasurands(parts, page));
    layout->addWidget(buildDerived(parts, page));
    layout->addStretch(1);
    return page;
}

} // namespace plateau::ui
