// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/pageflow.h"
#include "ui/print/paper.h"
#include "ui/print/reportcontent.h"

#include <QByteArray>

#include <functional>

namespace plateau::ui {

/// What stands on every page of a document.
struct RunningText {
    /// Of the document, as its file has it: "Report of results 4096 2231 7785".
    QString title;
    /// At the head from the second page on; on the first the document has a head of its own.
    QString headLeft;
    QString headRight;
    /// Boxed at the head of every page; empty: none.
    QString mark;
    /// At the foot, beside "page 1 of 3".
    QString foot;
};

/// A flowing document as a PDF, upright, with page x of y; empty where it could not be drawn. write is called
/// more than once, since the number of pages shows only at the end. What reaches a second page by no more than
/// what is left free between its parts is set closer, on one.
QByteArray flowedPdf(const RunningText &running, Paper paper, const std::function<void(PageFlow &)> &write);

/// The laboratory with its logo, or lines to write it on; then a rule.
void paintLaboratory(PageFlow &flow, const ReportLaboratory &laboratory);
/// A large title and the line below it.
void paintTitle(PageFlow &flow, const QString &title, const QString &line);
/// The document's end, so that a page that is missing shows.
void paintEnd(PageFlow &flow, const QString &sentence);
/// How high that is, for what must not be left without it.
double endHeight_mm(const PageFlow &flow);

} // namespace plateau::ui
