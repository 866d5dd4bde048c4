// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "ui/books/bookpage.h"
#include "ui/books/preparationview.h"

#include <QStackedWidget>

namespace plateau::ui {

class BenchSession;
class BookList;
class Clock;
class Dialogs;
class MethodBook;
class PreparationForm;
class StandardsModel;
class Stores;
class SubstanceForm;

/// The book of standards: what was made with its strength now, one of them with the runs that used it, and
/// where substances and preparations are keyed.
class StandardsPage : public BookPage
{
    Q_OBJECT

public:
    /// All of it outlives the page.
    struct Surroundings {
        const Theme &theme;
        const Clock &clock;
        Dialogs &dialogs;
        const BenchSession &session;
        Stores &stores;
        const MethodBook &methods;
    };
    explicit StandardsPage(const Surroundings &around, QWidget *parent = nullptr);

    void open() override;
    QString unstored() const override;

protected:
    void showEvent(QShowEvent *event) override;

private:
    void buildList();
    void connectForms();
    void refresh();
    void tick();
    void showList();
    void showPreparation(qint64 id);
    const planning::HeldPreparation *find(qint64 id) const;
    /// As the newest method for its measurand states it, else as the preparation was made with.
    double statedLossPerHour(const planning::Preparation &made) const;
    std::vector<PreparationRun> runsOf(const planning::HeldPreparation &held) const;
    void openSubstance(std::optional<qint64> id);
    void storeSubstance(const planning::Substance &substance, const QString &reason);
    void storePreparation(qint64 of, const planning::Preparation &preparation);
    void printLabel();
    bool personIsKnown(Notice &notice);
    Notice &noticeOnShow();
    void goTo(QWidget *page);

    const Surroundings m_around;
    std::vector<planning::HeldPreparation> m_preparations;
    std::vector<planning::HeldSubstance> m_substances;
    StandardsModel *m_model;
    QStackedWidget *m_pages;
    BookList *m_list;
    PreparationView *m_view;
    PreparationForm *m_form;
    SubstanceForm *m_substance;
};

} // namespace plateau::ui
