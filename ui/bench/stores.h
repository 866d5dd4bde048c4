// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/notebook.h"
#include "core/planning/laboratory.h"

#include <QObject>

namespace plateau::ui {

class BenchSession;

/// What a rack is planned from: the samples that wait, the lots of reagents, and what the laboratory has.
/// Changes carry the person at the bench and are on disk when the call returns; what is shown is read back
/// from the notebook. Whatever talks to it throws notebook::Failure.
class Stores : public QObject
{
    Q_OBJECT

public:
    /// notebook and session outlive it.
    Stores(notebook::Notebook &notebook, const BenchSession &session, QObject *parent = nullptr);

    /// Advised repeats first; see notebook::Shelf::waiting.
    std::vector<notebook::WaitingSample> waiting() const;
    std::vector<notebook::PastResult> lastResults(const QString &product, const QString &measurand,
                                                  int most = 10) const;
    /// All or none.
    std::vector<notebook::ShelfId> registerSamples(const std::vector<planning::ShelfSample> &samples);
    void changeSample(notebook::ShelfId id, const planning::ShelfSample &sample);
    void withdraw(notebook::ShelfId id, const QString &reason);
    void waiveRepeat(notebook::RunId run, const QString &sample, const QString &reason);

    /// The containers that are not used up.
    std::vector<planning::Lot> lots() const;
    /// Every container there was, in the order they came.
    std::vector<planning::Lot> everyLot() const;
    std::vector<notebook::LotMovement> movements(notebook::LotId lot) const;
    std::vector<notebook::LotTaking> takings(notebook::LotId lot) const;
    notebook::LotId receive(const notebook::LotLabel &label, double volume_mL);
    notebook::LotId receiveDry(const notebook::LotLabel &label, std::optional<double> mass_mg);
    void dissolve(notebook::LotId lot, const notebook::LotDissolving &how);
    std::vector<notebook::LotId> divide(notebook::LotId lot, const notebook::LotDivision &how);
    void storeLot(notebook::LotId lot, const planning::StoragePlace &place, const QString &note);
    void noteLot(notebook::LotId lot, const QString &text);
    void discardDry(notebook::LotId lot, const QString &reason);
    void relabel(notebook::LotId lot, const notebook::LotLabel &label, const QString &reason);
    void openLot(notebook::LotId lot, const QDate &day);
    void correctOpening(notebook::LotId lot, const std::optional<QDate> &day, const QString &reason);
    void use(notebook::LotId lot, double volume_mL, const QString &note);
    void discard(notebook::LotId lot, double volume_mL, const QString &reason);
    void correct(notebook::LotId lot, double found_mL, const QString &reason);

    /// What standards are made of, and what was made of it, newest first; see notebook::StandardBook.
    std::vector<planning::HeldSubstance> substances() const;
    std::vector<planning::HeldPreparation> preparations() const;
    std::vector<notebook::RunId> runsOf(notebook::PreparationId id) const;
    charts::Series recoveriesOfItsKind(notebook::PreparationId id) const;
    notebook::SubstanceId addSubstance(const planning::Substance &substance);
    void changeSubstance(notebook::SubstanceId id, const planning::Substance &substance,
                         const QString &reason);
    notebook::PreparationId prepare(notebook::SubstanceId of, const planning::Preparation &preparation);
    void discard(notebook::PreparationId id, const QString &reason);

    /// What is checked, with its checks, in the order it came; see notebook::EquipmentBook.
    std::vector<equipment::HeldItem> equipment() const;
    notebook::ItemId addItem(const equipment::Item &item);
    void changeItem(notebook::ItemId id, const equipment::Item &item, const QString &reason);
    void addCheck(notebook::ItemId id, const equipment::Check &check);
    void withdrawCheck(notebook::CheckId id, const QString &reason);
    /// The laboratory with what the valid checks of its equipment found (planning::withChecks): for budgets,
    /// never to be saved.
    planning::Laboratory checkedLaboratory(const QDate &today) const;

    /// As it was saved last; until then what is usual.
    planning::Laboratory laboratory() const;
    /// Nothing where nobody saved it yet.
    std::optional<notebook::LaboratorySaving> laboratorySaving() const;
    /// False where it was saved exactly so already.
    bool saveLaboratory(const planning::Laboratory &laboratory);

    /// In the order they came, retired ones too. See notebook::Persons for these and for who may do what:
    /// whoever proves it signs the change, not the person at the bench.
    std::vector<notebook::Person> persons() const;
    void addFirstPerson(const QString &name, const QString &passphrase);
    void addPerson(const QString &name, notebook::PersonRole role, const QString &passphrase,
                   const notebook::Proof &head);
    void changePerson(notebook::PersonId person, const QString &name, notebook::PersonRole role,
                      const notebook::Proof &head);
    void changePassphrase(notebook::PersonId person, const QString &passphrase, const notebook::Proof &proof);
    void retirePerson(notebook::PersonId person, const notebook::Proof &head, const QString &reason);
    void reinstatePerson(notebook::PersonId person, const notebook::Proof &head, const QString &reason);

    /// The limits of the laboratory's products; none where nobody saved any.
    std::vector<evaluation::Specification> specifications() const;
    std::optional<notebook::LaboratorySaving> specificationsSaving() const;
    /// In place of the last ones, with a reason. False where they were saved exactly so already.
    bool saveSpecifications(const std::vector<evaluation::Specification> &specifications,
                            const QString &reason);

Q_SIGNALS:
    /// What waits may be another: the shelf changed, or a run was begun or decided.
    void waitingChanged();
    /// A container changed, or a dose was ticked that took from one.
    void lotsChanged();
    void standardsChanged();
    void equipmentChanged();
    void laboratoryChanged();
    void personsChanged();
    void specificationsChanged();

private:
    notebook::Notebook &m_notebook;
    const BenchSession &m_session;
};

} // namespace plateau::ui
