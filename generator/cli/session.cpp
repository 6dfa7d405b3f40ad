#include "cli/session.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet {
namespace {

int code_of(const Diagnostic& d) {
  if (d.severity == Severity::warning) return exit_code::done;
  switch (d.fault) {
    case Fault::input:
      return exit_code::input;
    case Fault::file:
      return exit_code::file;
    case Fault::internal:
      return exit_code::internal;
  }
  return exit_code::internal;
}

}  // namespace

void Session::words(std::string_view text) {
  if (!options.quiet) terminal_.err(text);
}

std::string Session::line_of(const std::string& file, int line) {
  const auto known = lines_.find(file);
  if (known == lines_.end()) {
    auto text = world.read(file);
    if (!text) text = world.read(world.data(file));  // one of the program's own
    lines_[file] = split(text.value_or(""), '\n');
    return line_of(file, line);
  }
  const auto& lines = known->second;
  if (line < 1 || line > static_cast<int>(lines.size())) return "";
  std::string text = lines[static_cast<size_t>(line - 1)];
  if (!text.empty() && text.back() == '\r') text.pop_back();
  return text;
}

void Session::report(const std::vector<Diagnostic>& messages) {
  for (const auto& d : messages) worsen(code_of(d));
  const std::string text =
      render(messages, [this](const std::string& file, int line) { return line_of(file, line); });
  if (!text.empty()) terminal_.err(text);
}

std::optional<Planned> Session::plan(const std::string& spec) {
  auto planned = plan_spec(world, spec, options.profiles);
  report(planned.messages);
  if (planned && planned.value->plan.status == Status::not_cleared) worsen(exit_code::stop);
  return std::move(planned.value);
}

SheetOptions sheet_options(const Options& options) {
  SheetOptions chosen;
  if (!options.sheets.empty()) chosen.parts = split(options.sheets, ',');
  chosen.archive = options.archive == "plain" ? Archive::plain : Archive::full;
  chosen.customer_copy = options.copy == "customer";
  return chosen;
}

}  // namespace loamsheet
