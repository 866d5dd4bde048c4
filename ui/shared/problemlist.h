// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "ui/shared/helpcall.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// What is wrong with an input, errors first: place and sentence.
class ProblemList : public SentenceList
{
    Q_OBJECT

public:
    ProblemList(const Theme &theme, const QString &objectName, QWidget *parent = nullptr);
    /// places: where each is explained in the help; none, or as many as problems.
    void setProblems(const assay::Problems &problems, const std::vector<HelpPlace> &places = {});
    /// Of the row that is chosen, else of the first one; no page where nothing more is to be said.
    HelpPlace placeNow() const;

private:
    /// By row.
    std::vector<HelpPlace> m_places;
};

} // namespace plateau::ui
