// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/draftreader.h"

#include <QCoreApplication>
#include <QSet>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

struct DraftreaderWords {
    Q_DECLARE_TR_FUNCTIONS(plateau::ui::MethodDraft)
};

bool isBlank(const QString &text)
{
    return text.trimmed().isEmpty();
}

/// The one is the place of the other, or holds it.
bool sameOrWithin(const QString &one, const QString &other)
{
    return one == other || one.startsWith(other + u'/') || other.startsWith(one + u'/');
}

} // namespace

std::optional<double> DraftReader::optionalFraction(const QString &percent, const QString &pointer) const
{
    const auto value = optionalNumber(percent, pointer);
    if (!value)
        return std::nullopt;
    if (*value < 0 || *value > 100) {
        complain(pointer,
                 DraftreaderWords::tr("must lie between 0 and 100 %, not %1").arg(percent.trimmed()));
        return std::nullopt;
    }
    // To fifteen figures, as it is shown: 2.8 / 100 is not the number nearest to 0.028.
    return QString::number(*value / 100, 'g', 15).toDouble();
}

bool DraftReader::hasComplainedOf(const QString &pointer) const
{
    return std::ranges::find(m_problems, pointer, &assay::Problem::pointer) != m_problems.end();
}

std::optional<assay::Interval> DraftReader::interval(const QString &from, const QString &to,
                                                     const QString &pointer) const
{
    if (isBlank(from) && isBlank(to))
        return std::nullopt;
    return neededInterval(from, to, pointer);
}

assay::Interval DraftReader::neededInterval(const QString &from, const QString &to,
                                            const QString &pointer) const
{
    return {number(from, assay::pointerTo(pointer, 0)), number(to, assay::pointerTo(pointer, 1))};
}

void DraftReader::addUnsaid(const assay::Problems &problems) const
{
    const auto said = static_cast<std::ptrdiff_t>(m_problems.size());
    for (const assay::Problem &problem : problems) {
        const bool known =
            std::any_of(m_problems.begin(), m_problems.begin() + said, [&](const assay::Problem &earlier) {
                return sameOrWithin(earlier.pointer, problem.pointer);
            });
        if (!known)
            m_problems.push_back(problem);
    }
}

QString DraftReader::nothingAdded()
{
    return DraftreaderWords::tr("say which component is added");
}

QString DraftReader::wavelengthTwice()
{
    return DraftreaderWords::tr("this wavelength is in the table already; keep one of the two");
}

std::vector<QString> idsOf(const std::vector<CellRow> &rows)
{
    QSet<QString> taken;
    for (const CellRow &row : rows) {
        if (!isNewKey(row.key))
            taken.insert(row.key);
    }
    std::vector<QString> ids;
    for (const CellRow &row : rows) {
        if (!isNewKey(row.key)) {
            ids.push_back(row.key);
            continue;
        }
        const QString stem = idFrom(row.cells.front()).isEmpty() ? u"item"_s : idFrom(row.cells.front());
        QString id = stem;
        for (int number = 2; taken.contains(id); ++number)
            id = u"%1-%2"_s.arg(stem).arg(number);
        taken.insert(id);
        ids.push_back(id);
    }
    return ids;
}

std::vector<QString> linesOf(const LinesDraft &draft)
{
    if (draft.text == QStringList(draft.original.begin(), draft.original.end()).join(u'\n'))
        return draft.original;
    std::vector<QString> lines;
    for (const QString &line : draft.text.split(u'\n')) {
        if (!isBlank(line))
            lines.push_back(line.trimmed());
    }
    return lines;
}

} // namespace plateau::ui
