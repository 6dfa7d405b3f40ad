#include <atomic>
#include <filesystem>
#include <map>
#include <thread>

#include "catalogue/lacking.h"
#include "cli/session.h"
#include "compose/findings.h"

namespace loamsheet {
namespace {

// One spec of a batch on its way to its files.
struct Made {
  std::string spec, folder;
  std::optional<Planned> planned;
  Outcome<std::vector<OutputFile>> files;
};

std::string folder_for(const Options& options, const std::string& spec) {
  if (!options.output.empty()) return options.output;
  const std::string beside = std::filesystem::path(spec).parent_path().string();
  return beside.empty() ? "." : beside;
}

Diagnostic same_files(const Made& a, const Made& b, const std::string& path) {
  Diagnostic d;
  d.where.file = b.spec;
  d.message = "would write " + path + ", and so would " + a.spec;
  d.hint = "give each spec its own build.reference or build.revision";
  return d;
}

// Two specs of one batch that would write the same file are an error before anything is written.
bool all_differ(Session& session, const std::vector<Made>& batch) {
  std::map<std::string, const Made*> seen;
  std::vector<Diagnostic> clashes;
  for (const Made& made : batch) {
    if (!made.planned) continue;
    const std::string stem = file_stem(made.planned->build, session.options.copy == "customer");
    const auto path = std::filesystem::path(made.folder) / stem;
    const auto [other, fresh] = seen.emplace(path.lexically_normal().string(), &made);
    if (!fresh) clashes.push_back(same_files(*other->second, made, path.string() + ".pdf"));
  }
  session.report(clashes);
  return clashes.empty();
}

// No exception may leave a thread.
Outcome<std::vector<OutputFile>> files_of(Session& session, const Planned& planned) try {
  return make_files(session.world, planned, sheet_options(session.options));
} catch (const Lacking& lacking) {
  return failure<std::vector<OutputFile>>(lacking.why);
}

// Builds the files of every planned spec, several at once; nothing is written here.
void build_files(Session& session, std::vector<Made>& batch) {
  std::atomic<size_t> next = 0;
  const auto work = [&] {
    for (size_t i = next++; i < batch.size(); i = next++) {
      if (batch[i].planned) batch[i].files = files_of(session, *batch[i].planned);
    }
  };
  std::vector<std::jthread> helpers;
  for (int i = 1; i < session.options.jobs; ++i) helpers.emplace_back(work);
  work();
}

Diagnostic unwritable(const std::string& path, const std::string& what) {
  Diagnostic d;
  d.where.file = path;
  d.message = what;
  d.fault = Fault::file;
  return d;
}

bool write_files(Session& session, const Made& made) {
  if (!session.world.make_folder(made.folder)) {
    session.report({unwritable(made.folder, "the folder cannot be made")});
    return false;
  }
  for (const auto& file : *made.files.value) {
    const std::string path = (std::filesystem::path(made.folder) / file.name).string();
    if (!session.world.write(path, file.bytes)) {
      session.report({unwritable(path, "cannot be written")});
      return false;
    }
  }
  return true;
}

void tell(Session& session, const Made& made, size_t number, size_t count) {
  const std::string pdf =
      (std::filesystem::path(made.folder) / made.files.value->front().name).string();
  const std::string progress =
      count > 1 ? " (" + std::to_string(number) + " of " + std::to_string(count) + ')' : "";
  session.words("wrote " + pdf + progress + ": " + name_of(made.planned->plan.status) + '\n');
}

}  // namespace

void run_make(Session& session) {
  std::vector<Made> batch;
  for (const auto& spec : session.options.specs) {
    batch.push_back({spec, folder_for(session.options, spec), session.plan(spec), {}});
  }
  if (!all_differ(session, batch)) return;
  build_files(session, batch);
  for (size_t i = 0; i < batch.size(); ++i) {
    session.report(batch[i].files.messages);
    if (batch[i].files && write_files(session, batch[i])) {
      tell(session, batch[i], i + 1, batch.size());
    }
  }
}

}  // namespace loamsheet
