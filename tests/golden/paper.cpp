// What the numbers say is on paper: for each example, every plant with its place and light, every
// amount of the pull list, every day of the calendar with its amounts, is found in the text of the
// PDF that is made of it.
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "base/text.h"
#include "catalogue/living.h"
#include "examples.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

using Json = nlohmann::json;

void replace_all(std::string& text, const std::string& from, const std::string& to) {
  for (size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size()) {
    text.replace(at, from.size(), to);
  }
}

// One blank between words, and none after a hyphen at the end of a line.
std::string squeezed(std::string text) {
  replace_all(text, "\u00a0", " ");
  replace_all(text, "-\n", "-");
  std::istringstream words(text);
  std::string out, word;
  while (words >> word) out += (out.empty() ? "" : " ") + word;
  return out;
}

std::string paper(const std::string& pdf) {
  const auto file = scratch("paper.pdf"), text = scratch("paper.txt");
  std::ofstream(file, std::ios::binary) << pdf;
  REQUIRE(std::system(("pdftotext -raw " + file.string() + ' ' + text.string()).c_str()) == 0);
  std::string words = squeezed(slurp(text));
  std::filesystem::remove(file);
  std::filesystem::remove(text);
  return words;
}

bool has(const std::string& text, const std::string& part) {
  return text.find(squeezed(part)) != std::string::npos;
}

struct OnPaper {
  const Example& example;
  std::string text;
  Json numbers;

  const Wording& words() const { return example.planned.wording; }
  std::string length(const Json& mm) const {
    return words().amount(Millimetres{mm.get<double>()}, "");
  }
};

// Each PDF is read once for all tests.
const std::vector<OnPaper>& sheets() {
  static const std::vector<OnPaper> all = [] {
    std::vector<OnPaper> read;
    for (const Example& e : examples()) {
      read.push_back({e, paper(e.bytes(".pdf")), Json::parse(e.bytes(".json"))});
    }
    return read;
  }();
  return all;
}

// The start of a plant's row: its number and names, its place and its light.
std::string row_of(const OnPaper& sheet, const Json& plant) {
  const auto facts = read_plant(sheet.example.planned.catalogue, plant["species"]);
  REQUIRE(facts.value);
  const std::string start = squeezed(std::to_string(plant["number"].get<int>()) + ' ' +
                                     facts.value->name + ' ' + facts.value->botanical);
  const size_t at = sheet.text.find(start);
  INFO(start);
  REQUIRE(at != std::string::npos);
  return sheet.text.substr(at, 300);
}

// Water goes by liquid measures, loose goods by dry ones.
std::string need_of(const OnPaper& sheet, const Json& item, double need) {
  const std::string unit = item["unit"];
  const bool water = item["for"] == "watering";
  if (unit == "L" && water) return sheet.words().amount(Litres{need}, "");
  if (unit == "L") return sheet.words().amount(Litres{need}, need < 1 ? "" : "dry");
  if (unit == "m2") return sheet.words().amount(SquareMetres{need}, "");
  if (unit == "kg") return sheet.words().amount(Kilograms{need}, "");
  return std::to_string(std::lround(need));
}

// The numbers keep six digits, so a need that ends in a half may have been either side of it.
bool has_need(const OnPaper& sheet, const Json& item) {
  const double need = item["need"];
  return has(sheet.text, need_of(sheet, item, need * (1 - 1e-6))) ||
         has(sheet.text, need_of(sheet, item, need * (1 + 1e-6)));
}

}  // namespace

TEST_CASE("every plant is on paper with its names, its place and its light") {
  for (const OnPaper& sheet : sheets()) {
    for (const Json& plant : sheet.numbers["plants"]) {
      INFO(sheet.example.stem << " plant " << plant["number"]);
      const std::string row = row_of(sheet, plant);
      if (plant["x_mm"].is_null()) continue;
      CHECK(has(row, sheet.length(plant["x_mm"])));
      const bool on_floor = plant["site"] == "floor";
      CHECK(has(row, sheet.length(plant[on_floor ? "y_mm" : "z_mm"])));
      CHECK(has(row, fixed(plant["ppfd_umol_m2_s"], 0) + " µmol"));
      CHECK(has(row, fixed(plant["dli_mol_m2_d"], 1) + " mol"));
    }
  }
}

TEST_CASE("every amount of the pull list is on paper") {
  for (const OnPaper& sheet : sheets()) {
    CHECK_FALSE(sheet.numbers["pull_list"].empty());
    for (const Json& item : sheet.numbers["pull_list"]) {
      INFO(sheet.example.stem << ' ' << item.dump());
      CHECK(has_need(sheet, item));
    }
  }
}

TEST_CASE("every day of the calendar is on paper with its amounts") {
  for (const OnPaper& sheet : sheets()) {
    CHECK_FALSE(sheet.numbers["calendar"].empty());
    for (const Json& day : sheet.numbers["calendar"]) {
      const auto date = parse_date(day["date"].get<std::string>());
      REQUIRE(date);
      INFO(sheet.example.stem << ' ' << day["date"]);
      CHECK(has(sheet.text, sheet.words().amount(*date, "short")));
      for (const Json& task : day["tasks"]) {
        INFO(task.dump());
        if (task["amount"].is_string()) CHECK(has(sheet.text, task["amount"]));
      }
    }
  }
}

TEST_CASE("the days of planting and of the animal are on paper") {
  for (const OnPaper& sheet : sheets()) {
    INFO(sheet.example.stem);
    for (const Json* key :
         {&sheet.numbers["build"]["plant_on"], &sheet.numbers["ready"]["earliest"]}) {
      CHECK(has(sheet.text, sheet.words().amount(*parse_date(key->get<std::string>()), "")));
    }
  }
}
