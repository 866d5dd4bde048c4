// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "ui/help/helpview.h"

#include "ui/help/helppages.h"
#include "ui/help/helpsearch.h"
#include "ui/help/helptext.h"
#include "ui/shared/theme.h"

#include <QAbstractTextDocumentLayout>
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

bool isPicture(const QTextFragment &fragment)
{
    return fragment.charFormat().isImageFormat();
}

/// Calls use(cursor over the picture, its format) for each one of the page.
template <class Use> void forEachPicture(QTextDocument &page, Use use)
{
    for (QTextBlock block = page.begin(); block.isValid(); block = block.next()) {
        for (auto at = block.begin(); !at.atEnd(); ++at) {
            const QTextFragment fragment = at.fragment();
            if (!isPicture(fragment))
                continue;
            QTextCursor cursor(&page);
            cursor.setPosition(fragment.position());
            cursor.setPosition(fragment.position() + fragment.length(), QTextCursor::KeepAnchor);
            use(cursor, fragment.charFormat().toImageFormat());
        }
    }
}

bool holdsPicture(const QTextBlock &block)
{
    for (auto at = block.begin(); !at.atEnd(); ++at) {
        if (isPicture(at.fragment()))
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
void dressFragment(QTextDocument &page, const QTextFragment &fragment, const Theme &theme)
{
    QTextCharFormat format;
    if (fragment.charFormat().isAnchor())
        format.setForeground(theme.colour(State::Info));
    else if (fragment.charFormat().fontFixedPitch())
        format.setBackground(codeGround(theme));
    else
        return;
    QTextCursor cursor(&page);
    cursor.setPosition(fragment.position());
    cursor.setPosition(fragment.position() + fragment.length(), QTextCursor::KeepAnchor);
    cursor.mergeCharFormat(format);
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
    m_folders = {u"%1/%2/"_s.arg(folder, page.language), folder + u'/'};
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
    for (QTextFrame *frame : document()->rootFrame()->childFrames()) {
        if (auto *table = qobject_cast<QTextTable *>(frame))
            dressTable(*table, m_theme);
    }
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0)
            dressHeading(block, m_theme);
        std::vector<QTextFragment> fragments;
        for (auto at = block.begin(); !at.atEnd(); ++at)
            fragments.push_back(at.fragment());
        for (const QTextFragment &fragment : fragments)
            dressFragment(*document(), fragment, m_theme);
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
    forEachPicture(*document(), [&](QTextCursor &cursor, QTextImageFormat format) {
        const QImage picture = source(format.name());
        if (picture.isNull())
            return;
        const QSize shown =
            picture.width() <= width
                ? picture.size()
                : QSize(width,
                        static_cast<int>(std::lround(1.0 * picture.height() * width / picture.width())));
        const QSize pixels(static_cast<int>(std::lround(shown.width() * ratio)),
                           static_cast<int>(std::lround(shown.height() * ratio)));
        QPixmap drawn =
            QPixmap::fromImage(pixels == picture.size()
                                   ? picture
                                   : picture.scaled(pixels, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
        document()->addResource(QTextDocument::ImageResource, QUrl(format.name()), drawn);
        format.setWidth(shown.width());
        format.setHeight(shown.height());
        cursor.setCharFormat(format);
    });
}

QImage HelpView::source(const QString &name)
{
    const auto known = m_pictures.find(name);
    if (known != m_pictures.end())
        return known->second;
    QImage picture;
    for (const QString &folder : m_folders) {
        if (picture.load(folder + name) || picture.load(folder + QString(name).remove(u"../"_s)))
            break;
    }
    return m_pictures[name] = picture;
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
    const QRectF block = document()->documentLayout()->blockBoundingRect(cursor.block());
    verticalScrollBar()->setValue(static_cast<int>(block.top()));
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

bool HelpView::goTo(const QString &anchor)
{
    HeadingAnchors anchors;
    for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() == 0 || anchors.next(block.text()) != anchor)
            continue;
        setTextCursor(QTextCursor(block)); // Tab goes on from here to the next link
        document()->size();                // laid out to its end, or the view cannot scroll that far
        const QRectF heading = document()->documentLayout()->blockBoundingRect(block);
        verticalScrollBar()->setValue(block.position() == 0 ? 0 : static_cast<int>(heading.top()));
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
