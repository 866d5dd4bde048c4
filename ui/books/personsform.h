// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QGroupBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class ElidingLabel;
class Theme;

/// What is to be done with the list of persons.
struct PersonsAct {
    /// First: there are no persons yet.
    enum class Kind { First, Add, Change, Passphrase, Retire, Reinstate } kind = Kind::First;
    /// Of all but the first two.
    notebook::PersonId person;
    QString name;
    notebook::PersonRole role = notebook::PersonRole::Analyst;
    QString passphrase;
    QString reason;
    /// Whoever signs it; nobody for the first.
    notebook::Proof proof;
};

/// The fields of one change of the list of persons. Passphrases show as dots, stand in no other place, and
/// are gone once the page is left or the change is stored.
class PersonsForm : public QWidget
{
    Q_OBJECT

public:
    explicit PersonsForm(const Theme &theme, QWidget *parent = nullptr);

    /// atBench: offered as the first name, and to sign where it may.
    void setPersons(const std::vector<notebook::Person> &persons, const QString &atBench);
    /// The one that is chosen in the list.
    void setChosen(std::optional<notebook::PersonId> person);
    bool hasUnsavedChanges() const;
    void takeFocus();
    /// It is stored: back to an empty form.
    void markStored();
    /// It was refused: the signing passphrase is typed again, all else stays.
    void askProofAgain();

Q_SIGNALS:
    void wanted(const plateau::ui::PersonsAct &act);
    void complained(const QString &sentence);

protected:
    void hideEvent(QHideEvent *event) override;

private:
    using Kind = PersonsAct::Kind;

    QLineEdit *addLine(const QString &caption, const QString &objectName, bool secret);
    QComboBox *addBox(const QString &caption, const QString &objectName);
    void build();
    void offerActs();
    void offerSigners();
    void showFields();
    void sayRole();
    void clearPassphrases();
    const notebook::Person *chosen() const;
    Kind kind() const;
    notebook::PersonRole role() const;
    void store();
    /// Whether the new passphrase can be one and stands there twice; else that is said.
    bool passphraseIsSound();
    void ask(QWidget *field, const QString &sentence);

    const Theme &m_theme;
    std::vector<notebook::Person> m_persons;
    QString m_atBench;
    std::optional<notebook::PersonId> m_chosen;
    QGroupBox *m_group;
    QFormLayout *m_form;
    QComboBox *m_what = nullptr;
    ElidingLabel *m_of = nullptr;
    QLineEdit *m_name = nullptr;
    QComboBox *m_role = nullptr;
    QLabel *m_meaning = nullptr;
    QLineEdit *m_passphrase = nullptr;
    QLineEdit *m_again = nullptr;
    QLabel *m_advice = nullptr;
    QLineEdit *m_reason = nullptr;
    QComboBox *m_signer = nullptr;
    QLineEdit *m_proof = nullptr;
    QPushButton *m_store = nullptr;
};

} // namespace plateau::ui
