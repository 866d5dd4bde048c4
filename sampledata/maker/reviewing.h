// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "sampledata/maker/deciding.h"
#include "sampledata/maker/samplemaker.h"

namespace plateau::sampledata {

/// Who decides in the house, and from when on it is signed.
class Reviewing
{
public:
    Reviewing(notebook::Notebook &notebook, QDateTime &now)
        : m_notebook(notebook)
        , m_now(now)
    {
    }

    /// The persons with their passphrases; from now on a reviewer or the head decides, and nobody on their
    /// own run.
    void setUpPersons(planning::Laboratory laboratory);
    bool arePersonsSetUp() const { return m_setUp; }
    /// By one of the two that did not make the run.
    void decide(notebook::RunId run, notebook::RunDecision decision, const QString &analyst, int number);
    /// The head's.
    void reopen(notebook::RunId run, const QString &reason);

private:
    notebook::Notebook &m_notebook;
    QDateTime &m_now;
    bool m_setUp = false;
};

} // namespace plateau::sampledata
