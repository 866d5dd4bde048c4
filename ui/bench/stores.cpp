// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/stores.h"

#include "core/planning/checkedequipment.h"
#include "ui/bench/benchsession.h"

namespace plateau::ui {

Stores::Stores(notebook::Notebook &notebook, const BenchSession &session, QObject *parent)
    : QObject(parent)
    , m_notebook(notebook)
    , m_session(session)
{
    connect(&session, &BenchSession::notebookChanged, this, &Stores::waitingChanged);
    connect(&session, &BenchSession::notebookChanged, this, &Stores::lotsChanged);
}

std::vector<notebook::WaitingSample> Stores::waiting() const
{
    return m_notebook.shelf().waiting();
}

std::vector<notebook::PastResult> Stores::lastResults(const QString &product, const QString &measurand,
                                                      int most) const
{
    return m_notebook.shelf().lastResults(product, measurand, most);
}

std::vector<notebook::ShelfId> Stores::registerSamples(const std::vector<planning::ShelfSample> &samples)
{
    std::vector<notebook::ShelfId> ids = m_notebook.shelf().registerSamples(samples, m_session.person());
    Q_EMIT waitingChanged();
    return ids;
}

void Stores::changeSample(notebook::ShelfId id, const planning::ShelfSample &sample)
{
    m_notebook.shelf().change(id, sample, m_session.person());
    Q_EMIT waitingChanged();
}

void Stores::withdraw(notebook::ShelfId id, const QString &reason)
{
    m_notebook.shelf().withdraw(id, m_session.person(), reason);
    Q_EMIT waitingChanged();
}

void Stores::waiveRepeat(notebook::RunId run, const QString &sample, const QString &reason)
{
    m_notebook.shelf().waiveRepeat(run, sample, m_session.person(), reason);
    Q_EMIT waitingChanged();
}

std::vector<planning::Lot> Stores::lots() const
{
    return m_notebook.lots().inHand();
}

std::vector<planning::Lot> Stores::everyLot() const
{
    return m_notebook.lots().all();
}

std::vector<notebook::LotMovement> Stores::movements(notebook::LotId lot) const
{
    return m_notebook.lots().movements(lot);
}

std::vector<notebook::LotTaking> Stores::takings(notebook::LotId lot) const
{
    return m_notebook.lots().takings(lot);
}

notebook::LotId Stores::receive(const notebook::LotLabel &label, double volume_mL)
{
    const notebook::LotId lot = m_notebook.lots().receive(label, volume_mL, m_session.person());
    Q_EMIT lotsChanged();
    return lot;
}

notebook::LotId Stores::receiveDry(const notebook::LotLabel &label, std::optional<double> mass_mg)
{
    const notebook::LotId lot = m_notebook.lots().receiveDry(label, mass_mg, m_session.person());
    Q_EMIT lotsChanged();
    return lot;
}

void Stores::dissolve(notebook::LotId lot, const notebook::LotDissolving &how)
{
    m_notebook.lots().dissolve(lot, how, m_session.person());
    Q_EMIT lotsChanged();
}

std::vector<notebook::LotId> Stores::divide(notebook::LotId lot, const notebook::LotDivision &how)
{
    std::vector<notebook::LotId> aliquots = m_notebook.lots().divide(lot, how, m_session.person());
    Q_EMIT lotsChanged();
    return aliquots;
}

void Stores::storeLot(notebook::LotId lot, const planning::StoragePlace &place, const QString &note)
{
    m_notebook.lots().store(lot, place, m_session.person(), note);
    Q_EMIT lotsChanged();
}

void Stores::noteLot(notebook::LotId lot, const QString &text)
{
    m_notebook.lots().note(lot, text, m_session.person());
    Q_EMIT lotsChanged();
}

void Stores::discardDry(notebook::LotId lot, const QString &reason)
{
    m_notebook.lots().discardDry(lot, m_session.person(), reason);
    Q_EMIT lotsChanged();
}

void Stores::relabel(notebook::LotId lot, const notebook::LotLabel &label, const QString &reason)
{
    m_notebook.lots().relabel(lot, label, m_session.person(), reason);
    Q_EMIT lotsChanged();
}

void Stores::openLot(notebook::LotId lot, const QDate &day)
{
    m_notebook.lots().open(lot, day, m_session.person());
    Q_EMIT lotsChanged();
}

void Stores::correctOpening(notebook::LotId lot, const std::optional<QDate> &day, const QString &reason)
{
    m_notebook.lots().correctOpening(lot, day, m_session.person(), reason);
    Q_EMIT lotsChanged();
}

void Stores::use(notebook::LotId lot, double volume_mL, const QString &note)
{
    m_notebook.lots().use(lot, volume_mL, m_session.person(), note);
    Q_EMIT lotsChanged();
}

void Stores::discard(notebook::LotId lot, double volume_mL, const QString &reason)
{
    m_notebook.lots().discard(lot, volume_mL, m_session.person(), reason);
    Q_EMIT lotsChanged();
}

void Stores::correct(notebook::LotId lot, double found_mL, const QString &reason)
{
    m_notebook.lots().correct(lot, found_mL, m_session.person(), reason);
    Q_EMIT lotsChanged();
}

std::vector<planning::HeldSubstance> Stores::substances() const
{
    return m_notebook.standards().substances();
}

std::vector<planning::HeldPreparation> Stores::preparations() const
{
    return m_notebook.standards().preparations();
}

std::vector<notebook::RunId> Stores::runsOf(notebook::PreparationId id) const
{
    return m_notebook.standards().runsOf(id);
}

charts::Series Stores::recoveriesOfItsKind(notebook::PreparationId id) const
{
    return m_notebook.standards().recoveriesOfItsKind(id);
}

notebook::SubstanceId Stores::addSubstance(const planning::Substance &substance)
{
    const notebook::SubstanceId id = m_notebook.standards().addSubstance(substance, m_session.person());
    Q_EMIT standardsChanged();
    return id;
}

void Stores::changeSubstance(notebook::SubstanceId id, const planning::Substance &substance,
                             const QString &reason)
{
    m_notebook.standards().changeSubstance(id, substance, m_session.person(), reason);
    Q_EMIT standardsChanged();
}

notebook::PreparationId Stores::prepare(notebook::SubstanceId of, const planning::Preparation &preparation)
{
    const notebook::PreparationId id = m_notebook.standards().prepare(of, preparation, m_session.person());
    Q_EMIT standardsChanged();
    return id;
}

void Stores::discard(notebook::PreparationId id, const QString &reason)
{
    m_notebook.standards().discard(id, m_session.person(), reason);
    Q_EMIT standardsChanged();
}

std::vector<equipment::HeldItem> Stores::equipment() const
{
    return m_notebook.equipment().all();
}

notebook::ItemId Stores::addItem(const equipment::Item &item)
{
    const notebook::ItemId id = m_notebook.equipment().add(item, m_session.person());
    Q_EMIT equipmentChanged();
    return id;
}

void Stores::changeItem(notebook::ItemId id, const equipment::Item &item, const QString &reason)
{
    m_notebook.equipment().change(id, item, m_session.person(), reason);
    Q_EMIT equipmentChanged();
}

void Stores::addCheck(notebook::ItemId id, const equipment::Check &check)
{
    m_notebook.equipment().addCheck(id, check, m_session.person());
    Q_EMIT equipmentChanged();
}

void Stores::withdrawCheck(notebook::CheckId id, const QString &reason)
{
    m_notebook.equipment().withdrawCheck(id, m_session.person(), reason);
    Q_EMIT equipmentChanged();
}

planning::Laboratory Stores::checkedLaboratory(const QDate &today) const
{
    return planning::withChecks(m_notebook.laboratory(), m_notebook.equipment().all(), today);
}

planning::Laboratory Stores::laboratory() const
{
    return m_notebook.laboratory();
}

std::optional<notebook::LaboratorySaving> Stores::laboratorySaving() const
{
    return m_notebook.laboratorySaving();
}

bool Stores::saveLaboratory(const planning::Laboratory &laboratory)
{
    if (!m_notebook.saveLaboratory(laboratory, m_session.person()))
        return false;
    Q_EMIT laboratoryChanged();
    return true;
}

std::vector<notebook::Person> Stores::persons() const
{
    return m_notebook.persons().all();
}

void Stores::addFirstPerson(const QString &name, const QString &passphrase)
{
    m_notebook.persons().addFirst(name, passphrase);
    Q_EMIT personsChanged();
}

void Stores::addPerson(const QString &name, notebook::PersonRole role, const QString &passphrase,
                       const notebook::Proof &head)
{
    m_notebook.persons().add(name, role, passphrase, head);
    Q_EMIT personsChanged();
}

void Stores::changePerson(notebook::PersonId person, const QString &name, notebook::PersonRole role,
                          const notebook::Proof &head)
{
    m_notebook.persons().change(person, name, role, head);
    Q_EMIT personsChanged();
}

void Stores::changePassphrase(notebook::PersonId person, const QString &passphrase,
                              const notebook::Proof &proof)
{
    m_notebook.persons().changePassphrase(person, passphrase, proof);
    Q_EMIT personsChanged();
}

void Stores::retirePerson(notebook::PersonId person, const notebook::Proof &head, const QString &reason)
{
    m_notebook.persons().retire(person, head, reason);
    Q_EMIT personsChanged();
}

void Stores::reinstatePerson(notebook::PersonId person, const notebook::Proof &head, const QString &reason)
{
    m_notebook.persons().reinstate(person, head, reason);
    Q_EMIT personsChanged();
}

std::vector<evaluation::Specification> Stores::specifications() const
{
    return m_notebook.specifications();
}

std::optional<notebook::LaboratorySaving> Stores::specificationsSaving() const
{
    return m_notebook.specificationsSaving();
}

bool Stores::saveSpecifications(const std::vector<evaluation::Specification> &specifications,
                                const QString &reason)
{
    if (!m_notebook.saveSpecifications(specifications, m_session.person(), reason))
        return false;
    Q_EMIT specificationsChanged();
    return true;
}

} // namespace plateau::ui
