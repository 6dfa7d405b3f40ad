#include <algorithm>

#include "base/text.h"
#include "compose/parts.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

constexpr int least_weeks = 8;          // on paper, even where the calendar is shorter
constexpr int most_weeks = 9;           // that a table has room for, in large print, too
constexpr double hand_row = 6.3;        // mm: room for a word by hand
constexpr int reading_rows = 7;         // of the days that the readings must be in band
constexpr const char* visit = "visit";  // the task of the calendar

int weeks_kept(const ComposeInput& in) {
  const auto& calendar = in.plan.calendar;
  const int last = calendar.empty() ? 0 : calendar.back().day;
  return std::max(least_weeks, (last + 6) / 7);
}

Table roll_call(const ComposeInput& in, int from, int to) {
  const Wording& w = in.wording;
  Table table;
  table.write_rows = hand_row;
  table.columns = {{w.say("record.number"), true, 0}, {w.say("record.plant"), false, 2}};
  for (int week = from; week <= to; ++week) {
    table.columns.push_back({std::to_string(week), false, 1});
  }
  for (const PlantUse& plant : in.build.plants) {
    std::vector<Words> row(table.columns.size());
    row[0] = bold(std::to_string(plant.number));
    row[1] = plain(plant.facts.name);
    table.rows.push_back(std::move(row));
  }
  return table;
}

// In tables of about as many weeks each.
void add_roll_call(const ComposeInput& in, std::vector<Block>& blocks) {
  if (in.build.plants.empty()) return;
  blocks.push_back(Heading{2, in.wording.say("record.roll-call")});
  blocks.push_back(Paragraph{plain(in.wording.say("record.roll-call-note")), true});
  const int weeks = weeks_kept(in), tables = (weeks + most_weeks - 1) / most_weeks;
  for (int i = 0; i < tables; ++i) {
    blocks.push_back(roll_call(in, weeks * i / tables + 1, weeks * (i + 1) / tables));
  }
}

// A row for each visit that the calendar has.
void add_visits(const ComposeInput& in, std::vector<Block>& blocks) {
  const Wording& w = in.wording;
  Table table;
  table.write_rows = hand_row;
  table.columns = {{w.say("record.visit-date"), false, 1},
                   {w.say("record.visit-seen"), false, 4},
                   {w.say("record.visit-by"), false, 1}};
  for (const CalendarDay& day : in.plan.calendar) {
    const auto called = [](const CalendarTask& task) { return task.task == visit; };
    if (std::none_of(day.tasks.begin(), day.tasks.end(), called)) continue;
    table.rows.push_back({plain(w.amount(day.date)), {}, {}});
  }
  if (table.rows.empty()) return;
  blocks.push_back(Heading{2, w.say("record.visits")});
  blocks.push_back(std::move(table));
}

Table readings(const ComposeInput& in) {
  const Wording& w = in.wording;
  Table table;
  table.write_rows = hand_row;
  const bool drained = in.build.layers.drainage.kind->keeps_water_off;
  for (const std::string column : {"date", "day", "night", "humidity", "standing", "by"}) {
    if (column == "standing" && !drained) continue;
    table.columns.push_back({w.say("record.reading-" + column), false, 1});
  }
  table.rows.assign(reading_rows, std::vector<Words>(table.columns.size()));
  return table;
}

TickList tank_ready(const ComposeInput& in) {
  TickList list{care_points(in, "tank-ready")};
  for (const UvPlan& uv : in.plan.uv) {
    if (uv.zone.high < 3) continue;
    list.items.push_back(plain(
        in.wording.say("record.tank-uv-meter", {{"animal", in.build.kept[uv.animal].facts.name},
                                                {"low", significant(uv.mean.low, 2)},
                                                {"most", significant(uv.most, 2)}})));
  }
  return list;
}

}  // namespace

Part readiness_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"readiness", w.say("record.readiness-heading"), false, {}};
  std::vector<Block>& blocks = part.blocks;
  blocks.push_back(Heading{1, w.say("record.readiness-heading")});
  blocks.push_back(Paragraph{
      plain(w.say("record.readiness-note", {{"earliest", in.plan.ready.earliest}})), false});
  blocks.push_back(Heading{2, w.say("record.tank-heading")});
  blocks.push_back(tank_ready(in));
  if (TickList animal{care_points(in, "animal-ready")}; !animal.items.empty()) {
    blocks.push_back(Heading{2, w.say("record.animal-heading")});
    blocks.push_back(std::move(animal));
  }
  blocks.push_back(Blank{plain(w.say("record.signed"))});
  blocks.push_back(Blank{plain(w.say("record.on"))});
  return part;
}

Part record_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"record", w.say("sheet.part-record"), false, {}};
  part.blocks.push_back(Heading{1, w.say("record.heading")});
  add_roll_call(in, part.blocks);
  part.blocks.push_back(Heading{2, w.say("record.readings")});
  part.blocks.push_back(readings(in));
  add_visits(in, part.blocks);
  return part;
}

}  // namespace loamsheet
