#include "job/job.h"

#include <future>

#include "calendar/calendar.h"
#include "catalogue/file.h"
#include "catalogue/style.h"
#include "check/check.h"
#include "compose/compose.h"
#include "data/data.h"
#include "draw/draw.h"
#include "job/customer.h"
#include "job/own_catalogue.h"
#include "job/settle.h"
#include "job/stock.h"
#include "layout/layout.h"
#include "paint/paint.h"

namespace loamsheet {

namespace {

// Read ahead, while the spec is checked.
std::future<Outcome<Wording>> words_for(World& world, const Spec& spec) {
  return std::async(std::launch::async, [&world, print = print_of(spec.root)] {
    const auto units = print.us_units ? UnitSystem::us : UnitSystem::metric;
    return read_wording(world, print.language, units);
  });
}

}  // namespace

Outcome<Planned> plan_spec(World& world, const std::string& path, const std::string& profiles) {
  Sink sink;
  auto looking_up = std::async(std::launch::async, [&] { return read_catalogue(world); });
  auto spec = taken(read_spec(world, path, profiles), sink);
  auto looked_up = taken(looking_up.get(), sink);
  if (!spec || !looked_up) return {std::nullopt, sink.take()};
  auto words = words_for(world, *spec);
  auto catalogue = taken(with_own_files(world, *spec, std::move(*looked_up)), sink);
  if (!catalogue) return {std::nullopt, sink.take()};
  auto stock = taken(named_stock(world, *spec), sink);
  auto build = taken(check(*spec, *catalogue, stock.value_or(std::nullopt)), sink);
  if (!build || !stock) return {std::nullopt, sink.take()};
  auto wording = taken(words.get(), sink);
  if (!wording) return {std::nullopt, sink.take()};
  check_accepted_rules(*build, *wording, sink);
  check_conditions(build->rules, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  auto settled = taken(settle(std::move(*build), *catalogue), sink);
  if (!settled) return {std::nullopt, sink.take()};
  return {Planned{std::move(*spec), std::move(*catalogue), std::move(*wording),
                  std::move(settled->build), std::move(settled->plan)},
          sink.take()};
}

namespace {

struct Sketched {
  Typefaces type;
  PageStyle style;
  Figures figures;
};

Outcome<Sketched> sketched(World& world, const Planned& p) {
  Sink sink;
  auto type = taken(load_typefaces(world), sink);
  auto style = taken(read_style(world, p.build.print.large), sink);
  if (!type || !style) return {std::nullopt, sink.take()};
  const auto input = taken(figure_input(p, *type, *style), sink);
  if (!input) return {std::nullopt, sink.take()};
  auto figures = taken(make_figures(*input), sink);
  if (!figures) return {std::nullopt, sink.take()};
  return {Sketched{std::move(*type), std::move(*style), std::move(*figures)}, sink.take()};
}

struct Paged {
  Sheet sheet;
  Pages pages;
};

Outcome<Paged> paged(const Planned& p, const SheetOptions& options, const Sketched& sketch) {
  Sink sink;
  const Shown shown(p.build, p.plan, options.customer_copy);
  auto sheet = taken(
      compose({shown.build(), shown.plan(), sketch.figures, p.wording, p.catalogue, options.parts}),
      sink);
  if (!sheet) return {std::nullopt, sink.take()};
  auto pages = taken(lay_out(*sheet, sketch.figures, sketch.type, sketch.style), sink);
  if (!pages) return {std::nullopt, sink.take()};
  return {Paged{std::move(*sheet), std::move(*pages)}, sink.take()};
}

// What is made beside the pages, in one go: they keep the other core busy.
struct Beside {
  Outcome<std::string> figures, calendar;
  std::string numbers;
};

Beside beside(const Planned& p, const SheetOptions& options, const Sketched& sketch,
              long long stamp) {
  const Shown shown(p.build, p.plan, options.customer_copy);
  return {draw_pdf(sketch.figures, sketch.type), make_calendar(p.build, p.plan, p.wording, stamp),
          numbers_json({shown.build(), shown.plan(), p.wording})};
}

// Everything that a finished document is put together from.
struct Painted {
  Sketched sketch;
  Paged sheet;
  std::string pages, figures;  // documents
};

Outcome<std::string> bound(World& world, const Planned& p, const SheetOptions& options,
                           Painted parts, long long stamp) {
  Sink sink;
  auto files = taken(attachments(world, p, options), sink);
  auto profile = data_bytes(world, "fonts/sRGB.icc", sink);
  if (!files || !profile) return {std::nullopt, sink.take()};
  return finish({.painted = std::move(parts.pages),
                 .drawn = std::move(parts.figures),
                 .pages = parts.sheet.pages,
                 .figures = parts.sketch.figures,
                 .attachments = std::move(*files),
                 .colour_profile = std::move(*profile),
                 .archive = options.archive,
                 .stamp = stamp,
                 .producer = "loamsheet " LOAMSHEET_VERSION});
}

}  // namespace

Outcome<Drafted> draft(World& world, const Planned& p, const SheetOptions& options) {
  Sink sink;
  auto sketch = taken(sketched(world, p), sink);
  if (!sketch) return {std::nullopt, sink.take()};
  auto sheet = taken(paged(p, options, *sketch), sink);
  if (!sheet) return {std::nullopt, sink.take()};
  return {Drafted{std::move(sketch->type), std::move(sketch->figures), std::move(sheet->sheet),
                  std::move(sheet->pages)},
          sink.take()};
}

Outcome<std::vector<OutputFile>> make_files(World& world, const Planned& p,
                                            const SheetOptions& options) {
  Sink sink;
  const auto stamp = taken(stamp_of(world, p.build), sink);
  auto sketch = taken(sketched(world, p), sink);
  if (!stamp || !sketch) return {std::nullopt, sink.take()};
  auto making = std::async(std::launch::async, [&] { return beside(p, options, *sketch, *stamp); });
  auto sheet = taken(paged(p, options, *sketch), sink);
  if (!sheet) return {std::nullopt, sink.take()};
  auto pages = taken(paint(sheet->pages, sketch->type), sink);
  Beside made = making.get();
  auto figures = taken(std::move(made.figures), sink);
  auto calendar = taken(std::move(made.calendar), sink);
  if (!pages || !figures || !calendar) return {std::nullopt, sink.take()};
  auto pdf =
      taken(bound(world, p, options,
                  {std::move(*sketch), std::move(*sheet), std::move(*pages), std::move(*figures)},
                  *stamp),
            sink);
  if (!pdf) return {std::nullopt, sink.take()};
  const std::string stem = file_stem(p.build, options.customer_copy);
  std::vector<OutputFile> files;
  files.push_back({stem + ".pdf", std::move(*pdf)});
  files.push_back({stem + ".ics", std::move(*calendar)});
  files.push_back({stem + ".json", std::move(made.numbers)});
  return {std::move(files), sink.take()};
}

}  // namespace loamsheet
