#include "catalogue/style.h"

#include <charconv>
#include <stdexcept>

#include "catalogue/flat.h"

namespace loamsheet {

namespace {

constexpr std::string_view large = "large.";

std::optional<double> measure_in(const std::string& text) {
  double v = 0;
  const auto r = std::from_chars(text.data(), text.data() + text.size(), v);
  if (r.ec != std::errc() || r.ptr != text.data() + text.size()) return std::nullopt;
  return v;
}

}  // namespace

double PageStyle::operator[](std::string_view name) const {
  const auto found = measures_.find(std::string(name));
  if (found == measures_.end()) {
    throw std::out_of_range("templates/style.yaml has no '" + std::string(name) + "'");
  }
  return found->second;
}

bool PageStyle::has(std::string_view name) const {
  return measures_.find(std::string(name)) != measures_.end();
}

Outcome<PageStyle> read_style(World& world, bool large_print) {
  Sink sink;
  std::map<std::string, double> measures, larger;
  for (const auto& line : read_flat(world, "templates/style.yaml", sink)) {
    const auto v = measure_in(line.value);
    if (!v) {
      sink.add({.where = line.where,
                .message = "'" + line.name + "' is not a number",
                .expected = "a bare number such as 9.5"});
    } else if (line.name.starts_with(large)) {
      larger[line.name.substr(large.size())] = *v;
    } else {
      measures[line.name] = *v;
    }
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  if (large_print) {
    for (const auto& [name, v] : larger) measures[name] = v;
  }
  return {PageStyle(std::move(measures)), sink.take()};
}

}  // namespace loamsheet
