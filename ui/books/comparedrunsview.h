// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/runcomparison.h"
#include "ui/shared/syncrows.h"

#include <QAbstractTableModel>
#include <QWidget>

class QCheckBox;
class QLabel;

namespace plateau::ui {

class BenchSession;
class Notice;
class Table;
class Theme;

class ComparedRunsModel : public RowsModel<QAbstractTableModel, ComparedLine>
{
    Q_OBJECT

public:
    enum Column { What, One, Other, ColumnCount };

    explicit ComparedRunsModel(const Theme &theme, QObject *parent = nullptr);
    /// one, other: how the runs are called.
    void show(std::vector<ComparedLine> lines, const QString &one, const QString &other);

    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant cellData(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    const Theme &m_theme;
    QString m_one;
    QString m_other;
};

/// Two runs side by side, what differs first and marked.
class ComparedRunsView : public QWidget
{
    Q_OBJECT

public:
    ComparedRunsView(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);

    /// False where the notebook could not give them; the sentence stands in the page then.
    bool show(notebook::RunId one, notebook::RunId other);
    void takeFocus();

Q_SIGNALS:
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void fill();

    BenchSession &m_session;
    ComparedRunsModel *m_model;
    QLabel *m_said;
    QCheckBox *m_onlyDifferent;
    Notice *m_notice;
    Table *m_table;
    std::vector<ComparedLine> m_lines;
    QString m_one;
    QString m_other;
};

} // namespace plateau::ui
