#include "compose/compose.h"

#include <algorithm>

#include "base/text.h"
#include "compose/parts.h"

namespace loamsheet {
namespace {

Diagnostic unknown_part(const std::string& name) {
  Diagnostic d;
  d.message = "there is no part '" + name + "' in the sheet";
  d.expected = "parts of " + join(part_names(), ", ");
  if (const auto near = closest(name, part_names())) d.hint = "did you mean '" + *near + "'?";
  return d;
}

bool wanted(const ComposeInput& in, const std::string& part) {
  return in.parts.empty() || std::find(in.parts.begin(), in.parts.end(), part) != in.parts.end();
}

Sheet frame(const ComposeInput& in) {
  const Wording& w = in.wording;
  const Identity& id = in.build.identity;
  const Args names{{"title", id.title},
                   {"reference", id.reference},
                   {"revision", id.revision},
                   {"shop", in.build.shop.name},
                   {"contact", in.build.shop.contact},
                   {"page", std::string("{page}")},
                   {"pages", std::string("{pages}")}};
  Sheet sheet;
  sheet.title = w.say("sheet.title", names);
  sheet.author = in.build.shop.name.empty() ? w.say("sheet.author") : in.build.shop.name;
  sheet.subject = w.say("sheet.subject");
  sheet.language = in.build.print.language;
  sheet.running_left = w.say("sheet.running-left", names);
  const bool contact = !in.build.shop.contact.empty();
  sheet.running_right =
      w.say(contact ? "sheet.running-right-contact" : "sheet.running-right", names);
  sheet.page_of = w.say("sheet.page-of", names);
  sheet.foot = w.say("sheet.foot");
  sheet.paper = in.build.print.paper;
  return sheet;
}

void add_build_sheet(const ComposeInput& in, std::vector<Part>& parts) {
  parts.push_back(first_page(in));
  parts.push_back(pull_page(in));
  parts.push_back(layers_page(in));
  parts.push_back(marks_page(in));
  parts.push_back(loads_page(in));
  if (in.plan.air) parts.push_back(climate_page(in));
  if (in.plan.planting && !in.plan.planting->plants.empty()) parts.push_back(planting_page(in));
  if (!in.plan.order.empty()) parts.push_back(order_page(in));
}

}  // namespace

void add_figure(const ComposeInput& in, const char* id, std::vector<Block>& blocks) {
  const Figure* figure = in.figures.find(id);
  if (figure) blocks.push_back(FigureBlock{figure->id, figure->title, figure->alt});
}

const std::vector<std::string>& part_names() {
  static const std::vector<std::string> names{"build", "quote",  "calendar",
                                              "care",  "record", "cautions"};
  return names;
}

Sheet compose_first_page(const ComposeInput& in) {
  Sheet sheet = frame(in);
  sheet.parts.push_back(first_page(in));
  return sheet;
}

Outcome<Sheet> compose(const ComposeInput& in) {
  Sink sink;
  for (const auto& name : in.parts) {
    const auto& known = part_names();
    if (std::find(known.begin(), known.end(), name) == known.end()) sink.add(unknown_part(name));
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  Sheet sheet = frame(in);
  if (wanted(in, "build")) add_build_sheet(in, sheet.parts);
  if (wanted(in, "quote") && in.plan.quote) sheet.parts.push_back(quote_page(in));
  if (wanted(in, "calendar") && !in.plan.calendar.empty()) {
    sheet.parts.push_back(calendar_page(in));
  }
  if (wanted(in, "care")) sheet.parts.push_back(care_page(in));
  if (wanted(in, "record")) {
    sheet.parts.push_back(record_page(in));
    sheet.parts.push_back(readiness_page(in));
  }
  if (wanted(in, "cautions")) sheet.parts.push_back(cautions_page(in));
  return {std::move(sheet), sink.take()};
}

}  // namespace loamsheet
