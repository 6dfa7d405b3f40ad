#include "check/checking.h"

namespace loamsheet {
namespace {

void check_dates(Checking& c, const Identity& id) {
  if (id.moves_on && *id.moves_on <= id.plant_on) {
    c.error(place_of(c.root, "build.moves_on"),
            "the move (" + iso(*id.moves_on) + ") is not after planting (" + iso(id.plant_on) + ")",
            "a date after build.plant_on",
            "a vivarium that is planted where it stands is written 'where: site'");
  }
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
  c.build.shop = {n.text("shop.name").value_or(""), n.text("shop.contact").value_or("")};
  Print& print = c.build.print;
  print.letter = n.text("print.paper") == "Letter";
  print.us_units = n.text("print.units") == "us";
  print.large = n.text("print.size") == "large";
  print.language = n.text("print.language").value_or("en");
  check_dates(c, id);
}

}  // namespace loamsheet
