#include "job/customer.h"

#include <algorithm>
#include <array>
#include <set>

#include "base/text.h"

namespace loamsheet {
namespace {

constexpr std::array shop_only{"stock", "catalogue"};

// The top-level keys that stand in the spec itself, in file order.
std::vector<std::pair<int, std::string>> key_lines(const Spec& spec) {
  std::vector<std::pair<int, std::string>> keys;
  for (const auto& [name, node] : spec.root.entries) {
    if (node.name.file == spec.file) keys.emplace_back(node.name.line, name);
  }
  std::sort(keys.begin(), keys.end());
  return keys;
}

// Lines inside texts of several lines, where a '#' is no comment.
void collect_text_lines(const Node& node, const std::string& file, std::set<int>& lines) {
  const auto breaks = std::count(node.typed.begin(), node.typed.end(), '\n');
  if (breaks > 0 && node.where.file == file) {
    for (int i = 0; i <= breaks + 1; ++i) lines.insert(node.where.line + i);
  }
  for (const auto& [name, entry] : node.entries) collect_text_lines(entry, file, lines);
  for (const auto& item : node.items) collect_text_lines(item, file, lines);
}

std::string without_comment(const std::string& line) {
  char quote = 0;
  for (size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (quote != 0) {
      if (c == quote) quote = 0;
    } else if (c == '"' || c == '\'') {
      quote = c;
    } else if (c == '#' && (i == 0 || line[i - 1] == ' ' || line[i - 1] == '\t')) {
      return i == 0 ? "" : line.substr(0, line.find_last_not_of(" \t", i - 1) + 1);
    }
  }
  return line;
}

bool is_shop_only(const std::string& key) {
  return std::find(shop_only.begin(), shop_only.end(), key) != shop_only.end();
}

std::set<int> shop_lines(const std::vector<std::pair<int, std::string>>& keys, int last) {
  std::set<int> lines;
  for (size_t i = 0; i < keys.size(); ++i) {
    if (!is_shop_only(keys[i].second)) continue;
    const int end = i + 1 < keys.size() ? keys[i + 1].first : last + 1;
    for (int line = keys[i].first; line < end; ++line) lines.insert(line);
  }
  return lines;
}

Diagnostic crowded(const Spec& spec, int line) {
  Diagnostic d;
  d.where = {spec.file, line, 1, 1};
  d.message = "two top-level keys stand on one line, so the customer's copy cannot be cut from it";
  d.hint = "write each top-level key on a line of its own";
  return d;
}

void cut_shelf(Plan& plan) {
  constexpr std::array of_the_shelf{"stock-not-listed", "stock-short", "price-missing"};
  plan.sack.reset();
  for (PullItem& item : plan.pull_list) {
    item.packs.clear();
    item.price.reset();
    item.missing = item.left_over = 0;
  }
  if (plan.quote) plan.quote = by_group(*plan.quote);
  std::erase_if(plan.findings, [&](const Finding& f) {
    return std::find(of_the_shelf.begin(), of_the_shelf.end(), f.rule) != of_the_shelf.end();
  });
}

}  // namespace

Outcome<std::string> customer_spec(const Spec& spec, const std::string& notice) {
  const auto keys = key_lines(spec);
  const auto same_line = [](const auto& a, const auto& b) { return a.first == b.first; };
  const auto twice = std::adjacent_find(keys.begin(), keys.end(), same_line);
  if (twice != keys.end()) return failure<std::string>(crowded(spec, twice->first));
  const auto lines = split(spec.text, '\n');
  const auto cut = shop_lines(keys, static_cast<int>(lines.size()));
  std::set<int> texts;
  collect_text_lines(spec.root, spec.file, texts);
  std::string out = "# " + notice + '\n';
  for (int number = 1; number <= static_cast<int>(lines.size()); ++number) {
    if (cut.count(number) > 0) continue;
    const std::string& line = lines[static_cast<size_t>(number - 1)];
    const std::string kept = texts.count(number) > 0 ? line : without_comment(line);
    if (!trimmed(kept).empty()) out += kept + '\n';
  }
  return {out, {}};
}

Shown::Shown(const Build& build, const Plan& plan, bool to_customer) : build_(build), plan_(plan) {
  if (!to_customer) return;
  cut_.emplace(build, plan);
  cut_->first.stock.reset();
  cut_shelf(cut_->second);
}

}  // namespace loamsheet
