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
  static constexpr const char* names[] = {"rectangle", "bow-front", "corner",
                                          "hexagon",   "round",     "outline"};
  const Enclosure& e = in.build.enclosure;
  return in.wording.say(std::string("build.tank-") + names[static_cast<int>(e.shape)],
                        {{"material", material_name(in.wording, e.walls.material)},
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
  const std::string& by = in.build.identity.prepared_by;
  return by.empty() ? in.wording.say("build.kicker")
                    : in.wording.say("build.kicker-by", {{"by", by}});
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

void add_identity(const ComposeInput& in, std::vector<Fact>& facts) {
  const Wording& w = in.wording;
  const Identity& id = in.build.identity;
  const std::string customer =
      id.customer.empty() ? "" : w.say("build.for", {{"customer", id.customer}});
  facts.push_back({w.say("build.reference"),
                   bold(w.say("build.reference-value",
                              {{"reference", id.reference}, {"revision", id.revision}})),
                   customer});
  facts.push_back({w.say("build.plant-on"), bold(w.amount(id.plant_on)), bench(in)});
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

template <class T>
Fact maybe(const Wording& w, const std::string& name, const std::optional<T>& value,
           const std::string& absent) {
  if (!value) return {w.say(name), bold(absent), w.say(name + "-none-note")};
  return {w.say(name), bold(w.amount(*value)), w.say(name + "-note")};
}

// What follows the first watering: the mistings of the first day.
std::string misting(const ComposeInput& in) {
  const Wording& w = in.wording;
  if (!in.plan.upkeep || in.plan.upkeep->days.empty()) return w.say("build.first-watering-note");
  const WaterDay& first = in.plan.upkeep->days.front();
  if (first.mistings == 0) return w.say("build.first-watering-note");
  return w.say(in.plan.upkeep->by_hand ? "build.then-pulls" : "build.then-seconds",
               {{"times", first.mistings}, {"each", fixed(first.each, 0)}});
}

void add_water(const ComposeInput& in, std::vector<Fact>& facts) {
  const Wording& w = in.wording;
  const WaterPlan& water = in.plan.water;
  Fact first =
      maybe(w, "build.first-watering", water.first_watering, w.say("build.first-watering-none"));
  if (water.first_watering) first.note = misting(in);
  facts.push_back(std::move(first));
  facts.push_back(maybe(w, "build.standing", water.standing, w.say("build.standing-none")));
  facts.push_back(maybe(w, "build.waterline", outside_waterline(in), w.say("sheet.nothing")));
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
void add_price(const ComposeInput& in, std::vector<Fact>& facts) {
  const auto& quote = in.plan.quote;
  if (!quote) return;
  const Wording& w = in.wording;
  facts.push_back({w.say("build.price"), bold(money_words(in, quote->total)),
                   quote->partial() ? w.say("build.price-partial", {{"count", quote->unpriced}})
                                    : w.say("build.price-note")});
  facts.push_back({w.say("build.deposit"), bold(money_words(in, quote->deposit)),
                   quote->valid_until
                       ? w.say("build.deposit-until", {{"date", *quote->valid_until}})
                       : w.say("build.deposit-note")});
  if (!in.build.stock) return;
  facts.push_back({w.say("build.shortages"), bold(shortages(in)), w.say("build.shortages-note")});
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
  add_identity(in, facts.facts);
  add_masses(in, facts.facts);
  add_water(in, facts.facts);
  add_price(in, facts.facts);
  part.blocks.push_back(std::move(facts));
  add_readings(in, part.blocks);
  add_blanks(in, part.blocks);
  if (const Figure* elevation = in.figures.find("elevation")) {
    part.blocks.push_back(FigureBlock{elevation->id, elevation->title, elevation->alt});
  }
  return part;
}

}  // namespace loamsheet
