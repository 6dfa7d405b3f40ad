#include <algorithm>

#include "base/text.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

using Fact = Facts::Fact;

std::string heading(const ComposeInput& in) {
  std::vector<std::string> names;
  for (const auto& animal : in.build.kept) names.push_back(animal.facts.name);
  if (names.empty()) return in.wording.say("care.heading-empty");
  return in.wording.say("care.heading", {{"animals", listed(in.wording, names)}});
}

template <class T>
void add(const Wording& w, const std::string& name, const std::optional<T>& known,
         std::vector<Fact>& facts) {
  if (!known) return;
  facts.push_back(
      {w.say("care." + name), bold(w.amount(known->value)), w.say("care." + name + "-note")});
}

// The numbers of the first animal; mixed company is a finding elsewhere.
void add_animal(const ComposeInput& in, std::vector<Fact>& facts) {
  if (in.build.kept.empty()) return;
  const Animal& animal = in.build.kept.front().facts;
  add(in.wording, "day", animal.day, facts);
  add(in.wording, "basking", animal.basking, facts);
  add(in.wording, "night", animal.night, facts);
  add(in.wording, "humidity", animal.humidity, facts);
}

void add_lamps(const ComposeInput& in, std::vector<Fact>& facts) {
  double hours = 0;
  for (const Lamp& lamp : in.build.lamps) hours = std::max(hours, lamp.hours);
  if (hours == 0) return;
  const Wording& w = in.wording;
  std::vector<std::string> each;
  for (const Lamp& lamp : in.build.lamps) {
    each.push_back(
        w.say("care.light-each", {{"lamp", lamp.id}, {"hours", significant(lamp.hours, 3)}}));
  }
  facts.push_back({w.say("care.light"),
                   bold(w.say("care.light-value", {{"hours", significant(hours, 3)}})),
                   w.say("care.light-note", {{"lamps", listed(w, each)}})});
}

// Of the first animal, as the lamps' tables give it.
void add_uv(const ComposeInput& in, std::vector<Fact>& facts) {
  if (in.plan.uv.empty() || in.plan.uv.front().animal != 0) return;
  const UvPlan& uv = in.plan.uv.front();
  const Wording& w = in.wording;
  facts.push_back({w.say("care.uv"),
                   bold(w.say("care.uv-value", {{"index", significant(uv.basking, 2)}})),
                   w.say("care.uv-note", {{"most", significant(uv.most, 2)}})});
}

void add_misting(const ComposeInput& in, std::vector<Fact>& facts) {
  if (!in.plan.upkeep || in.plan.upkeep->days.empty()) return;
  const WaterDay& last = in.plan.upkeep->days.back();
  if (last.mistings == 0) return;
  const Wording& w = in.wording;
  const std::string each = in.plan.upkeep->by_hand
                               ? w.say("care.misting-pulls", {{"pulls", fixed(last.each, 0)}})
                               : w.say("care.misting-seconds", {{"seconds", fixed(last.each, 0)}});
  facts.push_back({w.say("care.misting"),
                   bold(w.say("care.misting-value", {{"times", last.mistings}, {"each", each}})),
                   w.say("care.misting-note")});
}

// How often the mist tank wants filling, and the substrate flushing.
void add_water_facts(const ComposeInput& in, std::vector<Fact>& facts) {
  if (!in.plan.upkeep) return;
  const Wording& w = in.wording;
  const UpkeepPlan& upkeep = *in.plan.upkeep;
  if (const auto lasts = tank_lasts(upkeep)) {
    facts.push_back({w.say("care.fill"), bold(w.amount(Days{static_cast<double>(*lasts)})),
                     w.say("care.fill-note")});
  }
  if (upkeep.flush_every) {
    facts.push_back({w.say("care.flush"),
                     bold(w.amount(Days{static_cast<double>(*upkeep.flush_every)})),
                     w.say("care.flush-note")});
  }
}

void add_waterline(const ComposeInput& in, std::vector<Fact>& facts) {
  const auto outside = outside_waterline(in);
  if (!outside) return;
  const Wording& w = in.wording;
  facts.push_back(
      {w.say("care.waterline"), bold(w.amount(*outside)), w.say("care.waterline-note")});
}

void add_list(const ComposeInput& in, const std::string& name, std::vector<Block>& blocks) {
  BulletList list{care_points(in, name)};
  if (list.items.empty()) return;
  blocks.push_back(Heading{2, in.wording.say("care." + name)});
  blocks.push_back(std::move(list));
}

}  // namespace

Part care_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"care", w.say("sheet.part-care"), false, {}};
  part.blocks.push_back(Heading{1, heading(in)});
  part.blocks.push_back(Heading{2, w.say("care.numbers")});
  Facts facts{3, {}};
  add_animal(in, facts.facts);
  add_lamps(in, facts.facts);
  add_uv(in, facts.facts);
  add_misting(in, facts.facts);
  add_water_facts(in, facts.facts);
  add_waterline(in, facts.facts);
  part.blocks.push_back(std::move(facts));
  part.blocks.push_back(Paragraph{plain(w.say("care.sourced")), true});
  for (const char* list : {"every-day", "every-week", "every-month", "normal", "not-normal"}) {
    add_list(in, list, part.blocks);
  }
  return part;
}

}  // namespace loamsheet
