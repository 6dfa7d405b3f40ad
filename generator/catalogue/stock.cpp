#include "catalogue/stock.h"

#include <algorithm>
#include <array>
#include <set>
#include <tuple>

#include "base/text.h"
#include "catalogue/csv.h"
#include "catalogue/file.h"
#include "read/number.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

constexpr std::array<std::string_view, 6> columns{"item",  "pack",    "unit",
                                                  "price", "on_hand", "shelf"};
constexpr double least_pack = 0.01, most_pack = 10000;  // in L, kg, m2 or pieces
constexpr double most_price = 1e6;
constexpr double most_on_hand = 1e6;

// What a unit of the file counts, and how many of ours it is.
struct StockUnit {
  std::string name;
  double size = 1;
};

class StockReader {
 public:
  StockReader(const std::string& file, Sink& sink) : file_(file), sink_(sink) {}

  Stock read(const std::vector<CsvRow>& rows) {
    Stock stock{file_, {}};
    if (rows.empty()) {
      error(whole_file(file_), "the stock list is empty", header_words());
      return stock;
    }
    if (!take_header(rows.front())) return stock;
    for (size_t i = 1; i < rows.size(); ++i) take(rows[i], stock);
    return stock;
  }

 private:
  static std::string header_words() { return "a first line such as: " + join(names(), ","); }
  static std::vector<std::string> names() { return {columns.begin(), columns.end()}; }

  void error(const Span& where, std::string message, std::string expected = "",
             std::string hint = "") {
    sink_.add({.where = where,
               .message = std::move(message),
               .expected = std::move(expected),
               .hint = std::move(hint)});
  }

  bool take_header(const CsvRow& header) {
    bool good = true;
    for (const CsvField& field : header) {
      header_.push_back(trimmed(field.text));
      const bool known = std::count(columns.begin(), columns.end(), header_.back()) > 0;
      const bool twice = std::count(header_.begin(), header_.end(), header_.back()) > 1;
      if (known && !twice) continue;
      good = false;
      const auto near = known ? std::nullopt : closest(header_.back(), names());
      error(field.where, "'" + header_.back() + "' " + (twice ? "comes twice" : "is no column"),
            "the columns " + join(names(), ","), near ? "did you mean '" + *near + "'?" : "");
    }
    for (const std::string& name : names()) {
      if (std::count(header_.begin(), header_.end(), name) > 0) continue;
      good = false;
      error(header.front().where, "the column '" + name + "' is missing", header_words());
    }
    return good;
  }

  const CsvField& cell(const CsvRow& row, const std::string& column) const {
    const auto at = std::find(header_.begin(), header_.end(), column);
    return row[static_cast<size_t>(at - header_.begin())];
  }

  void take(const CsvRow& row, Stock& stock) {
    if (row.size() != header_.size()) {
      return error(row.front().where, "this line has " + std::to_string(row.size()) + " fields",
                   std::to_string(header_.size()) + ", one for each column");
    }
    StockLine line;
    const CsvField& item = cell(row, "item");
    line.item = trimmed(item.text), line.where = item.where;
    if (line.item.empty()) error(item.where, "the item is not named", "an id such as orchid-bark");
    const auto unit = unit_of(cell(row, "unit"));
    if (unit) line.unit = unit->name;
    const double size = unit ? unit->size : 1;
    line.pack = size * number(cell(row, "pack"), {least_pack, most_pack}, "the size of one pack");
    const CsvField& price = cell(row, "price");
    if (!trimmed(price.text).empty()) line.price = money(price);
    line.on_hand = whole_number(cell(row, "on_hand"));
    line.shelf = trimmed(cell(row, "shelf").text);
    if (!seen_.insert({line.item, line.unit, line.pack}).second) {
      error(item.where, "'" + line.item + "' in packs of this size comes twice",
            "one line for each size of pack");
    }
    stock.lines.push_back(std::move(line));
  }

  double number(const CsvField& field, Range<double> limits, const std::string& what) {
    const std::string typed = trimmed(field.text), text = normalised(typed);
    const Number n = parse_number(text);
    const bool plain = n.fault == Number::Fault::none && n.length == text.size();
    if (plain && n.value >= limits.low && n.value <= limits.high) return n.value;
    error(field.where, "'" + typed + "' is not " + what,
          "a number from " + significant(limits.low, 6) + " to " + significant(limits.high, 6));
    return limits.high;
  }

  std::optional<Money> money(const CsvField& field) {
    const double about = number(field, {0, most_price}, "a price");
    const auto exact = exact_number(normalised(trimmed(field.text)));
    const auto amount = exact ? money_of(*exact) : std::nullopt;
    if (!amount && about < most_price) {
      error(field.where, "'" + trimmed(field.text) + "' is not an amount of money",
            "a price with at most four decimals, such as 12.50");
    }
    return amount;
  }

  int whole_number(const CsvField& field) {
    const double value = number(field, {0, most_on_hand}, "a number of packs");
    if (value != static_cast<int>(value)) {
      error(field.where, "'" + trimmed(field.text) + "' is not a whole number of packs",
            "such as 4");
    }
    return static_cast<int>(value);
  }

  std::optional<StockUnit> unit_of(const CsvField& field) {
    const std::string typed = trimmed(field.text);
    if (typed == "piece") return StockUnit{"piece"};
    constexpr std::pair<Kind, const char*> kinds[] = {
        {Kind::volume, "L"}, {Kind::mass, "kg"}, {Kind::area, "m2"}};
    for (const auto& [kind, name] : kinds) {
      const Unit* unit = find_unit(kind, typed);
      if (unit && unit->kind == kind) return StockUnit{name, kept(*unit, 1)};
    }
    unknown_unit(field.where, typed);
    return std::nullopt;
  }

  void unknown_unit(const Span& where, const std::string& typed) {
    if (const Vague* vague = vague_unit(typed)) {
      const auto meant = split(vague->instead, '|');
      return error(where, "'" + typed + "' could mean several units", join(meant, " or "));
    }
    std::vector<std::string> known{"piece"};
    for (Kind kind : {Kind::volume, Kind::mass, Kind::area}) {
      for (const std::string& name : unit_names(kind)) known.push_back(name);
    }
    const auto near = closest(typed, known);
    error(where, "unknown unit '" + typed + "'", "a unit such as L, dry qt, kg, m2 or piece",
          near ? "did you mean '" + *near + "'?" : "");
  }

  const std::string& file_;
  Sink& sink_;
  std::vector<std::string> header_;
  std::set<std::tuple<std::string, std::string, double>> seen_;
};

}  // namespace

Outcome<Stock> read_stock(World& world, const std::string& path, const Span& named_at) {
  const auto text = world.read(path);
  if (!text) {
    return failure<Stock>({.where = named_at,
                           .message = "the stock list '" + path + "' cannot be read",
                           .expected = "a CSV file beside the spec",
                           .fault = Fault::file});
  }
  Sink sink;
  if (invalid_utf8(*text)) {
    return failure<Stock>({.where = whole_file(path), .message = "the file is not UTF-8 text"});
  }
  const auto rows = read_csv(*text, path, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  Stock stock = StockReader(path, sink).read(rows);
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(stock), sink.take()};
}

}  // namespace loamsheet
