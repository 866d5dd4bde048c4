// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/draftfields.h"
#include "ui/books/methodsections.h"
#include "ui/shared/numberentry.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QCoreApplication>
#include <QFormLayout>
#include <QGroupBox>
#include <QVBoxLayout>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct LimitsSectionWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::LimitsSection)
};

/// A group with a form in it.
std::pair<QGroupBox *, QFormLayout *> formGroup(const QString &title, const QString &sentence,
                                                QWidget *parent)
{
    QGroupBox *group = newGroup(title, sentence, parent);
    auto *host = new QWidget(group);
    QFormLayout *form = newForm(host);
    form->setContentsMargins({});
    group->layout()->addWidget(host);
    return {group, form};
}

QWidget *buildWindow(DraftFields &fields, QWidget *parent)
{
    const auto [group, form] =
        formGroup(LimitsSectionWords::tr("Measuring window"),
                  LimitsSectionWords::tr("The last two may stay empty: then they are not judged."), parent);
    fields.addNumber(form, LimitsSectionWords::tr("Smallest net signal"), {}, u"minSignal"_s,
                     [](MethodDraft &d) -> QString & { return d.minSignal; });
    fields.addNumber(form, LimitsSectionWords::tr("Largest net signal"), {}, u"maxSignal"_s,
                     [](MethodDraft &d) -> QString & { return d.maxSignal; });
    fields.addNumber(form, LimitsSectionWords::tr("Largest absorbance"), {}, u"maxAbsorbance"_s,
                     [](MethodDraft &d) -> QString & { return d.maxAbsorbance; });
    fields.addNumber(form, LimitsSectionWords::tr("What must remain of a falling reagent"), {},
                     u"reserveAbsorbance"_s, [](MethodDraft &d) -> QString & { return d.reserveAbsorbance; });
    return group;
}

QWidget *buildAcceptance(DraftFields &fields, QWidget *parent)
{
    const auto [group, form] = formGroup(LimitsSectionWords::tr("What a run has to keep"),
                                         LimitsSectionWords::tr("Leave empty what is not judged."), parent);
    fields.addNumber(form, LimitsSectionWords::tr("Largest signal of a blank"), {}, u"maxBlankSignal"_s,
                     [](MethodDraft &d) -> QString & { return d.maxBlankSignal; });
    fields.addInterval(
        form, LimitsSectionWords::tr("Recovery of the standard"), LimitsSectionWords::tr("%"),
        u"standardRecovery"_s, [](MethodDraft &d) -> QString & { return d.standardRecovery_percent[0]; },
        [](MethodDraft &d) -> QString & { return d.standardRecovery_percent[1]; });
    fields.addInterval(
        form, LimitsSectionWords::tr("Recovery of a spike"), LimitsSectionWords::tr("%"), u"spikeRecovery"_s,
        [](MethodDraft &d) -> QString & { return d.spikeRecovery_percent[0]; },
        [](MethodDraft &d) -> QString & { return d.spikeRecovery_percent[1]; });
    fields.addNumber(form, LimitsSectionWords::tr("Duplicates differ by at most"),
                     LimitsSectionWords::tr("g/L"), u"repeatabilityConstant"_s,
                     [](MethodDraft &d) -> QString & { return d.repeatabilityConstant_g_per_L; });
    fields.addNumber(form, LimitsSectionWords::tr("plus this share of the mean"), LimitsSectionWords::tr("%"),
                     u"repeatabilityProportional"_s,
                     [](MethodDraft &d) -> QString & { return d.repeatabilityProportional_percent; });
    return group;
}

QWidget *buildStandard(DraftFields &fields, QWidget *parent)
{
    const auto [group, form] = formGroup(LimitsSectionWords::tr("Usual standard"),
                                         LimitsSectionWords::tr("What a new run starts from."), parent);
    fields.addNumber(form, LimitsSectionWords::tr("Concentration"), LimitsSectionWords::tr("g/L"),
                     u"usualStandard"_s, [](MethodDraft &d) -> QString & { return d.standard_g_per_L; });
    fields.addNumber(form, LimitsSectionWords::tr("Loses"),
                     LimitsSectionWords::tr("% of its strength an hour"), u"usualStandardLoss"_s,
                     [](MethodDraft &d) -> QString & { return d.standardLoss_percent_per_h; });
    return group;
}

QWidget *buildTubes(DraftFields &fields, QWidget *parent)
{
    const auto [group, form] = formGroup(
        LimitsSectionWords::tr("Tubes of a rack"),
        LimitsSectionWords::tr("How many a new run starts from. All empty: the method has no rule."), parent);
    fields.addNumber(form, LimitsSectionWords::tr("Blanks"), {}, u"usualBlanks"_s,
                     [](MethodDraft &d) -> QString & { return d.usualTubes[0]; });
    fields.addNumber(form, LimitsSectionWords::tr("Of each sample"), {}, u"usualReplicates"_s,
                     [](MethodDraft &d) -> QString & { return d.usualTubes[1]; });
    fields.addNumber(form, LimitsSectionWords::tr("Standards"), {}, u"usualStandards"_s,
                     [](MethodDraft &d) -> QString & { return d.usualTubes[2]; });
    return group;
}

} // namespace

QWidget *buildLimitsSection(const SectionParts &parts, QWidget *parent)
{
    auto *page = new QWidget(parent);
    auto *layout = new QVBoxLayout(page);
    setGaps(parts.theme, layout);
    layout->addWidget(buildWindow(parts.fields, page));
    layout->addWidget(buildAcceptance(parts.fields, page));
    layout->addWidget(buildStandard(parts.fields, page));
    layout->addWidget(buildTubes(parts.fields, page));
    layout->addStretch(1);
    return page;
}

} // namespace plateau::ui
