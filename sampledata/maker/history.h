// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "sampledata/maker/benchday.h"
#include "sampledata/maker/calendar.h"
#include "sampledata/maker/instruments.h"
#include "sampledata/maker/reviewing.h"

#include <deque>

namespace plateau::sampledata {

/// Day after day of the laboratory, from its first act to the last one.
class History
{
public:
    History(notebook::Notebook &notebook, QDateTime &now, const House &house, const WantedHistory &wanted);

    /// When a history that is wanted so begins.
    static QDateTime firstMoment(const WantedHistory &wanted);

    void make();

private:
    struct Method {
        const MethodInUse *use = nullptr;
        assay::Method method;
        /// What was to be repeated and was not yet.
        std::deque<MadeSample> waiting{};
    };
    /// A run that was made and is not decided yet.
    struct Undecided {
        int number = 0;
        notebook::RunId run;
        Method *of = nullptr;
        Rack rack;
        std::optional<Slip> lateSlip{};
    };

    void begin();
    void workOn(const WorkingDay &day);
    void advanceTo(const QDate &day, const QTime &time);
    Method &methodOfRun(Chance &chance);
    std::vector<MadeSample> samplesFor(Method &of, Chance &chance);
    void makeRun(int number, const QDateTime &endsAt);
    std::vector<const FlaskOfStandard *> standardsFor(const Method &of, const QString &analyst,
                                                      QDateTime &started);
    void decide(Undecided &undecided);
    void followUp(Undecided &undecided, const Judgement &judgement);
    void correctLate();
    void keepCharts();
    void registerWaiting();
    bool isAtBench(int number) const { return number >= m_wanted.runs - m_wanted.workedAtBench; }
    bool staysOnBench(int number) const { return m_wanted.lastOnBench && number + 1 == m_wanted.runs; }

    notebook::Notebook &m_notebook;
    QDateTime &m_now;
    const House &m_house;
    WantedHistory m_wanted;
    std::vector<WorkingDay> m_days;
    Story m_story;
    std::vector<Method> m_methods;
    Cupboard m_cupboard;
    StandardMaking m_standards;
    SampleSource m_source;
    Instruments m_instruments;
    Reviewing m_reviewing;
    /// With what the checks say.
    planning::Laboratory m_laboratory;
    std::vector<Undecided> m_undecided;
    std::optional<Undecided> m_toCorrect;
    int m_made = 0;
    bool m_weakLotOpened = false;
    bool m_chartsKept = false;
};

} // namespace plateau::sampledata
