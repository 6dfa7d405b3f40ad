#include "plan/air/findings_air.h"

#include <algorithm>

#include "base/named.h"

namespace loamsheet {
namespace {

// What misses a band wholly is a caution, what misses it in part a note.
enum class Miss { none, part, whole };

template <class T>
Miss below(const Range<T>& is, T least) {
  if (is.low >= least) return Miss::none;
  return is.high < least ? Miss::whole : Miss::part;
}

template <class T>
Miss above(const Range<T>& is, T most) {
  if (is.high <= most) return Miss::none;
  return is.low > most ? Miss::whole : Miss::part;
}

Weight weight(Miss miss, Weight worst = Weight::caution) {
  return miss == Miss::whole ? worst : Weight::note;
}

Arg amount_of(const Mend& mend) {
  using enum Mend::What;
  switch (mend.what) {
    case cover_mesh:
      return Fraction{mend.amount};
    case open_lid:
      return SquareMetres{mend.amount};
    case warm_room:
    case cool_room:
      return Celsius{mend.amount};
    default:
      return static_cast<int>(mend.amount);
  }
}

const char* name_of(Mend::What what) {
  using enum Mend::What;
  static constexpr For<Mend::What, const char*> names[] = {
      {cover_mesh, "cover-mesh"}, {open_lid, "open-lid"},   {add_heater, "add-heater"},
      {dim_lamps, "dim-lamps"},   {warm_room, "warm-room"}, {cool_room, "cool-room"}};
  return what_of(names, what);
}

template <class T>
Finding missed(Weight weight, const char* rule, const KeptAnimal& animal, const Range<T>& is,
               const Range<T>& band, T by) {
  return {weight,
          rule,
          animal.where,
          {{"animal", animal.facts.name}, {"is", is}, {"band", band}, {"by", by}}};
}

bool has_heat_lamp(const Build& build) {
  return std::any_of(build.lamps.begin(), build.lamps.end(),
                     [](const Lamp& lamp) { return lamp.kind->warms_a_place; });
}

// What basks under a lamp of its own warms itself there: the rest of its tank may be as cool by day
// as the night may be warm.
Range<Celsius> day_band(const Build& build, const Animal& animal) {
  Range<Celsius> band = animal.day->value;
  if (animal.basking && animal.night && has_heat_lamp(build)) {
    band.low = std::min(band.low, animal.night->value.high);
  }
  return band;
}

Found too_cold(const Build& build, const KeptAnimal& animal, const Range<Celsius>& is,
               const Range<Celsius>& band, bool by_day) {
  const Miss miss = below(is, band.low);
  if (miss == Miss::none) return {};
  const char* rule = by_day ? "too-cold" : "too-cold-at-night";
  return {with_mend(missed(weight(miss), rule, animal, is, band, band.low - is.low),
                    for_warmer_winter(build, band.low, by_day), "heat-otherwise")};
}

Found temperature(const Build& build, const AirPlan& air, const KeptAnimal& animal) {
  Found all;
  if (const auto& day = animal.facts.day) {
    append(all, too_cold(build, animal, air.winter.day.temperature, day_band(build, animal.facts),
                         true));
    const auto& summer = air.summer.day.temperature;
    const Miss hot = above(summer, day->value.high);
    if (hot != Miss::none) {
      all.push_back(
          with_mend(missed(weight(hot, weight_of_heat(build, day->origin)), "too-warm-in-summer",
                           animal, summer, day->value, summer.high - day->value.high),
                    for_cooler_summer(build, day->value.high), "cool-otherwise"));
    }
  }
  if (const auto& night = animal.facts.night) {
    append(all, too_cold(build, animal, air.winter.night.temperature, night->value, false));
  }
  return all;
}

// One end of the year, by day.
struct DayAir {
  Celsius room;
  Range<Fraction> humidity;
};

// When the range of what may be is wider than the band it is not known which way it misses: that is
// one note, and a reading settles it. Otherwise each miss stands on its own.
Found humidity(const Build& build, const AirPlan& air, const KeptAnimal& animal) {
  if (!animal.facts.humidity) return {};
  const auto& band = animal.facts.humidity->value;
  const DayAir winter{build.room.temperature.range.low, air.winter.day.humidity};
  const DayAir summer{build.room.temperature.range.high, air.summer.day.humidity};
  const DayAir& drier = winter.humidity.low < summer.humidity.low ? winter : summer;
  const DayAir& damper = winter.humidity.high > summer.humidity.high ? winter : summer;
  const Miss dry = below(drier.humidity, band.low), damp = above(damper.humidity, band.high);
  const Range<Fraction> all{drier.humidity.low, damper.humidity.high};
  const Fraction too_dry = band.low - all.low, too_damp = all.high - band.high;
  if (dry == Miss::part && damp == Miss::part) {
    return {
        missed(Weight::note, "humidity-unsure", animal, all, band, std::max(too_dry, too_damp))};
  }
  Found found;
  if (dry == Miss::whole || (dry == Miss::part && damp == Miss::none)) {
    found.push_back(
        with_mend(missed(weight(dry), "humidity-low", animal, drier.humidity, band, too_dry),
                  for_damper_air(build, drier.room, band.low), "damp-otherwise"));
  }
  if (damp == Miss::whole || (damp == Miss::part && dry == Miss::none)) {
    found.push_back(
        with_mend(missed(weight(damp), "humidity-high", animal, damper.humidity, band, too_damp),
                  for_drier_air(build, damper.room, band.high), "dry-otherwise"));
  }
  return found;
}

}  // namespace

Finding with_mend(Finding finding, const std::optional<Mend>& mend, const char* otherwise) {
  finding.args.emplace_back("mend", mend ? name_of(mend->what) : otherwise);
  if (mend) finding.args.emplace_back("amount", amount_of(*mend));
  return finding;
}

Weight weight_of_heat(const Build& build, const Origin& origin) {
  const bool sure = build.room.stated && build.room.temperature.unknown < 0;
  return sure && origin.name != "from memory" ? Weight::stop : Weight::caution;
}

Found air_findings(const Build& build, const AirPlan& air, const KeptAnimal& animal) {
  Found all = temperature(build, air, animal);
  append(all, humidity(build, air, animal));
  return all;
}

}  // namespace loamsheet
