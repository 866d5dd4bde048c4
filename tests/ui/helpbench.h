// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/help/helppages.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace plateau::test {

/// A help of four pages in a folder that goes away with the test; one page is there in German, too.
class HelpBench : public ::testing::Test
{
protected:
    HelpBench()
    {
        write("en/index.md", "# Contents\n\nAll there is.\n\n## Bench\n\n- [Read](read.md): keying.\n\n"
                             "## Books\n\n- [Not there](nothing.md)\n\n## Numbers\n\n"
                             "- [Checks](checks.md): each of them, also of [Read](read.md).\n");
        write("en/read.md", readPage());
        write("en/checks.md",
              "# Checks\n\nEvery check of a run.\n\n## Blank signal\n\nIdentifier: `blank-high`\n\n"
              "- Tests: the mean **signal** of the blanks.\n- To do: repeat the blank.\n\n"
              "## Blanks apart\n\nIdentifier: `blank-spread`\n\nSee [series](read.md#a-series) and "
              "[above](#blank-signal).\n");
        write("en/wine.md", "# Crémant\n\nA word with an accent; the signal is elsewhere.\n");
        write("de/read.md", "# Lesen\n\nAbsorptionen eintippen.\n\n![Ein Rack](../pictures/de/rack.png)\n\n"
                            "## Eine Reihe\n\nMehrere Messwerte nacheinander.\n");
    }

    static QByteArray readPage()
    {
        QByteArray page = "# Read\n\nKey the absorbances. Out: [the web](https://example.invalid/x).\n\n"
                          "![A rack](../pictures/en/rack.png)\n\n## Corrections\n\n";
        for (int line = 0; line < 60; ++line)
            page += "A line that only takes room, so that there is something to scroll.\n\n";
        page += "## A series\n\nSeveral readings of one tube; the signal is read at the starter.\n\n"
                "| key | does |\n| --- | --- |\n| `Enter` | stores |\n\n## Corrections\n\nOnce more.\n\n";
        for (int line = 0; line < 60; ++line)
            page += "And room below it.\n\n";
        return page;
    }

    void write(const char *name, const QByteArray &content) const
    {
        const QString path = m_folder.filePath(QString::fromLatin1(name));
        QDir().mkpath(QFileInfo(path).path());
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(content), content.size());
    }
    QString folder() const { return m_folder.path(); }
    ui::HelpPages pages(const char *language = "en") const
    {
        return ui::HelpPages(folder(), QString::fromLatin1(language));
    }

private:
    QTemporaryDir m_folder;
};

} // namespace plateau::test
