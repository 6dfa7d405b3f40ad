// The runner of the published checks: every row of every .csv file beside it names a quantity, its
// inputs, the published value, how near ours must come (or "exact") and where it was published.
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

std::vector<Row> rows_of(const std::filesystem::path& file) {
  std::ifstream in(file);
  std::vector<Row> rows;
  std::string line;
  std::getline(in, line);
  CHECK(line == "quantity,inputs,expected,within,source");
  while (std::getline(in, line)) rows.push_back(row_of(line));
  return rows;
}

std::vector<std::filesystem::path> data_files() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry :
       std::filesystem::directory_iterator(LOAMSHEET_SOURCE "/tests/published")) {
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
  REQUIRE_FALSE(files.empty());
  for (const auto& file : files) {
    const auto rows = rows_of(file);
    REQUIRE_FALSE(rows.empty());
    for (const Row& row : rows) check(row);
  }
}
