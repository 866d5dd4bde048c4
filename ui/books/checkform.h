// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/equipment/protocol.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QScrollArea;

namespace plateau::ui {

class CellsModel;
class CellsTable;
class FactsModel;
class Notice;
class NumberField;
class SentenceList;
class Table;
class Theme;

/// Where a check of an item is keyed: its conditions, its lines, and beside them what comes of it with every
/// key.
class CheckForm : public QWidget
{
    Q_OBJECT

public:
    explicit CheckForm(const Theme &theme, QWidget *parent = nullptr);

    /// What was keyed and not stored of the same item stays.
    void start(const equipment::HeldItem &held, const QDate &today);
    qint64 itemId() const { return m_held.id; }
    bool hasUnsavedChanges() const;
    void markStored();
    void takeFocus();
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    void wanted(const plateau::equipment::Check &check);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QWidget *buildLeft();
    QWidget *buildRight();
    equipment::Aspect aspect() const;
    void takeAspect();
    void buildFields();
    void buildCells();
    equipment::Check keyed(assay::Problems &problems) const;
    void judge();
    void showOutcome(const equipment::Check &check, const assay::Problems &problems);
    void store();
    void goTo(const QString &pointer);
    static void paste(CellsModel &model, int row, int column, const QString &text);

    const Theme &m_theme;
    equipment::HeldItem m_held;
    equipment::Protocol m_protocol;
    QDate m_today;
    QLabel *m_heading;
    Notice *m_notice;
    QComboBox *m_aspect = nullptr;
    QLineEdit *m_day = nullptr;
    QWidget *m_fieldsHost = nullptr;
    QFormLayout *m_fields = nullptr;
    std::vector<NumberField *> m_numbers;
    QLineEdit *m_source = nullptr;
    QLineEdit *m_note = nullptr;
    QWidget *m_cellsHost = nullptr;
    CellsModel *m_cells = nullptr;
    CellsTable *m_table = nullptr;
    SentenceList *m_how = nullptr;
    FactsModel *m_findings = nullptr;
    Table *m_findingsTable = nullptr;
    SentenceList *m_verdict = nullptr;
};

} // namespace plateau::ui
