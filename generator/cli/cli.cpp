#include "cli/cli.h"

#include <CLI/CLI.hpp>
#include <array>

#include "base/text.h"
#include "catalogue/lacking.h"
#include "cli/session.h"
#include "compose/compose.h"

namespace loamsheet {
namespace {

// What a command takes besides the options that stand everywhere.
struct Command {
  const char* name;
  const char* help;
  void (*act)(Session&);
  void (*add)(CLI::App&, Options&);
};

void add_specs(CLI::App& app, Options& o) {
  app.add_option("SPEC", o.specs, "the spec, a YAML file; several may be named")->required();
}

void add_spec(CLI::App& app, Options& o) {
  app.add_option("SPEC", o.specs, "the spec, a YAML file")->required()->expected(1);
}

void add_emit(CLI::App& app, Options& o) {
  app.add_option("--emit", o.emit, "for developers: print what this stage makes, nothing else")
      ->check(CLI::IsMember(stage_names()));
}

void add_make(CLI::App& app, Options& o) {
  add_specs(app, o);
  add_emit(app, o);
  app.add_option("-o", o.output, "the folder to write to; otherwise beside the spec")
      ->type_name("DIR");
  app.add_option("--sheets", o.sheets, "parts of the sheet: " + join(part_names(), ","))
      ->type_name("LIST");
  app.add_option("--copy", o.copy, "whose copy: shop or customer")
      ->check(CLI::IsMember({"shop", "customer"}));
  app.add_option("--archive", o.archive,
                 "full: PDF/A-3b with the spec embedded; plain: PDF/A-1b without")
      ->check(CLI::IsMember({"full", "plain"}));
  app.add_option("--jobs", o.jobs, "sheets to make at once")->check(CLI::Range(1, 64));
}

void add_check(CLI::App& app, Options& o) {
  add_specs(app, o);
  add_emit(app, o);
  app.add_option("--format", o.format, "text or json")->check(CLI::IsMember({"text", "json"}));
}

void add_numbers(CLI::App& app, Options& o) {
  add_spec(app, o);
  add_emit(app, o);
  o.format = "json";
  app.add_option("--format", o.format, "json, text, or csv (the pull list)")
      ->check(CLI::IsMember({"json", "text", "csv"}));
}

void add_draw(CLI::App& app, Options& o) {
  add_spec(app, o);
  add_emit(app, o);
  app.add_option("--view", o.view, "what to draw: " + join(view_names(), ", "))
      ->required()
      ->check(CLI::IsMember(view_names()));
  app.add_option("-o", o.output, "the file to write: .svg, .png or .pdf")
      ->required()
      ->type_name("FILE");
}

void add_filters(CLI::App& app, Options& o) {
  LookupFilter& filter = o.lookup.filter;
  app.add_option("--light", filter.light, "plants of this light: low, medium, high");
  app.add_option("--habit", filter.habit, "plants of this habit: climber, fern, ...");
  app.add_option("--damp", filter.damp, "plants whose roots want it: dry, moderate, moist, wet");
  app.add_flag("--mountable", filter.mountable, "plants that grow without soil");
  app.add_option("--max-height", o.max_height, "plants no taller when grown: 30 cm")
      ->type_name("LENGTH");
  app.add_option("--safe-for", filter.safe_for,
                 "plants that suit this animal, if need be with a caution")
      ->type_name("ANIMAL");
  app.add_option("--in-stock", o.stock, "plants, crew and materials on hand by this stock list")
      ->type_name("CSV");
  app.add_option("--catalogue", o.catalogues, "a shop's own additions to the catalogue")
      ->type_name("YAML");
  app.add_option("--kind", filter.kind, "animals by build, crew by group, materials by role");
  app.add_option("--name", filter.name, "entries with these letters in their id or name");
}

void add_lookup(CLI::App& app, Options& o) {
  app.add_option("SHELF", o.lookup.shelf, join(shelf_names(), ", "))
      ->check(CLI::IsMember(shelf_names()));
  app.add_option("ID", o.lookup.id, "one entry, in full");
  add_filters(app, o);
  app.add_option("--format", o.format, "text, json or csv")
      ->check(CLI::IsMember({"text", "json", "csv"}));
  app.add_flag("--origins", o.lookup.origins,
               "count where the facts are from, of a shelf or of all");
}

void add_begin(CLI::App& app, Options& o) {
  app.add_option("--animal", o.animal, "who is to live in it")->type_name("ID");
  app.add_option("--size", o.size, "width, depth and height inside: 90x45x60cm, 36x18x24in")
      ->type_name("WxDxH");
}

void add_reopen(CLI::App& app, Options& o) {
  app.add_option("SHEET", o.specs, "a sheet made by loamsheet, a PDF file")
      ->required()
      ->expected(1);
  app.add_option("-o", o.output, "the file to write the spec to; otherwise to the terminal")
      ->type_name("SPEC");
}

void add_nothing(CLI::App&, Options&) {}

constexpr std::array commands{
    Command{"make", "write the sheet, its calendar and its numbers", run_make, add_make},
    Command{"check", "print what is found wrong or worth knowing", run_check, add_check},
    Command{"numbers", "print the plan as data", run_numbers, add_numbers},
    Command{"draw", "draw one view to a file", run_draw, add_draw},
    Command{"lookup", "print what the catalogue knows", run_lookup, add_lookup},
    Command{"begin", "print a starter spec with a comment on every part", run_begin, add_begin},
    Command{"reopen", "take the spec out of a printed plan", run_reopen, add_reopen},
    Command{"schema", "print the JSON Schema of the spec", run_schema, add_nothing},
};

std::vector<std::string> command_names() {
  std::vector<std::string> names;
  for (const auto& command : commands) names.emplace_back(command.name);
  return names;
}

void add_everywhere(CLI::App& app, Options& o) {
  app.add_option("--profiles", o.profiles, "the shop's own folder of profiles")->type_name("DIR");
  app.add_flag("--quiet", o.quiet, "say nothing but errors");
}

int wrong(const Terminal& terminal, const std::string& message, const std::string& hint) {
  terminal.err("error: " + message + "\nhint: " + hint + '\n');
  return exit_code::input;
}

// CLI11 would call a misspelt command a missing one, so it is looked at first.
std::optional<int> misnamed(const std::vector<std::string>& arguments, const Terminal& terminal) {
  if (arguments.empty())
    return wrong(terminal, "no command was given", "loamsheet --help lists them");
  const std::string& first = arguments.front();
  const auto names = command_names();
  const bool known = std::find(names.begin(), names.end(), first) != names.end();
  if (known || first.starts_with('-')) return std::nullopt;
  const auto near = closest(first, names);
  return wrong(terminal, "there is no command '" + first + '\'',
               near ? "did you mean '" + *near + "'?" : "loamsheet --help lists the commands");
}

int act(const Command& command, World& world, const Terminal& terminal, Options options) {
  Session session(world, terminal, std::move(options));
  try {
    session.options.emit.empty() ? command.act(session) : run_emit(session);
  } catch (const Lacking& lacking) {
    session.report({lacking.why});
  }
  return session.code();
}

std::string without_full_stop(std::string message) {
  while (!message.empty() && (message.back() == '.' || message.back() == '\n')) message.pop_back();
  return message;
}

}  // namespace

int run(const std::vector<std::string>& arguments, World& world, const Terminal& terminal) {
  if (const auto code = misnamed(arguments, terminal)) return *code;
  CLI::App app("Printable build guides and care sheets for planted vivariums.", "loamsheet");
  app.set_version_flag("--version", "loamsheet " LOAMSHEET_VERSION);
  app.require_subcommand(1);
  Options everywhere;
  add_everywhere(app, everywhere);
  std::array<Options, commands.size()> options;
  for (size_t i = 0; i < commands.size(); ++i) {
    CLI::App* sub = app.add_subcommand(commands[i].name, commands[i].help)->fallthrough();
    commands[i].add(*sub, options[i]);
  }
  try {
    app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
  } catch (const CLI::CallForHelp&) {
    const auto chosen = app.get_subcommands();
    terminal.out(chosen.empty() ? app.help() : chosen.front()->help());
    return exit_code::done;
  } catch (const CLI::CallForVersion&) {
    terminal.out("loamsheet " LOAMSHEET_VERSION "\n");
    return exit_code::done;
  } catch (const CLI::ParseError& e) {
    return wrong(terminal, without_full_stop(e.what()), "loamsheet --help shows what is taken");
  }
  for (size_t i = 0; i < commands.size(); ++i) {
    if (!app.got_subcommand(commands[i].name)) continue;
    options[i].profiles = everywhere.profiles;
    options[i].quiet = everywhere.quiet;
    return act(commands[i], world, terminal, std::move(options[i]));
  }
  return exit_code::internal;
}

}  // namespace loamsheet
