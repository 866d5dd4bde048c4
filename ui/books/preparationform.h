// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/method.h"
#include "core/equipment/item.h"
#include "core/planning/laboratory.h"
#include "core/planning/standardstock.h"
#include "ui/shared/sentencelist.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLineEdit;

namespace plateau::ui {

class Clock;
class MomentField;
class Notice;
class NumberField;
class Theme;

/// Where a standard is prepared: the mass to weigh for the strength wanted, and the strength really made with
/// its uncertainty, with every key.
class PreparationForm : public QWidget
{
    Q_OBJECT

public:
    PreparationForm(const Theme &theme, const Clock &clock, QWidget *parent = nullptr);

    /// made: newest first; the last of a substance says what it is made for and how many molecules of the analyte one
    /// of it holds.
    /// What can be chosen: substances of the book, measurands of the methods, flasks of the laboratory. The
    /// balance's last valid check, where there is one, says how well it weighs. What was keyed stays.
    void setStock(const std::vector<planning::HeldSubstance> &substances,
                  const std::vector<assay::Method> &methods, const planning::Laboratory &laboratory,
                  const std::vector<equipment::HeldItem> &equipment,
                  std::vector<planning::HeldPreparation> made);
    bool hasUnsavedChanges() const;
    void markStored();
    void takeFocus();
    /// Of the combination that is chosen; nothing where there is none.
    std::optional<qint64> substance() const;
    void chooseSubstance(qint64 id);
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    void wanted(qint64 substance, const plateau::planning::Preparation &preparation);
    void substanceWanted();
    void substanceChangeWanted(qint64 id);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    struct Use {
        assay::Method method;
        assay::Measurand measurand;
    };

    QWidget *buildForm();
    QLineEdit *addLine(QFormLayout *form, const QString &caption, const QString &name);
    NumberField *addNumber(QFormLayout *form, const QString &caption, const QString &unit,
                           const QString &name);
    const Use *use() const;
    const planning::Substance *chosenSubstance() const;
    void takeUse();
    /// As the substance that is chosen was used last.
    void takeLast();
    /// What makes the strength doubtful.
    std::vector<Sentence> doubtsAbout(const planning::Substance &of, const planning::Preparation &made,
                                      double strength_g_per_L) const;
    void takeFlask();
    planning::Preparation keyed(assay::Problems &problems) const;
    void answer();
    void store();

    const Theme &m_theme;
    const Clock &m_clock;
    std::vector<planning::HeldSubstance> m_substances;
    std::vector<planning::HeldPreparation> m_made;
    std::vector<Use> m_uses;
    planning::Laboratory m_laboratory;
    QString m_weighingFrom;
    Notice *m_notice;
    QComboBox *m_substance = nullptr;
    QComboBox *m_use = nullptr;
    QLineEdit *m_name = nullptr;
    NumberField *m_perMolecule = nullptr;
    NumberField *m_wanted = nullptr;
    QLineEdit *m_masses = nullptr;
    NumberField *m_mass_u = nullptr;
    QComboBox *m_flask = nullptr;
    NumberField *m_flask_mL = nullptr;
    NumberField *m_flask_u = nullptr;
    MomentField *m_madeAt = nullptr;
    NumberField *m_loss = nullptr;
    NumberField *m_keeps_h = nullptr;
    QLineEdit *m_note = nullptr;
    SentenceList *m_answer = nullptr;
};

} // namespace plateau::ui
