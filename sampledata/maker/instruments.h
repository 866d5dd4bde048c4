// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "sampledata/maker/chance.h"
#include "sampledata/maker/story.h"

namespace plateau::sampledata {

/// The instruments of the house: what is checked of them and when, over the years.
class Instruments
{
public:
    Instruments(notebook::Notebook &notebook, const planning::Laboratory &laboratory, const Story &story,
                quint64 seed);

    /// Into the book.
    void add(const QString &person);
    /// The checks that fall due on that day, and those that the story has. True where there was one.
    bool check(const QDate &day, QDateTime &now, const QString &person);

private:
    struct Kept {
        equipment::Item item;
        notebook::ItemId id;
        std::map<equipment::Aspect, QDate> due;
    };
    bool checkOne(Kept &kept, equipment::Aspect aspect, const QDate &day, QDateTime &now,
                  const QString &person);
    bool asksFor(const Kept &kept, equipment::Aspect aspect, const QDate &day) const;

    notebook::Notebook &m_notebook;
    Story m_story;
    Chance m_chance;
    std::vector<Kept> m_kept;
};

} // namespace plateau::sampledata
