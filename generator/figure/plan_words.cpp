// words: what the plan view says, and what is said of plants.
#include "base/text.h"
#include "figure/plants.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

std::string listed_numbers(const std::vector<int>& numbers) {
  std::vector<std::string> out;
  for (int n : numbers) out.push_back(std::to_string(n));
  return join(out, ", ");
}

std::string site(const FigureInput& in, const PlacedPlant& p) {
  switch (p.site) {
    case SiteKind::floor:
      return in.wording.say("figure.site-floor");
    case SiteKind::pocket:
      return in.wording.say("figure.site-pocket", {{"on", thing_name(in, p.on)}});
    case SiteKind::mount:
      break;
  }
  return in.wording.say("figure.site-mount", {{"on", thing_name(in, p.on)}});
}

std::string plant_sentence(const FigureInput& in, const PlacedPlant& p) {
  return in.wording.say("figure.alt-plant", {{"number", p.number},
                                             {"name", p.common_name},
                                             {"x", Millimetres{p.at.x}},
                                             {"y", Millimetres{p.at.y}},
                                             {"site", site(in, p)},
                                             {"spread", p.spread}});
}

std::string furnishing_sentence(const FigureInput& in, const Furnishing& f) {
  const Position at = f.kind->spans() ? f.from : f.at;
  Args args{
      {"name", furnishing_label(in, f).name}, {"x", Millimetres{at.x}}, {"y", Millimetres{at.y}}};
  if (!f.kind->spans()) return in.wording.say("figure.alt-furnishing", args);
  args.push_back({"to_x", Millimetres{f.to.x}});
  args.push_back({"to_y", Millimetres{f.to.y}});
  return in.wording.say("figure.alt-branch", args);
}

}  // namespace

Target lamp_label(const FigureInput& in, const Lamp& lamp) {
  return {{},
          in.wording.say(lamp.kind->label),
          in.wording.say("figure.lamp-detail", {{"id", lamp.id}, {"z", Millimetres{lamp.at.z}}})};
}

std::vector<std::string> unnumbered_notes(const FigureInput& in, const std::vector<int>& numbers) {
  if (numbers.empty()) return {};
  return {in.wording.say("figure.note-unnumbered", {{"numbers", listed_numbers(numbers)}})};
}

std::vector<std::string> plant_notes(const FigureInput& in, const std::vector<int>& left_out,
                                     bool in_one_line) {
  if (placed_plants(in).empty()) return {};
  std::vector<std::string> out{in.wording.say("figure.note-plants"),
                               in.wording.say("figure.plan-numbers")};
  if (in_one_line) out = {join(out, " ")};
  for (std::string& note : unnumbered_notes(in, left_out)) out.push_back(std::move(note));
  return out;
}

std::vector<std::string> plan_notes(const FigureInput& in, int scale, bool unnamed) {
  const bool metric = in.wording.units() == UnitSystem::metric;
  std::vector<std::string> out{
      in.wording.say(metric ? "figure.note-metric" : "figure.note-us", {{"scale", scale}})};
  if (!placed_plants(in).empty()) out.front() += ' ' + in.wording.say("figure.plan-numbers");
  if (unnamed) out.push_back(in.wording.say("figure.plan-unnamed"));
  return out;
}

std::string plan_description(const FigureInput& in) {
  const Box box = extent(in.build.enclosure.footprint);
  std::vector<std::string> out{
      in.wording.say("figure.alt-plan",
                     {{"width", Millimetres{box.width()}}, {"depth", Millimetres{box.height()}}})};
  for (const Furnishing& f : in.build.furnishings) out.push_back(furnishing_sentence(in, f));
  for (const PlacedPlant* p : placed_plants(in)) out.push_back(plant_sentence(in, *p));
  return join(out, " ");
}

}  // namespace loamsheet
