// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "app/reportarguments.h"

#include "core/assay/label.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>

#include <set>

namespace plateau::app {

using namespace Qt::StringLiterals;

namespace {

struct ReportargumentsWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::app::Commands)
};

/// Takes the words behind `report` one after the other.
class Reader
{
public:
    ReportArguments read(const QStringList &arguments)
    {
        m_found.paper = ui::usualPaper(QLocale::system());
        m_found.decimalSign = ui::usualDecimalSign(QLocale::system());
        QStringList files;
        bool options = true;
        for (m_at = 0; m_at < arguments.size() && m_found.fault.isEmpty(); ++m_at) {
            const QString &argument = arguments[m_at];
            if (options && argument == "--"_L1)
                options = false;
            else if (!options || !argument.startsWith(u'-'))
                files << argument;
            else
                takeOption(argument, arguments);
        }
        if (m_found.fault.isEmpty())
            m_found.fault = faultOf(files);
        if (!files.isEmpty())
            m_found.file = files.front();
        return m_found;
    }

private:
    void takeOption(const QString &option, const QStringList &arguments)
    {
        if (option == "--record"_L1) {
            m_found.isRecord = true;
        } else if (option == "--exact"_L1) {
            m_found.cells = ui::CsvCells::Exact;
        } else if (option == "--letter"_L1) {
            m_found.paper = ui::Paper::Letter;
        } else if (!valued().contains(option)) {
            m_found.fault = ReportargumentsWords::tr("report has no option %1").arg(option);
        } else if (m_at + 1 == arguments.size() ||
                   (!isRepeatable(option) && !m_given.insert(option).second)) {
            m_found.fault = ReportargumentsWords::tr("%1 needs one value").arg(option);
        } else {
            takeValue(option, arguments[++m_at]);
        }
    }

    static QStringList valued()
    {
        return {u"--pdf"_s,      u"--csv"_s,   u"--notebook"_s, u"--run"_s,   u"--with"_s,
                u"--revision"_s, u"--field"_s, u"--decimal"_s,  u"--paper"_s, u"--by"_s};
    }
    static bool isRepeatable(const QString &option)
    {
        return option == "--with"_L1 || option == "--field"_L1;
    }

    void takeValue(const QString &option, const QString &value)
    {
        if (option == "--pdf"_L1)
            m_found.pdf = value;
        else if (option == "--csv"_L1)
            m_found.csv = value;
        else if (option == "--notebook"_L1)
            m_found.notebook = value;
        else if (option == "--with"_L1)
            m_found.with << value;
        else if (option == "--by"_L1)
            m_found.person = value;
        else if (option == "--field"_L1)
            m_found.fault = m_found.fields.add(value);
        else if (option == "--run"_L1)
            takeRun(value);
        else if (option == "--revision"_L1)
            takeRevision(value);
        else if (option == "--decimal"_L1)
            takeDecimal(value);
        else
            takePaper(value);
    }

    void takeRun(const QString &value)
    {
        bool isNumber = false;
        m_found.run = value.toLongLong(&isNumber);
        if (!isNumber || m_found.run < 1)
            m_found.fault =
                ReportargumentsWords::tr("--run %1 is no number of a run: the notebook counts them from 1")
                    .arg(assay::quoted(value));
    }
    void takeRevision(const QString &value)
    {
        bool isNumber = false;
        m_found.revision = value.toInt(&isNumber);
        if (!isNumber || m_found.revision < 1)
            m_found.fault =
                ReportargumentsWords::tr("--revision %1 is no number of a decision: they count from 1")
                    .arg(assay::quoted(value));
    }
    void takeDecimal(const QString &value)
    {
        const auto sign = ui::decimalSignFromWord(value);
        if (!sign)
            m_found.fault = ReportargumentsWords::tr("--decimal %1 is not known; it is point or comma")
                                .arg(assay::quoted(value));
        m_found.decimalSign = sign.value_or(m_found.decimalSign);
    }
    void takePaper(const QString &value)
    {
        const auto paper = ui::paperFromWord(value);
        if (!paper)
            m_found.fault = ReportargumentsWords::tr("--paper %1 is not known; it is a4 or letter")
                                .arg(assay::quoted(value));
        m_found.paper = paper.value_or(m_found.paper);
    }

    QString faultOf(const QStringList &files) const
    {
        const bool fromNotebook = m_found.run > 0;
        if (fromNotebook ? !files.isEmpty() || m_found.notebook.isEmpty() : files.size() != 1)
            return ReportargumentsWords::tr(
                "report takes one run file, or one run of a notebook: plateau report RUN.json "
                "--pdf FILE, plateau report --notebook FILE --run NUMBER --pdf FILE");
        if (m_found.revision > 0 && !fromNotebook)
            return ReportargumentsWords::tr(
                "--revision is for a run of a notebook: --notebook FILE --run NUMBER");
        if (m_found.pdf.isEmpty() && m_found.csv.isEmpty())
            return ReportargumentsWords::tr("report needs the file to write: --pdf FILE, --csv FILE or both");
        if (fromNotebook && !m_found.with.isEmpty())
            return ReportargumentsWords::tr(
                "--with is for run files; a notebook knows which runs a result is taken from");
        if (m_found.isRecord && m_found.pdf.isEmpty())
            return ReportargumentsWords::tr("--record needs the file to write: --pdf FILE");
        if (!m_found.fields.isEmpty() && (m_found.isRecord || m_found.pdf.isEmpty()))
            return ReportargumentsWords::tr(
                "--field is for the report of results: --pdf FILE without --record; run record and table have no such "
                "fields");
        if (m_found.cells == ui::CsvCells::Exact && m_found.csv.isEmpty())
            return ReportargumentsWords::tr("--exact needs the file to write: --csv FILE");
        const bool same =
            !m_found.pdf.isEmpty() && !m_found.csv.isEmpty() &&
            QFileInfo(m_found.pdf).absoluteFilePath() == QFileInfo(m_found.csv).absoluteFilePath();
        return same ? ReportargumentsWords::tr("--pdf and --csv name the same file; name two") : QString();
    }

    ReportArguments m_found;
    qsizetype m_at = 0;
    std::set<QString> m_given;
};

} // namespace

ReportArguments reportArguments(const QStringList &arguments)
{
    return Reader().read(arguments);
}

} // namespace plateau::app
