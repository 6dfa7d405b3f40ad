#include <algorithm>
#include <utility>

#include "base/text.h"
#include "check/checking.h"
#include "check/defaults.h"
#include "check/exact.h"
#include "check/taking.h"
#include "read/quantity.h"

namespace loamsheet {
namespace {

constexpr double ml_per_litre = 1000;

Range<double> read_range_of(const Key& key, std::string_view typed) {
  const Leaf leaf = read_quantity(key, typed).value;
  if (const auto* range = std::get_if<Range<double>>(&leaf)) return *range;
  const double* single = std::get_if<double>(&leaf);
  return single ? Range<double>{*single, *single} : Range<double>{};
}

int unknown_at(const Build& build, std::string_view key) {
  const auto& all = build.unknowns;
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const UnknownInput& u) { return u.key == key; });
  return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

// What the spec states, or under a "?" what a profile or else the key's row states; nothing when
// the key is absent.
std::optional<Uncertain<double>> stated(const Checking& c, std::string_view path) {
  const Node* n = c.root.find(path);
  if (!n) return std::nullopt;
  if (!c.root.unknown(path)) return Uncertain<double>{*c.root.range(path), -1};
  const Range<double> stands_in =
      read_range_of(*n->key, n->shadowed ? std::string_view(n->shadowed->typed) : n->key->unknown);
  return Uncertain<double>{stands_in, unknown_at(c.build, path)};
}

// As stated; absent, the range of the key's row, listed among what was assumed.
Uncertain<double> stated_or_row(Checking& c, std::string_view path) {
  if (const auto found = stated(c, path)) return *found;
  const Key& row = *find_key(spec_keys(), path);
  c.build.assumed.push_back({std::string(path), std::string(row.unknown), from_default});
  return {read_range_of(row, row.unknown), -1};
}

template <class T>
Uncertain<T> scaled(const Uncertain<double>& u, double scale = 1) {
  return {{T{u.range.low * scale}, T{u.range.high * scale}}, u.unknown};
}

void check_room(Checking& c) {
  Room& room = c.build.room;
  room.stated = c.root.has("room.temperature");
  room.where = place_of(c.root, "room");
  room.temperature = scaled<Celsius>(stated_or_row(c, "room.temperature"));
  room.humidity = scaled<Fraction>(stated_or_row(c, "room.humidity"));
  if (const Node* tariff = c.root.find("room.tariff")) room.tariff = exact_money(c, *tariff);
}

std::string quoted(const Lamp& lamp) {
  return "lamp '" + lamp.id + "'";
}

// A lamp whose light counts must have the measures that shape it.
void check_shape(Checking& c, const Node& n, const Lamp& lamp) {
  if (lamp.flux <= 0) return;
  for (const std::string& key : split(lamp.kind->keys, '|')) {
    if (n.has(key)) continue;
    const std::string_view example = find_key(spec_keys(), "lamps[]." + key)->example;
    c.error(n.where, quoted(lamp) + " shines, but its " + key + " is not stated",
            key + ", such as " + std::string(example));
  }
}

void take_photons(Checking& c, const Node& n, Lamp& lamp) {
  static const std::string usual = "white-led";
  const auto typed = n.text("spectrum");
  if (lamp.flux <= 0) return;
  const auto found = c.catalogue.spectra.find(typed.value_or(usual));
  if (found == c.catalogue.spectra.end()) {
    c.error(place_of(n, "spectrum"), "the catalogue does not know how many photons this light has");
    return;
  }
  lamp.photons_per_lux = found->second.value;
  if (!typed) c.build.assumed.push_back({n.path + ".spectrum", usual, from_default, called(n)});
}

void take_uv(Checking& c, const Node& n, Lamp& lamp) {
  const Node* table = n.find("uvi");
  if (!table) return;
  for (const Node& row : table->items) {
    lamp.uv_index.emplace_back(Millimetres{row.number("[0]").value_or(0)},
                               row.number("[1]").value_or(0));
  }
  std::sort(lamp.uv_index.begin(), lamp.uv_index.end());
  const auto twice =
      std::adjacent_find(lamp.uv_index.begin(), lamp.uv_index.end(),
                         [](const auto& a, const auto& b) { return a.first == b.first; });
  if (twice == lamp.uv_index.end()) return;
  c.error(table->where,
          "the UV table of " + quoted(lamp) + " has " + length_text(twice->first) + " twice",
          "one UV index for each distance");
}

Lamp lamp_of(Checking& c, const Node& n) {
  auto lamp = taken_from<Lamp>(n);
  check_shape(c, n, lamp);
  take_photons(c, n, lamp);
  take_uv(c, n, lamp);
  return lamp;
}

void check_misting(Checking& c) {
  const Node* n = c.root.find("misting");
  if (!n) return;
  Misting misting;
  misting.by_hand = n->text("by") == "hand";
  misting.fogger = n->text("by") == "fogger";
  misting.nozzles = static_cast<int>(n->number("count").value_or(0));
  if (const auto flow = stated(c, "misting.flow")) {
    misting.flow = scaled<Litres>(*flow, 1 / ml_per_litre);
  }
  if (const auto pull = stated(c, "misting.per_pull")) misting.pull = scaled<Litres>(*pull);
  if (const auto tank = n->number("tank")) misting.tank = Litres{*tank};
  misting.where = n->where;
  c.build.misting = misting;
}

}  // namespace

void check_climate(Checking& c) {
  check_room(c);
  if (const Node* lamps = c.root.find("lamps")) {
    for (const Node& n : lamps->items) c.build.lamps.push_back(lamp_of(c, n));
  }
  if (const Node* heaters = c.root.find("heaters")) {
    for (const Node& n : heaters->items) c.build.heaters.push_back(taken_from<Heater>(n));
  }
  check_misting(c);
  const bool unknown_water = c.root.unknown("water_source");
  c.build.water_source_at = place_of(c.root, "water_source");
  c.build.water_source = unknown_water ? "?" : c.root.text("water_source").value_or("");
}

}  // namespace loamsheet
