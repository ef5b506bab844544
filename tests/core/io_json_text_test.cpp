// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/json_text.h"

#include <catch2/catch.hpp>
#include <limits>

using namespace grainwise;

namespace {

/// The one problem of a text that is broken.
Problem onlyProblem(const std::string& text) {
  const JsonText json = parseJson(text);
  INFO(text);
  CHECK(json.broken);
  REQUIRE(json.finds.size() == 1);
  CHECK_FALSE(json.finds.front().problem.fix.empty());
  return json.finds.front().problem;
}

std::string nestedLists(int lists, const std::string& inside = "") {
  const auto n = static_cast<std::size_t>(lists);
  return "{\"a\": " + std::string(n, '[') + inside + std::string(n, ']') + "}";
}

}  // namespace

TEST_CASE("a JSON value knows its line, its digits and its own text") {
  const std::string text =
      "\xEF\xBB\xBF{\r\n \"a\" : 1.50 ,\n\n\"b\":[true,null , -0.0e1,\"x\\ty\"]\n, \"c\": {} }\n";
  const JsonText json = parseJson(text);
  REQUIRE_FALSE(json.broken);
  CHECK(json.root.line == 1);
  const JsonValue* a = json.root.find("a");
  REQUIRE(a);
  CHECK(a->line == 2);
  CHECK(a->text == "1.50");
  const JsonValue* b = json.root.find("b");
  REQUIRE(b);
  CHECK(b->line == 4);
  CHECK(json.raw(*b) == "[true,null , -0.0e1,\"x\\ty\"]");
  REQUIRE(b->children.size() == 4);
  CHECK(b->children[0].boolean);
  CHECK(b->children[1].kind == JsonKind::null);
  CHECK(b->children[2].text == "-0.0e1");
  CHECK(b->children[3].text == "x\ty");
  CHECK(json.raw(b->children[3]) == "\"x\\ty\"");
  const JsonValue* c = json.root.find("c");
  REQUIRE(c);
  CHECK(c->line == 5);
  CHECK(json.raw(*c) == "{}");
  CHECK(&json.nearest("/b/3") == &b->children[3]);
  CHECK(&json.nearest("/b/4") == b);
  CHECK(&json.nearest("/d/0") == &json.root);
}

TEST_CASE("a pointer finds keys with slashes and tildes") {
  const JsonText json = parseJson(R"({"a/b": {"~c": 7}})");
  CHECK(json.nearest("/a~1b/~0c").text == "7");
}

TEST_CASE("a duplicate key is reported at its own pointer and line, each time") {
  const JsonText json =
      parseJson("{\"a\": [0, {\"k/\": 1,\n \"k/\": 2, \"j\": 3}],\n\"a\": 4, \"k/\": 5}");
  CHECK_FALSE(json.broken);
  REQUIRE(json.finds.size() == 2);
  CHECK(json.finds[0].problem.pointer == "/a/1/k~1");
  CHECK(json.finds[0].problem.line == 2);
  CHECK(json.finds[1].problem.pointer == "/a");
  CHECK(json.finds[1].problem.line == 3);
}

TEST_CASE("an escaped key that spells the same is a duplicate") {
  CHECK(parseJson(R"({"a": 1, "\u0061": 2})").finds.size() == 1);
}

TEST_CASE("nesting counts the outermost object as level 1") {
  CHECK_FALSE(parseJson(nestedLists(31)).broken);
  CHECK(onlyProblem(nestedLists(32)).what.text().find("deeper than 32") != std::string::npos);
  CHECK_FALSE(parseJson(nestedLists(30, "{}")).broken);
  CHECK(parseJson(nestedLists(31, "{}")).broken);
  CHECK(parseJson(std::string(100000, '[')).broken);
}

