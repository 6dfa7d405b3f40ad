#include <algorithm>

#include "base/text.h"
#include "compose/findings.h"
#include "compose/goods_words.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

using Fact = Facts::Fact;

std::string tank(const ComposeInput& in) {
  const Enclosure& e = in.build.enclosure;
  return in.wording.say(e.shape->tank,
                        {{"material", material_name(in.wording, std::string(e.walls.material->id))},
                         {"width", e.width},
                         {"depth", e.depth},
                         {"height", e.height}});
}

std::string summary(const ComposeInput& in) {
  const Wording& w = in.wording;
  std::vector<std::string> animals;
  for (const auto& animal : in.build.kept) {
    animals.push_back(
        w.say("build.summary-animal", {{"count", animal.count}, {"name", animal.facts.name}}));
  }
  if (animals.empty()) return capitalised(w.say("build.summary-empty", {{"tank", tank(in)}}));
  return capitalised(w.say("build.summary", {{"animals", listed(w, animals)}, {"tank", tank(in)}}));
}

std::string kicker(const ComposeInput& in) {
  const Wording& w = in.wording;
  const Identity& id = in.build.identity;
  const std::string by =
      id.prepared_by.empty() ? "" : w.say("build.kicker-by", {{"by", id.prepared_by}});
  const std::string customer =
      id.customer.empty() ? "" : w.say("build.kicker-for", {{"customer", id.customer}});
  return w.say(
      "build.kicker",
      {{"reference", id.reference}, {"revision", id.revision}, {"by", by}, {"for", customer}});
}

// The worst finding with its remedy, and how many of its weight are left for the last page.
void add_worst(const ComposeInput& in, Weight weight, std::vector<Words>& lines) {
  const auto& all = in.plan.findings;
  const auto open = [&](const Finding& f) { return f.weight == weight && !f.taken_on; };
  const auto count = std::count_if(all.begin(), all.end(), open);
  if (count == 0) return;
  const auto worst = std::find_if(all.begin(), all.end(), open);
  const SpokenFinding f = speak(*worst, in.build, in.wording);
  lines.push_back(plain(in.wording.say("status.worst", {{"text", f.text}, {"remedy", f.remedy}})));
  if (count == 2) lines.push_back(plain(in.wording.say("status.more-one")));
  if (count > 2) {
    lines.push_back(plain(in.wording.say("status.more", {{"count", static_cast<int>(count - 1)}})));
  }
}

void add_changes(const ComposeInput& in, std::vector<Block>& blocks) {
  const auto lines = change_lines(in);
  if (lines.empty()) return;
  const std::string& revision = in.build.identity.revision;
  blocks.push_back(Heading{2, in.wording.say("changes.heading", {{"revision", revision}})});
  blocks.push_back(BulletList{lines});
}

Callout verdict(const ComposeInput& in) {
  const Wording& w = in.wording;
  switch (in.plan.status) {
    case Status::not_cleared: {
      Callout c{Callout::Kind::not_cleared,
                w.say("status.not-cleared"),
                {plain(w.say("status.not-cleared-why"))}};
      add_worst(in, Weight::stop, c.lines);
      return c;
    }
    case Status::provisional: {
      Callout c{Callout::Kind::provisional,
                w.say("status.provisional"),
                {plain(w.say("status.provisional-why"))}};
      add_worst(in, Weight::caution, c.lines);
      return c;
    }
    case Status::cleared:
      break;
  }
  Callout c{Callout::Kind::cleared, w.say("status.cleared"), {plain(w.say("status.cleared-why"))}};
  add_worst(in, Weight::caution, c.lines);
  return c;
}

std::string bench(const ComposeInput& in) {
  int minutes = 0;
  for (const Step& step : in.plan.order) minutes += step.minutes;
  return in.wording.say("build.plant-on-note", {{"hours", fixed(minutes / 60.0, 1)}});
}

std::string cure(const ComposeInput& in) {
  const int days = in.plan.cure_days;
  return days == 0 ? in.wording.say("build.lead-up-note")
                   : in.wording.say("build.lead-up-cure", {{"days", days}});
}

void add_dates(const ComposeInput& in, std::vector<Fact>& facts) {
  const Wording& w = in.wording;
  const Date plant_on = in.build.identity.plant_on;
  const auto& calendar = in.plan.calendar;
  const Date start = calendar.empty() ? plant_on : std::min(calendar.front().date, plant_on);
  facts.push_back({w.say("build.lead-up"), bold(w.amount(start)), cure(in)});
  facts.push_back({w.say("build.plant-on"), bold(w.amount(plant_on)), bench(in)});
  facts.push_back({w.say("build.animal"), bold(w.amount(in.plan.ready.earliest)),
                   w.say("build.animal-note", {{"days", in.plan.ready.days}})});
}

Fact stand_margin(const ComposeInput& in) {
  const Wording& w = in.wording;
  const std::string label = w.say("build.margin");
  const auto& margin = in.plan.mass.stand_margin;
  if (!margin) return {label, bold(w.say("build.margin-none")), w.say("build.margin-none-note")};
  return {label, bold(w.amount(*margin)),
          w.say("build.margin-note", {{"rating", *in.build.enclosure.stand_rating}})};
}

