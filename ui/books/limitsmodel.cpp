// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/books/limitsmodel.h"

#include "core/assay/localday.h"
#include "core/evaluation/format.h"
#include "ui/books/limitswords.h"

namespace plateau::ui {

QString LimitsModel::text(const evaluation::Specification &limit, int column) const
{
    switch (column) {
    case Product:
        return limit.product;
    case Measurand:
        return m_names.nameOf(limit.measurand);
    case Kind:
        return limitKindText(limit.kind);
    case Limit:
        // Of a threshold the column beside it says what it is.
        return limit.kind == evaluation::LimitKind::LabelThreshold && limit.upper
                   ? evaluation::withUnit(evaluation::plainText(*limit.upper), evaluation::reportUnitWord(limit.unit))
                   : evaluation::limitText(limit);
    case Rule:
        return decisionRuleText(limit);
    case Source:
        return limit.source.simplified();
    case Date:
        return assay::shownDay(limit.date);
    default:
        return {};
    }
}

QString LimitsModel::heading(int column) const
{
    switch (column) {
    case Product:
        return tr("Product");
    case Measurand:
        return tr("Measurand");
    case Kind:
        return tr("Kind");
    case Limit:
        return tr("Limit");
    case Rule:
        return tr("Decision rule");
    case Source:
        return tr("Source");
    case Date:
        return tr("As of");
    default:
        return {};
    }
}

} // namespace plateau::ui
