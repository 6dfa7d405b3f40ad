#include <array>
#include <string_view>

#include "base/paper.h"
#include "check/check.h"
#include "check/checking.h"

namespace loamsheet {
namespace {

constexpr int furthest_move = 366;  // days after planting

void check_dates(Checking& c, const Identity& id) {
  if (id.moves_on && *id.moves_on <= id.plant_on) {
    c.error(place_of(c.root, "build.moves_on"),
            "the move (" + iso(*id.moves_on) + ") is not after planting (" + iso(id.plant_on) + ")",
            "a date after build.plant_on",
            "a vivarium that is planted where it stands is written 'where: site'");
  }
  if (id.moves_on && days_between(id.plant_on, *id.moves_on) > furthest_move) {
    c.error(place_of(c.root, "build.moves_on"),
            "the move (" + iso(*id.moves_on) + ") is more than a year after planting (" +
                iso(id.plant_on) + ")",
            "a date within a year of build.plant_on");
  }
}

// Monday first.
std::array<bool, 7> closed_days(const Node& root) {
  constexpr std::array<std::string_view, 7> names{"monday", "tuesday",  "wednesday", "thursday",
                                                  "friday", "saturday", "sunday"};
  std::array<bool, 7> closed{};
  const Node* list = root.find("shop.closed");
  if (!list) return closed;
  for (const Node& item : list->items) {
    for (size_t day = 0; day < names.size(); ++day) {
      if (item.text("") == names[day]) closed[day] = true;
    }
  }
  return closed;
}

}  // namespace

void check_identity(Checking& c) {
  const Node& n = c.root;
  Identity& id = c.build.identity;
  id.title = n.text("build.title").value_or("");
  id.reference = n.text("build.reference").value_or("");
  id.revision = n.text("build.revision").value_or("");
  id.plant_on = n.date("build.plant_on").value_or(Date{});
  id.moved = n.text("build.where") == "shop";
  id.moves_on = n.date("build.moves_on");
  id.prepared_by = n.text("build.prepared_by").value_or("");
  id.customer = n.text("build.customer").value_or("");
  id.slip = static_cast<int>(n.number("build.slip").value_or(0));
  id.plant_on_at = place_of(n, "build.plant_on");
  id.moves_on_at = place_of(n, "build.moves_on");
  id.revision_at = place_of(n, "build.revision");
  id.slip_at = place_of(n, "build.slip");
  c.build.shop = {n.text("shop.name").value_or(""), n.text("shop.contact").value_or(""),
                  closed_days(n)};
  c.build.calendar_days_at = place_of(n, "calendar.days");
  if (const auto days = n.number("calendar.days")) {
    c.build.calendar_days = static_cast<int>(*days);
  }
  c.build.print = print_of(n);
  check_dates(c, id);
}

Print print_of(const Node& n) {
  return {.paper = n.text("print.paper").value_or(std::string(papers.front().name)),
          .us_units = n.text("print.units") == "us",
          .large = n.text("print.size") == "large",
          .language = n.text("print.language").value_or("en")};
}

}  // namespace loamsheet
