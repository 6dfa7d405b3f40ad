// key: the table of keys. One row says everything about a key of a document: the reader, the
// JSON Schema and the key reference are made from the rows, so that they cannot drift.
#pragma once
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace loamsheet {

// What a leaf holds. Amounts are kept in the unit named here, whatever unit was typed.
enum class Kind {
  group,        // a mapping with keys of its own
  list,         // items are described by "path[]", or one by one by "path[0]", "path[1]", ...;
                // the limits are the least and most number of items
  table,        // a mapping with free names; its values are described by "path.*"
  text,         // any words; the upper limit is the longest, in code points (else 200)
  id,           // kebab-case name: ficus-pumila
  choice,       // one of the row's choices
  yes_no,       // yes | no -> bool
  date,         // ISO 8601 -> Date
  integer,      // whole number
  number,       // bare number (money, parts of a mix)
  length,       // mm
  area,         // m2
  volume,       // L
  mass,         // kg
  temperature,  // degrees Celsius
  share,        // 0 to 1, typed in per cent (a bare fraction such as 1/2 is read, too)
  angle,        // degrees
  power,        // W
  flux,         // lm
  hours,        // h
  days,         // d
  flow,         // mL per minute
  daily,        // mL per day
  density,      // kg/m3
  areal,        // kg/m2: of meshes and sheets
  dose,         // g per L ("15 g per 4 L")
  per_energy,   // money per kilowatt hour ("0.30 per kWh")
  hourly,       // money per hour ("32 per h")
  uv_index,     // bare number
  reference,    // [A-Za-z0-9][A-Za-z0-9._-]*, as long as the upper limit: fit for a file name
  currency,     // three capitals: EUR
};

// True for kinds that are amounts with a unit.
bool has_unit(Kind);

// Two ends of what is allowed, in the kept unit.
struct Limits {
  double low, high;
};

namespace flag {
enum : unsigned {
  none = 0,
  required = 1,     // must be present where its group is
  range_ok = 2,     // "17-26 °C" or [17 °C, 26 °C]
  unknown_ok = 4,   // "?" may be written
  profile_ok = 8,   // a profile may set it
  name = 16,        // the item's name inside its list: must be unique there; lists merge by it
  short_form = 32,  // an item may be "3 ficus-pumila": its count and species
};
}

struct Key {
  std::string_view path;  // "enclosure.openings[].mesh.open"
  Kind kind;
  Limits limits{0, 0};  // amounts, numbers and integers; {0, 0}: no limits
  unsigned flags = flag::none;
  std::string_view choices = "";   // "dry|damp"; of a kind: left out, for kinds/ has them
  std::string_view fallback = "";  // the value taken when the key is absent, as it would be typed
  std::string_view unknown = "";   // with unknown_ok: the range that "?" stands for, as typed
  std::string_view help = "";      // one sentence
  std::string_view example = "";
  // The key belongs in its group only when a neighbour has one of these values
  // ("where=left|right") or is absent ("-choose"). `required` then asks for it only in that case.
  // Where the neighbour is a kind, kinds/ says which keys go with it.
  std::string_view when = "";

  bool has(unsigned f) const { return (flags & f) != 0; }
};

// The rows of the spec, in the order in which the key reference shows them.
std::span<const Key> spec_keys();

// The row of a path in a table ("lamps[].at"), or nothing.
const Key* find_key(std::span<const Key> table, std::string_view path);

// The rows directly under a path ("" for the document), in the order of the table.
std::vector<const Key*> keys_under(std::span<const Key> table, std::string_view path);

// "a length with its unit, 20 mm to 3 m, such as 45 cm": what a row wants, in words.
std::string expectation(const Key&);

}  // namespace loamsheet
