#include <charconv>

#include "draw/draw.h"
#include "job/job.h"

namespace loamsheet {
namespace {

Diagnostic bad_epoch(const std::string& typed) {
  Diagnostic d;
  d.message = "SOURCE_DATE_EPOCH is '" + typed + "', which is not a number of seconds";
  d.expected = "whole seconds since 1970-01-01 00:00 UTC, such as 1772841600";
  d.hint = "unset it, and every stamp is the planting date";
  return d;
}

Diagnostic wrong_ending(const std::string& file) {
  Diagnostic d;
  d.message = "'" + file + "' does not say in which format to draw";
  d.expected = "a file that ends in .svg, .png or .pdf";
  return d;
}

bool ends_in(const std::string& file, std::string_view ending) {
  return file.ends_with(ending);
}

}  // namespace

std::string file_stem(const Build& build, bool customer_copy) {
  return build.identity.reference + '-' + build.identity.revision +
         (customer_copy ? "-customer" : "");
}

Outcome<long long> stamp_of(World& world, const Build& build) {
  const auto typed = world.variable("SOURCE_DATE_EPOCH");
  if (!typed) return {unix_seconds(build.identity.plant_on), {}};
  long long seconds = 0;
  const char* end = typed->data() + typed->size();
  const auto read = std::from_chars(typed->data(), end, seconds);
  const bool whole = read.ec == std::errc() && read.ptr == end && seconds >= 0;
  if (!whole || seconds > unix_seconds(*parse_date("2199-12-31"))) {
    return failure<long long>(bad_epoch(*typed));
  }
  return {seconds, {}};
}

Outcome<std::string> draw_view(World& world, const Planned& p, const std::string& view,
                               const std::string& file) {
  Sink sink;
  auto type = taken(load_typefaces(world), sink);
  auto style = taken(read_style(world, p.build.print.large), sink);
  if (!type || !style) return {std::nullopt, sink.take()};
  auto input = taken(figure_input(p, *type, *style), sink);
  if (!input) return {std::nullopt, sink.take()};
  auto drawn = taken(make_figure(*input, view), sink);
  if (!drawn) return {std::nullopt, sink.take()};
  const Figure& figure = *drawn;
  if (ends_in(file, ".svg")) return draw_svg(figure, *type);
  if (ends_in(file, ".png")) return draw_png(figure, *type);
  if (ends_in(file, ".pdf")) return draw_pdf(Figures{{figure}}, *type);
  return failure<std::string>(wrong_ending(file));
}

}  // namespace loamsheet
