// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/shelfdraft.h"

#include "core/assay/label.h"
#include "core/assay/localday.h"
#include "core/exchange/decimal.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/matrixtext.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <map>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct ShelfDraftWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::ShelfDraft)
};
using assay::quoted;

class RowReader
{
public:
    RowReader(const CellRow &row, int number, const MeasurandNames &measurands, const QDateTime &now,
              ShelfReading &reading)
        : m_cells(row.cells)
        , m_row(number)
        , m_measurands(measurands)
        , m_now(now)
        , m_reading(reading)
    {
    }

    planning::ShelfSample sample()
    {
        planning::ShelfSample sample;
        sample.id = text(shelf::Id);
        sample.product = text(shelf::Product);
        sample.receivedFrom = text(shelf::From);
        readMatrix(sample);
        readReceived(sample);
        readExpected(sample);
        addProblemsOf(sample);
        return sample;
    }

private:
    QString text(int column) const { return m_cells[static_cast<std::size_t>(column)].trimmed(); }
    void complain(int column, const QString &message)
    {
        m_reading.problems.push_back({m_row, column, message});
    }

    void readMatrix(planning::ShelfSample &sample)
    {
        if (const QString typed = text(shelf::Matrix); !typed.isEmpty()) {
            if (const auto matrix = matrixOf(typed))
                sample.matrix = *matrix;
            else
                complain(shelf::Matrix, ShelfDraftWords::tr("%1 is not a matrix; choose one of: %2.")
                                            .arg(quoted(typed), matrixWords()));
        }
        if (const QString typed = text(shelf::Form); !typed.isEmpty()) {
            if (const auto form = formOf(typed))
                sample.form = *form;
            else
                complain(
                    shelf::Form,
                    ShelfDraftWords::tr("%1 is not a form; a sample is liquid or solid.").arg(quoted(typed)));
        } else if (sample.matrix == assay::Matrix::Solid) {
            sample.form = run::Form::Solid;
        }
    }

    static QString matrixWords()
    {
        QStringList words;
        for (const assay::Matrix matrix : allMatrices())
            words << matrixText(matrix).toLower();
        return words.join(ShelfDraftWords::tr(", "));
    }

    void readReceived(planning::ShelfSample &sample)
    {
        const QString typed = text(shelf::Received);
        if (typed.isEmpty())
            return;
        const auto parsed = exchange::parseKeyedDayOrMoment(typed, m_now);
        if (const auto *moment = std::get_if<QDateTime>(&parsed))
            sample.receivedAt = *moment;
        else if (std::get<exchange::MomentFault>(parsed) == exchange::MomentFault::InTheFuture)
            complain(shelf::Received,
                     ShelfDraftWords::tr("%1 is still to come; give the time when it came in.")
                         .arg(quoted(typed)));
        else
            complain(shelf::Received,
                     ShelfDraftWords::tr("%1 is not a time; write the day as %2, with the time as %2 8:10, or the "
                                         "time alone for the last day.")
                         .arg(quoted(typed), assay::shownDay({2026, 12, 31})));
    }

    void readExpected(planning::ShelfSample &sample)
    {
        const QStringList parts = text(shelf::Expected).split(u';', Qt::SkipEmptyParts);
        for (const QString &part : parts) {
            const QString entry = part.trimmed();
            if (!entry.isEmpty())
                readAmount(entry, sample);
        }
    }

    void readAmount(const QString &entry, planning::ShelfSample &sample)
    {
        const qsizetype blank = entry.lastIndexOf(u' ');
        const QString name = blank < 0 ? QString() : entry.left(blank).trimmed();
        const QString number = entry.mid(blank + 1);
        const auto parsed = exchange::parseDecimal(number);
        const double *amount = std::get_if<double>(&parsed);
        if (!amount) {
            complain(shelf::Expected,
                     ShelfDraftWords::tr("%1 does not end in a number; write the measurand and the amount in "
                                         "g/L, for a solid in g/100 g, as in %2.")
                         .arg(quoted(entry), example()));
            return;
        }
        std::vector<QString> ids = name.isEmpty() && m_measurands.names().size() == 1
                                       ? m_measurands.idsOf(m_measurands.names().front())
                                       : m_measurands.idsOf(name);
        if (ids.empty()) {
            complain(shelf::Expected, name.isEmpty()
                                          ? ShelfDraftWords::tr("Say what %1 is expected of, as in %2.")
                                                .arg(quoted(entry), example())
                                          : ShelfDraftWords::tr("No method measures %1; there are: %2.")
                                                .arg(quoted(name), namesNearest(name)));
            return;
        }
        for (const QString &id : ids)
            sample.expected[id] = *amount;
    }

    QString namesNearest(const QString &wanted) const
    {
        constexpr qsizetype most = 8;
        const QStringList names = m_measurands.namesNearest(wanted);
        const QString some = names.mid(0, most).join(ShelfDraftWords::tr(", "));
        return names.size() > most ? ShelfDraftWords::tr("%1 and %2 more").arg(some).arg(names.size() - most)
                                   : some;
    }

    QString example() const
    {
        const QStringList names = m_measurands.names();
        return quoted(u"%1 %2"_s.arg(names.isEmpty() ? ShelfDraftWords::tr("glucose") : names.front(), keyedText(3.5)));
    }

    void addProblemsOf(const planning::ShelfSample &sample)
    {
        static const std::map<QString, int> columns{{u"/id"_s, shelf::Id},
                                                    {u"/product"_s, shelf::Product},
                                                    {u"/receivedFrom"_s, shelf::From},
                                                    {u"/receivedAt"_s, shelf::Received}};
        for (const assay::Problem &problem : planning::problemsOf(sample)) {
            const auto column = columns.find(problem.pointer);
            complain(column == columns.end() ? int{shelf::Expected} : column->second, problem.message);
        }
    }

    const std::vector<QString> &m_cells;
    int m_row;
    const MeasurandNames &m_measurands;
    const QDateTime &m_now;
    ShelfReading &m_reading;
};

} // namespace

ShelfReading readShelf(const std::vector<CellRow> &rows, const MeasurandNames &measurands,
                       const QDateTime &now)
{
    ShelfReading reading;
    std::map<QString, int> seen;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const int number = static_cast<int>(i);
        reading.samples.push_back(RowReader(rows[i], number, measurands, now, reading).sample());
        const QString &id = reading.samples.back().id;
        const auto [first, isNew] = seen.try_emplace(foldedName(id), number);
        if (!isNew && !id.isEmpty())
            reading.problems.push_back(
                {number, shelf::Id,
                 ShelfDraftWords::tr("%1 stands in line %2 already; each sample needs an id of its own.")
                     .arg(quoted(id), QString::number(first->second + 1))});
    }
    return reading;
}

} // namespace plateau::ui
