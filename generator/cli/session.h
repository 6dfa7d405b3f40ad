// session: one run of the command line - its options, the world, the terminal, the exit code.
#pragma once
#include <map>
#include <mutex>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"
#include "cli/cli.h"
#include "data/lookup.h"
#include "job/job.h"

namespace loamsheet {

namespace exit_code {
inline constexpr int done = 0, stop = 1, input = 2, file = 3, internal = 4;
}

struct Options {
  std::vector<std::string> specs;
  std::string profiles, emit, format = "text", view = "elevation", output, sheets, copy = "shop",
                              archive = "full";
  int jobs = 1;
  bool quiet = false;
  LookupAsk lookup;
  std::string max_height;               // of a plant looked up, as typed
  std::string stock;                    // a list to look up in
  std::vector<std::string> catalogues;  // a shop's own, to look up in
  std::string animal, size;             // of the starter, as typed
};

class Session {
 public:
  Session(World& world, const Terminal& terminal, Options options)
      : world(world), options(std::move(options)), terminal_(terminal) {}

  World& world;
  Options options;

  void data(std::string_view text) { terminal_.out(text); }
  void words(std::string_view text);  // kept back by --quiet
  void report(const std::vector<Diagnostic>&);
  void worsen(int code) { code_ = std::max(code_, code); }
  int code() const { return code_; }

  // Plans a spec; reports what is wrong with it. A stop finding makes the exit code 1.
  std::optional<Planned> plan(const std::string& spec);

 private:
  std::string line_of(const std::string& file, int line);

  const Terminal& terminal_;
  std::map<std::string, std::vector<std::string>> lines_;
  int code_ = exit_code::done;
};

SheetOptions sheet_options(const Options&);

// The commands; each leaves its exit code in the session.
void run_make(Session&);
void run_check(Session&);
void run_numbers(Session&);
void run_draw(Session&);
void run_lookup(Session&);
void run_begin(Session&);
void run_reopen(Session&);
void run_schema(Session&);

// Prints the stage that --emit names, for each spec.
void run_emit(Session&);
const std::vector<std::string>& stage_names();

}  // namespace loamsheet
