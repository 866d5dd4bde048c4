// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/laboratorysection.h"

class QLineEdit;
class QPlainTextEdit;

namespace plateau::ui {

/// The photometer, and what its check records say of a reading and of the path length.
class PhotometerForm : public LaboratorySection
{
    Q_OBJECT

public:
    explicit PhotometerForm(const Theme &theme, QWidget *parent = nullptr);
    void load(const LaboratoryDraft &draft) override;
    void store(LaboratoryDraft &draft) const override;

private:
    QLineEdit *m_name;
    NumberEntry *m_absorbance;
    NumberEntry *m_pathLength_percent;
    QPlainTextEdit *m_source;
    QLineEdit *m_checkedOn;
    /// As they were loaded: a line cannot show everything that a text may hold.
    PhotometerDraft m_loaded;
    PhotometerDraft m_shown;
    PhotometerDraft typed() const;
};

} // namespace plateau::ui
