// identity: what a build is called, whose it is, and how it is printed.
#pragma once
#include <array>
#include <optional>
#include <string>

#include "base/date.h"
#include "base/span.h"

namespace loamsheet {

class FieldSink;

struct Identity {
  std::string title, reference, revision;
  Date plant_on;
  bool moved = false;                 // built in the shop, then moved
  std::optional<Date> moves_on;       // the day of that move, when it is fixed
  std::string prepared_by, customer;  // may be empty
  Span plant_on_at, moves_on_at;
  int slip = 0;                    // days by which the dates of what is not yet done moved
  std::optional<Date> done_until;  // after replacements: what is dated up to here is done
  Span revision_at, slip_at;
};
void fields(const Identity&, FieldSink&);

struct Shop {
  std::string name, contact;     // may be empty
  std::array<bool, 7> closed{};  // Monday first
};

struct Print {
  std::string paper;  // name of a row of base/paper.h
  bool us_units = false, large = false;
  std::string language = "en";
};
void fields(const Print&, FieldSink&);

}  // namespace loamsheet
