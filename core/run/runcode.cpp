// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/run/runcode.h"

#include <QCryptographicHash>
#include <QTimeZone>

#include <algorithm>

namespace plateau::run {

using namespace Qt::StringLiterals;

namespace {

constexpr qsizetype digits = 12;

/// Each field with its length before it, so that no two plans give the same bytes.
class PlanHash
{
public:
    PlanHash() { add(u"plateau-run-code/1"_s); }
    void add(const QString &text)
    {
        const QByteArray bytes = text.toUtf8();
        m_hash.addData(QByteArray::number(bytes.size()) + ':');
        m_hash.addData(bytes);
    }
    void add(qsizetype number) { add(QString::number(number)); }
    void add(double number) { add(QString::number(number, 'g', QLocale::FloatingPointShortest)); }
    void add(const std::optional<double> &number)
    {
        if (number)
            add(*number);
        else
            add(QString());
    }
    void add(const std::optional<QDateTime> &moment)
    {
        add(moment ? moment->toUTC().toString(Qt::ISODateWithMs) : QString());
    }
    QByteArray result() const { return m_hash.result(); }

private:
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
};

void addStandards(PlanHash &hash, const std::vector<Standard> &standards)
{
    hash.add(qsizetype(standards.size()));
    for (const Standard &standard : standards) {
        hash.add(standard.id);
        hash.add(standard.concentration_g_per_L);
        hash.add(standard.measurand);
        hash.add(standard.preparedAt);
    }
}

void addSamples(PlanHash &hash, const std::vector<Sample> &samples)
{
    hash.add(qsizetype(samples.size()));
    for (const Sample &sample : samples) {
        hash.add(sample.id);
        hash.add(sample.form == Form::Solid ? u"solid"_s : u"liquid"_s);
        hash.add(sample.mass_g);
        hash.add(sample.extract_mL);
        hash.add(qsizetype(sample.dilution.size()));
        for (const DilutionStep &step : sample.dilution) {
            hash.add(step.take_mL);
            hash.add(step.makeUpTo_mL);
        }
    }
}

void addTubes(PlanHash &hash, const std::vector<Tube> &tubes)
{
    hash.add(qsizetype(tubes.size()));
    for (const Tube &tube : tubes) {
        hash.add(roleWord(tube.role));
        hash.add(tube.sample);
        hash.add(tube.standard);
        hash.add(tube.sampleVolume_mL);
        hash.add(tube.spike ? tube.spike->standard : QString());
        hash.add(tube.spike ? std::optional(tube.spike->volume_mL) : std::nullopt);
    }
}

} // namespace

QString runCode(const Run &run, int methodVersion)
{
    PlanHash hash;
    hash.add(run.title);
    hash.add(run.startedAt);
    hash.add(run.method);
    hash.add(qsizetype(methodVersion));
    addStandards(hash, run.standards);
    addSamples(hash, run.samples);
    addTubes(hash, run.tubes);
    quint64 number = 0;
    for (const char byte : hash.result().first(8))
        number = number << 8 | static_cast<unsigned char>(byte);
    return QString::number(number % 1'000'000'000'000u).rightJustified(digits, u'0');
}

QString groupedCode(const QString &runCode)
{
    return u"%1 %2 %3"_s.arg(runCode.first(4), runCode.sliced(4, 4), runCode.sliced(8));
}

QString scannedText(const QString &runCode)
{
    return u"PLATEAU RUN "_s + groupedCode(runCode);
}

std::optional<QString> runCodeIn(const QString &text)
{
    QString compact = text.normalized(QString::NormalizationForm_KC);
    compact.removeIf([](QChar sign) { return sign.isSpace(); });
    if (compact.size() < digits)
        return std::nullopt;
    const QString code = compact.last(digits);
    const QString before = compact.chopped(digits);
    const bool isCode = std::ranges::all_of(code, [](QChar sign) { return sign >= u'0' && sign <= u'9'; }) &&
                        std::ranges::all_of(before, [](QChar sign) { return sign.isLetter(); });
    return isCode ? std::optional(code) : std::nullopt;
}

} // namespace plateau::run
