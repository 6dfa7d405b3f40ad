#include "catalogue/fact_line.h"

#include "base/text.h"

namespace loamsheet {
namespace {

std::vector<std::string> known_origins(const Shelf& sources) {
  std::vector<std::string> names{"common practice", "from memory"};
  for (auto& id : sources.ids()) names.push_back(std::move(id));
  return names;
}

}  // namespace

Origin origin_of(const Node& from, const Shelf& sources, Sink& sink) {
  const auto* name = std::get_if<std::string>(&from.leaf);
  const Origin origin{name ? *name : ""};
  if (!origin.published() || sources.has(origin.name)) return origin;
  Diagnostic d{.where = from.where, .message = "unknown source '" + origin.name + "'"};
  d.expected = "an id of sources.yaml, common practice, or from memory";
  if (const auto near = closest(origin.name, known_origins(sources))) {
    d.hint = "did you mean '" + *near + "'?";
    d.edit = Edit{from.where, *near};
  }
  sink.add(std::move(d));
  return origin;
}

FactLine::FactLine(const Node& line, const Shelf& sources, Sink& sink) : line_(line), sink_(sink) {
  if (const Node* from = line.find("from")) origin_ = origin_of(*from, sources, sink);
}

const Node* FactLine::fresh(std::string_view key, bool stated) const {
  const Node* leaf = line_.find(key);
  if (!leaf || !stated) return leaf;
  sink_.add({.where = leaf->name,
             .message = "'" + std::string(key) + "' is stated by an earlier line already",
             .hint = "keep the better source and remove the other"});
  return nullptr;
}

std::optional<Range<double>> FactLine::range(std::string_view key, bool stated) const {
  return fresh(key, stated) ? line_.range(key) : std::nullopt;
}

void FactLine::take(std::string_view key, std::optional<Fact<Range<double>>>& into) const {
  if (const auto r = range(key, into.has_value())) into = {*r, origin_};
}

void FactLine::take(std::string_view key, std::optional<Fact<double>>& into) const {
  if (const auto r = range(key, into.has_value())) into = {r->low, origin_};
}

void FactLine::take(std::string_view key, std::optional<Fact<int>>& into) const {
  if (const auto r = range(key, into.has_value())) into = {static_cast<int>(r->low), origin_};
}

void FactLine::take(std::string_view key, std::optional<Fact<bool>>& into) const {
  if (!fresh(key, into.has_value())) return;
  if (const auto yes = line_.yes(key)) into = {*yes, origin_};
}

void FactLine::take(std::string_view key, std::optional<Fact<std::string>>& into) const {
  if (!fresh(key, into.has_value())) return;
  if (const auto text = line_.text(key)) into = {*text, origin_};
}

void FactLine::take(std::string_view key,
                    std::optional<Fact<std::vector<std::string>>>& into) const {
  if (fresh(key, into.has_value())) into = {names(key), origin_};
}

void FactLine::take(std::vector<Hazard>& hazards) const {
  for (auto& kind : names("hazards")) hazards.push_back({std::move(kind), origin_});
}

std::vector<std::string> FactLine::names(std::string_view key) const {
  std::vector<std::string> out;
  const Node* list = line_.find(key);
  if (!list) return out;
  for (const Node& item : list->items) {
    if (const auto* text = std::get_if<std::string>(&item.leaf)) out.push_back(*text);
  }
  return out;
}

}  // namespace loamsheet
