// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/labelprinting.h"

#include "ui/bench/labelsheetdialog.h"
#include "ui/bench/printing.h"
#include "ui/shared/dialogs.h"
#include "ui/shared/notice.h"

#include <QCoreApplication>
#include <QLocale>
#include <QSettings>

#include <utility>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct LabelprintingWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::Printing)
};

} // namespace

void saveLabelsAs(QWidget *parent, const Theme &theme, Dialogs &dialogs, Notice &notice, const run::Run &run,
                  const QString &person)
{
    std::vector<Label> labels = labelsOf(run, person);
    if (labels.empty())
        notice.say(State::Info,
                   LabelprintingWords::tr("There is nothing to label: the run has no standard, and no sample "
                                          "of it is diluted or extracted."));
    else
        saveLabelsAs(parent, theme, dialogs, notice, std::move(labels), person);
}

void saveLabelsAs(QWidget *parent, const Theme &theme, Dialogs &dialogs, Notice &notice,
                  std::vector<Label> labels, const QString &person)
{
    const int count = static_cast<int>(labels.size());
    QSettings settings(QSettings::IniFormat, QSettings::UserScope, u"plateau"_s, u"plateau"_s);
    LabelChoice choice = keptLabels(settings, usualPaper(QLocale::system()));
    choice.by = person;
    LabelSheetDialog form(theme, count, choice, parent);
    if (!dialogs.isAccepted(form))
        return;
    choice = form.choice();
    for (Label &label : labels)
        label.by = choice.by;
    const bool written = savePdfAs(parent, dialogs, notice, LabelprintingWords::tr("labels.pdf"),
                                   labelsPdf(labels, choice.sheet, choice.firstFree));
    if (written)
        choice.firstFree = firstFreeAfter(choice, count);
    if (!keepLabels(settings, choice) && written)
        notice.say(State::Attention,
                   LabelprintingWords::tr("%1 The sheet is not kept for the next time: %2 can't be written.")
                       .arg(notice.sentence(), settings.fileName()));
}

} // namespace plateau::ui
