// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/charts/series.h"
#include "core/charts/settings.h"
#include "core/notebook/charts.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLineEdit;

namespace plateau::ui {

class ChartSource;
class Theme;

/// What the chart is of and which of its runs are shown: the rows above it. What is offered is what has been
/// measured.
class SubjectForm : public QWidget
{
    Q_OBJECT

public:
    /// source outlives it.
    SubjectForm(const Theme &theme, ChartSource &source, QWidget *parent = nullptr);

    /// Asks anew what there is, and keeps what was chosen where it is still there; where nothing was, that
    /// with the most values is: one material where a chart is of one. Throws notebook::Failure.
    void refresh();
    /// Chooses it where it is offered.
    void choose(const charts::Subject &subject);
    /// Nothing while nothing has been measured.
    std::optional<charts::Subject> subject() const;
    /// The lots, persons and photometers of these runs are offered.
    void setRuns(const charts::Series &series);
    charts::Filter filter() const;
    /// In one sentence, a day that is none; else empty.
    QString fault() const;
    void takeFocus();

Q_SIGNALS:
    void quantityChanged();
    void subjectChanged();
    void filterChanged();

private:
    void build(const Theme &theme);
    void fillMethods();
    void fillMeasurands();
    void fillNames();
    /// Of the chosen method and measurand.
    std::vector<notebook::ChartOffer> namedOffers() const;
    void select(const charts::Subject &subject);
    charts::Quantity quantity() const;

    ChartSource &m_source;
    /// What the names are offered for.
    charts::Quantity m_namedFor = charts::Quantity::StandardRecovery;
    std::vector<notebook::ChartOffer> m_offers;
    QComboBox *m_quantity;
    QComboBox *m_method;
    QComboBox *m_measurand;
    QComboBox *m_name;
    QComboBox *m_lot;
    QComboBox *m_person;
    QComboBox *m_photometer;
    QLineEdit *m_from;
    QLineEdit *m_to;
    QCheckBox *m_rejected;
};

} // namespace plateau::ui
