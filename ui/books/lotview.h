// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"
#include "core/notebook/records.h"
#include "ui/books/lotwords.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace plateau::ui {

class ElidingLabel;
class LedgerModel;
class LotKeepingForm;
class LotLabelForm;
class Notice;
class NumberField;
class Table;
class TakingsModel;
class Theme;

/// One container: how it stands, its ledger, the runs that took from it, and a form to note what happened to
/// it. Whoever opened it stores what the signals bring and shows it anew.
class LotView : public QWidget
{
    Q_OBJECT

public:
    explicit LotView(const Theme &theme, QWidget *parent = nullptr);

    struct Facts {
        planning::Lot lot;
        LotStanding standing;
        std::vector<notebook::LotMovement> movements;
        std::vector<notebook::LotTaking> takings;
    };
    /// today: offered as the day of opening.
    void show(const Facts &facts, const QDate &today);
    void setReagents(const QStringList &names);
    /// Every container, to dissolve in and for the places there are. Before show.
    void setLots(const std::vector<planning::Lot> &lots);
    qint64 lotId() const { return m_facts.lot.id; }
    void takeFocus();
    bool hasUnsavedChanges() const;
    /// What was keyed is stored.
    void markStored(const QString &sentence);
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    void openWanted(const QDate &day);
    /// On another day than was noted, or, without one, not at all.
    void openingWanted(const std::optional<QDate> &day, const QString &reason);
    void dissolveWanted(const plateau::notebook::LotDissolving &how);
    void divideWanted(const plateau::notebook::LotDivision &how);
    void placeWanted(const plateau::planning::StoragePlace &place, const QString &note);
    void noteWanted(const QString &text);
    /// A dry one, as it came.
    void discardDryWanted(const QString &reason);
    void useWanted(double volume_mL, const QString &note);
    void discardWanted(double volume_mL, const QString &reason);
    void correctWanted(double found_mL, const QString &reason);
    void relabelWanted(const plateau::notebook::LotLabel &label, const QString &reason);
    void runWanted(plateau::notebook::RunId run);
    /// Everything that it touched, as a file.
    void traceWanted();
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    enum class Event {
        Opened,
        OpenedOtherwise,
        NotOpened,
        Dissolved,
        Divided,
        Placed,
        Used,
        Discarded,
        Corrected,
        Noted,
        Relabelled
    };

    QWidget *buildHeader();
    QWidget *buildTables();
    QWidget *buildForm();
    void addChoices();
    void renewChoices();
    Event chosen() const;
    void showFields();
    void resetFields();
    QString balanceText() const;
    void store();
    /// Nothing, which is said, where it cannot be read.
    std::optional<double> volume_mL();
    std::optional<QString> reason(bool needed);
    void storeOpening();
    void storeOpeningOtherwise(Event event);
    void storeDissolving();
    void storeDivision();
    void storePlace();
    std::optional<QDate> day();
    QStringList factsInWords() const;
    bool takesVolume(Event event) const;
    QString volumeCaption(Event event) const;
    QString reasonCaption(Event event) const;
    void storeLabel();
    void ask(QLineEdit *field, const QString &sentence);

    const Theme &m_theme;
    Facts m_facts;
    std::vector<planning::Lot> m_lots;
    QDate m_today;
    ElidingLabel *m_title;
    QLabel *m_subtitle;
    QLabel *m_shape;
    QLabel *m_balance;
    Notice *m_notice;
    LedgerModel *m_ledger;
    TakingsModel *m_takings;
    Table *m_ledgerTable = nullptr;
    Table *m_takingsTable = nullptr;
    QLabel *m_noTakings = nullptr;
    QPushButton *m_trace = nullptr;
    QFormLayout *m_form = nullptr;
    QComboBox *m_what = nullptr;
    QLineEdit *m_day = nullptr;
    NumberField *m_volume_mL = nullptr;
    QLineEdit *m_reason = nullptr;
    LotLabelForm *m_label = nullptr;
    LotKeepingForm *m_keeping = nullptr;
};

} // namespace plateau::ui
