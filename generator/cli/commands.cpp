#include "cli/session.h"
#include "data/data.h"

namespace loamsheet {
namespace {

Diagnostic cannot(const std::string& doing, const std::string& path) {
  Diagnostic d;
  d.where.file = path;
  d.message = "cannot be " + doing;
  d.fault = Fault::file;
  return d;
}

bool write_file(Session& session, const std::string& path, std::string_view bytes) {
  if (session.world.write(path, bytes)) return true;
  session.report({cannot("written", path)});
  return false;
}

PlannedBuild view(const Planned& p) {
  return {p.build, p.plan, p.wording};
}

std::string numbers_as(const std::string& format, const PlannedBuild& planned) {
  if (format == "csv") return pull_list_csv(planned);
  return format == "text" ? numbers_text(planned) : numbers_json(planned);
}

}  // namespace

void run_check(Session& session) {
  std::vector<Planned> all;
  for (const auto& spec : session.options.specs) {
    if (auto planned = session.plan(spec)) all.push_back(std::move(*planned));
  }
  std::vector<PlannedBuild> views;
  for (const auto& planned : all) views.push_back(view(planned));
  if (session.options.format == "json") return session.data(findings_json(views));
  for (const auto& planned : views) session.data(findings_text(planned));
}

void run_numbers(Session& session) {
  const auto planned = session.plan(session.options.specs.front());
  if (planned) session.data(numbers_as(session.options.format, view(*planned)));
}

void run_draw(Session& session) {
  const Options& options = session.options;
  const auto planned = session.plan(options.specs.front());
  if (!planned) return;
  const auto drawn = draw_view(session.world, *planned, options.view, options.output);
  session.report(drawn.messages);
  if (drawn && write_file(session, options.output, *drawn.value)) {
    session.words("drew " + options.output + '\n');
  }
}

void run_reopen(Session& session) {
  const std::string& path = session.options.specs.front();
  const auto pdf = session.world.read(path);
  if (!pdf) return session.report({cannot("read", path)});
  auto spec = embedded_spec(*pdf);
  for (auto& d : spec.messages) d.where.file = path;
  session.report(spec.messages);
  if (!spec) return;
  if (session.options.output.empty()) return session.data(spec.value->bytes);
  if (write_file(session, session.options.output, spec.value->bytes)) {
    session.words("wrote " + session.options.output + '\n');
  }
}

void run_schema(Session& session) {
  session.data(spec_schema());
}

}  // namespace loamsheet
