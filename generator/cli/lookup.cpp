#include "catalogue/catalogue.h"
#include "cli/session.h"
#include "read/quantity.h"

namespace loamsheet {
namespace {

constexpr Key height_key{.path = "--max-height",
                         .kind = Kind::length,
                         .limits = {1, 100000},
                         .help = "The tallest a plant may grow.",
                         .example = "30 cm"};

// "30 cm" on the command line; reports what is wrong with it.
std::optional<Millimetres> length_of(Session& session, const std::string& typed) {
  const Reading reading = read_quantity(height_key, typed);
  if (reading.ok()) return Millimetres{std::get<double>(reading.value)};
  session.report({{.message = "--max-height: " + reading.message, .hint = reading.hint}});
  return std::nullopt;
}

}  // namespace

void run_lookup(Session& session) {
  LookupAsk ask = session.options.lookup;
  ask.format = session.options.format;
  const std::string& height = session.options.max_height;
  if (!height.empty()) {
    ask.filter.max_height = length_of(session, height);
    if (!ask.filter.max_height) return;
  }
  const auto catalogue = read_catalogue(session.world);
  const auto words = read_wording(session.world, "en", UnitSystem::metric);
  session.report(catalogue.messages);
  session.report(words.messages);
  if (!catalogue || !words) return;
  const auto found = look_up(*catalogue.value, *words.value, ask);
  session.report(found.messages);
  if (found) session.data(*found.value);
}

}  // namespace loamsheet
