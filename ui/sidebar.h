// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/destinationsmodel.h"

#include <QPointer>
#include <QWidget>

class QListView;
class QPushButton;

namespace plateau::ui {

class BenchSession;
class FieldNote;
class OfferField;
class Theme;

/// The left side: where to go, how to start, and who is at the bench.
class SideBar : public QWidget
{
    Q_OBJECT

public:
    SideBar(const Theme &theme, BenchSession &session, QWidget *parent = nullptr);
    /// Nobody is told of the focus any more: it moves while the fields go.
    ~SideBar() override;

    /// Marks where the window is, without going there again.
    void markRack(notebook::RunId id);
    void markBook(Book book);
    void markNothing();
    /// Asks for the name; the focus goes back where it was once one is given.
    void askPerson();
    /// As if the name had been typed.
    void setPerson(const QString &name);
    /// A quiet line below everything, which this object owns from then on.
    void addLine(QWidget *line);
    /// To where a run begins.
    void takeFocus();
    notebook::RunId rackBeside(notebook::RunId id, int step) const;

Q_SIGNALS:
    void rackWanted(plateau::notebook::RunId id);
    void bookWanted(plateau::ui::Book book);
    void newRunWanted();
    void openFileWanted();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build();
    void choose(const QModelIndex &index);
    void mark(const QModelIndex &index);
    void takePerson();
    /// To where the keys were before the name was asked for.
    void goBack();
    /// What is odd about the name; whom it could be.
    void followPersons();

    const Theme &m_theme;
    BenchSession &m_session;
    DestinationsModel *m_model;
    QListView *m_list;
    OfferField *m_person;
    FieldNote *m_oddName;
    QPushButton *m_newRun = nullptr;
    QPointer<QWidget> m_before;
    bool m_marking = false;
};

} // namespace plateau::ui
