// job: joins the stages, from the path of a spec to the bytes of its files. Read job.cpp first to
// see the whole way through.
#pragma once
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"
#include "catalogue/catalogue.h"
#include "catalogue/style.h"
#include "catalogue/wording.h"
#include "check/build.h"
#include "compose/sheet.h"
#include "finish/finish.h"
#include "layout/pages.h"
#include "plan/plan.h"
#include "read/read.h"

namespace loamsheet {

struct Planned {
  Spec spec;
  Catalogue catalogue;
  Wording wording;
  Build build;
  Plan plan;
};

// spec -> plan. `profiles` is the shop's own folder of profiles; may be empty.
Outcome<Planned> plan_spec(World&, const std::string& path, const std::string& profiles);

struct SheetOptions {
  std::vector<std::string> parts;  // empty: all
  Archive archive = Archive::full;
  bool customer_copy = false;
};

// What lies between a plan and its PDF, for who wants to look at a stage.
struct Drafted {
  Typefaces type;
  Figures figures;
  Sheet sheet;
  Pages pages;
};

// What the figures are made from, with the room that the first page leaves for them.
Outcome<FigureInput> figure_input(const Planned&, const Typefaces&, const PageStyle&);

Outcome<Drafted> draft(World&, const Planned&, const SheetOptions&);

struct OutputFile {
  std::string name, bytes;  // "TT-0142-A.pdf"
};

// The files that `make` writes: the PDF, the calendar, the numbers.
Outcome<std::vector<OutputFile>> make_files(World&, const Planned&, const SheetOptions&);

// "TT-0142-A" or "TT-0142-A-customer": what the files of a build are called.
std::string file_stem(const Build&, bool customer_copy);

// One view as SVG, PNG or PDF by the ending of `file`.
Outcome<std::string> draw_view(World&, const Planned&, const std::string& view,
                               const std::string& file);

// The names of the files that go into the PDF, and their bytes.
Outcome<std::vector<Attachment>> attachments(World&, const Planned&, const SheetOptions&);

// Seconds since 1970 for every stamp: SOURCE_DATE_EPOCH, or else the planting date.
Outcome<long long> stamp_of(World&, const Build&);

}  // namespace loamsheet
