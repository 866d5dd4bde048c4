// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/exchange/readingcolumn.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QSpinBox;

namespace plateau::ui {

class Theme;

/// Where in a text the readings stand.
class MappingForm : public QWidget
{
    Q_OBJECT

public:
    /// withEncoding: the text comes as bytes.
    MappingForm(const Theme &theme, bool withEncoding, QWidget *parent = nullptr);

    /// As it stands; sound or not.
    exchange::ColumnMapping mapping() const;
    void setMapping(const exchange::ColumnMapping &mapping);

Q_SIGNALS:
    void changed();

private:
    QComboBox *m_delimiter;
    QComboBox *m_decimal;
    QSpinBox *m_absorbance;
    QSpinBox *m_tube;
    QSpinBox *m_header;
    QComboBox *m_order;
    QCheckBox *m_blankLines;
    QComboBox *m_encoding;
};

} // namespace plateau::ui
