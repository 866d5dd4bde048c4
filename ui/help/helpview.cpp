// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helpview.h"

#include "ui/help/helppages.h"
#include "ui/help/helpsearch.h"
#include "ui/help/helptext.h"
#include "ui/shared/theme.h"

#include <QAbstractTextDocumentLayout>
#include <QDir>
#include <QPixmap>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextFrame>
#include <QTextTable>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace plateau::ui {

namespace {

/// Longer lines are hard to follow back.
constexpr int longestLine = 105;
/// Also of lines without code in them, so that all stand alike.
constexpr double lineHeight = 1.25;

/// A stretch of the page in one format. Fragments of the document come and go while formats are set.
struct Stretch {
    int position = 0;
    int length = 0;
    QTextCharFormat format;
};

std::vector<Stretch> stretchesOf(const QTextDocument &page)
{
    std::vector<Stretch> all;
    for (QTextBlock block = page.begin(); block.isValid(); block = block.next()) {
        for (auto at = block.begin(); !at.atEnd(); ++at)
            all.push_back({at.fragment().position(), at.fragment().length(), at.fragment().charFormat()});
    }
    return all;
}

QTextCursor over(QTextDocument &page, const Stretch &stretch)
{
    QTextCursor cursor(&page);
    cursor.setPosition(stretch.position);
    cursor.setPosition(stretch.position + stretch.length, QTextCursor::KeepAnchor);
    return cursor;
}

/// All that is done to the page meanwhile is laid out once, at its end.
class LaidOutOnce
{
public:
    explicit LaidOutOnce(QTextDocument *page)
        : m_cursor(page)
    {
        m_cursor.beginEditBlock();
    }
    ~LaidOutOnce() { m_cursor.endEditBlock(); }
    LaidOutOnce(const LaidOutOnce &) = delete;
    LaidOutOnce &operator=(const LaidOutOnce &) = delete;

private:
    QTextCursor m_cursor;
};

bool holdsPicture(const QTextBlock &block)
{
    for (auto at = block.begin(); !at.atEnd(); ++at) {
        if (at.fragment().charFormat().isImageFormat())
            return true;
    }
    return false;
}

void dressTable(QTextTable &table, const Theme &theme)
{
    QTextTableFormat format = table.format();
    format.setBorder(1);
    format.setBorderCollapse(true);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderBrush(theme.colour(State::Pending));
    format.setCellPadding(theme.gap());
    format.setCellSpacing(0);
    format.setTopMargin(theme.gap());
    format.setBottomMargin(theme.gap());
    table.setFormat(format);
}

void dressHeading(const QTextBlock &block, const Theme &theme)
{
    QTextCursor cursor(block);
    QTextBlockFormat format;
    format.setTopMargin(block.blockFormat().headingLevel() == 1 ? 0 : theme.wideGap() * 1.2);
    format.setBottomMargin(theme.gap());
    cursor.mergeBlockFormat(format);
}

/// A little off the ground towards the text.
QColor codeGround(const Theme &theme)
{
    constexpr int part = 10;
    const QColor ground = theme.base();
    const QColor text = theme.text();
    const auto mix = [](int a, int b) { return a + (b - a) * part / 100; };
    return QColor(mix(ground.red(), text.red()), mix(ground.green(), text.green()),
                  mix(ground.blue(), text.blue()));
}

/// The toolkit writes links in a blue of its own, whatever ground they stand on.
void dressStretch(QTextDocument &page, const Stretch &stretch, const Theme &theme)
{
    QTextCharFormat format;
    if (stretch.format.isAnchor())
        format.setForeground(theme.colour(State::Info));
    else if (stretch.format.fontFixedPitch())
        format.setBackground(codeGround(theme));
    else
        return;
    over(page, stretch).mergeCharFormat(format);
}

} // namespace

HelpView::HelpView(const Theme &theme, QWidget *parent)
    : QTextBrowser(parent)
    , m_theme(theme)
{
    setOpenLinks(false);
    setUndoRedoEnabled(false);
    setFrameShape(QFrame::StyledPanel);
    connect(&theme, &Theme::changed, this, [this] {
        const int before = verticalScrollBar()->value();
        dress();
        verticalScrollBar()->setValue(before);
    });
}

void HelpView::showPage(const HelpPage &page, const QString &folder)
{
    m_markdown = page.markdown;
    m_folder = u"%1/%2/"_s.arg(folder, page.language);
    m_pictures.clear();
    dress();
    verticalScrollBar()->setValue(0);
}

void HelpView::dress()
{
    document()->clear();
    document()->setDocumentMargin(m_theme.wideGap());
    document()->setIndentWidth(2 * m_theme.wideGap());
    setMarkdown(m_markdown);
    {
        const LaidOutOnce all(document());
        for (QTextFrame *frame : document()->rootFrame()->childFrames()) {
            if (auto *table = qobject_cast<QTextTable *>(frame))
                dressTable(*table, m_theme);
        }
        for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
            if (block.blockFormat().headingLevel() > 0)
                dressHeading(block, m_theme);
        }
        for (const Stretch &stretch : stretchesOf(*document()))
            dressStretch(*document(), stretch, m_theme);
    }
    m_fitted = 0;
    fit();
    markWords(m_marked);
}

