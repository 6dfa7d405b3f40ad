#include <array>
#include <cmath>

#include "base/text.h"
#include "compose/parts.h"
#include "compose/words.h"
#include "plan/air/air.h"

namespace loamsheet {
namespace {

constexpr std::array<const char*, 4> whens{"climate.winter-day", "climate.winter-night",
                                           "climate.summer-day", "climate.summer-night"};

std::string per_hour(const Wording& w, const Range<Litres>& amount) {
  constexpr double worth_telling = 0.0005;  // L: less than a millilitre
  if (amount.high.v < worth_telling) return w.say("climate.none");
  return w.say("climate.per-hour", {{"amount", amount}});
}

Table air_table(const ComposeInput& in) {
  const Wording& w = in.wording;
  const AirPlan& air = *in.plan.air;
  const std::array<const AirState*, 4> states{&air.winter.day, &air.winter.night, &air.summer.day,
                                              &air.summer.night};
  Table table;
  table.columns = {{w.say("climate.when"), false, 2},
                   {w.say("climate.temperature"), false, 2},
                   {w.say("climate.humidity"), false, 2},
                   {w.say("climate.lost"), false, 2},
                   {w.say("climate.on-panes"), false, 2}};
  for (std::size_t i = 0; i < states.size(); ++i) {
    const AirState& s = *states[i];
    table.rows.push_back({bold(w.say(whens[i])), plain(w.amount(s.temperature)),
                          plain(w.amount(s.humidity)), plain(per_hour(w, s.lost)),
                          plain(per_hour(w, s.condensed))});
  }
  return table;
}

Table height_table(const ComposeInput& in) {
  const Wording& w = in.wording;
  const AirPlan& air = *in.plan.air;
  const Range<Celsius>& room = in.build.room.temperature.range;
  Table table;
  table.columns = {{w.say("climate.height"), false, 2},
                   {w.say("climate.winter-day"), false, 2},
                   {w.say("climate.summer-day"), false, 2},
                   {w.say("climate.humidity-by-day"), false, 2}};
  const std::pair<const char*, double> heights[] = {
      {"climate.top", 1}, {"climate.middle", 0.5}, {"climate.floor", 0}};
  for (const auto& [name, share] : heights) {
    const Millimetres height = in.build.enclosure.height * share;
    table.rows.push_back(
        {bold(w.say(name)),
         plain(w.amount(temperature_at(in.build, air.winter.day, room.low, height))),
         plain(w.amount(temperature_at(in.build, air.summer.day, room.high, height))),
         plain(w.amount(humidity_at(in.build, air, height)))});
  }
  return table;
}

int watts(double exact) {
  return static_cast<int>(std::lround(exact));
}

std::string needed(const Wording& w, const HeatPlan& heat) {
  if (!heat.needed_day || !heat.needed_night) return w.say("climate.needed-unknown");
  return w.say("climate.needed-value",
               {{"day", watts(*heat.needed_day)}, {"night", watts(*heat.needed_night)}});
}

std::string cost(const ComposeInput& in) {
  const auto& cost = in.plan.heat->cost_month;
  if (!cost) return in.wording.say("climate.energy-note");
  const auto& quote = in.build.quote;
  const std::string amount = decimal(*cost, quote ? quote->digits : 2);
  const std::string money =
      quote ? in.wording.say("quote.money", {{"currency", quote->currency}, {"amount", amount}})
            : amount;
  return in.wording.say("climate.cost", {{"money", money}});
}

// Watts needed and fitted, energy and its cost in a month, the tank with all power off and with
// everything stuck on.
void add_heat_facts(const ComposeInput& in, std::vector<Facts::Fact>& facts) {
  if (!in.plan.heat) return;
  const Wording& w = in.wording;
  const HeatPlan& heat = *in.plan.heat;
  facts.push_back({w.say("climate.needed"), bold(needed(w, heat)),
                   w.say("climate.fitted", {{"watts", watts(heat.fitted)}})});
  facts.push_back(
      {w.say("climate.energy"),
       bold(w.say("climate.energy-value", {{"energy", significant(heat.kwh_month, 2)}})),
       cost(in)});
  facts.push_back(
      {w.say("climate.all-off"), bold(w.amount(heat.all_off)), w.say("climate.all-off-note")});
  if (in.build.heaters.empty()) return;
  facts.push_back(
      {w.say("climate.all-on"), bold(w.amount(heat.all_on)), w.say("climate.all-on-note")});
}

std::string outside(const Wording& w, const OutsideBand& band) {
  if (band.fits()) return w.say("climate.fits");
  std::vector<std::string> parts;
  if (band.coldest) parts.push_back(w.say("climate.cold", {{"is", *band.coldest}}));
  if (band.warmest) parts.push_back(w.say("climate.warm", {{"is", *band.warmest}}));
  if (band.driest) parts.push_back(w.say("climate.dry", {{"is", *band.driest}}));
  if (band.dampest) parts.push_back(w.say("climate.damp", {{"is", *band.dampest}}));
  return join(parts, w.say("climate.also"));
}

void add_fit(const ComposeInput& in, std::vector<Block>& blocks) {
  const auto all = climate_fit(in.build, *in.plan.air);
  if (all.empty()) return;
  const Wording& w = in.wording;
  Table table;
  table.columns.push_back({w.say("climate.who"), false, 2});
  for (const char* when : whens) table.columns.push_back({w.say(when), false, 2});
  for (const ClimateFit& one : all) {
    std::vector<Words> row{bold(capitalised(one.name))};
    for (const OutsideBand& band : one.at) row.push_back(plain(outside(w, band)));
    table.rows.push_back(std::move(row));
  }
  blocks.push_back(Heading{2, w.say("climate.fit")});
  blocks.push_back(Paragraph{plain(w.say("climate.fit-note")), true});
  blocks.push_back(std::move(table));
}

}  // namespace

Part climate_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"climate", w.say("sheet.part-climate"), false, {}};
  part.blocks.push_back(Heading{1, w.say("sheet.part-climate")});
  part.blocks.push_back(Paragraph{plain(w.say("climate.note")), true});
  if (in.build.measured_loss) {
    part.blocks.push_back(
        Paragraph{plain(w.say("climate.calibrated", {{"loss", *in.build.measured_loss}})), false});
  }
  part.blocks.push_back(air_table(in));
  part.blocks.push_back(Heading{2, w.say("climate.by-height")});
  part.blocks.push_back(height_table(in));
  part.blocks.push_back(Heading{2, w.say("climate.heat")});
  Facts facts{3, {}};
  add_heat_facts(in, facts.facts);
  part.blocks.push_back(std::move(facts));
  add_fit(in, part.blocks);
  return part;
}

}  // namespace loamsheet
