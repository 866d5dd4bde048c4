// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "ui/print/reportcontent.h"

namespace plateau::ui {

/// What stands at the head of a report, and who answers for the uncertainties, from the laboratory's
/// settings.
void tellLaboratory(ReportContent &content, const planning::Laboratory &laboratory);

/// What a report says of a stored run: its decisions and corrections, who did what, what was ticked, the
/// laboratory's units, the state of the audit. notebook: the file's name. Who makes the pages, when, and how
/// numbers are written is left to stampReport.
ReportContent reportOf(const notebook::StoredRun &stored, const planning::Laboratory &laboratory,
                       const QString &notebook, const notebook::AuditHead &head);
/// The same of a run of that notebook, which is only read; besides, which of several results of a sample is
/// reported, and how they stand against the limits of their product. Throws notebook::Failure.
/// revision: as it stood when it was decided for that time, from 1; absent: as it stands.
ReportContent reportOf(const notebook::Notebook &notebook, notebook::RunId run,
                       std::optional<int> revision = {});

/// By that person, with this program, in the decimal sign of the locale.
void stampReport(ReportContent &content, const QDateTime &now, const QString &person, const QLocale &locale);

} // namespace plateau::ui
