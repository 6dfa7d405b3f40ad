#include "compose/parts.h"
#include "compose/schedule.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

int minutes_of(const std::vector<Step>& order, const std::string& group) {
  int sum = 0;
  for (const Step& step : order) sum += step.group == group ? step.minutes : 0;
  return sum;
}

Words words_of(const Step& step, const Wording& w) {
  Words words = plain(said(step, w));
  if (step.pause) words.push_back({' ' + w.say("steps.pause"), Face::bold});
  return words;
}

// The steps of one group are set under its heading; a group's steps stand together.
void add_step(const ComposeInput& in, const Step& step, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  const std::string minutes =
      step.minutes == 0 ? "" : w.say("steps.minutes", {{"minutes", step.minutes}});
  std::get<Steps>(blocks.back())
      .steps.push_back({std::to_string(step.number), words_of(step, w), minutes});
}

void open_group(const ComposeInput& in, const std::string& group, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  blocks.push_back(
      Heading{2, w.say("steps.group." + group, {{"minutes", minutes_of(in.plan.order, group)}})});
  blocks.push_back(Steps{});
}

}  // namespace

Part order_page(const ComposeInput& in) {
  Part part{"order", in.wording.say("sheet.part-order"), false, {}};
  part.blocks.push_back(Heading{1, in.wording.say("steps.heading")});
  part.blocks.push_back(Paragraph{plain(in.wording.say("steps.note")), true});
  std::string group;
  for (const Step& step : in.plan.order) {
    if (step.group != group) open_group(in, group = step.group, part.blocks);
    add_step(in, step, part.blocks);
  }
  return part;
}

}  // namespace loamsheet
