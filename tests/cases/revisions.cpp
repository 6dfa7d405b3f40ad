// A diary that took in one revision is right again after it took in the next: each event of the
// first stands in the second's file by its UID, moved, unchanged or called off, with a higher
// sequence.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>

#include "base/text.h"
#include "calendar/calendar.h"
#include "job/job.h"
#include "overlay.h"
#include "texts.h"

namespace {

using namespace loamsheet;

constexpr long long stamp = 1'700'000'000;

struct Entry {
  std::string on, sequence;
  bool cancelled = false;
};

// The events of a file by their UIDs.
std::map<std::string, Entry> entries(const std::string& calendar) {
  std::map<std::string, Entry> all;
  Entry* entry = nullptr;
  for (std::string line : split(calendar, '\n')) {
    line = trimmed(line);
    const auto after = [&](const std::string& start) { return line.substr(start.size()); };
    if (line.starts_with("UID:")) {
      REQUIRE_FALSE(all.contains(line));
      entry = &all[line];
    } else if (line.starts_with("SEQUENCE:")) {
      entry->sequence = after("SEQUENCE:");
    } else if (line.starts_with("DTSTART")) {
      entry->on = after("DTSTART;VALUE=DATE:");
    } else if (line == "STATUS:CANCELLED") {
      entry->cancelled = true;
    }
  }
  return all;
}

std::map<std::string, Entry> planned(const std::string& spec) {
  Overlay world("revision.yaml", spec);
  const auto planned = plan_spec(world, "revision.yaml", "");
  REQUIRE(planned);
  const Planned& p = *planned.value;
  const auto calendar = make_calendar(p.build, p.plan, p.wording, stamp);
  REQUIRE(calendar);
  return entries(*calendar.value);
}

size_t called_off(const std::map<std::string, Entry>& all) {
  return static_cast<size_t>(
      std::count_if(all.begin(), all.end(), [](const auto& e) { return e.second.cancelled; }));
}

// Every event of the first is in the second, and what is called off was in the first on that day.
void holds_all(const std::map<std::string, Entry>& first,
               const std::map<std::string, Entry>& next) {
  for (const auto& [uid, entry] : first) {
    INFO(uid);
    REQUIRE(next.contains(uid));
    CHECK(std::stoi(next.at(uid).sequence) > std::stoi(entry.sequence));
  }
  for (const auto& [uid, entry] : next) {
    if (!entry.cancelled) continue;
    INFO(uid);
    REQUIRE(first.contains(uid));
    CHECK(entry.on == first.at(uid).on);
  }
}

// A shop that is closed on two days, so that a slip puts work on other days of the plan.
std::string first_spec() {
  return changed(slurp("keys-base.yaml"), "shop:\n", "shop:\n  closed: [sunday, monday]\n");
}

std::string next_spec(const std::string& slip) {
  return changed(first_spec(), "revision: A", "revision: B" + slip);
}

}  // namespace

TEST_CASE("a slip moves or calls off what a diary holds of the revision before") {
  const auto first = planned(first_spec());
  CHECK(called_off(first) == 0);
  size_t gone = 0;
  for (int days = 1; days <= 9; ++days) {
    const auto next = planned(next_spec("\n  slip: " + std::to_string(days) + " d"));
    holds_all(first, next);
    gone += called_off(next);
  }
  CHECK(gone > 0);
}

TEST_CASE("a replacement moves or calls off what a diary holds of the revision before") {
  const std::string replaced = "replaced: [{plant: 1, by: peperomia-caperata, on: 2026-03-25}]\n";
  const auto first = planned(first_spec());
  holds_all(first, planned(next_spec("") + replaced));
  for (const char* slip : {"\n  slip: 4 d", "\n  slip: -3 d"}) {
    holds_all(first, planned(next_spec(slip) + replaced));
  }
}

TEST_CASE("a revision that changes no date calls nothing off") {
  CHECK(called_off(planned(next_spec(""))) == 0);
}
