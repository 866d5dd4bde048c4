// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/notebook/lots.h"

#include "ui/shared/theme.h"

#include <QWidget>

class QCheckBox;
class QFormLayout;

namespace plateau::ui {

class LotLabelForm;
class Notice;
class NumberField;
class OfferField;
class Theme;

/// Where a container that came in is noted. The form keeps its label for the next one of the same delivery.
class ReceiveView : public QWidget
{
    Q_OBJECT

public:
    explicit ReceiveView(const Theme &theme, QWidget *parent = nullptr);

    void setReagents(const QStringList &names);
    /// Where containers are kept already; another name makes a new place.
    void setPlaces(std::vector<planning::StoragePlace> known);
    /// Where it is put; nothing where that was not said.
    std::optional<planning::StoragePlace> place() const;
    void takeFocus();
    bool hasUnsavedChanges() const;
    /// It is in the book; the form waits for the next one.
    void markReceived(State state, const QString &sentence);
    Notice &notice() { return *m_notice; }

Q_SIGNALS:
    void received(const plateau::notebook::LotLabel &label, double volume_mL);
    /// One that is to be dissolved; the mass is absent where the label says none.
    void receivedDry(const plateau::notebook::LotLabel &label, std::optional<double> mass_mg);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void receive();
    /// What stands in the way of storing it, and where; empty where nothing does.
    QString faultOfAmount(QWidget *&where) const;
    QString fault() const;
    void dropAnsweredFault();
    void showFields();

    QFormLayout *m_form = nullptr;
    LotLabelForm *m_label;
    QCheckBox *m_dry = nullptr;
    NumberField *m_volume_mL = nullptr;
    NumberField *m_mass_mg = nullptr;
    OfferField *m_place = nullptr;
    std::vector<planning::StoragePlace> m_places;
    Notice *m_notice;
    /// As it was said at the last try to store; empty for none.
    QString m_saidFault;
};

} // namespace plateau::ui
