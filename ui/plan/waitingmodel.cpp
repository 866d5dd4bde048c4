// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/waitingmodel.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/exchange/keyedmoment.h"
#include "ui/bench/waitingwords.h"
#include "ui/shared/keyednumber.h"
#include "ui/shared/widgets.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

bool isSame(const notebook::WaitingSample &one, const notebook::WaitingSample &other)
{
    return one.sample.id == other.sample.id && one.repeat.has_value() == other.repeat.has_value() &&
           (!one.repeat || one.repeat->run == other.repeat->run);
}

std::vector<DilutionDraft> draftOf(const std::vector<run::DilutionStep> &steps)
{
    std::vector<DilutionDraft> drafts;
    for (const run::DilutionStep &step : steps)
        drafts.push_back({keyedText(step.take_mL), keyedText(step.makeUpTo_mL)});
    return drafts;
}

void apply(const evaluation::Advice &advice, SampleDraft &draft)
{
    if (advice.kind == evaluation::Advice::Kind::IncreaseVolume) {
        draft.sampleVolume_mL = keyedText(advice.sampleVolume_mL);
        return;
    }
    draft.dilution = draftOf(advice.steps);
}

/// What the run to be repeated found is nearer than what was expected before it.
QString expectedText(const notebook::WaitingSample &waiting, const QString &measurand, bool isRepeat)
{
    if (isRepeat) {
        if (const auto found = waiting.repeat->found.find(measurand); found != waiting.repeat->found.end())
            return keyedText(evaluation::roundedText(found->second, 3));
    }
    const auto expected = waiting.sample.expected.find(measurand);
    return expected == waiting.sample.expected.end() ? QString() : keyedText(expected->second);
}

SampleDraft draftOf(const notebook::WaitingSample &waiting, const assay::Method &method)
{
    SampleDraft draft;
    draft.id = waiting.sample.id;
    draft.matrix = waiting.sample.matrix;
    draft.ownBlank = waiting.sample.matrix == assay::Matrix::Coloured;
    draft.product = waiting.sample.product;
    draft.received = exchange::dayOrMomentText(waiting.sample.receivedAt.value_or(QDateTime()));
    draft.receivedFrom = waiting.sample.receivedFrom;
    const bool isRepeat = waiting.repeat && waiting.repeat->method == method.id;
    for (const assay::Measurand &measurand : method.measurands)
        draft.expected.push_back(expectedText(waiting, measurand.id, isRepeat));
    if (isRepeat) {
        draft.repeats = waiting.repeat->run.value;
        draft.dilution = draftOf(waiting.repeat->dilution);
        if (waiting.repeat->sampleVolume_mL)
            draft.sampleVolume_mL = keyedText(*waiting.repeat->sampleVolume_mL);
        for (const auto &of : waiting.repeat->advice)
            apply(of.advice, draft);
    }
    return draft;
}

} // namespace

void WaitingModel::setWaiting(std::vector<notebook::WaitingSample> waiting)
{
    std::vector<Row> fresh;
    for (notebook::WaitingSample &sample : waiting) {
        const bool ticked = std::any_of(m_rows.begin(), m_rows.end(), [&sample](const Row &row) {
            return row.ticked && isSame(row.waiting, sample);
        });
        fresh.push_back({std::move(sample), ticked});
    }
    beginResetModel();
    m_rows = std::move(fresh);
    endResetModel();
}

std::vector<SampleDraft> WaitingModel::take(const assay::Method &method)
{
    std::vector<SampleDraft> drafts;
    for (Row &row : m_rows) {
        if (!row.ticked)
            continue;
        drafts.push_back(draftOf(row.waiting, method));
        row.ticked = false;
    }
    if (!drafts.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    return drafts;
}

int WaitingModel::ticked() const
{
    return static_cast<int>(
        std::count_if(m_rows.begin(), m_rows.end(), [](const Row &row) { return row.ticked; }));
}

int WaitingModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int WaitingModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant WaitingModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    if (role == Qt::CheckStateRole && index.column() == Sample)
        return row.ticked ? Qt::Checked : Qt::Unchecked;
    const QDateTime received = row.waiting.sample.receivedAt.value_or(QDateTime()).toLocalTime();
    if (role == Qt::ToolTipRole && index.column() == Received)
        return exchange::dayOrMomentText(received);
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case Sample:
        return row.waiting.sample.id;
    case Product:
        return row.waiting.sample.product;
    case Why:
        return whyItWaits(row.waiting);
    case Received:
        return assay::shownDay(received.date()); // the hour would cost the words beside it their room
    default:
        return {};
    }
}

bool WaitingModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid() || role != Qt::CheckStateRole || index.column() != Sample)
        return false;
    m_rows[static_cast<std::size_t>(index.row())].ticked = value.toInt() == Qt::Checked;
    Q_EMIT dataChanged(index, index);
    return true;
}

Qt::ItemFlags WaitingModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    return index.column() == Sample ? usual | Qt::ItemIsUserCheckable : usual;
}

QVariant WaitingModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Sample:
        return tr("Sample");
    case Product:
        return tr("Product");
    case Why:
        return tr("Why it waits");
    case Received:
        return tr("Received");
    default:
        return {};
    }
}

} // namespace plateau::ui
