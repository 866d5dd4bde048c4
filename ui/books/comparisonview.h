// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/records.h"

#include <QWidget>

class QLabel;

namespace plateau::ui {

class ComparisonModel;
class MethodsModel;
class Table;
class Theme;

/// The versions of one method, and what differs between the one on show and the one that is chosen here.
class ComparisonView : public QWidget
{
    Q_OBJECT

public:
    explicit ComparisonView(const Theme &theme, QWidget *parent = nullptr);

    /// contentHash: of the method on show, which has to be in the catalogue.
    void show(const std::vector<notebook::StoredMethod> &catalogue, const QString &contentHash);
    void takeFocus();
    void choose(const QString &contentHash);

Q_SIGNALS:
    void methodWanted(const QString &contentHash);

private:
    void compare(int row);

    const Theme &m_theme;
    MethodsModel *m_versions;
    ComparisonModel *m_differences;
    Table *m_versionsTable;
    QLabel *m_said;
    Table *m_differencesTable;
    std::vector<notebook::StoredMethod> m_catalogue;
    QString m_shown;
};

} // namespace plateau::ui
