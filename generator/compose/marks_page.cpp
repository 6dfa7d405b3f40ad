#include "base/text.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

// Whole millimetres, or sixteenths of an inch.
std::string to_the_mark(const Wording& w, Millimetres length) {
  return w.amount(Arg(length), "mm");
}

Table marks_table(const ComposeInput& in) {
  const Wording& w = in.wording;
  Table table;
  table.tick_column = true;
  table.columns = {{w.say("marks.mark"), false, 3},
                   {w.say("marks.front"), true, 1},
                   {w.say("marks.back"), true, 1}};
  for (const TapeMark& mark : in.plan.marks) {
    const std::string name =
        mark.from ? w.say("marks.terrace", {{"from", *mark.from}}) : w.say("marks." + mark.layer);
    table.rows.push_back(
        {plain(name), plain(to_the_mark(w, mark.front)), plain(to_the_mark(w, mark.back))});
  }
  return table;
}

std::string remark(const Wording& w, const Cut& cut) {
  if (!cut.overlap) return "";
  return w.say("marks.strips", {{"overlap", to_the_mark(w, *cut.overlap)}});
}

void add_cuts(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  if (in.plan.cuts.empty()) return;
  Table table;
  table.tick_column = true;
  table.columns = {{w.say("marks.piece"), false, 3},
                   {w.say("marks.count"), true, 1},
                   {w.say("marks.size"), true, 2},
                   {w.say("marks.remark"), false, 3}};
  for (const Cut& cut : in.plan.cuts) {
    const std::string size = w.say(
        "layers.cut", {{"width", to_the_mark(w, cut.width)}, {"depth", to_the_mark(w, cut.depth)}});
    table.rows.push_back({plain(capitalised(material_name(w, cut.material))),
                          plain(w.amount(cut.count)), plain(size), plain(remark(w, cut))});
  }
  blocks.push_back(Heading{2, w.say("marks.cuts")});
  blocks.push_back(std::move(table));
}

std::vector<Words> dose_row(const ComposeInput& in, const DosePlan& dose) {
  const Wording& w = in.wording;
  const std::string nothing = w.say("sheet.nothing");
  const auto whole = [](double v) { return fixed(v, 0); };
  return {plain(capitalised(material_name(w, dose.material))), plain(w.amount(dose.dose)),
          plain(dose.teaspoons ? w.say("marks.spoons", {{"count", fixed(*dose.teaspoons, 1)}})
                               : nothing),
          plain(dose.nitrogen_mg_l
                    ? w.say("marks.nitrogen-mg", {{"amount", whole(*dose.nitrogen_mg_l)}})
                    : nothing)};
}

void add_doses(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  if (in.plan.doses.empty()) return;
  Table table;
  table.columns = {{w.say("marks.feed"), false, 3},
                   {w.say("marks.dose"), true, 1},
                   {w.say("marks.spoon"), true, 2},
                   {w.say("marks.nitrogen"), true, 2}};
  for (const DosePlan& dose : in.plan.doses) table.rows.push_back(dose_row(in, dose));
  blocks.push_back(Heading{2, w.say("marks.doses")});
  blocks.push_back(std::move(table));
  blocks.push_back(Paragraph{plain(w.say("marks.dose-note")), true});
}

void add_crew(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  if (in.plan.crew.empty()) return;
  Table table;
  table.columns = {{w.say("marks.crew"), false, 3},
                   {w.say("marks.given"), true, 1},
                   {w.say("marks.suggested"), true, 2}};
  for (const CrewPlan& crew : in.plan.crew) {
    const std::string name = in.catalogue.crew.has(crew.species)
                                 ? in.catalogue.crew.at(crew.species).common_name
                                 : crew.species;
    table.rows.push_back(
        {plain(capitalised(name)), plain(w.amount(crew.given)),
         plain(crew.suggested ? w.amount(*crew.suggested) : w.say("sheet.nothing"))});
  }
  blocks.push_back(Heading{2, w.say("marks.cultures")});
  blocks.push_back(std::move(table));
}

}  // namespace

Part marks_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"marks", w.say("sheet.part-marks"), false, {}};
  part.blocks.push_back(Heading{1, w.say("marks.heading")});
  part.blocks.push_back(Heading{2, w.say("marks.tape")});
  part.blocks.push_back(
      Paragraph{plain(w.say("marks.tape-note",
                            {{"base", to_the_mark(w, in.build.enclosure.walls.thickness)}})),
                true});
  part.blocks.push_back(marks_table(in));
  add_cuts(in, part.blocks);
  add_doses(in, part.blocks);
  add_crew(in, part.blocks);
  return part;
}

}  // namespace loamsheet
