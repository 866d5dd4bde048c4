// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/methodbook.h"

#include "ui/bench/benchsession.h"

namespace plateau::ui {

MethodBook::MethodBook(notebook::Notebook &notebook, const BenchSession &session,
                       std::vector<assay::Method> shipped, QObject *parent)
    : QObject(parent)
    , m_notebook(notebook)
    , m_session(session)
    , m_shipped(std::move(shipped))
{
}

const std::vector<notebook::StoredMethod> &MethodBook::catalogue() const
{
    const QString head = m_notebook.auditHead().hash;
    if (!m_known || m_known->first != head)
        m_known.emplace(head, notebook::catalogueOf(m_notebook.methods(), m_shipped));
    return m_known->second;
}

std::vector<MethodOffer> MethodBook::offered() const
{
    const std::vector<notebook::StoredMethod> &all = catalogue();
    std::vector<MethodOffer> offers;
    for (const notebook::StoredMethod &stored : notebook::offeredOf(all))
        offers.push_back(
            {stored.method, tr("%1, %2").arg(stored.method.name, notebook::versionText(all, stored))});
    return offers;
}

exchange::MethodLookup MethodBook::lookup() const
{
    return notebook::lookupIn(catalogue());
}

notebook::MethodOutcome MethodBook::save(const assay::Method &method, const QString &note)
{
    const notebook::MethodOutcome outcome =
        m_notebook.saveMethod(method, m_session.person(), note, m_shipped);
    if (outcome.stored)
        Q_EMIT changed();
    return outcome;
}

notebook::MethodOutcome MethodBook::import(const assay::Method &method, const QString &fileName)
{
    const notebook::MethodOutcome outcome =
        m_notebook.importMethod(method, fileName, m_session.person(), m_shipped);
    if (outcome.stored)
        Q_EMIT changed();
    return outcome;
}

void MethodBook::retire(const assay::Method &method, const QString &reason)
{
    m_notebook.retireMethod(method, m_session.person(), reason);
    Q_EMIT changed();
}

void MethodBook::reinstate(const assay::Method &method, const QString &reason)
{
    m_notebook.reinstateMethod(method, m_session.person(), reason);
    Q_EMIT changed();
}

} // namespace plateau::ui
