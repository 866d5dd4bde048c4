// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/cellstable.h"
#include "ui/books/draftfields.h"
#include "ui/books/drafttables.h"
#include "ui/books/methodsections.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QFormLayout>
#include <QGroupBox>
#include <QLineEdit>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct SignalSectionWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::SignalSection)
};

QWidget *buildSignals(const SectionParts &parts, QWidget *parent)
{
    auto *group =
        newGroup(SignalSectionWords::tr("What each measurand takes from the readings"),
                 SignalSectionWords::tr(
                     "Difference: to less from where the absorbance rises, from less to where it falls. "
                     "Coupled indicator: an equilibrium before the reaction takes part of the coenzyme."),
                 parent);
    auto *table = new CellsTable(parts.theme, parts.tables.measurands(),
                                 SignalSectionWords::tr("What each measurand takes from the readings"),
                                 u"signals"_s, group);
    for (int column = measurand::MolarMass; column < measurand::Signal; ++column)
        table->hideColumn(column);
    table->setRowsShown(4);
    group->layout()->addWidget(table);
    return group;
}

QWidget *buildAbsorptivities(const SectionParts &parts, QWidget *parent)
{
    auto *group =
        newGroup(SignalSectionWords::tr("Absorptivities of the chromophore"),
                 SignalSectionWords::tr("One row for each wavelength that may be read at."), parent);
    auto *table = new CellsTable(parts.theme, parts.tables.absorptivities(),
                                 SignalSectionWords::tr("Absorptivities of the chromophore"),
                                 u"absorptivities"_s, group);
    table->setFlexibleColumn(absorptivity::Value);
    table->setRowsShown(4);
    group->layout()->addWidget(table);
    addRowButtons(parts.theme, table, false, static_cast<QBoxLayout *>(group->layout()));
    return group;
}

QWidget *buildPhotometer(const SectionParts &parts, QWidget *parent)
{
    auto *host = new QWidget(parent);
    QFormLayout *form = newForm(host);
    form->setContentsMargins({});
    DraftFields &fields = parts.fields;
    fields.addText(form, SignalSectionWords::tr("Chromophore"), u"chromophore"_s,
                   [](MethodDraft &d) -> QString & { return d.chromophore; });
    fields.addChoice(form, SignalSectionWords::tr("The reaction"),
                     {{u"rising"_s, SignalSectionWords::tr("makes the chromophore (absorbance rises)")},
                      {u"falling"_s, SignalSectionWords::tr("uses it up (absorbance falls)")}},
                     u"direction"_s, [](MethodDraft &d) -> QString & { return d.direction; });
    fields.addNumber(form, SignalSectionWords::tr("Wavelength"), SignalSectionWords::tr("nm"),
                     u"methodWavelength"_s, [](MethodDraft &d) -> QString & { return d.wavelength_nm; });
    fields.addNumber(form, SignalSectionWords::tr("Path length"), SignalSectionWords::tr("mm"),
                     u"methodPathLength"_s, [](MethodDraft &d) -> QString & { return d.pathLength_mm; });
    fields.addChoice(
        form, SignalSectionWords::tr("Readings count"),
        {{u"none"_s, SignalSectionWords::tr("as read")},
         {u"toFinalVolume"_s, SignalSectionWords::tr("brought to the volume of the later reading")}},
        u"volumeCorrection"_s, [](MethodDraft &d) -> QString & { return d.volumeCorrection; });
    return host;
}

QWidget *buildExtrapolation(const SectionParts &parts, QWidget *parent)
{
    auto *group =
        newGroup(SignalSectionWords::tr("A reading taken as a series"),
                 SignalSectionWords::tr(
                     "Where the absorbance keeps creeping: a straight line through the last readings of a "
                     "series, read at the moment the starter was added. Leave both empty for none."),
                 parent);
    auto *host = new QWidget(group);
    QFormLayout *form = newForm(host);
    form->setContentsMargins({});
    parts.fields.addText(form, SignalSectionWords::tr("Reading"), u"extrapolatedReading"_s,
                         [](MethodDraft &d) -> QString & { return d.extrapolatedReading; });
    parts.fields.addNumber(form, SignalSectionWords::tr("Readings on the line"), {}, u"lastReadings"_s,
                           [](MethodDraft &d) -> QString & { return d.lastReadings; });
    group->layout()->addWidget(host);
    return group;
}

} // namespace

QWidget *buildSignalSection(const SectionParts &parts, QWidget *parent)
{
    auto *page = new QWidget(parent);
    auto *layout = new QVBoxLayout(page);
    setGaps(parts.theme, layout);
    layout->addWidget(buildPhotometer(parts, page));
    layout->addWidget(buildAbsorptivities(parts, page));
    layout->addWidget(buildSignals(parts, page));
    layout->addWidget(buildExtrapolation(parts, page));
    layout->addStretch(1);
    return page;
}

} // namespace plateau::ui
