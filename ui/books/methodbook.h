// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/methodcatalogue.h"
#include "core/notebook/notebook.h"

#include "ui/bench/methodoffer.h"

#include <QObject>

#include <optional>
#include <utility>

namespace plateau::ui {

class BenchSession;

/// The methods there are: the shipped ones and the laboratory's, in one list. Changes carry the person at the
/// bench and are on disk when the call returns. Whatever talks to the notebook throws notebook::Failure.
class MethodBook : public QObject
{
    Q_OBJECT

public:
    /// notebook and session outlive it.
    MethodBook(notebook::Notebook &notebook, const BenchSession &session, std::vector<assay::Method> shipped,
               QObject *parent = nullptr);

    /// By id, newest first.
    const std::vector<notebook::StoredMethod> &catalogue() const;
    /// What a new run may have; two of the same id and version are both there, told apart by their labels.
    std::vector<MethodOffer> offered() const;

    /// What a run file means by a method's id.
    exchange::MethodLookup lookup() const;

    notebook::MethodOutcome save(const assay::Method &method, const QString &note = {});
    notebook::MethodOutcome import(const assay::Method &method, const QString &fileName);
    void retire(const assay::Method &method, const QString &reason);
    void reinstate(const assay::Method &method, const QString &reason);

Q_SIGNALS:
    void changed();

private:
    notebook::Notebook &m_notebook;
    const BenchSession &m_session;
    std::vector<assay::Method> m_shipped;
    /// As it was when the trail had that head; the pages ask for it one after the other.
    mutable std::optional<std::pair<QString, std::vector<notebook::StoredMethod>>> m_known;
};

} // namespace plateau::ui
