#include "compose/climate_words.h"

#include <algorithm>
#include <cmath>

#include "base/text.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

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

}  // namespace

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

void add_water_facts(const ComposeInput& in, std::vector<Facts::Fact>& facts) {
  if (!in.plan.upkeep) return;
  const Wording& w = in.wording;
  const UpkeepPlan& upkeep = *in.plan.upkeep;
  if (upkeep.fill_every) {
    const int days = std::max(1, static_cast<int>(std::floor(*upkeep.fill_every)));
    facts.push_back({w.say("care.fill"), bold(w.amount(Days{static_cast<double>(days)})),
                     w.say("care.fill-note")});
  }
  if (upkeep.flush_every) {
    facts.push_back({w.say("care.flush"),
                     bold(w.amount(Days{static_cast<double>(*upkeep.flush_every)})),
                     w.say("care.flush-note")});
  }
}

}  // namespace loamsheet
