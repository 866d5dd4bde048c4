// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/notebook/passphrase.h"

#include "core/notebook/sentence.h"

#include <sodium.h>

#include <array>

namespace plateau::notebook {

namespace {

/// The bytes that are hashed; wiped when they go.
class Secret
{
public:
    explicit Secret(const QString &passphrase)
        : m_bytes(passphrase.normalized(QString::NormalizationForm_C).toUtf8())
    {
    }
    ~Secret() { sodium_memzero(m_bytes.data(), std::size_t(m_bytes.size())); }
    Secret(const Secret &) = delete;
    Secret &operator=(const Secret &) = delete;
    const char *data() const { return m_bytes.constData(); }
    unsigned long long size() const { return static_cast<unsigned long long>(m_bytes.size()); }

private:
    QByteArray m_bytes;
};

void startLibrary()
{
    if (sodium_init() < 0) // 1 where it runs already
        throw Failure(Failure::Kind::Storage,
                      Sentence::tr("Passphrases cannot be used, since the library for them does not start; "
                                   "nothing was stored: reinstall libsodium."));
}

} // namespace

QString passphraseHash(const QString &passphrase, PassphraseWork work)
{
    startLibrary();
    const Secret secret(passphrase);
    std::array<char, crypto_pwhash_STRBYTES> hash{};
    const bool least = work == PassphraseWork::Least;
    if (crypto_pwhash_str_alg(hash.data(), secret.data(), secret.size(),
                              least ? crypto_pwhash_OPSLIMIT_MIN : crypto_pwhash_OPSLIMIT_INTERACTIVE,
                              least ? crypto_pwhash_MEMLIMIT_MIN : crypto_pwhash_MEMLIMIT_INTERACTIVE,
                              crypto_pwhash_ALG_ARGON2ID13) != 0)
        throw Failure(Failure::Kind::Storage,
                      Sentence::tr("The passphrase was not stored, since there is not enough memory: close "
                                   "other programs and try again."));
    return QString::fromLatin1(hash.data());
}

bool passphraseFits(const QString &passphrase, const QString &hash)
{
    startLibrary();
    const Secret secret(passphrase);
    return crypto_pwhash_str_verify(hash.toLatin1().constData(), secret.data(), secret.size()) == 0;
}

} // namespace plateau::notebook
