// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/plan/reagentsmodel.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "core/planning/lotoutlook.h"
#include "core/planning/lotturns.h"

#include <algorithm>
#include <optional>

using namespace Qt::StringLiterals;

namespace plateau::ui {

using evaluation::withUnit;
using planning::LotFitness;

namespace {

QString volumeText(double volume_mL)
{
    return withUnit(QString::number(volume_mL, 'f', 2), u"mL"_s);
}

QString fitnessText(LotFitness fitness, const planning::Lot &lot)
{
    switch (fitness) {
    case LotFitness::Good:
        return {};
    case LotFitness::Empty:
        return ReagentsModel::tr("empty");
    case LotFitness::Expired:
        return ReagentsModel::tr("expired on %1").arg(assay::shownDay(*lot.expires));
    case LotFitness::ExpiresBeforeEnd:
        return ReagentsModel::tr("expires before the run ends");
    case LotFitness::OpenTooLong:
        return ReagentsModel::tr("opened on %1, keeps %n day(s)", nullptr, lot.keepsOpened_days.value_or(0))
            .arg(assay::shownDay(*lot.opened));
    case LotFitness::NotDissolved:
    case LotFitness::DissolvedTooLong:
    case LotFitness::StoredTooLong:
    case LotFitness::SourceTooOld:
        return planning::faultText(lot, fitness);
    }
    return {};
}

/// Where the lot is open, or not good for long after the run.
std::optional<planning::UseBy> endOfLife(const planning::Lot &lot, const QDateTime &to)
{
    if (lot.opened)
        return planning::useByOf(lot);
    const planning::LotOutlook outlook = planning::outlookOf(lot, to, to);
    return outlook.daysLeft ? outlook.useBy : std::nullopt;
}

/// "; until 2026-03-04": of a lot that is fit for this run.
QString endOfLifeInBrief(const planning::Lot &lot, const QDateTime &to)
{
    if (const auto useBy = endOfLife(lot, to))
        return ReagentsModel::tr("; until %1").arg(planning::lotDayText(useBy->day));
    return lot.opened ? ReagentsModel::tr("; opened on %1").arg(planning::lotDayText(*lot.opened)) : QString();
}

/// The same with when it was opened.
QString endOfLifeText(const planning::Lot &lot, const QDateTime &to)
{
    const auto useBy = endOfLife(lot, to);
    const QString until = useBy ? planning::lotDayText(useBy->day) : QString();
    if (!lot.opened)
        return useBy ? ReagentsModel::tr("; use by %1").arg(until) : QString();
    const QString opened = planning::lotDayText(*lot.opened);
    return useBy ? ReagentsModel::tr("; opened on %1, use by %2").arg(opened, until)
                 : ReagentsModel::tr("; opened on %1").arg(opened);
}

const planning::Lot *findLot(const std::vector<planning::Lot> &lots, qint64 id)
{
    const auto found =
        std::find_if(lots.begin(), lots.end(), [id](const planning::Lot &lot) { return lot.id == id; });
    return found == lots.end() ? nullptr : &*found;
}

LotFitness fitnessIn(const planning::ReagentNeed &need, qint64 id)
{
    const auto found =
        std::find_if(need.lots.begin(), need.lots.end(), [id](const auto &lot) { return lot.first == id; });
    return found == need.lots.end() ? LotFitness::Good : found->second;
}

} // namespace

ReagentsModel::ReagentsModel(const Theme &theme, QObject *parent)
    : RowsModel(parent)
    , m_theme(theme)
{
    connect(&theme, &Theme::changed, this, [this] { touchAll(); });
}

void ReagentsModel::setNeeds(const std::vector<planning::ReagentNeed> &needs,
                             const std::vector<planning::Lot> &lots, const QDateTime &to)
{
    m_to = to;
    m_needs = needs;
    m_lots = lots;
    refresh();
}

void ReagentsModel::startAnew()
{
    m_chosen.clear();
    refresh();
}

void ReagentsModel::refresh()
{
    std::vector<ReagentRow> fresh;
    for (const planning::ReagentNeed &need : m_needs) {
        fresh.push_back(rowOf(need));
        if (fresh.back().told.isEmpty())
            fresh.back().told = fresh.back().remark;
    }
    setRows(std::move(fresh));
}

QString ReagentsModel::enoughText(const planning::ReagentNeed &need, qint64 chosen)
{
    const auto own = std::ranges::find(need.servedByLot, chosen, [](const auto &served) { return served.first; });
    return own == need.servedByLot.end() ? QString() : tr("enough: %1 tubes").arg(own->second);
}

QString ReagentsModel::othersText(const planning::ReagentNeed &need, qint64 chosen) const
{
    QStringList others;
    for (const auto &[id, tubes] : need.servedByLot) {
        const planning::Lot *lot = findLot(m_lots, id);
        if (id != chosen && lot && tubes > 0)
            others << tr("%1 more in lot %2").arg(tubes).arg(lot->lot);
    }
    return others.join(tr(", "));
}

ReagentRow ReagentsModel::rowOf(const planning::ReagentNeed &need) const
{
    ReagentRow row;
    row.need = need;
    row.offers.push_back({0, tr("none noted")});
    for (const auto &[id, fitness] : need.lots) {
        if (const planning::Lot *lot = findLot(m_lots, id)) {
            const QString fault = fitnessText(fitness, *lot);
            row.offers.push_back({id, fault.isEmpty() ? lot->lot : tr("%1 (%2)").arg(lot->lot, fault)});
        }
    }
    const auto chosen = m_chosen.find(need.component);
    if (chosen != m_chosen.end() && (chosen->second == 0 || findLot(m_lots, chosen->second)))
        row.chosen = chosen->second;
    else if (!need.shares.empty())
        row.chosen = need.shares.front().lot;
    const planning::Lot *lot = findLot(m_lots, row.chosen);
    if (!lot) {
        row.remark = chosen != m_chosen.end() ? tr("no lot noted") : tr("no lot in the book");
        if (chosen == m_chosen.end() && !need.lots.empty()) {
            // The first of them says best why none is fit.
            const planning::Lot *first = findLot(m_lots, need.lots.front().first);
            row.state = State::Bad;
            row.remark =
                first ? tr("no fit lot: %1 %2").arg(first->lot, fitnessText(need.lots.front().second, *first))
                      : tr("no fit lot");
        }
        return row;
    }
    const LotFitness fitness = fitnessIn(need, lot->id);
    if (fitness != LotFitness::Good) {
        row.state = State::Bad;
        row.remark = fitnessText(fitness, *lot);
    } else if (lot->remaining_mL >= need.withOverage_mL) {
        row.state = State::Good;
        const QString own = enoughText(need, row.chosen);
        const QString others = othersText(need, row.chosen);
        row.remark = own + endOfLifeInBrief(*lot, m_to);
        row.told = (others.isEmpty() ? own : tr("%1; %2").arg(own, others)) + endOfLifeText(*lot, m_to);
    } else if (need.short_mL > 0) {
        row.state = State::Bad;
        const QString tubes = QString::number(need.tubesServed);
        row.remark = tr("short by %1, for tubes: %2").arg(volumeText(need.short_mL), tubes);
        row.told = tr("short by %1: in hand %2, for tubes: %3")
                       .arg(volumeText(need.short_mL), volumeText(lot->remaining_mL), tubes);
    } else {
        row.state = State::Attention;
        QStringList others;
        for (const planning::LotShare &share : need.shares) {
            const planning::Lot *other = findLot(m_lots, share.lot);
            if (other && share.lot != row.chosen)
                others << other->lot;
        }
        row.remark = tr("then from lot %1").arg(others.join(tr(", ")));
        sayTurns(row, *lot);
    }
    return row;
}

void ReagentsModel::sayTurns(ReagentRow &row, const planning::Lot &chosen) const
{
    std::vector<double> doses_mL;
    for (const planning::ReagentDose &dose : row.need.doses)
        doses_mL.push_back(dose.volume_mL);
    const auto turns = planning::lotsInTurn(chosen.id, m_lots, row.need.reagent, doses_mL, m_to);
    QStringList parts;
    std::optional<qint64> before = chosen.id;
    for (std::size_t dose = 0; dose < turns.size(); ++dose) {
        if (turns[dose] == before)
            continue;
        before = turns[dose];
        const planning::ReagentDose &first = row.need.doses[dose];
        if (!before) {
            row.state = State::Bad;
            parts << tr("from tube %1 on no lot is enough").arg(first.tube + 1);
        } else if (first.round == row.need.round) {
            parts << tr("from tube %1 on lot %2").arg(first.tube + 1).arg(findLot(m_lots, *before)->lot);
        } else { // where it stands in for something else, its tubes say nothing of this addition
            parts << tr("then from lot %1").arg(findLot(m_lots, *before)->lot);
        }
    }
    if (!parts.isEmpty())
        row.remark = parts.join(tr(", "));
}

std::vector<run::LotUse> ReagentsModel::lotUses() const
{
    std::vector<run::LotUse> uses;
    for (const ReagentRow &row : rows()) {
        if (const planning::Lot *lot = findLot(m_lots, row.chosen))
            uses.push_back({row.need.component, lot->lot, planning::lastGoodDay(*lot)});
    }
    return uses;
}

assay::Problems ReagentsModel::remarks() const
{
    assay::Problems problems;
    for (const ReagentRow &row : rows()) {
        if (row.state == State::Bad)
            problems.push_back(assay::warning(row.need.reagent, row.told));
    }
    return problems;
}

int ReagentsModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant ReagentsModel::cellData(const QModelIndex &index, int role) const
{
    if (!index.isValid())
        return {};
    const ReagentRow &row = this->row(index.row());
    if (role == OffersRole && index.column() == LotColumn) {
        QVariantList offers;
        for (const auto &[id, words] : row.offers)
            offers << QVariant(QVariantList{id, words});
        return offers;
    }
    if (role == Qt::EditRole && index.column() == LotColumn)
        return row.chosen;
    if (role == Qt::DecorationRole && index.column() == Remark)
        return m_theme.icon(row.state);
    if ((role == Qt::AccessibleTextRole || role == Qt::ToolTipRole) && index.column() == Remark)
        return row.told;
    if (role == Qt::TextAlignmentRole && index.column() == Need)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (index.column()) {
    case Component:
        return row.need.reagent;
    case Need:
        return volumeText(row.need.withOverage_mL);
    case LotColumn: {
        // What is wrong with it stands beside it.
        const planning::Lot *lot = findLot(m_lots, row.chosen);
        return lot ? lot->lot : tr("none noted");
    }
    case Remark:
        return row.remark;
    default:
        return {};
    }
}

bool ReagentsModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid() || role != Qt::EditRole || index.column() != LotColumn)
        return false;
    m_chosen[row(index.row()).need.component] = value.toLongLong();
    refresh();
    return true;
}

Qt::ItemFlags ReagentsModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    const Qt::ItemFlags usual = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    return index.column() == LotColumn ? usual | Qt::ItemIsEditable : usual;
}

QVariant ReagentsModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole && section == Need)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Component:
        return tr("Reagent");
    case Need:
        return tr("Needed");
    case LotColumn:
        return tr("Lot");
    case Remark:
        return tr("State");
    default:
        return {};
    }
}

} // namespace plateau::ui
