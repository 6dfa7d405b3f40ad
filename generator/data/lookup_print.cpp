#include "data/lookup_print.h"

#include <algorithm>
#include <map>

#include "base/text.h"
#include "data/csv.h"

namespace loamsheet {
namespace {

constexpr int widest = 60;  // a longer cell stands out of its column

using Row = std::vector<std::string>;

// The facts that a table shows of each entry.
Row columns_of(const LookupAsk& ask) {
  static const std::map<std::string, Row> columns{
      {"plants",
       {"habit", "light", "humidity_from_pct", "height_mm", "robustness", "mountable", "hazards"}},
      {"animals", {"group", "build_kind", "length_mm", "humidity_pct", "day_c"}},
      {"crew", {"group", "coldest_c", "warmest_c"}},
      {"materials", {"role", "dry_density_kg_m3", "voids_pct", "field_capacity_pct"}}};
  Row all = columns.at(ask.shelf);
  if (!ask.filter.safe_for.empty()) all.push_back("suits");
  return all;
}

std::string shown(const Looked& entry, const std::string& key, const Wording& words) {
  const Stated* fact = entry.find(key);
  return fact ? fact->shown : words.say("lookup.not-known");
}

Row head(const Printed& p) {
  Row row{p.words.say("lookup.id"), p.words.say("lookup.name")};
  for (const auto& key : columns_of(p.ask)) row.push_back(p.words.say("lookup." + key));
  return row;
}

Row line_of(const Printed& p, const Looked& entry) {
  Row row{entry.id, entry.name};
  for (const auto& key : columns_of(p.ask)) row.push_back(shown(entry, key, p.words));
  return row;
}

std::string padded(const std::string& text, int width) {
  return text + std::string(static_cast<size_t>(std::max(0, width - code_points(text))), ' ');
}

std::string aligned(const std::vector<Row>& rows) {
  std::vector<int> widths(rows.front().size());
  for (const Row& row : rows) {
    for (size_t i = 0; i < row.size(); ++i) {
      widths[i] = std::clamp(code_points(row[i]), widths[i], std::max(widths[i], widest));
    }
  }
  std::string out;
  for (const Row& row : rows) {
    std::string line;
    for (size_t i = 0; i < row.size(); ++i) line += padded(row[i], widths[i]) + "  ";
    out += line.substr(0, line.find_last_not_of(' ') + 1) + '\n';
  }
  return out;
}

// The title of a source; the two words stand for themselves.
std::string source_title(const Printed& p, const std::string& origin) {
  const auto source = read_source(p.catalogue, origin).value;
  return source ? source->title : origin;
}

std::string sources_of(const Printed& p, const Stated& fact) {
  Row titles;
  for (const auto& origin : fact.from) {
    const std::string title = source_title(p, origin);
    if (std::find(titles.begin(), titles.end(), title) == titles.end()) titles.push_back(title);
  }
  return join(titles, "; ");
}

struct Origins {
  int published = 0, practice = 0, memory = 0;
};

Origins count(const std::vector<Looked>& entries) {
  Origins n;
  for (const Looked& entry : entries) {
    for (const Stated& fact : entry.facts) {
      for (const auto& from : fact.from) {
        const bool published = Origin{from}.published();
        ++(published ? n.published : from == "from memory" ? n.memory : n.practice);
      }
    }
  }
  return n;
}

Json json_of(const Origins& n) {
  return {{"published", n.published}, {"common_practice", n.practice}, {"from_memory", n.memory}};
}

std::string words_of(const Wording& words, const Origins& n, int entries) {
  return words.say("lookup.origins", {{"entries", entries},
                                      {"published", n.published},
                                      {"practice", n.practice},
                                      {"memory", n.memory}});
}

Json json_of(const Looked& entry) {
  Json facts = Json::object();
  for (const Stated& f : entry.facts) facts[f.key] = {{"value", f.value}, {"from", f.from}};
  return {{"id", entry.id}, {"name", entry.name}, {"facts", facts}};
}

// A value for a cell: [10, 20] reads 10–20, a list is separated by blanks.
std::string cell(const Json& value) {
  if (value.is_string()) return value.get<std::string>();
  if (value.is_number()) return significant(value.get<double>(), digits_written);
  if (!value.is_array()) return value.dump();
  const bool numbers = !value.empty() && value.front().is_number();
  Row parts;
  for (const Json& part : value) parts.push_back(cell(part));
  return join(parts, numbers ? "–" : " ");
}

std::string csv_entry(const Looked& entry) {
  std::string out = csv_line({"fact", "value", "from"});
  for (const Stated& f : entry.facts) out += csv_line({f.key, cell(f.value), join(f.from, " ")});
  return out;
}

}  // namespace

std::string print_table(const Printed& p, const std::vector<Looked>& entries) {
  const auto total = static_cast<int>(entries.size());
  if (entries.empty()) return p.words.say("lookup.none") + '\n';
  std::vector<Row> rows{head(p)};
  for (const Looked& entry : entries) rows.push_back(line_of(p, entry));
  return aligned(rows) + p.words.say("lookup.count", {{"count", total}}) + '\n';
}

std::string print_entry(const Printed& p, const Looked& entry) {
  std::vector<Row> rows;
  for (const Stated& fact : entry.facts) {
    const std::string from = sources_of(p, fact);
    rows.push_back({p.words.say("lookup." + fact.key), fact.shown, from});
  }
  const std::string title = p.words.say("lookup.title", {{"id", entry.id}, {"name", entry.name}});
  return title + '\n' + aligned(rows);
}

std::string print_origins(const Printed& p, const std::vector<Looked>& entries) {
  return print_origins(p, std::vector<ShelfLooked>{{p.ask.shelf, entries}});
}

std::string print_origins(const Printed& p, const std::vector<ShelfLooked>& shelves) {
  Json counts{{"loamsheet", LOAMSHEET_VERSION}};
  std::string lines;
  for (const auto& [shelf, entries] : shelves) {
    const Origins n = count(entries);
    counts[shelf] = json_of(n);
    const std::string said = words_of(p.words, n, static_cast<int>(entries.size()));
    const bool alone = shelves.size() == 1;
    lines += alone ? said : p.words.say("lookup.origins-of", {{"shelf", shelf}, {"counts", said}});
    lines += '\n';
  }
  return p.ask.format == "json" ? document(counts) : lines;
}

std::string print_json(const Printed& p, const std::vector<Looked>& entries) {
  Json list = Json::array();
  for (const Looked& entry : entries) list.push_back(json_of(entry));
  return document({{"loamsheet", LOAMSHEET_VERSION}, {p.ask.shelf, list}});
}

std::string print_csv(const Printed& p, const std::vector<Looked>& entries) {
  if (!p.ask.id.empty()) return csv_entry(entries.front());
  Row heads{"id", "name"};
  for (const auto& key : columns_of(p.ask)) heads.push_back(key);
  std::string out = csv_line(heads);
  for (const Looked& entry : entries) {
    Row row{entry.id, entry.name};
    for (const auto& key : columns_of(p.ask)) {
      const Stated* fact = entry.find(key);
      row.push_back(fact ? cell(fact->value) : "");
    }
    out += csv_line(row);
  }
  return out;
}

}  // namespace loamsheet
