// Amounts, numbers and ranges as people type them.
#include "read/quantity.h"

#include <catch2/catch.hpp>

#include "read/number.h"

using namespace loamsheet;

namespace {

Key key(Kind kind, unsigned flags = flag::none) {
  return {.path = "x", .kind = kind, .flags = flags};
}

double value(Kind kind, std::string_view typed) {
  const Reading r = read_quantity(key(kind), typed);
  INFO(typed << ": " << r.message);
  REQUIRE(std::holds_alternative<double>(r.value));
  return std::get<double>(r.value);
}

Range<double> range(Kind kind, std::string_view typed) {
  const Reading r = read_quantity(key(kind, flag::range_ok), typed);
  INFO(typed << ": " << r.message);
  REQUIRE(std::holds_alternative<Range<double>>(r.value));
  return std::get<Range<double>>(r.value);
}

std::string message(Kind kind, std::string_view typed) {
  return read_quantity(key(kind, flag::range_ok), typed).message;
}

std::string fix(Kind kind, std::string_view typed) {
  return read_quantity(key(kind, flag::range_ok), typed).fix;
}

}  // namespace

TEST_CASE("numbers are read as they are written") {
  CHECK(value(Kind::number, "12") == 12);
  CHECK(value(Kind::number, "12.5") == 12.5);
  CHECK(value(Kind::number, "-3") == -3);
  CHECK(value(Kind::number, "−3") == -3);
  CHECK(value(Kind::number, ".5") == 0.5);
  CHECK(value(Kind::number, "1/2") == 0.5);
  CHECK(value(Kind::number, "1 1/2") == 1.5);
  CHECK(value(Kind::number, "½") == 0.5);
  CHECK(value(Kind::number, "1½") == 1.5);
  CHECK(value(Kind::number, "1 ¾") == 1.75);
  CHECK(value(Kind::number, "-1 1/2") == -1.5);
  CHECK(value(Kind::number, "2⅛") == 2.125);
  CHECK(value(Kind::number, "1\u20442") == 0.5);
}

TEST_CASE("what is no number is told apart") {
  CHECK(message(Kind::number, "12,5") == "'12,5' has a decimal comma");
  CHECK(fix(Kind::number, "12,5") == "12.5");
  CHECK(message(Kind::number, "6,000") == "'6,000' has a mark between its digits");
  CHECK(message(Kind::number, "6'000") == "'6'000' has a mark between its digits");
  CHECK(message(Kind::number, "1.000,5") == "'1.000,5' has a mark between its digits");
  CHECK(message(Kind::number, "1,000,000") == "'1,000,000' has a mark between its digits");
  CHECK(message(Kind::number, "6 000") == "'6 000' has a blank inside its number");
  CHECK(fix(Kind::number, "6 000") == "6000");
  CHECK(message(Kind::number, "1e3") == "'1e3' has an exponent");
  for (const char* endless : {"NaN", ".nan", "inf", "-.inf", "Infinity", "1/0", "∞"}) {
    CHECK(message(Kind::number, endless) ==
          "'" + std::string(endless) + "' is not a finite number");
  }
  for (const char* word : {"", "-", "twelve", ".", "/2", "½½x"}) {
    CHECK_FALSE(message(Kind::number, word).empty());
  }
}

TEST_CASE("lengths are kept in millimetres") {
  CHECK(value(Kind::length, "5 mm") == 5);
  CHECK(value(Kind::length, "45cm") == 450);
  CHECK(value(Kind::length, "0.9 m") == 900);
  CHECK(value(Kind::length, "1 in") == 25.4);
  CHECK(value(Kind::length, "17 3/4 in") == 450.85);
  CHECK(value(Kind::length, "36\"") == 914.4);
  CHECK(value(Kind::length, "36″") == 914.4);
  CHECK(value(Kind::length, "1 ft") == 304.8);
  CHECK(value(Kind::length, "2′") == 609.6);
  CHECK(value(Kind::length, "45\u00A0cm") == 450);
}

