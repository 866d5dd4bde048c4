// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "sampledata/maker/reviewing.h"

namespace plateau::sampledata {

using notebook::PersonRole;

void Reviewing::setUpPersons(planning::Laboratory laboratory)
{
    const notebook::Proof head{nameOfHead(), samplePassphrase()};
    m_notebook.persons().addFirst(head.name, head.passphrase);
    for (const QString &name : analysts()) {
        m_now = m_now.addSecs(60);
        const bool reviews = name == nameOfReviewer();
        m_notebook.persons().add(name, reviews ? PersonRole::Reviewer : PersonRole::Analyst,
                                 samplePassphrase(), head);
    }
    laboratory.review.reviewerDecides = true;
    laboratory.review.secondPersonReviews = true;
    m_notebook.saveLaboratory(laboratory, head.name);
    m_setUp = true;
}

void Reviewing::decide(notebook::RunId run, notebook::RunDecision decision, const QString &analyst,
                       int number)
{
    // Every second one that is not her own.
    const bool byReviewer = number % 2 == 0 && analyst != nameOfReviewer();
    decision.person = byReviewer ? nameOfReviewer() : nameOfHead();
    if (m_setUp)
        decision.passphrase = samplePassphrase();
    m_notebook.decide(run, decision);
}

void Reviewing::reopen(notebook::RunId run, const QString &reason)
{
    m_notebook.reopen(run, nameOfHead(), reason, m_setUp ? samplePassphrase() : QString());
}

} // namespace plateau::sampledata
