#include "base/path.h"
#include "job/customer.h"
#include "job/job.h"
#include "job/own_catalogue.h"
#include "job/stock.h"

namespace loamsheet {
namespace {

Diagnostic unreadable(const std::string& path) {
  Diagnostic d;
  d.where.file = path;
  d.message = "cannot be read, so it cannot go into the sheet";
  d.fault = Fault::file;
  return d;
}

void attach(World& world, const std::string& path, const Attachment& as, Sink& sink,
            std::vector<Attachment>& files) {
  auto bytes = world.read(path);
  if (!bytes) return sink.add(unreadable(path));
  files.push_back(as);
  files.back().bytes = std::move(*bytes);
}

void attach_shop_files(World& world, const Planned& p, Sink& sink, std::vector<Attachment>& files) {
  for (const auto& profile : p.spec.profiles) {
    const std::string name = "profiles/" + base_name(profile.path);
    attach(world, profile.path, {name, "application/yaml", "profile", ""}, sink, files);
  }
  if (const auto stock = p.spec.root.text("stock")) {
    attach(world, path_beside(p.spec, *stock), {base_name(*stock), "text/csv", "stock", ""}, sink,
           files);
  }
  for (const std::string& name : catalogue_files(p.spec)) {
    attach(world, path_beside(p.spec, name), {base_name(name), "application/yaml", "catalogue", ""},
           sink, files);
  }
}

}  // namespace

Outcome<std::vector<Attachment>> attachments(World& world, const Planned& p,
                                             const SheetOptions& options) {
  if (options.archive == Archive::plain) return {std::vector<Attachment>{}, {}};
  Sink sink;
  std::vector<Attachment> files;
  files.push_back(
      {base_name(p.spec.file), "application/yaml", std::string(spec_description), p.spec.text});
  if (options.customer_copy) {
    auto cut = taken(customer_spec(p.spec, p.wording.say("sheet.customer-spec")), sink);
    if (cut) files.front().bytes = std::move(*cut);
  } else {
    attach_shop_files(world, p, sink, files);
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(files), sink.take()};
}

}  // namespace loamsheet
