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

// The list that --in-stock names; reports what is wrong with it.
bool take_stock(Session& session, LookupAsk& ask) {
  const std::string& file = session.options.stock;
  if (file.empty()) return true;
  auto stock = read_stock(session.world, file, {});
  session.report(stock.messages);
  ask.filter.stock = std::move(stock.value);
  return ask.filter.stock.has_value();
}

// The catalogue with a shop's own files; reports what is wrong with them.
std::optional<Catalogue> whole_catalogue(Session& session) {
  auto catalogue = read_catalogue(session.world);
  session.report(catalogue.messages);
  if (!catalogue) return std::nullopt;
  Sink sink;
  for (const std::string& file : session.options.catalogues) {
    if (const auto text = session.world.read(file)) {
      sink.add(add_entries(*catalogue.value, file, *text));
    } else {
      sink.add({.message = "the catalogue file '" + file + "' cannot be read",
                .expected = "a YAML file",
                .fault = Fault::file});
    }
  }
  session.report(sink.messages());
  return sink.failed() ? std::nullopt : std::move(catalogue.value);
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
  const auto catalogue = whole_catalogue(session);
  const auto words = read_wording(session.world, "en", UnitSystem::metric);
  session.report(words.messages);
  if (!catalogue || !words || !take_stock(session, ask)) return;
  const auto found = look_up(*catalogue, *words.value, ask);
  session.report(found.messages);
  if (found) session.data(*found.value);
}

}  // namespace loamsheet