void HelpView::fit()
{
    const int width = viewport()->width() - 2 * static_cast<int>(std::ceil(document()->documentMargin()));
    if (width == m_fitted || width < m_theme.wideGap())
        return;
    m_fitted = width;
    const LaidOutOnce all(document());
    fitText(width);
    fitPictures(width);
}

void HelpView::fitText(int width)
{
    const int beside = std::max(0, width - fontMetrics().averageCharWidth() * longestLine);
    QTextBlockFormat format;
    format.setRightMargin(beside);
    format.setLineHeight(fontMetrics().height() * lineHeight, QTextBlockFormat::MinimumHeight);
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        QTextCursor cursor(block);
        if (!cursor.currentTable() && !holdsPicture(block) &&
            (block.blockFormat().rightMargin() != format.rightMargin() ||
             block.blockFormat().lineHeightType() != format.lineHeightType()))
            cursor.mergeBlockFormat(format);
    }
}

/// The document draws a picture pixel by pixel into the place it gets, so it is made in the size of that
/// place beforehand. One that is small stays as it is.
void HelpView::fitPictures(int width)
{
    const double ratio = devicePixelRatioF();
    for (const Stretch &stretch : stretchesOf(*document())) {
        QTextImageFormat format = stretch.format.toImageFormat();
        const QImage picture = format.isValid() ? source(format.name()) : QImage();
        if (picture.isNull())
            continue;
        const double scale = std::min(1.0, 1.0 * width / picture.width());
        const QSize shown = (QSizeF(picture.size()) * scale).toSize();
        const QSize pixels = (QSizeF(shown) * ratio).toSize();
        const QPixmap drawn =
            QPixmap::fromImage(pixels == picture.size()
                                   ? picture
                                   : picture.scaled(pixels, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
        document()->addResource(QTextDocument::ImageResource, QUrl(format.name()), drawn);
        format.setWidth(shown.width());
        format.setHeight(shown.height());
        over(*document(), stretch).setCharFormat(format);
    }
}

QImage HelpView::source(const QString &name)
{
    const auto known = m_pictures.find(name);
    if (known != m_pictures.end())
        return known->second;
    return m_pictures[name] = QImage(QDir::cleanPath(m_folder + name));
}

QVariant HelpView::loadResource(int type, const QUrl &name)
{
    if (type == QTextDocument::ImageResource)
        return source(name.toString());
    return {}; // nothing else is part of a page, and nothing is fetched
}

void HelpView::resizeEvent(QResizeEvent *event)
{
    // A little below the edge, where no heading's margin belongs to what stands above it.
    const int reading = cursorForPosition(QPoint(m_theme.wideGap(), m_theme.wideGap())).position();
    QTextBrowser::resizeEvent(event);
    if (verticalScrollBar()->value() == 0) {
        fit();
        return;
    }
    fit();
    QTextCursor cursor(document());
    cursor.setPosition(std::min(reading, document()->characterCount() - 1));
    bringUp(cursor.block());
}

/// Without a link in hand the toolkit begins at the page's first one, however far away from what is read.
bool HelpView::focusNextPrevChild(bool next)
{
    if (textCursor().hasSelection())
        return QTextBrowser::focusNextPrevChild(next);
    const int scrolled = verticalScrollBar()->value();
    QTextCursor top = cursorForPosition(QPoint(m_theme.wideGap(), m_theme.wideGap()));
    top.movePosition(QTextCursor::StartOfBlock);
    const int from = top.position();
    top.movePosition(QTextCursor::NextCharacter, QTextCursor::KeepAnchor);
    setTextCursor(top);
    verticalScrollBar()->setValue(scrolled);
    const bool moved = QTextBrowser::focusNextPrevChild(next);
    if (textCursor().selectionStart() == from && textCursor().selectionEnd() == from + 1) {
        top.clearSelection(); // there was no further link
        setTextCursor(top);
        verticalScrollBar()->setValue(scrolled);
    }
    return moved;
}

QStringList HelpView::anchors() const
{
    QStringList all;
    HeadingAnchors anchors;
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0)
            all << anchors.next(block.text());
    }
    return all;
}

void HelpView::bringUp(const QTextBlock &block)
{
    document()->size(); // laid out to its end, or the view cannot scroll that far
    const QRectF area = document()->documentLayout()->blockBoundingRect(block);
    verticalScrollBar()->setValue(block.position() == 0 ? 0 : static_cast<int>(area.top()) - m_theme.gap());
}

bool HelpView::goTo(const QString &anchor)
{
    HeadingAnchors anchors;
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() == 0 || anchors.next(block.text()) != anchor)
            continue;
        setTextCursor(QTextCursor(block));
        bringUp(block);
        return true;
    }
    return false;
}

void HelpView::markWords(const QStringList &foldedStarts)
{
    m_marked = foldedStarts;
    QList<QTextEdit::ExtraSelection> marks;
    for (QTextBlock block = document()->begin(); block.isValid() && !foldedStarts.isEmpty();
         block = block.next()) {
        for (const auto &[position, length] : wordsFound(block.text(), foldedStarts)) {
            QTextEdit::ExtraSelection mark;
            mark.cursor = QTextCursor(block);
            mark.cursor.setPosition(block.position() + position);
            mark.cursor.setPosition(block.position() + position + length, QTextCursor::KeepAnchor);
            mark.format.setBackground(m_theme.tint(State::Attention));
            marks << mark;
        }
    }
    setExtraSelections(marks);
}

} // namespace plateau::ui
