// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/problem.h"
#include "ui/shared/sentencelist.h"

namespace plateau::ui {

/// What is wrong with an input, errors first: place and sentence.
class ProblemList : public SentenceList
{
    Q_OBJECT

public:
    ProblemList(const Theme &theme, const QString &objectName, QWidget *parent = nullptr);
    void setProblems(const assay::Problems &problems);
};

} // namespace plateau::ui
