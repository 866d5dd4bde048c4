// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

namespace plateau::ui {

class Theme;
struct PanelPicture;

/// What is drawn in a control chart and has no words beside it there.
enum class KeyShape { OutOfControl, Warning, LeftOut, ActionLine, WarningLine, Change };

struct ChartKeyEntry {
    KeyShape shape = KeyShape::OutOfControl;
    QString words;
    bool operator==(const ChartKeyEntry &) const = default;
};

/// Of what these panels show, and of nothing else. A trend has limits of a product, which have their words beside
/// them.
std::vector<ChartKeyEntry> keyOf(const std::vector<const PanelPicture *> &panels, bool isTrend, bool hasChanges);

/// The key in one line below a chart, in more where it is narrower.
class ChartKey : public QWidget
{
    Q_OBJECT

public:
    explicit ChartKey(const Theme &theme, QWidget *parent = nullptr);

    /// Hides where there are none.
    void setEntries(std::vector<ChartKeyEntry> entries);
    const std::vector<ChartKeyEntry> &entries() const { return m_entries; }
    void paintOn(QPainter &painter, const QRectF &area) const;

    /// Not heightForWidth: the layout around it would take what the panels like best for the least that they need.
    int heightIn(int width) const;

protected:
    void resizeEvent(QResizeEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    /// Left ends of the entries and their lines, counted from 0.
    std::vector<QPoint> placesIn(int width) const;
    void fitHeight();

    const Theme &m_theme;
    std::vector<ChartKeyEntry> m_entries;
};

} // namespace plateau::ui
