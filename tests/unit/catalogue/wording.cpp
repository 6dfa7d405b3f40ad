#include "catalogue/wording.h"

#include <catch2/catch.hpp>
#include <fstream>

#include "catalogue/amounts.h"
#include "catalogue/style.h"
#include "read/read.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

// Plain blanks for no-break ones, so that expectations can be read.
std::string plain(std::string text) {
  for (size_t at; (at = text.find("\u00A0")) != std::string::npos;) text.replace(at, 2, " ");
  return text;
}

Wording words(UnitSystem units, std::map<std::string, std::string> more = {}) {
  auto world = real_world();
  auto all = read_wording(*world, "en", units).value.value().sentences();
  more.merge(all);
  return Wording(std::move(more), units);
}

std::string metric(const Arg& arg, std::string_view form = "") {
  static const Wording w = words(UnitSystem::metric);
  return plain(w.amount(arg, form));
}

std::string us(const Arg& arg, std::string_view form = "") {
  static const Wording w = words(UnitSystem::us);
  return plain(w.amount(arg, form));
}

}  // namespace

TEST_CASE("metric amounts are in units of handy size") {
  CHECK(metric(Millimetres{5}) == "5 mm");
  CHECK(metric(Millimetres{300}) == "30 cm");
  CHECK(metric(Millimetres{75}) == "7.5 cm");
  CHECK(metric(Litres{13.5}) == "13.5 L");
  CHECK(metric(Litres{13.04}) == "13 L");
  CHECK(metric(Litres{0.9}) == "900 mL");
  CHECK(metric(Litres{0.99996}) == "1 L");
  CHECK(metric(Litres{243.2}) == "243 L");
  CHECK(metric(Kilograms{0.035}) == "35 g");
  CHECK(metric(Kilograms{36.26}) == "36.3 kg");
  CHECK(metric(Celsius{-2.5}) == "\u22122.5 °C");
  CHECK(metric(Fraction{0.45}) == "45 %");
  CHECK(metric(Fraction{0.025}) == "2.5 %");
  CHECK(metric(SquareMetres{0.405}) == "0.41 m²");
  CHECK(metric(SquareMetres{0.006}) == "60 cm²");
  CHECK(metric(Days{1}) == "1 day");
  CHECK(metric(Days{35}) == "35 days");
  CHECK(metric(7) == "7");
  CHECK(metric(2.5) == "2.5");
}

TEST_CASE("US amounts are in inches and eighths, pounds, and the right quarts") {
  CHECK(us(Millimetres{25.4}) == "1 in");
  CHECK(us(Millimetres{79.375}) == "3 1/8 in");
  CHECK(us(Millimetres{12.7}) == "1/2 in");
  CHECK(us(Litres{3.785411784}) == "1 US gal");
  CHECK(us(Litres{0.946352946}) == "1 liq qt");
  CHECK(us(Litres{0.0295735295625}) == "1 US fl oz");
  CHECK(us(Litres{8.81}, "dry") == "8 dry qt");  // an 8-quart bag of potting mix
  CHECK(us(Kilograms{0.45359237}) == "1 lb");
  CHECK(us(Kilograms{0.028349523125}) == "1 oz");
  CHECK(us(Celsius{24}) == "75 °F");
  CHECK(us(Celsius{-40}) == "\u221240 °F");
  CHECK(us(SquareMetres{0.09290304}) == "1 ft²");
}

TEST_CASE("loose goods are written dry in the US and in litres elsewhere") {
  const std::map<std::string, std::string> sentence{
      {"test.buy", "Buy {volume:dry}, water with {water}."}};
  const Args args{{"volume", Litres{11.01220942715}}, {"water", Litres{1.892705892}}};
  CHECK(plain(words(UnitSystem::us, sentence).say("test.buy", args)) ==
        "Buy 10 dry qt, water with 2 liq qt.");
  CHECK(plain(words(UnitSystem::metric, sentence).say("test.buy", args)) ==
        "Buy 11 L, water with 1.9 L.");
}

TEST_CASE("a range is written once when both ends read the same") {
  CHECK(metric(Range<Litres>{{13.44}, {13.36}}) == "13.4 L");
  CHECK(metric(Range<Litres>{{12}, {13.5}}) == "12–13.5 L");
  CHECK(metric(Range<Kilograms>{{0.9}, {1.1}}) == "0.9–1.1 kg");  // one unit for both
  CHECK(metric(Range<Celsius>{{-3}, {5}}) == "\u22123 to 5 °C");
  CHECK(us(Range<Millimetres>{{25.4}, {38.1}}) == "1–1 1/2 in");
}

TEST_CASE("dates are written in words") {
  const Date day = parse_date("2026-03-07").value();
  CHECK(metric(day) == "7 March 2026");
  CHECK(us(day) == "March 7, 2026");
  CHECK(metric(day, "weekday") == "Sat 7 Mar");
  CHECK(metric(day, "iso") == "2026-03-07");
}

