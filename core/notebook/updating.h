// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"

namespace plateau::notebook {

/// What is done to an older notebook before it can be worked with, in this order.
enum class UpdateStage {
    Checking, ///< whether it is sound
    Copying,  ///< a copy beside it, as it was
    Changing, ///< its schema, step by step
    Indexing  ///< what runs are found by
};
/// Told how far a stage has come. False stops it. Must not throw; may be empty.
using UpdateWatch = std::function<bool(UpdateStage stage, qint64 done, qint64 of)>;

/// Where an update stands, for those that do its parts.
class UpdateProgress
{
public:
    explicit UpdateProgress(UpdateWatch watch)
        : m_watch(std::move(watch))
    {
    }
    bool goesOn() const { return !m_watch || m_watch(m_stage, m_done, m_of); }
    /// Throws Stopped.
    void reach(UpdateStage stage, qint64 done, qint64 of)
    {
        m_stage = stage;
        m_done = done;
        m_of = of;
        if (!goesOn())
            throw Stopped();
    }

private:
    UpdateWatch m_watch;
    UpdateStage m_stage = UpdateStage::Checking;
    qint64 m_done = 0;
    qint64 m_of = 1;
};

/// True where opening the notebook for writing would bring it up to date first, which may take minutes.
/// Throws Failure, as opening it would.
bool needsUpdate(const QString &path);

/// Opens it for writing and closes it again, in any thread. Throws Failure, and Stopped: the notebook is as
/// it was before the step of the schema it was stopped in then, and the next opening goes on from there.
void updateNotebook(const QString &path, const UpdateWatch &watch = {},
                    const Surroundings &surroundings = Surroundings::ofThisProgram());

} // namespace plateau::notebook
