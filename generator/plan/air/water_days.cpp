#include "plan/air/water_days.h"

#include <algorithm>
#include <cmath>

#include "base/middle.h"
#include "plan/air/air.h"
#include "plan/air/misting.h"
#include "plan/air/salts.h"
#include "plan/air/water_constants.h"
#include "plan/fill/constants.h"
#include "plan/fill/first_watering.h"
#include "plan/fill/scenario.h"

namespace loamsheet {
namespace {

// Litres a day.
double modelled_loss(const AirPlan& air) {
  const auto day = [](const Season& s) { return 12 * (middle(s.day.lost) + middle(s.night.lost)); };
  return (day(air.winter) + day(air.summer)) / 2;
}

// Litres of the substrate's pores of one kind.
double pores(const Build& build, const LayersPlan& layers, Fraction Bulk::*share) {
  double sum = 0;
  for (size_t i = 0; i < layers.substrate.parts.size(); ++i) {
    const Bulk& bulk = build.layers.substrate.parts[i].bulk;
    sum += layers.substrate.parts[i].volume.v * (bulk.*share).v;
  }
  return sum;
}

// What the substrate lacks as placed, everything that is not known taken in the middle.
double lacking(const Build& build, const LayersPlan& layers) {
  Decisions decisions;
  decisions.layers = layers;
  const Scenario middle{std::vector<double>(build.unknowns.size(), 0.5)};
  return field_capacity_deficit(build, decisions, middle).v;
}

// The substrate as a store of water, in litres, from day to day.
class Store {
 public:
  Store(const Build& build, const LayersPlan& layers, const AirPlan& air)
      : build_(build),
        layers_(layers),
        routine_(routine_for(build)),
        full_(pores(build, layers, &Bulk::field_capacity)),
        refill_(full_ * routine_.refill.v),
        held_(full_ - lacking(build, layers)),
        loss_(build.measured_loss ? middle(*build.measured_loss) : modelled_loss(air)) {}

  Litres held() const { return {held_}; }

  WaterDay next(int number) {
    WaterDay day;
    day.day = number;
    if (number == 0 && watered_through(build_)) water_in(day);
    mist(day);
    lose(day);
    drain(day);
    day.stored = {held_};
    day.standing = standing_level(build_, layers_, {standing_});
    return day;
  }

 private:
  void water_in(WaterDay& day) {
    const Litres deficit{full_ - held_}, through = run_through(build_, deficit);
    day.watered = deficit + through;
    day.drained = through;
    held_ = full_;
  }

  void mist(WaterDay& day) {
    if (is_daily(routine_)) set_timer(day);
    const bool as_set = programme_ && programme_->amount.v <= room(day);
    const int times = programme_ ? programme_->mistings : mistings_on(routine_, day.day);
    const Spray chosen = as_set ? *programme_ : spray_for(day, {times, 1, 1});
    day.mistings = chosen.mistings, day.each = chosen.each, day.mist = chosen.amount;
    held_ += chosen.amount.v;
  }

  // A timer is set on the planting day and on Mondays, and left alone where a step of it or a fifth
  // would do: nobody turns a knob every week for that.
  void set_timer(const WaterDay& day) {
    const int days_gone = weekday(plus_days(build_.identity.plant_on, day.day));
    if (day.day > 0 && days_gone > 0) return;
    const int days = 7 - days_gone, over = held_ < refill_ ? days : constants::made_up_over;
    const Spray wanted = spray_for(day, {mistings_from(routine_, day.day, days), days, over});
    const double slight = std::max(constants::timer_step, constants::slight_change * wanted.each);
    const bool alike = programme_ && programme_->mistings == wanted.mistings &&
                       std::fabs(programme_->each - wanted.each) <= slight;
    if (!alike) programme_ = wanted;
  }

  struct Pace {
    int times;         // a day
    int days;          // at the same pace
    int made_up_over;  // days in which what is above or below the aim is to go
  };
  Spray spray_for(const WaterDay& day, Pace pace) const {
    const Fraction level = level_on(routine_, day.day + pace.days - 1);
    const double aim = refill_ + (full_ - refill_) * level.v;
    const double wanted = std::max(0.0, (aim - held_) / pace.made_up_over + loss_);
    const double most = std::min(room(day), pace.times * floor_sheet());
    return spray(*build_.misting, {wanted}, {most}, pace.times);
  }

