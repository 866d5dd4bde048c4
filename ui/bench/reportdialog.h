// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/print/reportfields.h"

#include <QDialog>

#include <map>
#include <vector>

class QFormLayout;
class QLineEdit;
class QScrollArea;

namespace plateau::ui {

class Notice;
class Theme;

/// What a report needs and the program cannot know. What is left empty becomes a line to write on.
class ReportDialog : public QDialog
{
    Q_OBJECT

public:
    /// known: what the report says of a field that is left empty (knownFields).
    ReportDialog(const Theme &theme, const std::map<QString, QString> &known, QWidget *parent = nullptr);

    /// As typed; sound once the form is accepted.
    ReportFields fields() const;

    void accept() override;

private:
    struct Row {
        QString name;
        QLineEdit *entry;
    };
    QFormLayout *buildForm(const std::map<QString, QString> &known);
    int widthWanted(const QScrollArea &scroll) const;
    /// The first field that cannot be used, in one sentence.
    QString fault() const;

    const Theme &m_theme;
    std::vector<Row> m_rows;
    Notice *m_notice;
};

} // namespace plateau::ui
