// SPDX-FileCopyrightText: The Plateau developers
// SPDX-License-Identifier: GPL-3.0-only
#include "core/exchange/json.h"

#include "tests/support/print.h"
#include "tests/support/problems.h"

#include <QList>

#include <gtest/gtest.h>

namespace plateau::exchange::json {

using namespace Qt::StringLiterals;
using test::listed;
using test::names;

namespace {

const Member &member(const Document &document, std::size_t index)
{
    return std::get<Object>(document.root->value).at(index);
}

/// So many lists, one inside the other.
QByteArray nested(int depth)
{
    return QByteArray(depth, '[') + QByteArray(depth, ']');
}

} // namespace

TEST(Json, ValuesKeepTheirKindAndOrder)
{
    const Document document =
        parse(R"({"z": 1.5, "a": "t\u00e9xt", "l": [true, null], "o": {}, "n": -0.25e1})");
    ASSERT_TRUE(document.root) << listed(document.problems);
    EXPECT_TRUE(document.problems.empty());
    EXPECT_EQ(member(document, 0).key, u"z"_s);
    EXPECT_EQ(std::get<double>(member(document, 0).value.value), 1.5);
    EXPECT_EQ(member(document, 1).key, u"a"_s);
    EXPECT_EQ(std::get<QString>(member(document, 1).value.value), u"t\u00e9xt"_s);
    const List &list = std::get<List>(member(document, 2).value.value);
    ASSERT_EQ(list.size(), 2U);
    EXPECT_TRUE(std::get<bool>(list[0].value));
    EXPECT_TRUE(std::holds_alternative<Null>(list[1].value));
    EXPECT_TRUE(std::get<Object>(member(document, 3).value.value).empty());
    EXPECT_EQ(std::get<double>(member(document, 4).value.value), -2.5);
}

TEST(Json, ByteOrderMarkIsPassedOver)
{
    EXPECT_TRUE(parse("\xEF\xBB\xBF{\"a\": 1}").root);
}

TEST(Json, WhatIsNotJsonIsRefusedWithItsPlace)
{
    struct Row {
        QByteArray json;
        const char *pointer;
        const char *fragment;
    };
    const Row rows[] = {
        {"", "", "empty"},
        {" \n\t", "", "empty"},
        {"{\"a\": 1", "", "line 1, column 8: the file ends too early: it is cut off"},
        {"{\"a\": 1}\n{}", "", "line 2, column 1: this is no JSON here: a sign is missing, or there is one too many"},
        {"{\"a\": 1,}", "", "line 1, column 9: this is no JSON here"},
        {"{\n  \"\xC3\xA9\": x}", "", "line 2, column 8: this is no JSON here"},
        {"{'a': 1}", "", "line 1, column 2"},
        {"{a: 1}", "", "line 1, column 2"},
        {"{\"a\": 01}", "", "line 1, column 8"},
        {"{\"a\": +1}", "", "line 1, column 7"},
        {"{\"a\": .5}", "", "line 1, column 7"},
        {"{\"a\": 0,5}", "", "line 1, column 9"},
        {"{\"a\": 1} // note", "", "line 1, column 10"},
        {"{\"a\": \"x\ny\"}", "", "line 1, column 9: a line break, a tab or another control character"},
        {"{\"a\": \"\\ud800\"}", "", "half of a surrogate pair"},
        {"{\"a\": \"surrogate\\q\"}", "", "line 1, column 18: this is no JSON here"},
        {"{\"a\": NaN}", "", "line 1, column 7: NaN and Infinity are not numbers"},
        {"{\"a\": nan}", "", "NaN and Infinity are not numbers"},
        {"{\"a\": Infinity}", "", "NaN and Infinity are not numbers"},
        {"{\"a\": -Infinity}", "", "NaN and Infinity are not numbers"},
        {"{\"a\": [1, 1e999]}", "/a/1", "too large"},
        {"{\"a\": [1, -1e999]}", "/a/1", "too large"},
        {"[" + QByteArray(400, '9') + "]", "/0", "too large"},
        {"{\"a\": \"\xE9\"}", "", "line 1, column 8: not UTF-8"},
        {"\n\n\xFF\xFE{}", "", "line 3, column 1: not UTF-8"},
        {"{\"a\": \"\xC0\xAF\"}", "", "not UTF-8"},
        {"{\"a\": \"\xED\xA0\x80\"}", "", "not UTF-8"},
        {"{\"a\": \"\xF4\x90\x80\x80\"}", "", "not UTF-8"},
        {"{\"a\": \"\xE2\x82", "", "not UTF-8"},
    };
    for (const Row &row : rows) {
        const Document document = parse(row.json);
        EXPECT_FALSE(document.root) << row.json.toStdString();
        ASSERT_EQ(document.problems.size(), 1U) << row.json.toStdString();
        EXPECT_TRUE(names(document.problems, row.pointer, row.fragment)) << row.json.toStdString() << '\n'
                                                                         << listed(document.problems);
    }
}

TEST(Json, WhatIsCutOffAnywhereSaysThatItEndsTooEarly)
{
    const QByteArray whole = R"({"text": "a\n\u00e9", "list": [1.25e-3, -2, true, null], "last": {}})";
    ASSERT_TRUE(parse(whole).root);
    for (qsizetype size = 1; size < whole.size(); ++size) {
        for (const QByteArray &rest : {QByteArray(), QByteArray(512, '\0')}) {
            const Document document = parse(whole.first(size) + rest);
            EXPECT_FALSE(document.root) << size;
            ASSERT_EQ(document.problems.size(), 1U) << size;
            EXPECT_TRUE(names(document.problems, "", "ends too early: it is cut off or was not written to its end"))
                << size << '\n' << listed(document.problems);
        }
    }
    EXPECT_TRUE(names(parse("{\n \"a\": [1,\n").problems, "", "line 3, column 1: the file ends too early"));
    EXPECT_TRUE(names(parse("{\"a\": [1," + QByteArray(512, '\0')).problems, "",
                      "line 1, column 10: the file ends too early"));
}

TEST(Json, NoWordOfTheParserIsShown)
{
    for (const char *json : {"{\"a\": 1", "{\"a\": 1,}", "{a: 1}", "{\"a\": \"x\ny\"}", "{\"a\": \"\\ud800\"}",
                             "{\"a\": 01}", "[1 2]", "hello", "{\"a\": \"\\q\"}", "[1.]"}) {
        const Document document = parse(json);
        ASSERT_EQ(document.problems.size(), 1U) << json;
        for (const char *word : {"parsing", "unexpected", "expected", "literal", "syntax error", "U+"})
            EXPECT_FALSE(document.problems[0].message.contains(QString::fromUtf8(word)))
                << listed(document.problems);
    }
}

TEST(Json, WellFormedUtf8OfEveryLengthIsRead)
{
    const Document document =
        parse("[\"a\xC2\x80\xE0\xA0\x80\xEF\xBF\xBD\xF0\x90\x80\x80\xF4\x8F\xBF\xBF\"]");
    ASSERT_TRUE(document.root) << listed(document.problems);
    EXPECT_EQ(std::get<QString>(std::get<List>(document.root->value)[0].value).toUcs4(),
              (QList<uint>{'a', 0x80, 0x800, 0xFFFD, 0x10000, 0x10FFFF}));
}

TEST(Json, KeysGivenTwiceAreAllNamedAndTheFirstCounts)
{
    const Document document =
        parse(R"({"a": {"x/y": 1, "x/y": {"deep": [1, 2]}, "z": 3}, "b": [{"k": 1, "k": 2}], "a": 5})");
    ASSERT_TRUE(document.root);
    EXPECT_EQ(document.problems.size(), 3U) << listed(document.problems);
    EXPECT_TRUE(names(document.problems, "/a/x~1y", "\"x/y\" stands here twice"))
        << listed(document.problems);
    EXPECT_TRUE(names(document.problems, "/b/0/k", "twice"));
    EXPECT_TRUE(names(document.problems, "/a", "twice"));
    const Object &first = std::get<Object>(member(document, 0).value.value);
    ASSERT_EQ(first.size(), 2U);
    EXPECT_EQ(std::get<double>(first[0].value.value), 1);
    EXPECT_EQ(std::get<double>(first[1].value.value), 3);
}

TEST(Json, NestingEndsAtItsLimit)
{
    EXPECT_TRUE(parse(nested(64)).root);
    const Document document = parse(nested(65));
    EXPECT_FALSE(document.root);
    ASSERT_EQ(document.problems.size(), 1U);
    EXPECT_TRUE(document.problems[0].message.contains(u"64 levels"_s)) << listed(document.problems);
}

TEST(Json, ANestingBombIsRefusedWithoutBeingFollowed)
{
    EXPECT_FALSE(parse(QByteArray(1'000'000, '[')).root);
    QByteArray objects;
    for (int i = 0; i < 100'000; ++i)
        objects += "{\"a\":";
    const Document document = parse(objects);
    EXPECT_FALSE(document.root);
    EXPECT_EQ(document.problems.size(), 1U);
}

TEST(Json, MoreValuesThanTheLimitAreRefused)
{
    const QByteArray most = "[" + QByteArray("1,").repeated(999'998) + "1]";
    EXPECT_TRUE(parse(most).root);
    const Document document = parse("[" + QByteArray("1,").repeated(999'999) + "1]");
    EXPECT_FALSE(document.root);
    EXPECT_TRUE(names(document.problems, "", "more than 1000000 values")) << listed(document.problems);
}

TEST(Json, MessagesNeverQuoteTheInputOverSeveralLines)
{
    const Document document = parse("{\"a\": \"" + QByteArray(10'000, 'x') + "\n\"}");
    ASSERT_EQ(document.problems.size(), 1U);
    EXPECT_LT(document.problems[0].message.size(), 200);
    EXPECT_FALSE(document.problems[0].message.contains(u'\n'));
}

} // namespace plateau::exchange::json
