// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QLocale>
#include <QString>

namespace plateau::assay {

/// The name of a component as it stands amid a sentence: "add 1 mL buffer", but "add 0.2 mL NAD solution", "10 µL L-malate
/// dehydrogenase". A first word with a further capital or a figure, or of one letter alone, is a symbol (NAD, NaOH, SO2)
/// and stays. Where nouns have a capital, in German, every name does.
QString inSentence(const QString &name, const QLocale &locale = {});

} // namespace plateau::assay
