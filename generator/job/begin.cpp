#include "job/begin.h"

#include <algorithm>
#include <cmath>

#include "base/text.h"

namespace loamsheet {
namespace {

// The animal by its id or a former one; an unknown one is an error with the nearest known.
std::optional<Animal> animal_of(const Catalogue& catalogue, const std::string& typed, Sink& sink) {
  if (typed.empty()) return std::nullopt;
  const std::string id = catalogue.animals.renamed(typed).value_or(typed);
  if (catalogue.animals.has(id)) return taken(read_animal(catalogue, id), sink);
  Diagnostic d;
  d.message = "unknown animal '" + typed + "'";
  const auto near = closest(typed, catalogue.animals.ids());
  d.hint = near ? "did you mean '" + *near + "'?" : "loamsheet lookup animals lists them";
  sink.add(std::move(d));
  return std::nullopt;
}

Millimetres next_five_cm(double mm) {
  return {std::ceil(mm / 50) * 50};
}

// The least floor that the catalogue knows for the animal, and its headroom above deep layers.
TankSize size_for(const std::optional<Animal>& animal) {
  constexpr double layers = 150;
  TankSize size{600_mm, 450_mm, 600_mm, false};
  if (!animal) return size;
  const auto low = [](const Known<Range<Millimetres>>& known, Millimetres otherwise) {
    return std::max(known ? known->value.low.v : otherwise.v, 200.0);
  };
  size.width = next_five_cm(low(animal->floor_length, size.width));
  size.depth = next_five_cm(low(animal->floor_width, size.depth));
  size.height = next_five_cm(low(animal->headroom, 450_mm) + layers);
  return size;
}

}  // namespace

Outcome<std::string> starter_spec(World& world, const StarterAsk& ask) {
  Sink sink;
  const auto catalogue = taken(read_catalogue(world), sink);
  if (!catalogue) return {std::nullopt, sink.take()};
  auto animal = animal_of(*catalogue, ask.animal, sink);
  std::optional<TankSize> size = size_for(animal);
  if (!ask.size.empty()) size = taken(tank_size(ask.size), sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  const auto units = size->inches ? UnitSystem::us : UnitSystem::metric;
  const auto words = taken(read_wording(world, "en", units), sink);
  if (!words) return {std::nullopt, sink.take()};
  const std::string kind = animal && animal->build_kind ? animal->build_kind->value : "humid";
  return {written({*catalogue, *words, std::move(animal), kind, *size}), sink.take()};
}

}  // namespace loamsheet
