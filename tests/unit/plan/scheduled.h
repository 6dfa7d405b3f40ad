// scheduled: builds with the real rules, and what the schedule tests ask of their plans.
#pragma once
#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "builds.h"
#include "catalogue/rules.h"
#include "plan/plan.h"
#include "world/world.h"

namespace loamsheet::tests {

inline TaskRules real_rules() {
  auto world = real_world();
  return read_rules(*world).value.value();
}

template <class T>
Known<T> fact(T value) {
  return Fact<T>{std::move(value), {"common practice"}};
}

inline KeptAnimal kept(double kilograms, bool claws, bool digs) {
  KeptAnimal animal;
  animal.facts.mass = fact(Range<Kilograms>{{kilograms}, {kilograms}});
  animal.facts.claws = fact(claws);
  animal.facts.digs = fact(digs);
  return animal;
}

inline CrewUse crew(const std::string& group) {
  CrewUse use;
  use.facts.group = fact(group);
  return use;
}

inline PlantUse plant(int number, const std::string& growth = "medium") {
  PlantUse use;
  use.number = number;
  use.facts.name = "plant " + std::to_string(number);
  use.facts.growth = fact(growth);
  return use;
}

// The box with the real rules and one of everything: plants, crew, a lamp, an animal.
inline Build full_build(BuildKind kind = BuildKind::humid) {
  Build build = box_build();
  build.rules = real_rules();
  build.kind = kind;
  build.enclosure.background = Background{"cork-bark", 30_mm};
  build.standing.push_back(block({450, 225}, {0.02}, 100_mm));
  build.kept.push_back(kept(0.01, false, false));
  build.plants = {plant(1), plant(2), plant(3)};
  build.crew = {crew("springtail"), crew("dwarf-isopod")};
  Lamp lamp;
  lamp.hours = 12, lamp.flux = 6000;
  build.lamps.push_back(lamp);
  return build;
}

inline Build arid_build() {
  Build build = full_build(BuildKind::arid);
  build.layers.drainage.kind = "none";
  build.layers.separator.reset();
  build.crew.clear();
  return build;
}

// The days on which a task is done.
inline std::vector<int> days_of(const Plan& plan, const std::string& task) {
  std::vector<int> days;
  for (const CalendarDay& day : plan.calendar) {
    for (const CalendarTask& t : day.tasks) {
      if (t.task == task) days.push_back(day.day);
    }
  }
  return days;
}

// The number of the step, 0 when the build does without it.
inline int step_of(const Plan& plan, const std::string& task) {
  for (const Step& step : plan.order) {
    if (step.task == task) return step.number;
  }
  return 0;
}

}  // namespace loamsheet::tests
