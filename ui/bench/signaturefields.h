// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/persons.h"

#include <QStringList>
#include <QTimer>
#include <QWidget>

#include <functional>

#include <vector>

class QLabel;
class QLineEdit;

namespace plateau::ui {

class Notice;
class OfferField;
class Theme;

/// Who decides: a name, and where persons are set up their passphrase; else it says that it is unsigned.
class SignatureFields : public QWidget
{
    Q_OBJECT

public:
    /// Captions with the mnemonics that are free where it stands. The fields' object names are name +
    /// "Person", name + "Passphrase" and name + "Unsigned".
    SignatureFields(const Theme &theme, const QString &nameCaption, const QString &passphraseCaption,
                    const QString &name, QWidget *parent = nullptr);

    /// Those who are offered, of all who are set up; nobody is set up: nothing is signed.
    void setPersons(const std::vector<notebook::Person> &persons, const QStringList &offered);
    void setPersons(const std::vector<notebook::Person> &persons);
    bool isSigned() const { return m_signed; }
    void setName(const QString &name);
    QString name() const;
    /// Where persons are set up, nobody else's: it may be a passphrase that was typed into the wrong field.
    bool isName(const QString &text) const;
    QString passphrase() const;
    /// It stays nowhere longer than it is needed: not when the fields are left out of sight, and not for minutes.
    void clearPassphrase();
    void focusName();
    /// Does what is signed. The passphrase goes when it is done, and where it was the wrong one; where something else was
    /// refused it stays, since nobody need type it anew. False where it was not done, which is said.
    bool sign(Notice &notice, const std::function<void()> &act);
    /// After a refusal: to the passphrase if it has to be typed, else to the name.
    void focusRefused();

    /// So long a passphrase is kept while nobody does anything in its window.
    static constexpr int keptFor_ms = 60'000;

Q_SIGNALS:
    void edited();
    void returnPressed();
    /// The passphrase was taken out because nobody did anything.
    void forgotten();

protected:
    void hideEvent(QHideEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    OfferField *m_name;
    QLabel *m_passphraseCaption;
    QLineEdit *m_passphrase;
    QLabel *m_unsigned;
    QStringList m_names;
    /// Whose the passphrase is that stayed after a refusal: nobody else signs with it.
    QString m_typedBy;
    bool m_signed = false;
    QTimer m_kept;
};

} // namespace plateau::ui
