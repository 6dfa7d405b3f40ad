#include "base/text.h"
#include "job/begin.h"
#include "read/quantity.h"

namespace loamsheet {
namespace {

constexpr Key side{.path = "--size",
                   .kind = Kind::length,
                   .limits = {200, 5000},
                   .help = "A side of the enclosure.",
                   .example = "60 cm"};

Outcome<TankSize> wrong(const std::string& message) {
  Diagnostic d;
  d.message = "--size: " + message;
  d.hint = "width, depth and height with one unit, such as 90x45x60cm or 36x18x24in";
  return failure<TankSize>(std::move(d));
}

}  // namespace

Outcome<TankSize> tank_size(const std::string& typed) {
  const size_t end = typed.find_last_of("0123456789.");
  const std::string unit =
      end == std::string::npos ? "" : trimmed(std::string_view(typed).substr(end + 1));
  const auto sides = split(typed.substr(0, end == std::string::npos ? 0 : end + 1), 'x');
  if (sides.size() != 3) return wrong("'" + typed + "' is not three sides");
  if (unit.empty()) return wrong("'" + typed + "' has no unit");
  double kept[3] = {};
  for (size_t i = 0; i < 3; ++i) {
    const Reading reading = read_quantity(side, trimmed(sides[i]) + ' ' + unit);
    if (!reading.ok()) return wrong(reading.message);
    kept[i] = std::get<double>(reading.value);
  }
  const bool inches = unit == "in" || unit == "ft";
  return {TankSize{{kept[0]}, {kept[1]}, {kept[2]}, inches}, {}};
}

}  // namespace loamsheet
