// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readers.h"
#include "core/notebook/records.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace plateau::ui {

class BenchSession;
class Notice;
class ProblemList;
class Theme;

/// A run file between being chosen and being on the bench: with all its problems if it cannot be used, or
/// with what an analyst should know before it is. Nothing of a file with errors is taken over.
class RunFilePage : public QWidget
{
    Q_OBJECT

public:
    RunFilePage(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    /// Where a file names its method by its id alone.
    void setMethods(exchange::MethodLookup installedMethod)
    {
        m_installedMethod = std::move(installedMethod);
    }
    /// Reads the file. A sound one without remarks goes on the bench at once, if it is known who is there.
    void read(const QString &path);

Q_SIGNALS:
    void opened(plateau::notebook::RunId id);
    void personWanted();
    void anotherWanted();

private:
    void showProblems(const QString &fileName, const assay::Problems &problems);
    void putOnBench();
    /// The notebook has it already: refuses, and says where.
    void sayThatItIsThere(const notebook::RunSummary &same);

    BenchSession &m_session;
    exchange::MethodLookup m_installedMethod;
    QLabel *m_heading;
    QLabel *m_summary;
    ProblemList *m_problems;
    Notice *m_notice;
    QPushButton *m_put;
    QPushButton *m_another;
    std::optional<exchange::RunDocument> m_document;
};

} // namespace plateau::ui
