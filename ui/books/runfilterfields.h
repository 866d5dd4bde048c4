// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include "core/assay/localday.h"
#include "core/notebook/runsearch.h"

#include <QWidget>

class QComboBox;
class QGridLayout;
class QLineEdit;

namespace plateau::ui {

class NumberEntry;
class Theme;

/// What else runs are found by than words: a field for each. An empty field asks for nothing; one that cannot
/// be understood asks for nothing either, and fault() says what would be right.
class RunFilterFields : public QWidget
{
    Q_OBJECT

public:
    struct Choices {
        QStringList methods;
        QStringList persons;
        QStringList products;
        std::vector<notebook::KnownMeasurand> measurands;
    };

    explicit RunFilterFields(const Theme &theme, QWidget *parent = nullptr);

    /// Offered while typing; what stands in the fields stays.
    void setChoices(const Choices &choices);
    /// Without the words.
    notebook::RunFilter filter() const;
    void setFilter(const notebook::RunFilter &filter);
    /// One sentence that names the field; empty where all can be understood.
    QString fault() const;

Q_SIGNALS:
    void changed();

private:
    QLineEdit *addText(const QString &caption, const QString &objectName);
    QComboBox *addChoice(const QString &caption, const QString &objectName);
    void add(const QString &caption, QWidget *field, const QString &objectName);
    std::optional<QDate> dayIn(const QLineEdit *field, assay::MonthAlone month) const;

    const Theme &m_theme;
    QGridLayout *m_grid;
    int m_fields = 0;
    QLineEdit *m_sample;
    QLineEdit *m_product;
    QLineEdit *m_method;
    QLineEdit *m_person;
    QLineEdit *m_lot;
    QLineEdit *m_standard;
    QLineEdit *m_from;
    QLineEdit *m_to;
    QComboBox *m_state;
    QComboBox *m_flag;
    QComboBox *m_measurand;
    NumberEntry *m_least;
    NumberEntry *m_most;
    std::vector<notebook::KnownMeasurand> m_measurands;
};

} // namespace plateau::ui
