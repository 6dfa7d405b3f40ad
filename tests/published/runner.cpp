// The runner of the published checks: every row of every .csv file beside it names a quantity, its
// inputs, the published value, how near ours must come (or "exact") and where it was published.
// Rows that nobody has looked up stand apart, in from-memory.csv.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "base/text.h"
#include "climate.h"
#include "goods.h"
#include "life.h"
#include "quantities.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

namespace fs = std::filesystem;
const char* folder = LOAMSHEET_SOURCE "/tests/published";

struct Row {
  std::string quantity, expected, within, source;
  Inputs inputs;
};

Inputs inputs_of(const std::string& text) {
  Inputs inputs;
  for (const std::string& pair : split(text, ' ')) {
    const auto parts = split(pair, '=');
    REQUIRE(parts.size() == 2);
    inputs[parts[0]] = parts[1];
  }
  return inputs;
}

// Four plain columns and the source, which is the rest of the line between quotes.
Row row_of(const std::string& line) {
  const auto cells = split(line, ',');
  const size_t quote = line.find('"');
  REQUIRE(cells.size() >= 5);
  REQUIRE(quote != std::string::npos);
  return {cells[0], cells[2], cells[3], line.substr(quote + 1, line.size() - quote - 2),
          inputs_of(cells[1])};
}

std::vector<Row> rows_of(const fs::path& file) {
  std::ifstream in(file);
  std::vector<Row> rows;
  std::string line;
  std::getline(in, line);
  CHECK(line == "quantity,inputs,expected,within,source");
  while (std::getline(in, line)) rows.push_back(row_of(line));
  return rows;
}

std::vector<fs::path> data_files() {
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (entry.path().extension() == ".csv") files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

const Quantity& quantity(const std::string& name) {
  for (const auto* all :
       {&quantities(), &climate_quantities(), &life_quantities(), &goods_quantities()}) {
    if (const auto found = all->find(name); found != all->end()) return found->second;
  }
  FAIL("no quantity is called " << name);
  throw;
}

const char* remembered = "from-memory.csv";

void check(const Row& row) {
  INFO(row.quantity << " = " << row.expected << " after " << row.source);
  CHECK_FALSE(row.source.empty());
  const std::string ours = quantity(row.quantity)(row.inputs);
  if (row.within == "exact") {
    CHECK(ours == row.expected);
  } else {
    CHECK(std::stod(ours) ==
          Approx(std::stod(row.expected)).margin(std::stod(row.within)).epsilon(0));
  }
}

}  // namespace

TEST_CASE("our numbers are the published ones") {
  const auto files = data_files();
  REQUIRE(files.size() > 1);
  for (const auto& file : files) {
    if (file.filename() == remembered) continue;
    const auto rows = rows_of(file);
    REQUIRE_FALSE(rows.empty());
    for (const Row& row : rows) {
      check(row);
      CHECK(row.source.find("from memory") == std::string::npos);
    }
  }
}

TEST_CASE("our numbers are those that we remember") {
  const auto rows = rows_of(fs::path(folder) / remembered);
  REQUIRE_FALSE(rows.empty());
  for (const Row& row : rows) {
    check(row);
    CHECK(row.source.find("from memory") != std::string::npos);
  }
}
