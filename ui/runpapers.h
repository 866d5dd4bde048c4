// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/ids.h"
#include "ui/bench/reportsaving.h"

namespace plateau::ui {

class BenchSession;
class Stores;

/// What is written of a run to a file that somebody chooses: the run itself, worksheet, labels, reports. Says
/// in the notice what became of it. Everything handed in outlives it.
class RunPapers
{
public:
    RunPapers(const Theme &theme, Dialogs &dialogs, Notice &notice, BenchSession &session, Stores &stores)
        : m_theme(theme)
        , m_dialogs(dialogs)
        , m_notice(notice)
        , m_session(session)
        , m_stores(stores)
    {
    }

    void saveCopy(notebook::RunId id, QWidget *over);
    void saveWorksheet(notebook::RunId id, QWidget *over);
    void saveLabels(notebook::RunId id, QWidget *over);
    void saveReport(notebook::RunId id, ReportKind kind, QWidget *over);

private:
    const Theme &m_theme;
    Dialogs &m_dialogs;
    Notice &m_notice;
    BenchSession &m_session;
    Stores &m_stores;
};

} // namespace plateau::ui