std::string lifting(const ComposeInput& in) {
  const auto& lift = in.plan.lift;
  if (!lift) return "";
  if (!lift->by_hand) return in.wording.say("build.lift-gear");
  if (lift->people == 1) return in.wording.say("build.lift-one");
  return in.wording.say("build.lift-many", {{"people", lift->people}});
}

void add_masses(const ComposeInput& in, std::vector<Fact>& facts) {
  const Wording& w = in.wording;
  facts.push_back({w.say("build.empty"), bold(w.amount(in.plan.mass.empty)), lifting(in)});
  facts.push_back({w.say("build.wet"), bold(w.amount(in.plan.mass.wet)), w.say("build.wet-note")});
  facts.push_back(stand_margin(in));
}

// What follows the first watering: the mistings of the first day.
std::string misting(const ComposeInput& in) {
  const Wording& w = in.wording;
  if (!in.plan.upkeep || in.plan.upkeep->days.empty()) return "";
  const WaterDay& first = in.plan.upkeep->days.front();
  if (first.mistings == 0) return "";
  return w.say(in.plan.upkeep->by_hand ? "build.then-pulls" : "build.then-seconds",
               {{"times", first.mistings}, {"each", fixed(first.each, 0)}});
}

Fact first_watering(const ComposeInput& in) {
  const Wording& w = in.wording;
  const WaterPlan& water = in.plan.water;
  const std::string label = w.say("build.first-watering");
  if (!water.first_watering) {
    return {label, bold(w.say("build.first-watering-none")), w.say("build.first-watering-arid")};
  }
  const std::string stands =
      water.standing ? w.say("build.standing", {{"depth", *water.standing}}) : "";
  return {label, bold(w.amount(*water.first_watering)),
          w.say("build.first-watering-note", {{"stands", stands}, {"mist", misting(in)}})};
}

Fact waterline(const ComposeInput& in) {
  const Wording& w = in.wording;
  const auto outside = outside_waterline(in);
  if (!outside) {
    return {w.say("build.waterline"), bold(w.say("sheet.nothing")), w.say("build.waterline-none")};
  }
  return {w.say("build.waterline"), bold(w.amount(*outside)), w.say("build.waterline-note")};
}

std::string shortages(const ComposeInput& in) {
  const Wording& w = in.wording;
  std::vector<std::string> names;
  for (const PullItem& item : in.plan.pull_list) {
    if (item.missing > 0) names.push_back(item_name(in, item));
  }
  if (names.empty()) return w.say("build.shortages-none");
  if (names.size() == 1) return names.front();
  return w.say("build.shortages-some",
               {{"count", static_cast<int>(names.size())}, {"first", names.front()}});
}

// What it costs, what is paid with the order, and what the shelf does not hold.
void add_goods(const ComposeInput& in, std::vector<Fact>& facts) {
  const Wording& w = in.wording;
  const auto& quote = in.plan.quote;
  const bool stocked = in.build.stock.has_value();
  if (quote) {
    const std::string all = quote->partial()
                                ? w.say("build.price-partial", {{"count", quote->unpriced}})
                                : w.say("build.price-whole");
    const std::string lacking =
        stocked ? w.say("build.price-short", {{"items", shortages(in)}}) : "";
    facts.push_back(
        {w.say("build.price"), bold(money_words(in, quote->total)),
         w.say("build.price-note",
               {{"deposit", money_words(in, quote->deposit)}, {"all", all}, {"short", lacking}})});
  } else if (stocked) {
    facts.push_back({w.say("build.shortages"), bold(shortages(in)), w.say("build.shortages-note")});
  }
}

void add_blanks(const ComposeInput& in, std::vector<Block>& blocks) {
  if (in.build.unknowns.empty()) return;
  blocks.push_back(Heading{2, in.wording.say("build.blanks")});
  for (const auto& unknown : in.build.unknowns) {
    blocks.push_back(Blank{plain(in.wording.say(
        "build.blank", {{"what", key_name(in.wording, unknown.key)}, {"shown", unknown.shown}}))});
  }
}

}  // namespace

std::optional<Millimetres> outside_waterline(const ComposeInput& in) {
  const auto& inside = in.plan.water.highest_standing;
  if (!inside) return std::nullopt;
  return *inside + in.build.enclosure.walls.thickness;
}

Part first_page(const ComposeInput& in) {
  Part part{"build", in.wording.say("sheet.part-build"), false, {}};
  part.blocks.push_back(Heading{1, in.build.identity.title});
  part.blocks.push_back(
      Paragraph{{{kicker(in) + ' ', Face::bold}, {summary(in), Face::regular}}, false});
  part.blocks.push_back(verdict(in));
  for (Words& line : taken_on_lines(in)) {
    std::get<Callout>(part.blocks.back()).lines.push_back(std::move(line));
  }
  add_changes(in, part.blocks);
  Facts facts{3, {}};
  add_dates(in, facts.facts);
  add_masses(in, facts.facts);
  facts.facts.push_back(first_watering(in));
  facts.facts.push_back(waterline(in));
  add_goods(in, facts.facts);
  part.blocks.push_back(std::move(facts));
  add_readings(in, part.blocks);
  add_blanks(in, part.blocks);
  add_figure(in, "elevation", part.blocks);
  return part;
}

}  // namespace loamsheet