// NIST Handbook 44, Appendix C; NIST SP 811, Appendix B: all exact but lb/ft3.
TEST_CASE("US units have their exact factors") {
  CHECK(value(Kind::area, "1 in2") == 0.00064516);
  CHECK(value(Kind::area, "1 ft²") == 0.09290304);
  CHECK(value(Kind::area, "1 sq ft") == 0.09290304);
  CHECK(value(Kind::volume, "1 US gal") == 3.785411784);
  CHECK(value(Kind::volume, "1 liq qt") == 0.946352946);
  CHECK(value(Kind::volume, "1 dry qt") == 1.101220942715);
  CHECK(value(Kind::volume, "1 US bushel") == 35.23907016688);
  CHECK(value(Kind::volume, "1 US fl oz") == 0.0295735295625);
  CHECK(value(Kind::volume, "16 US cup") == 3.785411784);
  CHECK(value(Kind::volume, "1 ft3") == 28.316846592);
  CHECK(value(Kind::volume, "1 in³") == 0.016387064);
  CHECK(value(Kind::mass, "1 lb") == 0.45359237);
  CHECK(value(Kind::mass, "1 oz") == 0.028349523125);
  CHECK(value(Kind::density, "1 lb/ft3") == Approx(16.018463).margin(1e-6));
  CHECK(value(Kind::temperature, "75.2 °F") == 24);
  CHECK(value(Kind::temperature, "-40 °F") == -40);
  CHECK(value(Kind::temperature, "32 F") == 0);
  CHECK(value(Kind::volume, "8 dry qt") == Approx(8.810).margin(5e-4));
}

TEST_CASE("metric units have their factors") {
  CHECK(value(Kind::area, "60 cm2") == 0.006);
  CHECK(value(Kind::area, "60 cm²") == 0.006);
  CHECK(value(Kind::area, "50 mm2") == 0.00005);
  CHECK(value(Kind::area, "2 m²") == 2);
  CHECK(value(Kind::volume, "90 mL") == 0.09);
  CHECK(value(Kind::volume, "250 cm³") == 0.25);
  CHECK(value(Kind::volume, "0.5 m3") == 500);
  CHECK(value(Kind::mass, "250 g") == 0.25);
  CHECK(value(Kind::temperature, "21.5 °C") == 21.5);
  CHECK(value(Kind::temperature, "-5 C") == -5);
  CHECK(value(Kind::share, "45 %") == 0.45);
  CHECK(value(Kind::share, "12%") == 0.12);
  CHECK(value(Kind::share, "1/2") == 0.5);
  CHECK(value(Kind::share, "½") == 0.5);
  CHECK(value(Kind::angle, "40 °") == 40);
  CHECK(value(Kind::angle, "40°") == 40);
  CHECK(value(Kind::angle, "40 deg") == 40);
  CHECK(value(Kind::power, "1.2 kW") == 1200);
  CHECK(value(Kind::flux, "6000 lm") == 6000);
  CHECK(value(Kind::hours, "90 min") == 1.5);
  CHECK(value(Kind::hours, "12 h") == 12);
  CHECK(value(Kind::days, "2 weeks") == 14);
  CHECK(value(Kind::days, "5 d") == 5);
  CHECK(value(Kind::areal, "120 g/m2") == 0.12);
  CHECK(value(Kind::density, "0.25 g/cm3") == 250);
  CHECK(value(Kind::density, "250 g/L") == 250);
}

TEST_CASE("rates may be written with a stroke or with per") {
  CHECK(value(Kind::flow, "90 mL/min") == 90);
  CHECK(value(Kind::flow, "90 mL per min") == 90);
  CHECK(value(Kind::flow, "1.5 L/min") == 1500);
  CHECK(value(Kind::flow, "6 L / h") == 100);
  CHECK(value(Kind::daily, "120 mL per day") == 120);
  CHECK(value(Kind::daily, "0.12 L/d") == 120);
  CHECK(value(Kind::daily, "1 US fl oz per day") == 29.5735295625);
  CHECK(value(Kind::hourly, "32 per h") == 32);
  CHECK(value(Kind::hourly, "32/h") == 32);
  CHECK(value(Kind::dose, "15 g per 4 L") == 3.75);
  CHECK(value(Kind::dose, "1 g/L") == 1);
  CHECK(value(Kind::dose, "1 g per L") == 1);
  CHECK(value(Kind::dose, "1 oz per 1 US gal") ==
        Approx(28.349523125 / 3.785411784).epsilon(1e-12));
}

