// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "tests/core/notebook/benchtime.h"

namespace plateau::test {

using namespace Qt::StringLiterals;
using namespace notebook;

Surroundings BenchTimeTest::clocks()
{
    Surroundings around = surroundings();
    around.now = [this] { return m_now; };
    around.boot = [this] { return m_boot; };
    return around;
}

void BenchTimeTest::restartProgram()
{
    m_book.reset();
    m_book = Notebook::open(file(), Access::ReadWrite, clocks());
}

void BenchTimeTest::pass(double minutes)
{
    m_now = m_now.addMSecs(inMs(minutes));
    m_boot.ms += inMs(minutes);
}

void BenchTimeTest::restartMachine(double off_min)
{
    m_book.reset();
    m_now = m_now.addMSecs(inMs(off_min));
    m_boot = {m_boot.id + u"-and-next"_s, 20'000};
    m_book = Notebook::open(file(), Access::ReadWrite, clocks());
}

void BenchTimeTest::tick(RunId run, int tube, QStringView component)
{
    m_book->pipetting().markDone(run, {{{tube, component.toString(), false}}}, person);
}

ReadingId BenchTimeTest::read(RunId run, int tube, QStringView reading, double absorbance)
{
    return m_book->addReading(run, tube, reading.toString(), absorbance, QString::number(absorbance), person);
}

void BenchTimeTest::expectRefused(const std::function<void()> &action, QLatin1StringView words)
{
    const AuditHead before = m_book->auditHead();
    const Failure failure = failureOf(action);
    EXPECT_EQ(failure.kind(), Failure::Kind::Refused)
        << failure.what() << " " << failure.details().toStdString();
    EXPECT_TRUE(failure.sentence().contains(words)) << failure.what();
    expectOneSentence(failure);
    EXPECT_EQ(m_book->auditHead().hash, before.hash);
}

} // namespace plateau::test