TEST_CASE("number and unit never part at a line's end") {
  const Wording w = words(UnitSystem::us);
  CHECK(w.amount(Litres{8.81}, "dry") == "8\u00A0dry\u00A0qt");
  CHECK(w.amount(Millimetres{79.375}) == "3\u00A01/8\u00A0in");
}

TEST_CASE("what a sentence lacks is thrown with its file, and is never printed") {
  const Wording w = words(UnitSystem::metric, {{"test.a", "{x} and {y}"},
                                               {"test.b", "{x:florid}"},
                                               {"test.c", "{x"},
                                               {"units.date-moon", "{moon}"}});
  const auto lacks = [&](const std::string& name, const Arg& x) -> std::string {
    try {
      return w.say(name, {{"x", x}});
    } catch (const Lacking& lacking) {
      CHECK(lacking.why.fault == Fault::file);
      return lacking.why.where.file + ": " + lacking.why.message;
    }
  };
  CHECK(lacks("test.none", 1) == "templates/en/test.yaml: has no 'test.none'");
  CHECK(lacks("test.a", 1) == "templates/en/test.yaml: 'test.a' has a slot {y} that nothing fills");
  CHECK(lacks("test.b", Litres{1}) == "templates/en/units.yaml: has no 'units.volume-florid'");
  CHECK(lacks("test.b", std::string()) ==
        "templates/en/test.yaml: 'test.b' has a slot {x:florid} that nothing fills");
  CHECK(lacks("test.c", 1) == "{x");
  const Date day = parse_date("2026-03-07").value();
  CHECK_THROWS_AS(w.amount(day, "florid"), Lacking);
  CHECK_THROWS_AS(w.amount(day, "moon"), Lacking);
}

TEST_CASE("every line of units is written as amounts or dates are") {
  for (const auto units : {UnitSystem::metric, UnitSystem::us}) {
    const Wording w = words(units);
    for (const auto& [name, line] : w.sentences()) {
      const bool amount = name.starts_with("units.") && line.find('{') == std::string::npos &&
                          line.find_first_of("./x=") != std::string::npos && line != ".";
      INFO(name);
      if (amount) CHECK(parse_steps(line));
    }
  }
}

TEST_CASE("a name in the wrong file, a doubled one and a broken line are errors with their place") {
  MemoryWorld world;
  world.files["templates/en/layers.yaml"] =
      "# words\nlayers.a: \"one\"\nwater.b: \"two\"\nlayers.a: three\nlayers.c:\n"
      "layers.d: [open]\n";
  const auto w = read_wording(world, "en", UnitSystem::metric);
  CHECK_FALSE(w.value);
  const std::string all = render(w.messages, {});
  CHECK(all ==
        "templates/en/layers.yaml:3:1: error: 'water.b' does not belong in this file\n"
        "expected: a name that starts with 'layers.'\n"
        "templates/en/layers.yaml:4:1: error: the key 'layers.a' is given twice\n"
        "hint: it was first given on line 2; keep one of the two\n"
        "templates/en/layers.yaml:5:1: error: this line is not a name and its value\n"
        "expected: one line such as: layers.heading: \"Layers\"\n"
        "templates/en/layers.yaml:6:1: error: this line is not a name and its value\n"
        "expected: one line such as: layers.heading: \"Layers\"\n");
  for (const Diagnostic& d : w.messages) CHECK(d.fault == Fault::file);
}

TEST_CASE("a language without words is an error") {
  MemoryWorld world;
  const auto w = read_wording(world, "tlh", UnitSystem::metric);
  CHECK_FALSE(w.value);
  CHECK(w.messages.size() == 1);
}

TEST_CASE("large print stands in for what it names") {
  MemoryWorld world;
  world.files["templates/style.yaml"] =
      "body.size: 9.5  # points\nlarge.body.size: 13\nrule.grey: 0.5\n";
  const auto normal = read_style(world, false), large = read_style(world, true);
  REQUIRE(normal.value);
  CHECK((*normal.value)["body.size"] == 9.5);
  CHECK((*large.value)["body.size"] == 13);
  CHECK((*large.value)["rule.grey"] == 0.5);
  CHECK_FALSE(normal.value->has("large.body.size"));
  CHECK_THROWS((*normal.value)["no.such"]);
}

TEST_CASE("a measure that is no number is an error") {
  MemoryWorld world;
  world.files["templates/style.yaml"] = "body.size: big\n";
  const auto style = read_style(world, false);
  CHECK_FALSE(style.value);
  CHECK(style.messages[0].message == "'body.size' is not a number");
}

TEST_CASE("the real templates and style read without a word") {
  auto world = real_world();
  CHECK(read_wording(*world, "en", UnitSystem::metric).messages.empty());
  CHECK(read_style(*world, false).value);
  CHECK(read_style(*world, true).value);
}