TEST_CASE("ranges may be written in four ways") {
  const Range<double> band{21, 24};
  for (const char* typed : {"21–24 °C", "21-24 °C", "21 °C – 24 °C", "21 °C-24 °C", "21 – 24 °C"}) {
    CHECK(range(Kind::temperature, typed) == band);
  }
  CHECK(range(Kind::temperature, "-5--2 °C") == Range<double>{-5, -2});
  CHECK(range(Kind::temperature, "-5 – -2 °C") == Range<double>{-5, -2});
  CHECK(range(Kind::temperature, "50–59 °F") == Range<double>{10, 15});
  CHECK(range(Kind::density, "250–510 kg/m3") == Range<double>{250, 510});
  CHECK(range(Kind::length, "1/2–3/4 in") == Range<double>{12.7, 19.05});
  const Reading listed = read_range(key(Kind::temperature, flag::range_ok), "21 °C", "24 °C");
  CHECK(std::get<Range<double>>(listed.value) == band);
}

TEST_CASE("a range the wrong way round is swapped by its fix") {
  CHECK(fix(Kind::temperature, "24–21 °C") == "21–24 °C");
  CHECK(fix(Kind::temperature, "79 °F – 17 °C") == "17 °C – 79 °F");
  CHECK(fix(Kind::share, "60-35 %") == "35–60 %");
  CHECK(read_quantity(key(Kind::temperature), "21–24 °C").message ==
        "one value is wanted here, not a range");
}

TEST_CASE("a missing unit is proposed") {
  const Key height{.path = "h", .kind = Kind::length, .limits = {100, 5000}, .example = "60 cm"};
  CHECK(read_quantity(height, "60").fix == "60 cm");
  CHECK(read_quantity(height, "600").fix == "600 mm");
  CHECK(read_quantity(height, "60,5").fix == "60.5 cm");
  const Key rate{.path = "r", .kind = Kind::hourly, .example = "32 per h"};
  CHECK(read_quantity(rate, "32").fix == "32 per h");
  CHECK(fix(Kind::share, "0.5").empty());
}

TEST_CASE("quarts and gallons alone are asked about") {
  CHECK(message(Kind::volume, "8 qt") == "'qt' could mean several measures");
  CHECK(fix(Kind::volume, "8 qt").empty());
  CHECK(fix(Kind::volume, "2 gal") == "2 US gal");
  CHECK(message(Kind::dose, "1 oz per 1 gal") == "'gal' could mean several measures");
  CHECK(message(Kind::volume, "8 oz") == "'8 oz' is a mass, not a volume");
  CHECK(message(Kind::length, "5 L") == "'5 L' is a volume, not a length");
  CHECK(message(Kind::length, "5 qt") == "'qt' is a measure of volume");
  CHECK(fix(Kind::length, "5 CM") == "5 cm");
  CHECK(message(Kind::dose, "5 g per 0 L") == "'5 g per 0 L' is a dose in no water");
}

TEST_CASE("limits are held in any unit") {
  const Key sill{.path = "s", .kind = Kind::length, .limits = {0, 304.8}};
  CHECK(read_quantity(sill, "1 ft").ok());
  CHECK(read_quantity(sill, "12 in").ok());
  CHECK(read_quantity(sill, "13 in").message ==
        "'13 in' is more than the most that is allowed, 30.48 cm");
  CHECK(read_quantity(sill, "-1 mm").message ==
        "'-1 mm' is less than the least that is allowed, 0 mm");
}
