// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/notebook.h"
#include "tests/commands/program.h"

#include <QFile>
#include <QTemporaryDir>

namespace plateau::test {

using namespace Qt::StringLiterals;
using notebook::Access;
using notebook::Notebook;

/// The real program on a notebook that this process has open, as a window would.
class TwoPrograms : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_EQ(runProgram({u"import"_s, m_path, sample(u"clean-run.json"_s)}).status, 0);
        ASSERT_EQ(runProgram({u"export"_s, m_path, m_folder.filePath(u"export"_s)}).status, 0);
    }
    static QString sample(const QString &name)
    {
        return QStringLiteral(PLATEAU_SOURCE_DIR "/sampledata/") + name;
    }
    QByteArray bytes() const
    {
        QFile file(m_path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }

    QTemporaryDir m_folder;
    const QString m_path = m_folder.filePath(u"notebook.plateau"_s);
};

TEST_F(TwoPrograms, TheSecondSaysInOneSentenceThatTheNotebookIsInUse)
{
    const QByteArray before = bytes();
    const auto first = Notebook::open(m_path);
    const std::vector<QStringList> commands{{u"import"_s, m_path, sample(u"trace.json"_s)},
                                            {u"verify"_s, m_path},
                                            {u"backup"_s, m_path, m_folder.filePath(u"backups"_s)},
                                            {u"export"_s, m_path, m_folder.filePath(u"again"_s)}};
    for (const QStringList &command : commands) {
        const Outcome second = runProgram(command);
        EXPECT_EQ(second.status, 2) << command.first().toStdString();
        EXPECT_TRUE(second.error.contains("in use by another program")) << second.error.toStdString();
        EXPECT_EQ(second.errorLines().size(), 1) << second.error.toStdString();
    }
    EXPECT_EQ(bytes(), before) << "and to look at the file loses SQLite's own lock on it";
    EXPECT_EQ(runProgram(commands.front()).status, 2) << "which is not the only one";
    EXPECT_FALSE(QFile::exists(m_folder.filePath(u"again"_s)));
}

TEST_F(TwoPrograms, TheFirstWorksOnAndTheSecondOnceTheFirstIsGone)
{
    {
        const auto first = Notebook::open(m_path);
        EXPECT_EQ(runProgram({u"import"_s, m_path, sample(u"trace.json"_s)}).status, 2);
        first->decide(first->runs().front().id, notebook::DecisionKind::Rejected, u"Corin Dast"_s,
                      u"only a trial"_s);
    }
    EXPECT_EQ(runProgram({u"import"_s, m_path, sample(u"trace.json"_s)}).status, 0);
    EXPECT_EQ(runProgram({u"verify"_s, m_path}).status, 0);
    const auto book = Notebook::open(m_path, Access::ReadOnly);
    ASSERT_EQ(book->runs().size(), 2U);
    EXPECT_EQ(book->runs().back().state, notebook::RunState::Rejected);
}

TEST_F(TwoPrograms, BothMayLookAtOnce)
{
    const auto first = Notebook::open(m_path, Access::ReadOnly);
    const Outcome second = runProgram({u"verify"_s, m_path});
    EXPECT_EQ(second.status, 0) << second.error.toStdString();
    EXPECT_EQ(first->runs().size(), 1U);
}

} // namespace plateau::test
