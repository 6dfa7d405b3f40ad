#include <algorithm>
#include <initializer_list>

#include "base/text.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

using Fact = Facts::Fact;

BulletList points(const ComposeInput& in, std::initializer_list<const char*> names) {
  BulletList list;
  for (const char* name : names) {
    list.items.push_back(plain(in.wording.say(std::string("care.") + name)));
  }
  return list;
}

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

void add_work(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  blocks.push_back(Heading{2, w.say("care.every-day")});
  blocks.push_back(points(in, {"daily-look", "daily-meter"}));
  blocks.push_back(Heading{2, w.say("care.every-week")});
  blocks.push_back(is_dry(in.build.kind)
                       ? points(in, {"weekly-dry", "weekly-plants"})
                       : points(in, {"weekly-water", "weekly-plants", "weekly-crew"}));
  blocks.push_back(Heading{2, w.say("care.every-month")});
  blocks.push_back(points(in, {"monthly-timer", "monthly-litter"}));
}

void add_signs(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  const bool wet = !is_dry(in.build.kind);
  blocks.push_back(Heading{2, w.say("care.normal")});
  blocks.push_back(
      wet ? points(in, {"normal-mould", "normal-leaf-drop", "normal-droplets", "normal-crew"})
          : points(in, {"normal-leaf-drop", "normal-dust"}));
  blocks.push_back(Heading{2, w.say("care.not-normal")});
  blocks.push_back(wet ? points(in, {"act-smell", "act-fog", "act-wilt", "act-heat", "act-animal"})
                       : points(in, {"act-damp", "act-heat", "act-animal"}));
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
  add_work(in, part.blocks);
  add_signs(in, part.blocks);
  return part;
}

}  // namespace loamsheet