  void lose(WaterDay& day) {
    const bool short_of_water = !build_.measured_loss && held_ < refill_;
    const double loss = short_of_water ? loss_ * held_ / refill_ : loss_;
    day.lost = {std::min(loss, held_)};
    held_ -= day.lost.v;
  }

  // Without a drainage layer the surplus has nowhere to go.
  void drain(WaterDay& day) {
    if (layers_.drainage && held_ > full_) {
      day.drained += Litres{held_ - full_};
      held_ = full_;
    }
    standing_ += day.drained.v;
  }

  // What a day's mistings may add before water stands too high.
  double room(const WaterDay& day) const {
    const double in_substrate = std::max(0.0, full_ - held_ + loss_);
    if (!layers_.drainage) return in_substrate;
    const Millimetres highest = std::min(*highest_standing(build_), constants::high_water);
    const double voids = layers_.drainage->voids.v * (highest / build_.layers.drainage.depth);
    return in_substrate + std::max(0.0, voids - standing_ - day.drained.v);
  }

  // The most that one misting may lay on the floor.
  double floor_sheet() const { return volume(area(build_.enclosure.footprint), routine_.most).v; }

  const Build& build_;
  const LayersPlan& layers_;
  Routine routine_;
  double full_, refill_, held_, loss_;
  std::optional<Spray> programme_;  // that the timer is set to
  double standing_ = 0;
};

std::optional<double> days_between_fills(const Build& build, const std::vector<WaterDay>& days) {
  if (!build.misting->tank) return std::nullopt;
  const auto wettest = std::max_element(
      days.begin(), days.end(), [](const auto& a, const auto& b) { return a.mist < b.mist; });
  if (wettest == days.end() || wettest->mist.v <= 0) return std::nullopt;
  return *build.misting->tank / wettest->mist;
}

// The substrate holds all it can by then; its free pores and those of the drainage take the rest.
std::optional<Litres> overflow(const Build& build, const LayersPlan& layers,
                               const std::vector<WaterDay>& days) {
  if (build.misting->by_hand || !build.misting->tank) return std::nullopt;
  double room = pores(build, layers, &Bulk::voids);
  if (layers.drainage) {
    double standing = 0;
    for (const WaterDay& day : days) standing += day.drained.v;
    room += std::max(0.0, layers.drainage->voids.v - standing);
  }
  return Litres{std::max(0.0, build.misting->tank->v - room)};
}

Litres mist_a_day(const std::vector<WaterDay>& days) {
  double sum = 0;
  for (const WaterDay& day : days) sum += day.mist.v;
  return {sum / static_cast<double>(days.size())};
}

}  // namespace

std::optional<int> tank_lasts(const UpkeepPlan& plan) {
  if (!plan.fill_every) return std::nullopt;
  return std::max(1, static_cast<int>(*plan.fill_every));
}

int last_day(const Build& build, int ready_days) {
  return std::max({constants::days_followed, build.calendar_days.value_or(0), ready_days});
}

std::optional<UpkeepPlan> plan_upkeep(const Build& build, const LayersPlan& layers,
                                      const AirPlan& air, int through) {
  if (!build.misting) return std::nullopt;
  UpkeepPlan plan;
  plan.by_hand = build.misting->by_hand;
  Store store(build, layers, air);
  plan.placed = store.held();
  for (int day = 0; day <= through; ++day) plan.days.push_back(store.next(day));
  plan.fill_every = days_between_fills(build, plan.days);
  plan.stuck_on_overflow = overflow(build, layers, plan.days);
  plan.flush_every =
      flush_every(build, {pores(build, layers, &Bulk::field_capacity)}, mist_a_day(plan.days));
  const int regime = routine_for(build).tapered_by;
  if (regime <= through) plan.regime_from = regime;
  return plan;
}

}  // namespace loamsheet
