// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/laboratorysection.h"

class QLineEdit;
class QPlainTextEdit;

namespace plateau::ui {

class Dialogs;
class LogoField;

/// The laboratory's name, and what stands with it at the head of a report.
class ReportHeadForm : public LaboratorySection
{
    Q_OBJECT

public:
    ReportHeadForm(const Theme &theme, Dialogs &dialogs, QWidget *parent = nullptr);
    void load(const LaboratoryDraft &draft) override;
    void store(LaboratoryDraft &draft) const override;

private:
    QLineEdit *m_name;
    QPlainTextEdit *m_address;
    QLineEdit *m_contact;
    LogoField *m_logo;
};

} // namespace plateau::ui
