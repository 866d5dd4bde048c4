// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/bench/signaturefields.h"

#include "ui/bench/namedoubts.h"
#include "ui/shared/guard.h"
#include "ui/shared/offerfield.h"
#include "ui/shared/theme.h"
#include "ui/shared/widgets.h"

#include <QApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

using namespace Qt::StringLiterals;

namespace plateau::ui {

SignatureFields::SignatureFields(const Theme &theme, const QString &nameCaption,
                                 const QString &passphraseCaption, const QString &name, QWidget *parent)
    : QWidget(parent)
    , m_name(new OfferField(this))
    , m_passphraseCaption(new QLabel(passphraseCaption, this))
    , m_passphrase(new QLineEdit(this))
    , m_unsigned(plainLabel(tr("unsigned: nobody is set up"), this))
{
    m_name->setObjectName(name + u"Person"_s);
    m_name->setMinimumHeight(theme.target());
    m_name->setMinimumWidth(fontMetrics().averageCharWidth() * 18); // first name and surname
    m_name->completeWhileTyping();
    auto *caption = new QLabel(nameCaption, this);
    caption->setBuddy(m_name);
    m_passphrase->setObjectName(name + u"Passphrase"_s);
    m_passphrase->setMinimumHeight(theme.target());
    m_passphrase->setEchoMode(QLineEdit::Password);
    m_passphrase->setInputMethodHints(Qt::ImhHiddenText | Qt::ImhSensitiveData | Qt::ImhNoPredictiveText);
    m_passphraseCaption->setBuddy(m_passphrase);
    m_unsigned->setObjectName(name + u"Unsigned"_s);
    auto *layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(theme.gap());
    layout->addWidget(caption);
    layout->addWidget(m_name, 1);
    layout->addWidget(m_passphraseCaption);
    layout->addWidget(m_passphrase, 1);
    layout->addWidget(m_unsigned);
    setPersons({});
    connect(m_passphrase, &QLineEdit::textEdited, this, [this] { m_typedBy.clear(); });
    connect(m_name, &QLineEdit::textEdited, this, [this] {
        if (!m_typedBy.isEmpty() && this->name() != m_typedBy)
            clearPassphrase();
    });
    m_kept.setSingleShot(true);
    m_kept.setInterval(keptFor_ms);
    connect(&m_kept, &QTimer::timeout, this, [this] {
        if (m_passphrase->text().isEmpty())
            return;
        clearPassphrase();
        Q_EMIT forgotten();
    });
    connect(m_passphrase, &QLineEdit::textChanged, &m_kept, qOverload<>(&QTimer::start));
    qApp->installEventFilter(this);
    for (QLineEdit *field : std::initializer_list<QLineEdit *>{m_name, m_passphrase})
        connect(field, &QLineEdit::textEdited, this, &SignatureFields::edited);
    // A name that is to sign leads to its passphrase, not past it.
    connect(m_name, &QLineEdit::returnPressed, this, [this] {
        if (!m_passphrase->isHidden() && m_passphrase->isEnabled() && m_passphrase->text().isEmpty())
            m_passphrase->setFocus();
        else
            Q_EMIT returnPressed();
    });
    connect(m_passphrase, &QLineEdit::returnPressed, this, &SignatureFields::returnPressed);
}

void SignatureFields::setPersons(const std::vector<notebook::Person> &persons)
{
    setPersons(persons, namesOffered(persons));
}

void SignatureFields::setPersons(const std::vector<notebook::Person> &persons, const QStringList &offered)
{
    m_names = namesOffered(persons);
    m_name->setOffers(offered);
    // Whoever may not decide, or is retired, is somebody all the same, and is told so.
    QStringList everybody;
    for (const notebook::Person &person : persons)
        everybody << person.name;
    m_name->setClosed(everybody);
    m_signed = !persons.empty();
    m_passphraseCaption->setVisible(m_signed);
    m_passphrase->setVisible(m_signed);
    m_unsigned->setVisible(!m_signed);
}

void SignatureFields::setName(const QString &name)
{
    m_name->setText(name);
    clearPassphrase();
}

QString SignatureFields::name() const
{
    return m_name->text().simplified();
}

bool SignatureFields::isName(const QString &text) const
{
    return !m_signed || m_names.contains(text, Qt::CaseInsensitive);
}

QString SignatureFields::passphrase() const
{
    return m_signed ? m_passphrase->text() : QString();
}

void SignatureFields::clearPassphrase()
{
    m_passphrase->clear();
    m_typedBy.clear();
}

bool SignatureFields::eventFilter(QObject *watched, QEvent *event)
{
    // Somebody who writes the reason is still there.
    const bool isAct = event->type() == QEvent::KeyPress || event->type() == QEvent::MouseButtonPress;
    if (isAct && m_kept.isActive() && watched->isWidgetType() && static_cast<QWidget *>(watched)->window() == window())
        m_kept.start();
    return QWidget::eventFilter(watched, event);
}

void SignatureFields::hideEvent(QHideEvent *event)
{
    clearPassphrase();
    QWidget::hideEvent(event);
}

void SignatureFields::focusName()
{
    m_name->setFocus();
}

bool SignatureFields::sign(Notice &notice, const std::function<void()> &act)
{
    bool isWrong = false;
    const bool done = guarded(notice, [&] {
        try {
            act();
        } catch (const notebook::WrongPassphrase &) {
            isWrong = true;
            throw;
        }
    });
    if (done || isWrong)
        clearPassphrase();
    else
        m_typedBy = m_names.contains(name(), Qt::CaseInsensitive) ? name() : QString();
    return done;
}

void SignatureFields::focusRefused()
{
    const bool isKnown = m_names.contains(name(), Qt::CaseInsensitive);
    if (m_signed && isKnown && m_passphrase->text().isEmpty())
        m_passphrase->setFocus();
    else
        focusName();
}

} // namespace plateau::ui
