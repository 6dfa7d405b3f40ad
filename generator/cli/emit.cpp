#include <functional>

#include "check/check.h"
#include "cli/session.h"
#include "compose/compose.h"
#include "layout/layout.h"

namespace loamsheet {
namespace {

bool needs_draft(const std::string& stage) {
  return stage == "figures" || stage == "sheet" || stage == "pages";
}

std::string dumped(const std::string& stage, const Drafted& d) {
  if (stage == "figures") return dump(d.figures);
  if (stage == "sheet") return dump(d.sheet);
  return dump(d.pages);
}

std::string dumped(const std::string& stage, const Planned& p) {
  if (stage == "spec") return dump(p.spec);
  if (stage == "build") return dump(p.build);
  return dump(p.build, p.plan);
}

void emit_draft(Session& session, const Planned& planned) {
  const auto drafted = draft(session.world, planned, sheet_options(session.options));
  session.report(drafted.messages);
  if (drafted) session.data(dumped(session.options.emit, *drafted.value));
}

}  // namespace

const std::vector<std::string>& stage_names() {
  static const std::vector<std::string> names{"spec", "build", "plan", "figures", "sheet", "pages"};
  return names;
}

void run_emit(Session& session) {
  for (const auto& spec : session.options.specs) {
    const auto planned = session.plan(spec);
    if (!planned) continue;
    if (needs_draft(session.options.emit)) {
      emit_draft(session, *planned);
    } else {
      session.data(dumped(session.options.emit, *planned));
    }
  }
}

}  // namespace loamsheet