TEST_CASE("what is no JSON is refused with its line, place and advice") {
  struct Row {
    const char* text;
    int line;
    const char* pointer;
    const char* says;
    const char* fix;
  };
  const std::vector<Row> rows{
      {"", 1, "", "the file is empty", "give one JSON object"},
      {" \n ", 1, "", "the file is empty", "give one JSON object"},
      {"\xEF\xBB\xBF", 1, "", "too early", "cut off"},
      {"[1]", 1, "", "holds a list", "one JSON object"},
      {"\n 12", 2, "", "holds a number", "one JSON object"},
      {"\"x\"", 1, "", "holds text", "one JSON object"},
      {"{\"a\": 1", 1, "", "too early", "cut off"},
      {"{\"a\":\n\"xy", 2, "/a", "too early", "cut off"},
      {"{\"a\": [1,\n tru", 2, "/a/1", "too early", "cut off"},
      {"{\"a\": 1}\n x", 2, "", "something follows", "end the file there"},
      {"{\"a\": 1}{}", 1, "", "something follows", "end the file there"},
      {"{\"a\": 1,\n}", 2, "", "'}'", "name in double quotes"},
      {"{a: 1}", 1, "", "'a'", "name in double quotes"},
      {"{\"a\" 1}", 1, "/a", "'1'", "colon"},
      {"{\"a\": 1\n\"b\": 2}", 2, "", "cannot stand here", "comma"},
      {"{\"a\": [1\n2]}", 2, "/a/1", "'2'", "comma"},
      {"{\"a\": 'x'}", 1, "/a", "'''", "text in double quotes"},
      {"{\"a\": 013}", 1, "", "'013'", "comma"},
      {"{\"a\": +1}", 1, "/a", "'+1'", "give a number"},
      {"{\"a\": .5}", 1, "/a", "'.5'", "give a number"},
      {"{\"a\": 1.}", 1, "/a", "'}'", "write numbers as"},
      {"{\"a\": 0x10}", 1, "", "0x10", "comma"},
      {"{\"a\": \"x\ny\"}", 1, "/a", "line break", "\\n"},
      {"{\"a\": \"\\q\"}", 1, "/a", "'q'", "backslash"},
      {"{\"a\": \"\\ud800\"}", 1, "/a", "cannot stand here", "the character itself"},
      {"{\"a\": 1} // note", 1, "", "something follows", "end the file there"},
      {"{ // note\n\"a\": 1}", 1, "", "'/'", "name in double quotes"},
      {"{\"a\": [1, 1e999]}", 1, "/a/1", "the number 1e999 is too large", "finite"},
      {"{\"a\": {\"b\": NaN}}", 1, "/a/b", "NaN is no number", "finite"},
      {"{\"a\": [-Infinity]}", 1, "/a/0", "-Infinity is no number", "finite"},
      {"{\"a\": inf}", 1, "/a", "inf is no number", "finite"},
  };
  for (const Row& row : rows) {
    const Problem p = onlyProblem(row.text);
    INFO("text: " << row.text << "\nsaid: " << describe(p));
    CHECK(p.line == row.line);
    CHECK(p.pointer == row.pointer);
    CHECK(p.what.text().find(row.says) != std::string::npos);
    CHECK(p.fix.text().find(row.fix) != std::string::npos);
  }
}

TEST_CASE("bytes that are no text are refused where they stand") {
  using namespace std::string_literals;
  CHECK(onlyProblem("{\"a\": 1}\n\0"s).line == 2);
  CHECK(onlyProblem("{\"a\": 1}\n\0"s).what.text().find("NUL") != std::string::npos);
  CHECK(onlyProblem("{\"a\": \"\0\"}"s).what.text().find("NUL") != std::string::npos);
  const std::vector<std::string> bad{
      "\xFF",        "\x80",         "\xC0\xAF",         "\xC3",
      "\xE2\x82",    "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xF8\x88\x80\x80\x80",
      "\xE0\x80\x80"};
  for (const std::string& bytes : bad) {
    const Problem p = onlyProblem("{\n\"a\": \"" + bytes + "\"}");
    CHECK(p.line == 2);
    CHECK(p.what.text().find("UTF-8") != std::string::npos);
    CHECK(onlyProblem("{}" + bytes).what.text().find("UTF-8") != std::string::npos);
  }
  CHECK_FALSE(parseJson("{\"a\": \"\u00e9\u2020\U0001F41F\"}").broken);
  CHECK(onlyProblem("\xFE\xFF{}"s).what.text().find("UTF-8") != std::string::npos);
  CHECK(parseJson("\xEF\xBB\xBF\xEF\xBB\xBF{}").broken);
}

TEST_CASE("a text over the size limit is refused before it is read") {
  const std::string text = "{\"a\": 1}";
  CHECK_FALSE(parseJson(text, limits::kNesting, text.size()).broken);
  CHECK(parseJson(text, limits::kNesting, text.size() - 1).broken);
}

TEST_CASE("a number is what JSON calls one, and nothing else is") {
  struct Row {
    const char* digits;
    std::optional<double> value;
  };
  const std::vector<Row> rows{
      {"0", 0.0},
      {"-0", -0.0},
      {"13.0", 13.0},
      {"0.024", 0.024},
      {"1e3", 1000.0},
      {"1E+3", 1000.0},
      {"25e-1", 2.5},
      {"1e-400", 0.0},
      {"-1e-400", -0.0},
      {"0.1e400", {}},
      {"1e400", {}},
      {"1e99999999999999999999", {}},
      {"1e-99999999999999999999", 0.0},
      {"", {}},
      {"-", {}},
      {"01", {}},
      {"1.", {}},
      {".5", {}},
      {"+1", {}},
      {"1e", {}},
      {"1e+", {}},
      {" 1", {}},
      {"1 ", {}},
      {"1,5", {}},
      {"nan", {}},
      {"inf", {}},
      {"0x1", {}},
      {"--1", {}},
      {"1.5.2", {}},
      {"4.9e-324", 4.9e-324},
      {"0.000e5", 0.0},
  };
  for (const Row& row : rows) {
    INFO(row.digits);
    CHECK(jsonNumber(row.digits) == row.value);
  }
}

TEST_CASE("quoted text reads back as itself") {
  std::string text = "plain \"quoted\" back\\slash / \u00e9 \U0001F41F";
  for (char c = 1; c < 0x20; ++c) text += c;
  text += '\x7F';
  text += '\0';
  const std::string object = "{\"a\": " + jsonQuoted(text) + "}";
  const JsonText json = parseJson(object);
  REQUIRE_FALSE(json.broken);
  CHECK(json.root.find("a")->text == text);
}
