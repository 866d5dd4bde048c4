// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/bench/samplechoices.h"
#include "ui/shared/table.h"

#include <QStringList>

namespace plateau::ui {

class SampleChoicesModel;

/// The samples of a run, decided by keys: A accepts those that are chosen, R rejects them, W has them
/// repeated, both asking why at once, Delete leaves them to the run; a digit says how one is repeated. In the columns of reason and of
/// how it is repeated letters type.
class SampleChoicesTable : public Table
{
    Q_OBJECT

public:
    SampleChoicesTable(const Theme &theme, SampleChoicesModel *model, QWidget *parent = nullptr);

    static QString keysHint();
    /// How a repeat is typed.
    static QString howHint();
    /// What is offered where a sample is accepted by itself, and where it is not.
    void setReasons(const QStringList &forAccepting, const QStringList &forRejecting);
    /// First the one that was given for what was chosen just before: it is kept only where somebody takes it again.
    QStringList reasons(SampleChoice choice) const;
    /// The first sample that is still undecided, if there is one, is chosen.
    void goToUndecided();
    void goTo(int row, int column);
    /// To that sample's row, in the column where the keys were; nowhere before they were here.
    void goToSample(const QString &sample);
    /// At most so many rows high.
    void setRowsShown(int most);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void commitData(QWidget *editor) override;
    void closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint) override;

private:
    void choose(SampleChoice choice);
    bool isText(const QModelIndex &index) const;
    /// Whether the key begins how the current sample is repeated.
    bool beginsHow(const QKeyEvent &event) const;
    std::vector<int> chosenRows() const;

    SampleChoicesModel *m_choices;
    QStringList m_acceptanceReasons;
    QStringList m_rejectionReasons;
    /// While the reason of another choice is asked for.
    QString m_reasonBefore;
};

} // namespace plateau::ui
