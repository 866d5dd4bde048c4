// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

QT_BEGIN_NAMESPACE
class QLabel;
class QScrollArea;
QT_END_NAMESPACE

namespace plateau::ui {

class Theme;

/// Labelled horizontal bars, first one on top, each with its whole label written over it; more than there is room for
/// are scrolled. The labels carry the numbers, and so does the accessible description.
class BarChart : public QWidget
{
    Q_OBJECT

public:
    struct Bar {
        QString label;
        double value = 0;
        bool operator==(const Bar &) const = default;
    };

    BarChart(const Theme &theme, const QString &accessibleName, QWidget *parent = nullptr);
    /// caption: what the length of a bar means, with its unit. Values are finite and not negative.
    void setBars(std::vector<Bar> bars, const QString &caption);
    const std::vector<Bar> &bars() const { return m_bars; }

private:
    const Theme &m_theme;
    QLabel *m_caption;
    QScrollArea *m_scroll;
    QLabel *m_nothing;
    std::vector<Bar> m_bars;
};

} // namespace plateau::ui
