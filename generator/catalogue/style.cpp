#include "catalogue/style.h"

#include <charconv>

#include "catalogue/flat.h"
#include "catalogue/lacking.h"
#include "read/compiled.h"

namespace loamsheet {

namespace {

constexpr const char* style_file = "templates/style.yaml";
constexpr std::string_view large = "large.";

std::optional<double> measure_in(std::string_view text) {
  double v = 0;
  const auto r = std::from_chars(text.data(), text.data() + text.size(), v);
  if (r.ec != std::errc() || r.ptr != text.data() + text.size()) return std::nullopt;
  return v;
}

// Every measure that the style had when the program was built is one that a page needs.
void check_built(World& world, const FlatFile& style, Sink& sink) {
  auto built = compiled_file(world.compiled(), style_file);
  if (!built || built->bytes() == style.file->bytes() || !style.file->problems().empty()) return;
  for (const FlatLine& line : flat_file(std::move(built), sink).lines) {
    if (style.find(line.name)) continue;
    sink.add(lacking(style_file, "has no '" + std::string(line.name) + "'").why);
  }
}

}  // namespace

double PageStyle::operator[](std::string_view name) const {
  const auto found = measures_.find(std::string(name));
  if (found == measures_.end()) {
    throw lacking(style_file, "has no '" + std::string(name) + "'");
  }
  return found->second;
}

bool PageStyle::has(std::string_view name) const {
  return measures_.find(std::string(name)) != measures_.end();
}

Outcome<PageStyle> read_style(World& world, bool large_print) {
  Sink sink;
  std::map<std::string, double> measures, larger;
  const auto file = read_flat(world, style_file, sink);
  for (const FlatLine& line : file ? file->lines : std::vector<FlatLine>{}) {
    const auto v = measure_in(line.value);
    if (!v) {
      sink.add({.where = line.where(),
                .message = "'" + std::string(line.name) + "' is not a number",
                .expected = "a bare number such as 9.5",
                .fault = Fault::file});
    } else if (line.name.starts_with(large)) {
      larger[std::string(line.name.substr(large.size()))] = *v;
    } else {
      measures[std::string(line.name)] = *v;
    }
  }
  if (file) check_built(world, *file, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  if (large_print) {
    for (const auto& [name, v] : larger) measures[name] = v;
  }
  return {PageStyle(std::move(measures)), sink.take()};
}

}  // namespace loamsheet
