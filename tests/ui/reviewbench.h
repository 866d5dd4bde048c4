// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "tests/ui/keyboard.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <vector>

/// What the tests of Review and of what is signed stand on.
namespace plateau::test {

using namespace notebook;

/// Signals of a sample's two tubes.
struct Pair {
    QString sample;
    double first = 0.5;
    double second = 0.5;
};

inline run::Run runOf(const std::vector<Pair> &pairs)
{
    run::Run run = exampleRun();
    run.samples.clear();
    run.tubes.resize(2);
    for (run::Tube &blank : run.tubes)
        blank.readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.11}};
    for (const Pair &pair : pairs) {
        run::Sample sample;
        sample.id = pair.sample;
        run.samples.push_back(sample);
        for (const double signal : {pair.first, pair.second}) {
            run::Tube tube;
            tube.sample = pair.sample;
            tube.readings = {{u"A1"_s, 0.1}, {u"A2"_s, 0.11 + signal}};
            run.tubes.push_back(tube);
        }
    }
    return run;
}

inline const Pair good{u"P-1"_s};
inline const Pair high{u"P-2"_s, 1.5, 1.5};  // beyond the window: repeat, diluted
inline const Pair apart{u"P-3"_s, 0.3, 0.6}; // duplicates that do not agree: investigate

/// Review by keys alone.
class Decisions : public Keyboard
{
protected:
    static constexpr auto secret = "four plain garden words"_L1;

    void openReview(const std::vector<Pair> &pairs)
    {
        id = addRun(runOf(pairs));
        openWindow();
        press(Qt::Key_3, Qt::ControlModifier);
    }
    void decideAs(const QString &name, Qt::Key key = Qt::Key_A)
    {
        press(Qt::Key_D, Qt::AltModifier);
        press(Qt::Key_A, Qt::ControlModifier);
        type(name);
        act(key);
    }
    void act(Qt::Key key)
    {
        find<QPushButton>(key == Qt::Key_A ? u"acceptRun"_s : u"rejectRun"_s);
        press(key, Qt::AltModifier);
        (void)waitFor([&] { return isDecided() || !noticeText().isEmpty(); });
    }
    void giveReason(const QString &reason)
    {
        press(Qt::Key_E, Qt::AltModifier);
        press(Qt::Key_A, Qt::ControlModifier);
        type(reason);
    }
    void givePassphrase(const QString &passphrase)
    {
        press(Qt::Key_S, Qt::AltModifier);
        ASSERT_EQ(focusName(), u"decisionPassphrase"_s);
        EXPECT_TRUE(find<QLineEdit>(u"decisionPassphrase"_s)->text().isEmpty());
        type(passphrase);
    }
    bool isDecided() const { return book->load(id).summary.state != RunState::OnBench; }
    Decision decision() const { return book->load(id).decisions.back(); }
    void expectRefused(const QString &part)
    {
        EXPECT_FALSE(isDecided());
        EXPECT_TRUE(noticeText().contains(part)) << noticeText().toStdString();
    }
    void setRules(bool reviewer, bool second, const QStringList &reasons = {})
    {
        planning::Laboratory laboratory = planning::usualLaboratory();
        laboratory.review = {reviewer, second, reasons};
        book->saveLaboratory(laboratory, u"M. Lindqvist"_s);
    }
    void setPersons()
    {
        book->persons().addFirst(u"H. Ahlgren"_s, secret);
        const Proof head{u"H. Ahlgren"_s, secret};
        book->persons().add(u"R. Okafor"_s, PersonRole::Analyst, secret, head);
        book->persons().add(u"M. Lindqvist"_s, PersonRole::Reviewer, secret, head);
    }

    RunId id;
};

} // namespace plateau::test
