// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/json.h"

#include "core/assay/label.h"
#include "core/exchange/utf8.h"

#include <nlohmann/json.hpp>

#include <QCoreApplication>
#include <QSet>

#include <algorithm>
#include <list>
#include <string_view>

namespace plateau::exchange::json {

using namespace Qt::StringLiterals;
using assay::pointerTo;

namespace {

struct JsonWording {
    Q_DECLARE_TR_FUNCTIONS(plateau::exchange::Json)
};

/// What is wrong in our own words, since the parser's are English in every language.
QString reason(const std::string &what)
{
    const std::string_view all = what;
    const std::string_view own = all.substr(0, all.find("; last read:")); // what follows quotes the input
    const auto says = [own](std::string_view words) { return own.find(words) != std::string_view::npos; };
    if (says("control character"))
        return JsonWording::tr("%1: a line break, a tab or another control character stands in a text as it is; "
                               "write it as \\n, \\t or \\u and its number");
    if (says("surrogate"))
        return JsonWording::tr("%1: half of a surrogate pair stands in a text; write the character itself");
    return JsonWording::tr("%1: this is no JSON here: a sign is missing, or there is one too many");
}

/// True where nothing is left to read. A file that was not written to its end may be filled up with zeros.
bool isEnd(const QByteArray &json, qsizetype offset)
{
    return offset >= json.size() || json[offset] == '\0';
}

/// True if the parser stumbled over one of the words that other programs write for what is no number.
bool stumbledOverNaN(const QByteArray &json, qsizetype offset)
{
    const QByteArray here = json.mid(offset, 3).toLower();
    return here == "nan" || here == "inf" || (offset > 0 && json.mid(offset - 1, 3).toLower() == "nan");
}

/// Builds the tree from the parser's events, keeps the path, and stops at the limits.
class Builder
{
public:
    using number_integer_t = nlohmann::json::number_integer_t;
    using number_unsigned_t = nlohmann::json::number_unsigned_t;
    using number_float_t = nlohmann::json::number_float_t;
    using string_t = nlohmann::json::string_t;
    using binary_t = nlohmann::json::binary_t;

    Builder(const QByteArray &json, Document &document)
        : m_json(json)
        , m_document(document)
    {
    }

    bool null() { return add({Null{}}); }
    bool boolean(bool value) { return add({value}); }
    bool number_integer(number_integer_t value) { return add({static_cast<double>(value)}); }
    bool number_unsigned(number_unsigned_t value) { return add({static_cast<double>(value)}); }
    bool number_float(number_float_t value, const string_t &) { return add({value}); }
    bool string(string_t &value) { return add({QString::fromStdString(value)}); }
    bool binary(binary_t &) { return false; }
    bool start_object(std::size_t) { return open({Object{}}); }
    bool start_array(std::size_t) { return open({List{}}); }
    bool end_object() { return close(); }
    bool end_array() { return close(); }

    bool key(string_t &value)
    {
        Frame &frame = m_open.back();
        frame.key = QString::fromStdString(value);
        frame.skipped = frame.keys.contains(frame.key);
        frame.keys.insert(frame.key);
        if (frame.skipped && m_document.problems.size() < maxProblems)
            m_document.problems.push_back(assay::error(
                pointerTo(pointer(m_open.size() - 1), frame.key),
                JsonWording::tr("the field %1 stands here twice; keep one").arg(assay::quoted(frame.key))));
        return true;
    }

    bool parse_error(std::size_t position, const std::string &, const nlohmann::json::exception &exception)
    {
        constexpr int numberOverflow = 406;
        const qsizetype offset = std::max<qsizetype>(0, static_cast<qsizetype>(position) - 1);
        const QString place = placeOf(m_json, offset).text();
        QString message;
        if (exception.id == numberOverflow)
            message = JsonWording::tr("%1: the number is too large to be used").arg(place);
        else if (stumbledOverNaN(m_json, offset))
            message = JsonWording::tr("%1: NaN and Infinity are not numbers; leave the field out").arg(place);
        else if (isEnd(m_json, offset))
            message = JsonWording::tr("%1: the file ends too early: it is cut off or was not written to its end; "
                                      "get it again")
                          .arg(place);
        else
            message = reason(exception.what()).arg(place);
        fail(exception.id == numberOverflow ? pointer(m_open.size()) : QString(), message);
        return false;
    }

private:
    struct Frame {
        Node *node = nullptr;
        QSet<QString> keys;
        QString key;
        qsizetype index = 0;
        /// The value of a key given twice is read, and dropped.
        bool skipped = false;
    };

    void fail(const QString &where, const QString &message)
    {
        m_document.root.reset();
        m_document.problems = {assay::error(where, message)};
    }

    /// The place of the value that comes next in the innermost of so many open containers.
    QString pointer(std::size_t depth) const
    {
        QString path;
        for (std::size_t i = 0; i < depth; ++i) {
            const Frame &frame = m_open[i];
            path = std::holds_alternative<Object>(frame.node->value) ? pointerTo(path, frame.key)
                                                                     : pointerTo(path, frame.index);
        }
        return path;
    }

    /// Puts the value where it belongs and says where that is; an open container's own place never moves,
    /// since only the innermost one grows.
    Node *place(Node &&node)
    {
        if (m_open.empty())
            return &m_document.root.emplace(std::move(node));
        Frame &frame = m_open.back();
        if (frame.skipped)
            return &m_dropped.emplace_back(std::move(node));
        if (auto *list = std::get_if<List>(&frame.node->value))
            return &list->emplace_back(std::move(node));
        return &std::get<Object>(frame.node->value).emplace_back(Member{frame.key, std::move(node)}).value;
    }

    bool add(Node &&node)
    {
        if (++m_values > maxValues) {
            fail({}, JsonWording::tr("the document holds more than %1 values").arg(maxValues));
            return false;
        }
        place(std::move(node));
        advance();
        return true;
    }

    bool open(Node &&node)
    {
        if (m_open.size() >= maxDepth) {
            fail(pointer(m_open.size()), JsonWording::tr("nested more than %1 levels deep").arg(maxDepth));
            return false;
        }
        if (++m_values > maxValues) {
            fail({}, JsonWording::tr("the document holds more than %1 values").arg(maxValues));
            return false;
        }
        Node *placed = place(std::move(node));
        m_open.emplace_back().node = placed;
        return true;
    }

    bool close()
    {
        m_open.pop_back();
        advance();
        return true;
    }

    void advance()
    {
        if (!m_open.empty())
            ++m_open.back().index;
    }

    const QByteArray &m_json;
    Document &m_document;
    std::vector<Frame> m_open;
    /// A list, so that what lies in it stays in its place.
    std::list<Node> m_dropped;
    std::size_t m_values = 0;
};

} // namespace

Document parse(const QByteArray &json)
{
    Document document;
    const QByteArray text = json.startsWith("\xEF\xBB\xBF") ? json.mid(3) : json;
    if (const auto offset = invalidUtf8(text)) {
        document.problems = {assay::error(
            {}, JsonWording::tr("%1: not UTF-8; save the file as UTF-8").arg(placeOf(text, *offset).text()))};
        return document;
    }
    if (text.trimmed().isEmpty()) {
        document.problems = {assay::error({}, JsonWording::tr("the document is empty"))};
        return document;
    }
    Builder builder(text, document);
    const bool complete = nlohmann::json::sax_parse(text.cbegin(), text.cend(), &builder);
    if (!complete)
        document.root.reset();
    return document;
}

} // namespace plateau::exchange::json
